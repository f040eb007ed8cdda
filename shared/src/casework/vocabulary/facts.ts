/** Kinds of facts: what is, not what is made. A new property of a material or a species is one row here. */

import { choice, dimensions, either, listOf, type Properties, price, property, type Shape, shape, sizes, thing } from './row.js';
import { battenProperty, boughtProperties, projectProperties, routeProperties, shopProperties, siteProperties } from './workshop.js';

export interface FactKind {
    readonly doc: string;
    readonly example: string;
    /** As it is called in a sentence: `a material`, `goods`. */
    readonly called: string;
    readonly properties: Properties;
    /** What may stand after the `:`, each with its sentence. */
    readonly families?: Readonly<Record<string, string>>;
    /** `curve Sweep of depth over height` */
    readonly head?: { readonly of: readonly string[]; readonly over: readonly string[] };
    /** Whether `build` may stand in it. */
    readonly builds?: true;
    /** Whether it goes without a name: there is one. */
    readonly single?: true;
    /** Read, but not used in this edition. */
    readonly built?: false;
}

const source = property(shape.text, 'Where the values come from: title, edition, table.', 'source "Wood Handbook FPL-GTR-282, Table 5-3b"');
const note = property(shape.text, 'Printed with the thing.', 'note "from the short stack by the door"', { repeats: true });
const sourceOf = (what: string, name: string) =>
    property(shape.text, `Where ${what} come from, if not from the source.`, `${name} "ANSI A208.1-2016"`);

const strength: Properties = {
    density: property(shape.density, 'Mass over volume, as delivered.', 'density 40 lb/ft3'),
    statistic: property(
        choice('average', 'minimum', 'design'),
        'What the strengths are: average, minimum (no delivery falls below), or design (already reduced).',
        'statistic average',
    ),
    modulusOfElasticity: property(
        shape.pressure,
        'Stiffness in bending; of solid wood the apparent one, shear included.',
        'modulusOfElasticity 1680000 psi',
    ),
    modulusAlong: property(shape.pressure, 'Stiffness in bending along the face grain.', 'modulusAlong 841481 psi'),
    modulusAcross: property(shape.pressure, 'Stiffness in bending across the face grain.', 'modulusAcross 272593 psi'),
    modulusOfRupture: property(shape.pressure, 'Stress in bending at which it breaks.', 'modulusOfRupture 14600 psi'),
    internalBond: property(shape.pressure, 'Strength in tension across the faces of a panel.', 'internalBond 0.45 MPa'),
    compressionPerpendicular: property(
        shape.pressure,
        'Stress across the grain at the proportional limit.',
        'compressionPerpendicular 1010 psi',
    ),
    compressionParallel: property(shape.pressure, 'Greatest stress along the grain.', 'compressionParallel 7580 psi'),
    shearParallel: property(shape.pressure, 'Greatest shear stress along the grain.', 'shearParallel 1370 psi'),
    sideHardness: property(shape.force, 'Force that presses a 0.444in ball in to half its diameter.', 'sideHardness 1010 lbf'),
    screwFace: property(shape.force, 'Withdrawal of a screw from the face.', 'screwFace 1000 N'),
    screwEdge: property(shape.force, 'Withdrawal of a screw from the edge.', 'screwEdge 900 N'),
    strengthSource: sourceOf('the strengths', 'strengthSource'),
    fastenerGravity: property(
        shape.ratio,
        'Ovendry mass over ovendry volume, for screws and nails in it by NDS-2018; without it that of its species is converted.',
        'fastenerGravity 0.67',
    ),
    fastenerGravitySource: sourceOf('the specific gravity for fasteners', 'fastenerGravitySource'),
};

