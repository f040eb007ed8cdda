/** Every sample of the tour is read, built and checked; the sizes and findings that stand below it are what comes out. */
import { readFileSync } from 'node:fs';
import * as path from 'node:path';
import { openWorkspace } from 'casewright-language';
import { lookUp, sayQuantity } from 'casewright-shared/casework';
import { describe, expect, test } from 'vitest';

const tour = readFileSync(path.resolve(import.meta.dirname, '../../language/docs/tour.md'), 'utf8');
const uri = 'memory:/tour.case';

interface Sample {
    readonly title: string;
    readonly text: string;
    /** What stands in the fence after it, and what kind of fence that is. */
    readonly claims: readonly string[];
    readonly kind: string;
}

/** A sample is a heading, words, a fence of the language, and a fence of claims. */
const fences = /^```case\n([\s\S]*?)^```\n+```(\w+)\n([\s\S]*?)^```/gm;

const samples: readonly Sample[] = tour.split(/^## /m).flatMap((section) =>
    [...section.matchAll(fences)].map(([, text = '', kind = '', claims = '']) => ({
        title: section.split('\n')[0] ?? '',
        text,
        kind,
        claims: claims.trim().split('\n'),
    })),
);

describe('the tour', () => {
    test('has as many samples as it has fences of the language', () => {
        expect(samples.length).toBe(tour.match(/^```case$/gm)?.length);
        expect(samples.length).toBeGreaterThan(5);
    });

    test.each(samples)('$title', async ({ text, claims, kind }) => {
        const analysis = await openWorkspace({ readFile: async () => text }).analyse(uri);
        const found = analysis.findings
            .filter(({ severity }) => severity !== 'note')
            .map(({ code, span }) => `${code} at \`${analysis.textAt(span)}\``);
        if (kind === 'findings') {
            expect(found).toEqual(claims);
            return;
        }
        expect(found).toEqual([]);
        const sizes = claims.map((claim) => {
            const [where = ''] = claim.split(' = ');
            const looked = lookUp(analysis.casework, where);
            return looked.ok
                ? `${where} = ${sayQuantity(looked.measure.quantity, looked.measure.quantity.unit?.system ?? 'inch')}`
                : claim.replace(/=.*/, 'is not known');
        });
        expect(sizes).toEqual(claims);
    });
});
