/** Casework made by hand, so that documents are tested without a text and without construction. Invented shop, invented client. */
import type { Assembly, Casework, Joint, Opening, Part, Piece, Size, Thing } from '../../src/casework/index.js';
import { boxBetween } from '../../src/geometry/index.js';
import { type EdgeWords, edge, joint, material, measure, noFaces, part, piece, property, size, span, thing } from './casework-builder.js';

export const things: readonly Thing[] = [
    thing('species', 'BlackWalnut', 'hardwood', { density: property.measure('38.5 lb/ft3') }),
    thing('material', 'WalnutPly', 'plywood', {
        species: property.thing('BlackWalnut'),
        thickness: property.measure('3/4in'),
        actual: property.measure('0.720in'),
        sheet: property.sheets(['48in', '96in'], ['60in', '60in']),
    }),
    thing('material', 'WalnutPly4', 'plywood', {
        species: property.thing('BlackWalnut'),
        thickness: property.measure('1/4in'),
        actual: property.measure('0.205in'),
        sheet: property.sheets(['48in', '96in']),
    }),
    thing('material', 'Mdf', 'fibreboard', {
        thickness: property.measure('3/4in'),
        actual: property.measure('0.750in'),
        density: property.measure('48 lb/ft3'),
        sheet: property.sheets(['49in', '97in']),
    }),
    thing('material', 'Walnut', 'lumber', {
        species: property.thing('BlackWalnut'),
        rough: property.word('4/4'),
        planed: property.measure('3/4in'),
    }),
];

const assembly: Assembly = {
    path: 'Bookcase',
    name: 'Bookcase',
    kind: 'case',
    count: 2,
    mirrored: false,
    width: measure('40in'),
    height: measure('66in'),
    depth: measure('12in'),
    room: boxBetween({ x: 0, y: 0, z: 0 }, { x: 1016, y: 304.8, z: 1676.4 }),
    extent: boxBetween({ x: 0, y: 0, z: 0 }, { x: 1016, y: 304.8, z: 1676.4 }),
    overall: { width: measure('40in'), height: measure('66in'), depth: measure('12in') },
    parts: [],
    span,
};

const lipped = [
    { does: 'band', amount: '1/8in', width: '1.44in', of: 'Walnut' },
    { does: 'round', amount: '1/8in' },
] as const satisfies readonly EdgeWords[];

const sideEdges = [
    edge('top', ...lipped),
    edge('front', ...lipped),
    edge('back', { does: 'rabbet', amount: '1/2in', width: '0.205in', for: 'Bookcase.back' }),
];
const nosed = edge(
    'front',
    { does: 'nosing', amount: '3/4in', width: '1in', proud: '1/64in', of: 'Walnut' },
    { does: 'round', amount: '1/8in' },
);

const inches = 25.4;
const shelfSize = size('37.12in', '11 51/64in', '0.75in');
const shallowerSize = size('37.12in', '11 49/64in', '0.75in');

const parts: readonly Part[] = [
    part({
        path: 'Bookcase.Left',
        kind: 'side',
        hand: 'left',
        size: size('66in', '12in', '1.44in'),
        along: ['z', 'y', 'x'],
        at: [0, 0, 0],
        edges: sideEdges,
        joints: [0, 2],
    }),
    part({
        path: 'Bookcase.Right',
        kind: 'side',
        hand: 'right',
        size: size('66in', '12in', '1.44in'),
        along: ['z', 'y', 'x'],
        at: [38.56 * inches, 0, 0],
        edges: sideEdges,
        joints: [1],
    }),
    ...[1, 2, 3].map((index) =>
        part({
            path: `Bookcase.Tier[${index}]`,
            kind: 'shelf',
            size: index === 3 ? shallowerSize : shelfSize,
            along: ['x', 'y', 'z'],
            at: [1.44 * inches, 0.205 * inches, 16 * index * inches],
            edges: [nosed],
            joints: index === 1 ? [0, 1, 3] : [],
        }),
    ),
    part({
        path: 'Bookcase.kick',
        kind: 'kick',
        size: size('37.12in', '3 1/4in', '3/4in'),
        along: ['x', 'z', 'y'],
        at: [1.44 * inches, 9 * inches, 0],
    }),
    part({
        path: 'Bookcase.back',
        kind: 'back',
        size: size('66in', '38.12in', '0.205in'),
        along: ['z', 'x', 'y'],
        at: [0.94 * inches, 0, 0],
        joints: [2, 3],
    }),
];

const sideCore = {
    finished: size('66in', '12in', '0.72in'),
    core: size('65 7/8in', '11 7/8in', '0.72in'),
    rough: size('66 3/8in', '12 3/8in', '0.72in'),
};
const strip = (path: string, name: string, finished: Size, rough: Size): Piece =>
    piece({ part: path, role: 'band', name, material: material('Walnut'), quantity: 2, finished, rough });

