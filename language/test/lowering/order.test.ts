/** The order of declarations is free: it changes the order of what comes out, and nothing else. */
import type { Design, Problem } from 'casewright-shared/casework';
import fc from 'fast-check';
import { expect, test } from 'vitest';
import { lowerText } from '../files-in-memory.js';

const declarations = [
    'material Ply : plywood { thickness 3/4in  species Birch }',
    'material Thin like Ply { thickness 1/4in }',
    'species Birch { source "a test" }',
    'edging Lipped { band 1/8in of Thin }',
    'joint Fixed { screw #8 x 1 1/4in spacing gaps }',
    'let gaps = 6in',
    'goods Pot { size 4in wide 4in deep 5in high }',
    'case Box(high: Length = 3in) of Ply { side Left, Right { edge front Lipped } }',
    'case Stand of Thin { shelf Tier[2] above Floor clear 3in, 1; shelf Floor at 4in; join Tier to Floor with Fixed; hold Pot on Tier }',
    'project "P" { build 2 Box(high = gaps); build Stand }',
    'shop { kerf 1/8in }',
    'material Wrong : plywood { thickness Nothing }',
    'let odd = Nobody + 1in',
] as const;

function plain(value: unknown): unknown {
    if (value instanceof Map)
        return [...value].map(([key, inner]) => [key, plain(inner)]).sort(([a], [b]) => (String(a) < String(b) ? -1 : 1));
    if (value instanceof Set) return [...value].sort();
    if (Array.isArray(value)) return value.map(plain);
    if (typeof value !== 'object' || value === null) return value;
    return Object.fromEntries(
        Object.entries(value).flatMap(([key, inner]) => (/span$/i.test(key) || key === 'quantity' ? [] : [[key, plain(inner)]])),
    );
}

function inAnyOrder({ design, problems }: { design: Design; problems: readonly Problem[] }): unknown {
    const { cases, ...rest } = design;
    return plain({
        ...rest,
        cases: new Map(cases.map((one) => [one.id, one])),
        problems: new Map(problems.map(({ code, message }) => [`${code} ${message}`, true])),
    });
}

test('permuting declarations changes nothing but order', async () => {
    const expected = inAnyOrder(await lowerText(`${declarations.join('\n')}\n`));
    await fc.assert(
        fc.asyncProperty(fc.shuffledSubarray([...declarations], { minLength: declarations.length }), async (shuffled) => {
            expect(inAnyOrder(await lowerText(`${shuffled.join('\n')}\n`))).toEqual(expected);
        }),
        { numRuns: 15 },
    );
});
