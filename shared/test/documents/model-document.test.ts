import { readFileSync } from 'node:fs';
import { Ajv2020 } from 'ajv/dist/2020.js';
import { describe, expect, test } from 'vitest';
import type { Casework } from '../../src/casework/index.js';
import { documentKinds, type JsonObject } from '../../src/documents/index.js';
import { modelDocument } from '../../src/documents/model-document.js';
import { type Finding, ruleNamed } from '../../src/rules/index.js';
import { writeJson } from '../../src/writers/json.js';
import { measure, piece, size, span, thing } from './casework-builder.js';
import { options } from './options.js';
import { bookcase, withPieces } from './sample-casework.js';

/** ajv checks the published schema by JSON Schema, draft 2020-12; `strict` also refuses a schema with words that it does not know. */
const schema = JSON.parse(readFileSync(new URL('../../schema/model.schema.json', import.meta.url), 'utf8'));
const validate = new Ajv2020({ strict: true, strictTypes: false, allErrors: true }).compile(schema);

const finding: Finding = {
    code: 'EDG-002',
    name: 'band-too-thin',
    severity: 'warning',
    span: { file: 'fern-alley.case', start: 10, end: 14 },
    message: 'the band is thinner than its round',
    found: '1/16in',
    part: 'Bookcase.Left',
    related: [],
    allowed: 'it is a sample',
};

function modelOf(casework: Casework, more: Partial<typeof options> = {}): JsonObject {
    return JSON.parse(writeJson(modelDocument(casework, { ...options, ...more })));
}

function listOf(model: JsonObject, key: string): readonly JsonObject[] {
    return model[key] as unknown as readonly JsonObject[];
}

describe('the published schema', () => {
    const nothingKnown: Casework = {
        ...withPieces(
            piece({
                part: 'Bookcase.kick',
                role: 'core',
                name: 'kick',
                material: undefined,
                quantity: 1,
                finished: size(undefined, undefined, undefined),
            }),
        ),
        things: new Map(),
        assemblies: bookcase.assemblies.map((each) => ({
            ...each,
            width: undefined,
            height: undefined,
            depth: undefined,
            overall: { width: undefined, height: undefined, depth: undefined },
        })),
    };
    const { project: _, ...withoutProject } = bookcase;

    test.each([
        ['a bookcase', bookcase],
        ['one of which nothing is known', nothingKnown],
        ['one without a project', withoutProject],
    ] as const)('holds for the model of %s', (_, casework) => {
        validate(modelOf(casework, { findings: [finding] }));
        expect(validate.errors).toBeNull();
    });

    test.each([
        ['a part', 'parts'],
        ['a piece', 'pieces'],
        ['a case', 'cases'],
        ['an opening', 'openings'],
        ['a material', 'materials'],
        ['a finding', 'findings'],
    ])('misses every name that %s lacks, and every one that it does not know', (_, key) => {
        const model = modelOf(bookcase, { findings: [finding] });
        const [first, ...others] = listOf(model, key);
        expect(first).toBeDefined();
        for (const name of Object.keys(first!)) {
            const { [name]: dropped, ...rest } = first!;
            expect(validate({ ...model, [key]: [rest, ...others] }), `${key} without ${name}`).toBe(false);
            expect(validate({ ...model, [key]: [{ ...rest, [`${name}X`]: dropped! }, ...others] })).toBe(false);
        }
    });

    test('wants lengths as numbers', () => {
        const model = modelOf(bookcase);
        const [first, ...others] = listOf(model, 'parts');
        expect(validate({ ...model, parts: [{ ...first, finished: { length: '66in', width: 1, thickness: 1 } }, ...others] })).toBe(false);
    });
});

describe('parts', () => {
    test('have the names of the contract, in its order', () => {
        const names = [
            'id',
            'name',
            'case',
            'kind',
            'quantity',
            'hand',
            'finished',
            'core',
            'rough',
            'edges',
            'features',
            'joints',
            'pieces',
            'mass',
            'solid',
            'source',
        ];
        expect(Object.keys(listOf(modelOf(bookcase), 'parts')[0]!)).toEqual(names);
    });

    test('have lengths in mm (1 in = 25.4 mm, international yard and pound agreement of 1959)', () => {
        const side = listOf(modelOf(bookcase), 'parts').find(({ id }) => id === 'Bookcase.Left');
        expect(side?.finished).toEqual({ length: 1676.4, width: 304.8, thickness: 36.576 });
    });

    test('have what is done to their edges, and apart from it what is cut into them', () => {
        const side = listOf(modelOf(bookcase), 'parts').find(({ id }) => id === 'Bookcase.Left')!;
        expect((side.edges as readonly JsonObject[]).map(({ edge }) => edge)).toEqual(['top', 'front', 'back']);
        expect((side.features as readonly JsonObject[]).map(({ does, edge }) => [does, edge])).toEqual([
            ['round', 'top'],
            ['round', 'front'],
            ['rabbet', 'back'],
        ]);
    });

    test('see their joints from their own side', () => {
        const parts = listOf(modelOf(bookcase), 'parts');
        const seen = (id: string) => (parts.find((part) => part.id === id)?.joints as readonly JsonObject[] | undefined)?.[0];
        expect(seen('Bookcase.Left')).toMatchObject({ with: 'Bookcase.Tier[1]', as: 'receives', recipe: 'ShelfJoint' });
        expect(seen('Bookcase.Tier[1]')).toMatchObject({ with: 'Bookcase.Left', as: 'enters' });
    });

    test('name pieces that are there', () => {
        const model = modelOf(bookcase);
        const ids = new Set(listOf(model, 'pieces').map(({ id }) => id));
        const named = listOf(model, 'parts').flatMap(({ pieces }) => pieces as readonly string[]);
        expect(named.length).toBe(bookcase.pieces.length);
        expect(named.filter((id) => !ids.has(id))).toEqual([]);
    });

    test('have the mass of one, or null; the notes say which density is missing', () => {
        const model = modelOf(bookcase);
        const mass = (id: string) => listOf(model, 'parts').find((part) => part.id === id)?.mass;
        expect(mass('Bookcase.Left')).toBeNull();
        // 37.12 x 3 1/4 x 3/4in of walnut at 38.5 lb/ft3.
        expect(mass('Bookcase.kick')).toBeCloseTo(((37.12 * 3.25 * 0.75 * 38.5) / 1728) * 0.45359237, 6);
        expect((model.notes as readonly string[]).at(-1)).toMatch(/no density .*: WalnutPly, WalnutPly4\.$/);
    });
});