const pieces: readonly Piece[] = [
    ...(['Left', 'Right'] as const).flatMap((name) => [
        ...['outer', 'inner'].map((layer) =>
            piece({
                part: `Bookcase.${name}`,
                role: 'layer',
                name: `${name}, ${layer} layer`,
                material: material('WalnutPly'),
                quantity: 2,
                hand: name === 'Left' ? 'left' : 'right',
                ...sideCore,
                notes: layer === 'outer' ? [['better face out']] : [],
            }),
        ),
        strip(`Bookcase.${name}`, `${name}, top band`, size('12in', '1.44in', '1/8in'), size('13in', '1.565in', '1/8in')),
        strip(`Bookcase.${name}`, `${name}, front band`, size('66in', '1.44in', '1/8in'), size('67in', '1.565in', '1/8in')),
    ]),
    ...[1, 2, 3].map((index) => {
        const finished = index === 3 ? shallowerSize : shelfSize;
        const depth = index === 3 ? '11 1/64in' : '11 3/64in';
        const core = size('37.12in', depth, '0.75in');
        return piece({
            part: `Bookcase.Tier[${index}]`,
            role: 'core',
            name: `Tier[${index}]`,
            material: material('Mdf'),
            quantity: 2,
            grain: 'none',
            finished,
            core,
        });
    }),
    ...[1, 2, 3].map((index) =>
        piece({
            part: `Bookcase.Tier[${index}]`,
            role: 'nosing',
            name: `Tier[${index}], front nosing`,
            material: material('Walnut'),
            quantity: 2,
            finished: size('37.12in', '1in', '3/4in'),
            rough: size('38.12in', '1 1/8in', '3/4in'),
        }),
    ),
    piece({
        part: 'Bookcase.kick',
        role: 'solid',
        name: 'kick',
        material: material('Walnut'),
        quantity: 2,
        finished: size('37.12in', '3 1/4in', '3/4in'),
    }),
    piece({
        part: 'Bookcase.back',
        role: 'core',
        name: 'back',
        material: material('WalnutPly4'),
        quantity: 2,
        finished: size('66in', '38.12in', '0.205in'),
    }),
];

const shelfJoint = [
    { does: 'biscuit', size: '#20', count: 2, inset: '2 1/2in' },
    { does: 'pocket', amount: '1 1/4in', count: 6 },
    { does: 'glue' },
] as const;
const backFix = { does: 'screw', size: '#8', amount: '1 1/4in', spacing: '6in' } as const;

const joints: readonly Joint[] = [
    joint('Bookcase.Tier[1]', 'Bookcase.Left', 'ShelfJoint', ...shelfJoint),
    joint('Bookcase.Tier[1]', 'Bookcase.Right', 'ShelfJoint', ...shelfJoint),
    joint('Bookcase.back', 'Bookcase.Left', 'BackFix', backFix),
    joint('Bookcase.back', 'Bookcase.Tier[1]', 'BackFix', backFix),
];

const opening: Opening = {
    path: 'Bookcase.Tier[1].below',
    name: 'below Tier[1]',
    box: boxBetween({ x: 0, y: 0, z: 0 }, { x: 1, y: 1, z: 1 }),
    width: measure('37.12in'),
    height: measure('13in'),
    depth: undefined,
    bounds: noFaces,
    span,
};

/** Two bookcases in walnut and fibreboard, in inches. */
export const bookcase: Casework = {
    design: {
        file: 'fern-alley.case',
        files: ['fern-alley.case', 'shop.case'],
        declarations: new Map(),
        defaults: [],
        requirements: [],
        allowances: [],
        cases: [],
        used: new Set(),
    },
    project: { title: 'Fern Alley bookcases', client: 'Fern Alley Books', revision: 'A', units: 'in', notes: [] },
    assemblies: [assembly],
    parts: new Map(
        parts.map((each) => [each.path, { ...each, pieces: pieces.filter((cut) => cut.part === each.path).map(({ id }) => id) }]),
    ),
    pieces,
    openings: new Map([[opening.path, opening]]),
    joints,
    curves: [],
    loads: [],
    requirements: [],
    allowances: [],
    things: new Map(things.map((each) => [each.id, each])),
    shop: {
        oversize: measure('1/4in'),
        bandLong: measure('1/2in'),
        bandOver: measure('1/16in'),
        bentLong: measure('1in'),
        kerf: measure('1/8in'),
        trim: undefined,
    },
    deviations: new Map(),
    problems: [],
    values: new Map(),
};

/** The bookcase with other pieces. */
export function withPieces(...others: readonly Piece[]): Casework {
    return { ...bookcase, pieces: others };
}
