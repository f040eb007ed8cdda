/** Half-written and mistaken texts: whatever is done to a design, it is read to its end, and what is known of it is finite. */

import { type Casework, lookUp, whyText } from 'casewright-shared/casework';
import { real } from 'casewright-shared/quantity';
import * as fc from 'fast-check';
import { expect, it } from 'vitest';
import { allDesigns, analyseText, textsOf } from './analysed.js';

const files = await allDesigns();
const texts = await Promise.all(files.map(textsOf));

/** Words and numbers that a slip, or a change of mind, may leave behind. */
const slips = [
    '0',
    '-1',
    '1000000000',
    '0in',
    '1/0',
    '1kg',
    '3',
    'equal',
    'rest',
    'middle',
    'top',
    'Left',
    'x',
    '(',
    '}',
    '{',
    '"',
    ';',
    'at',
    'for',
    'every shelf',
];

type Edit =
    | { readonly does: 'delete' | 'double' | 'swap'; readonly at: number; readonly with: number }
    | { readonly does: 'replace' | 'insert'; readonly at: number; readonly by: string }
    | { readonly does: 'copy'; readonly at: number; readonly from: number };

const place = fc.double({ min: 0, max: 1, maxExcluded: true, noNaN: true });
const edit: fc.Arbitrary<Edit> = fc.oneof(
    fc.record({ does: fc.constantFrom('delete' as const, 'double' as const, 'swap' as const), at: place, with: place }),
    fc.record({ does: fc.constantFrom('replace' as const, 'insert' as const), at: place, by: fc.constantFrom(...slips) }),
    fc.record({ does: fc.constant('copy' as const), at: place, from: place }),
);

/** Lines are deleted, doubled and swapped; words are replaced, put in, or copied from elsewhere in the text. */
function apply(text: string, change: Edit): string {
    if ('with' in change) return applyToLines(text.split('\n'), change);
    const words = text.split(/(\s+)/);
    const index = Math.floor(change.at * words.length);
    if ('from' in change) words[index] = words[Math.floor(change.from * words.length)] ?? '';
    else if (change.does === 'replace') words[index] = change.by;
    else words.splice(index, 0, ` ${change.by} `);
    return words.join('');
}

function applyToLines(
    lines: string[],
    change: { readonly does: 'delete' | 'double' | 'swap'; readonly at: number; readonly with: number },
): string {
    const [index, other] = [Math.floor(change.at * lines.length), Math.floor(change.with * lines.length)];
    const [line, second] = [lines[index] ?? '', lines[other] ?? ''];
    if (change.does === 'delete') lines.splice(index, 1);
    else if (change.does === 'double') lines.splice(index, 0, line);
    else [lines[index], lines[other]] = [second, line];
    return lines.join('\n');
}

/** Every number that is known is finite, and every size can say why. */
function examine(casework: Casework): void {
    for (const part of casework.parts.values()) {
        expect([...Object.values(part.box.least), ...Object.values(part.box.most)].every(Number.isFinite)).toBe(true);
        for (const size of Object.values(part.sizes))
            for (const measure of Object.values(size))
                if (measure) expect(Number.isFinite(real.toNumber(measure.quantity.value))).toBe(true);
        const length = lookUp(casework, `${part.path}.length`);
        if (length.ok) expect(whyText(length.measure, { system: 'inch', locate: () => undefined, depth: 6 })).not.toBe('');
    }
    expect(casework.problems.filter(({ message, span }) => message === '' || span.end < span.start)).toEqual([]);
}

it('is read, built and checked after any few edits', async () => {
    const cases = fc.tuple(fc.nat({ max: texts.length - 1 }), fc.array(edit, { minLength: 1, maxLength: 4 }));
    await fc.assert(
        fc.asyncProperty(cases, async ([index, edits]) => {
            const { text, used } = texts[index] ?? { text: '', used: {} };
            const analysis = await analyseText(edits.reduce(apply, text), used);
            expect(analysis.findings).toBeDefined();
            examine(analysis.casework);
        }),
        { seed: 1910, numRuns: 80 },
    );
}, 120_000);

it('is read, built and checked while its shop file is half-written', async () => {
    const cases = fc.tuple(fc.nat({ max: texts.length - 1 }), fc.array(edit, { minLength: 1, maxLength: 3 }));
    await fc.assert(
        fc.asyncProperty(cases, async ([index, edits]) => {
            const { text, used } = texts[index] ?? { text: '', used: {} };
            const analysis = await analyseText(text, { 'shop.case': edits.reduce(apply, used['shop.case'] ?? '') });
            expect(analysis.findings).toBeDefined();
            examine(analysis.casework);
        }),
        { seed: 1910, numRuns: 40 },
    );
}, 120_000);

it('is read, built and checked wherever its text breaks off', async () => {
    for (const { text, used } of texts.slice(0, 2)) {
        for (let end = 300; end < text.length; end += 131) examine((await analyseText(text.slice(0, end), used)).casework);
    }
}, 120_000);