test('materials are those of pieces and bands, with density in kg/m3', () => {
    const materials = listOf(modelOf(bookcase), 'materials');
    expect(materials.map(({ name }) => name)).toEqual(['WalnutPly', 'Walnut', 'Mdf', 'WalnutPly4']);
    // 48 lb/ft3 in kg/m3 by the exact pound and foot.
    expect(materials[2]?.density).toBeCloseTo((48 * 0.45359237) / 0.3048 ** 3, 5);
    expect(materials[0]).toMatchObject({ family: 'plywood', species: 'BlackWalnut', density: null, actual: 18.288 });
});

test('two materials of one name are told apart', () => {
    const other = { ...thing('material', 'Mdf', 'fibreboard', {}), id: 'other.case#Mdf' };
    const cut = (material: string) =>
        piece({ part: 'Bookcase.kick', role: 'core', name: 'kick', material, quantity: 1, finished: size('1in', '1in', '1in') });
    const casework = {
        ...withPieces(cut('shop.case#Mdf'), cut('other.case#Mdf')),
        things: new Map([...bookcase.things, [other.id, other]]),
        parts: new Map(),
    };
    const model = modelOf(casework);
    expect(listOf(model, 'pieces').map(({ material }) => material)).toEqual(['shop.case#Mdf', 'other.case#Mdf']);
    expect(listOf(model, 'materials').map(({ name }) => name)).toEqual(['shop.case#Mdf', 'other.case#Mdf']);
});

test('findings have both ends of their words, the reason of an allowance, and the source of their rule', () => {
    const [found] = listOf(modelOf(bookcase, { findings: [finding] }), 'findings');
    expect(found).toEqual({
        code: 'EDG-002',
        severity: 'warning',
        message: 'the band is thinner than its round',
        hint: null,
        file: 'fern-alley.case',
        range: { start: { line: 1, column: 11 }, end: { line: 1, column: 15 } },
        part: 'Bookcase.Left',
        found: '1/16in',
        needed: null,
        allowed: 'it is a sample',
        source: ruleNamed('EDG-002')?.source.citation,
    });
});

test('the model is always in mm, whatever the documents are printed in', () => {
    expect(modelOf(bookcase, { units: 'in' })).toEqual(modelOf(bookcase, { units: 'mm' }));
});

test('a third of an inch has six decimals', () => {
    const opening = { ...[...bookcase.openings.values()][0]!, width: measure('1/3in'), span };
    expect(listOf(modelOf({ ...bookcase, openings: new Map([[opening.path, opening]]) }), 'openings')[0]?.width).toBe(8.466667);
});

test('every kind of document has its own name and file name, and a title', () => {
    expect(documentKinds.map(({ kind, formats }) => [kind, ...formats])).toEqual([
        ['cut-list', 'md', 'csv', 'json'],
        ['materials', 'md', 'csv', 'json'],
        ['sheets', 'pdf', 'md', 'csv', 'json', 'svg'],
        ['joinery', 'md', 'csv', 'json'],
        ['curves', 'md', 'csv', 'json'],
        ['fairness', 'pdf', 'svg'],
        ['offsets', 'md', 'csv', 'json'],
        ['templates', 'pdf', 'svg', 'dxf'],
        ['cauls', 'md', 'csv', 'json'],
        ['strength', 'md', 'csv', 'json'],
        ['boards', 'md', 'csv', 'json', 'svg'],
        ['purchase', 'md', 'csv', 'json'],
        ['costing', 'md', 'csv', 'json'],
        ['quote', 'md', 'csv', 'json'],
        ['model', 'json', 'glb'],
    ]);
    expect(new Set(documentKinds.map(({ fileName }) => fileName)).size).toBe(documentKinds.length);
});
