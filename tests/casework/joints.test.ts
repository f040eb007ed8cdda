/**
 * Small designs of joints and edges. Each in `joints/faulty` has one fault and names, in its first line, the rule that is meant for it:
 * that rule finds it, and no other rule finds anything. Those in `joints/sound` have no finding at all.
 */
import { readdirSync, readFileSync } from 'node:fs';
import { rules } from 'casewright-shared/rules';
import { describe, expect, it } from 'vitest';
import { analyseText } from './analysed.js';

interface Design {
    readonly name: string;
    readonly text: string;
    /** Before the colon in its first line. */
    readonly expected: string;
}

function designsIn(folder: string): readonly Design[] {
    const place = new URL(`joints/${folder}/`, import.meta.url);
    return readdirSync(place)
        .filter((name) => name.endsWith('.case'))
        .sort()
        .map((name) => {
            const text = readFileSync(new URL(name, place), 'utf8');
            return { name, text, expected: /^\/\/ ([^:]+): /.exec(text)?.[1] ?? 'it does not say' };
        });
}

/** What is found and not allowed, as `JNT-007 message`. */
async function foundIn({ text }: Design): Promise<readonly string[]> {
    const { findings } = await analyseText(text);
    return findings.filter(({ allowed }) => allowed === undefined).map(({ code, message }) => `${code} ${message}`);
}

const faulty = designsIn('faulty');
const sound = designsIn('sound');

it('there are at least 60 faulty designs and 30 sound ones, and some for every rule of joints', () => {
    expect(faulty.length).toBeGreaterThanOrEqual(60);
    expect(sound.length).toBeGreaterThanOrEqual(30);
    const ofJoints = rules.map(({ code }) => code).filter((code) => code.startsWith('JNT'));
    expect(ofJoints.filter((code) => !faulty.some(({ expected }) => expected === code))).toEqual([]);
});

describe('a faulty design is found by its own rule alone', () => {
    it.each(faulty.map((design) => [design.name, design] as const))('%s', async (_, design) => {
        const found = await foundIn(design);
        expect(
            found.map((one) => one.slice(0, design.expected.length)),
            found.join('\n'),
        ).toEqual(found.map(() => design.expected));
        expect(found.length).toBeGreaterThan(0);
    });
});

describe('nothing is found in a sound design', () => {
    it.each(sound.map((design) => [design.name, design] as const))('%s', async (_, design) => expect(await foundIn(design)).toEqual([]));
});