const materialProperties: Properties = {
    species: property(thing('species'), 'The wood of the faces, or of a board.', 'species BlackWalnut'),
    core: property(thing('species', 'material'), 'What is between the faces.', 'core Birch'),
    grade: property(shape.text, 'The grade it is sold by.', 'grade "M-2"'),
    thickness: property(
        shape.length,
        'What the dealer calls it. Labels print it; without an actual thickness sizes are computed from it.',
        'thickness 3/4in',
    ),
    actual: property(shape.lengthWithTolerance, 'What a caliper reads. Every size is computed from it.', 'actual 0.720in ± 0.010in'),
    actualSource: sourceOf('thickness and its tolerance', 'actualSource'),
    rough: property(
        either(shape.tradeSize, shape.length),
        'Thickness of a board before milling, in quarters of an inch or as a length.',
        'rough 4/4',
    ),
    planed: property(shape.lengthWithTolerance, 'Thickness of a board after milling.', 'planed 3/4in'),
    sheet: property(listOf(sizes(2)), 'Sheets in stock, width by length.', 'sheet 48in x 96in'),
    boards: property(
        listOf({ is: 'interval', dimension: 'length' }),
        'Boards in stock, from the narrowest to the widest, from the shortest to the longest.',
        'boards 5in to 9in wide, 8ft to 12ft long',
    ),
    lengths: property(listOf(shape.length), 'Lengths in stock.', 'lengths 2400mm, 3600mm'),
    grain: property(choice('length', 'width', 'none'), 'Which way the grain of the face runs on the sheet.', 'grain length'),
    moisture: property(either(shape.ratio, { is: 'interval', dimension: 'none' }), 'Moisture when it is worked.', 'moisture 7%'),
    price: property(
        price('sheet', 'board foot', 'bdft', 'm', 'ft', 'm2', 'ft2', 'm3', 'each'),
        'What the shop pays.',
        'price 118 USD per sheet',
    ),
    face: property(thing('species', 'material'), 'The veneer that is seen.', 'face BlackWalnut'),
    layers: property(either(shape.count, shape.length), 'What a laminated board is pressed from.', '7 layers of BendingPly 1/8in', {
        clauses: ['of'],
        built: false,
    }),
    springback: property(shape.ratio, 'How much of the rise a bent board loses when the press opens.', 'springback 3%', { built: false }),
    spare: property(either(shape.length, dimensions('each')), 'Length added for trimming.', 'spare 3/4in each end', { built: false }),
    glazing: property(
        choice('annealed', 'tempered', 'laminated'),
        'How a pane of glass is made: annealed breaks in blades, tempered in crumbs, laminated hangs together.',
        'glazing tempered',
    ),
    section: property(dimensions('high', 'out'), 'Size of a moulding, seen from its end.', 'section 90mm high 60mm out', { built: false }),
    ...strength,
    source,
    note,
};

const speciesProperties: Properties = {
    commonName: property(shape.text, 'What it is called in a sentence.', 'commonName "black walnut"'),
    specificGravity: property(
        shape.ratio,
        'Ovendry mass over the volume that `basis` says, over the density of water.',
        'specificGravity 0.55',
    ),
    basis: property(
        choice('airdry', 'green', 'ovendry'),
        'The volume under the specific gravity: airdry at 12 % moisture, green before drying, or ovendry.',
        'basis airdry',
    ),
    ...strength,
    source: { ...source, required: true },
    radialShrinkage: property(shape.ratio, 'Shrinkage from green to ovendry, along the radius.', 'radialShrinkage 5.5%'),
    tangentialShrinkage: property(shape.ratio, 'Shrinkage from green to ovendry, along the growth rings.', 'tangentialShrinkage 7.8%'),
    volumetricShrinkage: property(shape.ratio, 'Shrinkage of the volume from green to ovendry.', 'volumetricShrinkage 12.8%'),
    shrinkageSource: sourceOf('the shrinkages', 'shrinkageSource'),
    radialChange: property(shape.ratio, 'Change of quarter-sawn width, part in one, for each 1 % of moisture.', 'radialChange 0.00190'),
    tangentialChange: property(
        shape.ratio,
        'Change of flat-sawn width, part in one, for each 1 % of moisture.',
        'tangentialChange 0.00274',
    ),
    changeSource: sourceOf('the changes', 'changeSource'),
    note,
};

