/** The examples of every rule, through the whole pipeline: from the text to the findings. */
import { type Example, type Finding, readMarks, rules } from 'casewright-shared/rules';
import type { SolidKernel } from 'casewright-shared/solids';
import start from 'manifold-3d/manifold.js';
import { describe, expect, test } from 'vitest';
import { openWorkspace } from '../../src/open-workspace.js';

let loaded: Promise<SolidKernel> | undefined;

/** The kernel of solids, loaded once: what the rules find on the command line, they find here. */
function solidKernel(): Promise<SolidKernel> {
    loaded ??= start().then((kernel) => {
        kernel.setup();
        return kernel;
    });
    return loaded;
}

const folder = 'file:///examples/';
const file = 'design.case';

interface Checked {
    readonly text: string;
    /** What is not allowed, in the file and in those beside it. */
    readonly findings: readonly Finding[];
}

async function check(example: Example, notes: 'notes too' | 'no notes' = 'no notes'): Promise<Checked> {
    const { text } = readMarks(example);
    const files = new Map(Object.entries({ ...example.beside, [file]: text }));
    const readFile = async (uri: string) => {
        const found = files.get(uri.slice(folder.length));
        if (found === undefined) throw new Error(`${uri} does not exist`);
        return found;
    };
    const findings = await (await openWorkspace({ readFile }).analyse(folder + file)).findingsOfSolids(solidKernel);
    const isShown = ({ severity, allowed }: Finding) => allowed === undefined && (severity !== 'note' || notes === 'notes too');
    return { text, findings: findings.filter(isShown) };
}

/** A finding as its code and its words: what a reader compares. */
function said({ text, findings }: Checked): string[] {
    return findings.map(({ code, span }) => `${code} at \`${text.slice(span.start, span.end)}\``);
}

const bad = rules.flatMap((rule) => rule.examples.bad.map((example, index) => [`${rule.code} ${index + 1}`, rule, example] as const));
const good = rules.flatMap((rule) => rule.examples.good.map((example, index) => [`${rule.code} ${index + 1}`, rule, example] as const));

describe('a bad example gives its finding at its words, and no other error or warning', () => {
    test.each(bad.filter(([, { severity }]) => severity !== 'note'))('%s', async (_, rule, example) => {
        const { text, flagged } = readMarks(example);
        expect(said(await check(example))).toEqual([`${rule.code} at \`${text.slice(flagged!.start, flagged!.end)}\``]);
    });
});

describe('a rule that only notes something notes it in its bad example', () => {
    test.each(bad.filter(([, { severity }]) => severity === 'note'))('%s', async (_, rule, example) => {
        const { text, flagged } = readMarks(example);
        expect(said(await check(example, 'notes too'))).toEqual([`${rule.code} at \`${text.slice(flagged!.start, flagged!.end)}\``]);
    });
});

describe('a rule offers a change where it says so', () => {
    test.each(bad)('%s', async (_, rule, example) => {
        const { text, findings } = await check(example, 'notes too');
        const changes = findings.flatMap(({ code, fix }) => (code === rule.code && fix ? [fix] : []));
        expect(changes.map(({ safe }) => (safe ? 'safe' : 'unsafe'))).toEqual(rule.fix === 'none' ? [] : [rule.fix]);
        for (const { span, text: written, safe } of changes) {
            const changed = text.slice(0, span.start) + written + text.slice(span.end);
            const after = said(await check({ ...example, text: changed }, 'notes too'));
            expect(after.filter((finding) => finding.startsWith(rule.code))).toEqual([]);
            if (safe) expect(after).toEqual([]);
        }
    });
});

describe('a good example gives nothing', () => {
    test.each(good)('%s', async (_, __, example) => {
        expect(said(await check(example))).toEqual([]);
    });
});
