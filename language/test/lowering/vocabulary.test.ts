/** Every example that the vocabulary gives is read without complaint, so hovers, hints and the reference never show what does not work. */
import { vocabulary } from 'casewright-shared/casework';
import { describe, expect, test } from 'vitest';
import { FilesInMemory } from '../files-in-memory.js';

const { factKinds, functions, functionsOfCurves, partKinds, recipeKinds, stepKinds } = vocabulary;

/** What the examples speak of. */
const things = `
material Walnut : lumber { planed 3/4in }
material WalnutPly : plywood { thickness 3/4in }
material WalnutPly4 : plywood { thickness 1/4in }
material Mdf : fibreboard { thickness 3/4in }
material ShopPly : plywood { thickness 3/4in }
material Oak : lumber { planed 3/4in }
material Crown : lumber { planed 3/4in }
coating Lacquer { solids 32%   wet 4mil }
finish Clear { coat Lacquer }
species BlackWalnut { source "a test" }
species Birch { source "a test" }
species WhiteAsh { source "a test" }
species HardMaple { source "a test" }
goods Teapot { size 1in x 1in x 1in }
bought ShelfPin { hole 5mm wide 10mm deep }
bought ButtHinge { hole 5mm wide 10mm deep }
bought Runner { hole 5mm wide 10mm deep }
case PotteryCase { width 3in }
case Dovetailed { width 3in }
case Ladder { width 3in }
`;
const inCase = (line: string) => `${things}case K(a: Length = 1in, b: Length = 2in, angle: Angle = 3deg, step: Length = 1in) {
    width 30in
    height 40in
    curve Sweep of depth over height {
        from 17in at bottom
        to 12in at top
    }
    ${line}
}
`;

async function complaints(text: string): Promise<readonly string[]> {
    const problems = await new FilesInMemory({ 'design.case': text }).problems('design.case');
    return problems.map(({ code, message }) => `${code} ${message}`).filter((said) => !said.startsWith('NAM-002'));
}

/** A name that nothing else in the example has. */
function rename(example: string): string {
    return example.replace(/^(\w+) ([A-Z]\w*)/, '$1 Example$2');
}

const builtProperties = (properties: vocabulary.Properties) => Object.entries(properties).filter(([, row]) => row.built !== false);

describe('facts', () => {
    test.each(Object.entries(factKinds).filter(([, kind]) => kind.built !== false))('%s', async (name, kind) => {
        const example = rename(kind.example);
        expect(await complaints(name === 'curve' ? inCase(example) : things + example)).toEqual([]);
    });

    const rows = Object.entries(factKinds)
        .filter(([name, kind]) => kind.built !== false && name !== 'curve')
        .flatMap(([kind, { properties }]) => builtProperties(properties).map(([name, row]) => [kind, name, row.example] as const));
    test.each(rows)('%s: %s', async (kind, _, example) => {
        const required = Object.entries(factKinds[kind]!.properties).filter(
            ([name, row]) => row.required && !example.startsWith(`${name} `),
        );
        const lines = [...required.map(([, row]) => row.example), example].join('\n    ');
        const head = factKinds[kind]!.single ? kind : `${kind} Example`;
        expect(await complaints(`${things}${head} {\n    ${lines}\n}\n`)).toEqual([]);
    });
});

describe('parts', () => {
    const built = Object.entries(partKinds).filter(([, kind]) => kind.built !== false);
    test.each(built)('%s', async (name, kind) => {
        const line = rename(kind.example);
        const text =
            name === 'case'
                ? things + line
                : name === 'layer'
                  ? inCase(`side Left { ${line} }`)
                  : inCase(`shelf Floor at 4in\n    ${line}`);
        expect(await complaints(text)).toEqual([]);
    });

    const rows = built.flatMap(([kind, { properties }]) =>
        builtProperties(properties).map(([name, row]) => [kind, name, row.example] as const),
    );
    test.each(rows)('%s: %s', async (kind, _, example) => {
        const inside = kind === 'layer' ? `side Left {\n layer Example {\n ${example}\n }\n}` : `${kind} Example {\n ${example}\n}`;
        expect(await complaints(inCase(inside))).toEqual([]);
    });
});

describe('recipes and steps', () => {
    test.each(Object.entries(recipeKinds).filter(([, kind]) => kind.built !== false))('%s', async (_, kind) => {
        expect(await complaints(things + kind.example)).toEqual([]);
    });

    const steps = Object.entries(stepKinds).filter(([, step]) => step.built !== false);
    const written = ({ in: [recipe], example }: vocabulary.StepKind, more = '') =>
        recipe === 'finish'
            ? `${things}finish Example { ${example}${more} }`
            : inCase(
                  `back\n    shelf Example at 3in {\n        ${recipe === 'edging' ? 'edge front' : 'with'} { ${example}${more} }\n    }`,
              );
    test.each(steps)('%s', async (_, step) => {
        expect(await complaints(written(step))).toEqual([]);
    });

    const options = steps.flatMap(([name, step]) =>
        Object.entries(step.options)
            .filter(([option]) => !step.example.includes(`${option} `))
            .map(([option, row]) => [name, option, step, row.example] as const),
    );
    test.each(options)('%s: %s', async (_, __, step, example) => {
        expect(await complaints(written(step, ` { ${example} }`))).toEqual([]);
    });
});

describe('functions', () => {
    test.each(Object.entries({ ...functions, ...functionsOfCurves }))('%s', async (_, row) => {
        expect(await complaints(inCase(`side Left, Right\n    let value = ${row.example}`))).toEqual([]);
    });
});