const curvePlace = { clauses: ['at'] as const };
const outOrIn: Shape = { is: 'worded', words: ['out', 'in'], value: shape.length };
const through = (more: { readonly most?: number } = {}): Shape => ({ is: 'points', words: ['through'], ...more });
const ofPiece = { repeats: true } as const;
const curveProperties: Properties = {
    from: property(shape.length, 'Where the curve begins.', 'from 17 1/2in at bottom', { ...curvePlace, required: true }),
    to: property(
        shape.length,
        'Where it ends. A curve of several pieces says `to` for each of them, in their order; what shape a piece has stands behind its `to`, and without a shape it is straight.',
        'to 12in at top',
        { ...curvePlace, ...ofPiece, required: true },
    ),
    arc: property(
        either(outOrIn, through({ most: 1 }), choice('tangent')),
        'A circle through both ends: with this rise over the straight line between them, out to the room or in; through a third point; or `tangent`, going on from the piece before without a kink.',
        'arc out 3in',
        ofPiece,
    ),
    bow: property(
        outOrIn,
        'The line of a sprung strip with this rise over the straight line between its ends, out to the room or in.',
        'bow out 1 1/8in',
        ofPiece,
    ),
    fair: property(
        through(),
        'The line of a batten that is pinned at both ends and at these points between them, in their order.',
        'fair through 17in at 14in, 13 1/2in at 40in',
        ofPiece,
    ),
    radius: property(outOrIn, 'A circle of this radius through both ends, out to the room or in.', 'radius out 97 1/2in', ofPiece),
    batten: battenProperty,
    note,
};

const goodsProperties: Properties = {
    size: property(
        either(dimensions('wide', 'deep', 'high'), sizes(3)),
        'Width, depth and height of one.',
        'size 9in wide 6in deep 7in high',
        { required: true },
    ),
    mass: property(shape.mass, 'Mass of one.', 'mass 2.5lb'),
    stack: property(shape.count, 'How many stand on one another.', 'stack 3'),
    note,
};

const fastenerProperties: Properties = {
    size: property(shape.tradeSize, 'The size it is sold by.', 'size #8'),
    diameter: property(shape.length, 'Diameter of the shank of a screw, or of a dowel.', 'diameter 0.164in'),
    rolledRoot: property(shape.length, 'Diameter of a screw between its threads, where these are rolled.', 'rolledRoot 0.131in'),
    cutRoot: property(shape.length, 'Diameter of a screw between its threads, where these are cut.', 'cutRoot 0.112in'),
    rootSource: sourceOf('the root diameters', 'rootSource'),
    length: property(shape.length, 'How long one is.', 'length 1 1/4in'),
    lengths: property(listOf(shape.length), 'Lengths in stock.', 'lengths 1in, 1 1/4in, 2in'),
    width: property(shape.length, 'How wide one is.', 'width 23mm'),
    thickness: property(shape.length, 'How thick one is.', 'thickness 4mm'),
    depth: property(shape.length, 'How deep its slot is cut in each part.', 'depth 12.3mm'),
    head: property(shape.length, 'Diameter of the head.', 'head 0.332in'),
    price: property(price('each', '100', '1000', 'pack'), 'What the shop pays.', 'price 4 USD per 100'),
    pack: property(shape.count, 'How many come in a pack: whole packs are bought.', 'pack 100'),
    source,
    note,
};

const coatingProperties: Properties = {
    solids: property(shape.ratio, 'What is left of its volume when it is dry.', 'solids 32%'),
    wet: property(shape.length, 'How thick one coat is while it is wet.', 'wet 4mil'),
    dry: property(shape.length, 'How thick one coat is when it is dry; with the solids it says how thick it was wet.', 'dry 1.2mil'),
    transfer: property(shape.ratio, 'How much of what leaves the gun stays on the work; all of it from a brush or a rag.', 'transfer 65%'),
    price: property(price('gal', 'qt', 'litre', 'can'), 'What the shop pays.', 'price 62 USD per gal'),
    can: property(shape.volume, 'How much is in a can: whole cans are bought.', 'can 1 gal'),
    source,
    note,
};

const offcutProperties: Properties = {
    material: property(thing('material'), 'The panel that it is of.', 'material WalnutPly', { required: true }),
    size: property(sizes(2), 'Its size, width by length as of a sheet: its edges are sawn.', 'size 22in x 40in', { required: true }),
    count: property(shape.count, 'How many there are of it; one where nothing is said.', 'count 2'),
    note,
};

export const factKinds: Readonly<Record<string, FactKind>> = {
    material: {
        doc: 'Something parts are made of: sheet goods or boards.',
        example:
            'material WalnutPly : plywood { species BlackWalnut  thickness 3/4in  actual 0.720in ± 0.010in  sheet 48in x 96in  grain length }',
        called: 'a material',
        properties: materialProperties,
        families: {
            plywood: 'Veneers glued crosswise.',
            lumber: 'Boards, milled in the shop.',
            solid: 'Boards, bought at thickness.',
            fibreboard: 'A panel of fibres: it has no grain.',
            particleboard: 'A panel of chips: it has no grain.',
            hardboard: 'A thin, dense panel of fibres.',
            blockboard: 'Strips between veneers.',
            veneer: 'Thin wood, for faces and bands.',
            laminate: 'Decorative sheet, glued on a panel.',
            glass: 'Ordered to size, never cut in the shop.',
            metal: 'Sheet, bar or tube.',
            laminated: 'Layers pressed in a form.',
            moulding: 'Lengths with a section.',
        },
    },
    species: {
        doc: 'A wood: how heavy, how stiff, and how it moves.',
        example: 'species BlackWalnut : hardwood { specificGravity 0.55  basis airdry  source "Wood Handbook FPL-GTR-282, Table 5-3b" }',
        called: 'a species',
        properties: speciesProperties,
        families: { hardwood: 'Of a broad-leaved tree.', softwood: 'Of a conifer.' },
    },
    goods: {
        doc: 'Something the case is made to hold.',
        example: 'goods Teapot { size 9in wide 6in deep 7in high  mass 2.5lb }',
        called: 'goods',
        properties: goodsProperties,
    },
    curve: {
        doc: 'How deep the case is at every height, or at every place along its width.',
        example: 'curve Sweep of depth over height { from 17 1/2in at bottom; to 12in at top; bow out 1 1/8in }',
        called: 'a curve',
        properties: curveProperties,
        head: { of: ['depth'], over: ['height', 'width'] },
    },
    fastener: {
        doc: 'Something that holds parts together: a screw, a biscuit, a dowel.',
        example: 'fastener Biscuit20 : biscuit { size #20  length 56mm  width 23mm  thickness 4mm }',
        called: 'a fastener',
        properties: fastenerProperties,
        families: {
            screw: 'A wood screw.',
            nail: 'A nail or brad.',
            biscuit: 'A flat dowel in a sawn slot.',
            dowel: 'A round dowel.',
            bolt: 'A machine screw with its nut.',
        },
    },
    coating: {
        doc: 'Something that is put on surfaces and dries there: a lacquer, an oil, a paint.',
        example: 'coating Lacquer { solids 32%  wet 4mil  transfer 65%  price 62 USD per gal }',
        called: 'a coating',
        properties: coatingProperties,
    },
    offcut: {
        doc: 'What is left of a sheet and stands on the rack: layouts take it before a sheet is bought.',
        example: 'offcut W7 { material WalnutPly  size 22in x 40in }',
        called: 'an offcut',
        properties: offcutProperties,
    },
    bought: {
        doc: 'Something that is bought ready made: a hinge, a runner, a shelf pin.',
        example: 'bought ShelfPin { hole 5mm wide 10mm deep  carries 20kg }',
        called: 'a bought thing',
        properties: {
            ...boughtProperties,
            price: property(price('each', 'pair'), 'What the shop pays.', 'price 3 USD per pair'),
            source,
            note,
        },
    },
    shop: {
        doc: 'The workshop: its saws, what it allows for, what its time costs.',
        example: 'shop { kerf 1/8in  trim 1/4in  labor 65 USD per hour }',
        called: 'the shop',
        properties: { ...shopProperties, note },
        single: true,
    },
    project: {
        doc: 'What is built, for whom.',
        example: 'project "Kiln Lane display cases" { client "Kiln Lane Pottery"; build 2 PotteryCase }',
        called: 'the project',
        properties: { ...projectProperties, note },
        builds: true,
        single: true,
    },
    site: {
        doc: 'Where it will stand: walls, floor and ceiling, with their errors.',
        example: 'site Washroom { ceiling 2630mm ± 10mm }',
        called: 'a site',
        properties: { ...siteProperties, note },
        built: false,
    },
    route: {
        doc: 'The way into the house.',
        example: 'route StairUp { doorway 32in x 80in  ceiling 8ft }',
        called: 'a route',
        properties: { ...routeProperties, note },
    },
    plan: {
        doc: 'A shape seen from above.',
        example: 'plan Basin { oval 17in wide 13in deep }',
        called: 'a plan',
        properties: {},
        built: false,
    },
};
