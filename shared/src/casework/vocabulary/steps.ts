/** Steps of edgings, joints and finishes: what is done, in the order of work. */
import { type ClauseWord, choice, dimensions, either, type Properties, property, type Shape, shape, thing } from './row.js';
import { endWords } from './words.js';

export interface StepKind {
    readonly doc: string;
    readonly example: string;
    /** In which recipes it makes sense. */
    readonly in: readonly RecipeKindName[];
    readonly value?: Shape;
    readonly valueRequired?: true;
    /** What may stand after `of`. */
    readonly of?: readonly string[];
    readonly clauses: readonly ClauseWord[];
    /** In the line after the value, or in braces. */
    readonly options: Properties;
    readonly since: number;
    /** Read, but not used in this edition. */
    readonly built?: false;
}
export type RecipeKindName = 'edging' | 'joint' | 'finish';

export interface RecipeKind {
    readonly doc: string;
    readonly example: string;
    readonly called: string;
    readonly built?: false;
}

export const recipeKinds: Readonly<Record<RecipeKindName, RecipeKind>> = {
    edging: {
        doc: 'What is done to an edge, in the order of work.',
        example: 'edging Lipped { band 1/8in of Walnut  round 1/8in }',
        called: 'an edging',
    },
    joint: {
        doc: 'Everything about how two parts meet.',
        example: 'joint Fixed { screw #8 x 1 1/4in  spacing 5in  glue }',
        called: 'a joint',
    },
    finish: {
        doc: 'What is done to the surfaces of a part, in the order of work: sanding, and coats.',
        example: 'finish Clear { sand #180; coat Lacquer count 3 }',
        called: 'a finish',
    },
};

const count = property(shape.count, 'How many in one joint.', 'count 2');
const spacing = property(shape.length, 'At most so far from one to the next, at even spaces.', 'spacing 6in');
const pitch = property(shape.length, 'Exactly so far from one to the next, from the middle of the joint both ways.', 'pitch 32mm');
const inset = property(shape.length, 'From the end of the joint to the first.', 'inset 2 1/2in');
const layout = { count, spacing, pitch, inset };
const face = property(
    choice('left', 'right', 'front', 'back', 'top', 'bottom'),
    'The face of the part that enters in which it is cut.',
    'face bottom',
);
const pilot = property(shape.length, 'Diameter of the hole for its thread.', 'pilot 7/64in');
const head = property(shape.length, 'Diameter of its head.', 'head 5/16in');
const row = (
    does: string,
    example: string,
    where: readonly RecipeKindName[],
    more: Partial<Omit<StepKind, 'doc' | 'example' | 'in'>> = {},
): StepKind => ({ doc: does, example, in: where, clauses: [], options: {}, since: 1, ...more });

const edging = ['edging'] as const;
const joint = ['joint'] as const;
const both = ['edging', 'joint'] as const;
const finish = ['finish'] as const;
const later = { built: false, clauses: ['at', 'of', 'for', 'on'] } as const;

export const stepKinds: Readonly<Record<string, StepKind>> = {
    band: row('Glue a thin strip on the edge and trim it flush.', 'band 1/8in of Walnut', edging, {
        value: shape.length,
        valueRequired: true,
        of: ['material'],
        clauses: ['of'],
        options: { proud: property(shape.length, 'How far it stands over the face.', 'proud 1/64in') },
    }),
    nosing: row('Glue a solid strip on the edge.', 'nosing 3/4in of Walnut { high 1in  proud 1/64in }', edging, {
        value: shape.length,
        valueRequired: true,
        of: ['material'],
        clauses: ['of'],
        options: {
            high: property(shape.length, 'Its height, over the edge it covers.', 'high 1in'),
            proud: property(shape.length, 'How far it stands over the upper face.', 'proud 1/64in'),
        },
    }),
    round: row('Round the arrises over.', 'round 1/8in', edging, { value: shape.length, valueRequired: true }),
    chamfer: row('Cut the arrises off at 45 degrees.', 'chamfer 1/16in', edging, { value: shape.length, valueRequired: true }),
    bevel: row('Plane or saw the whole edge to an angle.', 'bevel 15deg', edging, { value: shape.angle, valueRequired: true }),
    rabbet: row('Cut a step along the edge, for another part.', 'rabbet 1/2in deep for back', both, {
        value: either(dimensions('wide', 'deep'), shape.length),
        valueRequired: true,
        clauses: ['for'],
    }),
    groove: row('Cut a slot along the grain, for another part.', 'groove 1/4in deep for back', both, {
        value: either(dimensions('wide', 'deep'), shape.length),
        valueRequired: true,
        clauses: ['for', 'at'],
        options: { inset: property(shape.length, 'From the edge to the slot.', 'inset 1/2in') },
    }),
    dado: row(
        'Cut a slot across the grain: the other part enters it. Where it is less wide than that part is thick, that part is rabbeted to fit.',
        'dado 1/4in deep',
        joint,
        {
            value: either(dimensions('wide', 'deep'), shape.length),
            valueRequired: true,
            clauses: ['for', 'at'],
            options: { face },
        },
    ),
    tongue: row('Leave a tongue in the middle of the edge: it enters a groove.', 'tongue 1/4in thick 3/8in long', joint, {
        value: dimensions('thick', 'long'),
        valueRequired: true,
    }),
    lap: row('Halve the two where they lie in one another, and lay one half on the other.', 'lap 2in long', joint, {
        value: either(dimensions('long', 'deep'), shape.length),
        valueRequired: true,
        options: { face },
    }),
    mitre: row('Cut both at half the corner, so that no end shows.', 'mitre', joint),
    spline: row('Glue a loose tongue in slots across the mitre.', 'spline 1/8in thick 1/2in wide', joint, {
        value: dimensions('thick', 'wide'),
        valueRequired: true,
    }),
    looseTenon: row('Loose tenons in mortises, half of each in either part.', 'looseTenon 8mm thick 40mm wide 50mm long count 2', joint, {
        value: dimensions('thick', 'wide', 'long'),
        valueRequired: true,
        options: layout,
    }),
    tenon: row('Leave a tongue on the end: it enters a mortise.', 'tenon 1/3 thick 30mm long', joint, {
        value: either(dimensions('thick', 'long', 'wide'), shape.length),
        valueRequired: true,
    }),
    biscuit: row('Flat dowels in sawn slots.', 'biscuit #20 count 2 inset 2 1/2in', joint, {
        value: shape.tradeSize,
        options: layout,
    }),
    dowel: row('Round dowels, by diameter and length.', 'dowel 8mm x 40mm count 4', joint, {
        value: either(shape.length, { is: 'sizeByLength' }),
        options: { ...layout, into: property(shape.length, 'How much of each goes into the part that receives.', 'into 12mm') },
    }),
    pocket: row('Screws in slanted holes, by their length, or by size and length.', 'pocket 1 1/4in count 6', joint, {
        value: either(shape.length, { is: 'sizeByLength' }),
        options: {
            ...layout,
            face,
            bore: property(shape.length, 'Diameter of the slanted hole.', 'bore 3/8in'),
            seat: property(shape.length, 'From the seat of the head to the end of the board, along the screw.', 'seat 1/2in'),
        },
    }),
    screw: row('Screws, by size and length.', 'screw #8 x 1 1/4in spacing 6in', joint, {
        value: { is: 'sizeByLength' },
        options: { ...layout, pilot, head },
    }),
    panelScrew: row('Thick screws for panels, in stepped holes, by diameter and length.', 'panelScrew 7mm x 50mm count 2', joint, {
        value: { is: 'sizeByLength' },
        options: { ...layout, pilot, head },
    }),
    nail: row('Nails or brads, by their length, or by diameter and length.', 'nail 1 1/4in spacing 6in', joint, {
        value: either(shape.length, { is: 'sizeByLength' }, shape.tradeSize),
        options: layout,
    }),
    pin: row('Headless pins.', 'pin spacing 8in', joint, {
        value: either(shape.length, shape.tradeSize),
        options: layout,
    }),
    glue: row('Glue.', 'glue', joint),
    gap: row('Keep the two apart.', 'gap 1mm at each end', joint, { value: shape.length, valueRequired: true, clauses: ['at'] }),
    rest: row('It lies on something, and is not fixed. Pins that say their hole get it.', 'rest on ShelfPin count 4', joint, {
        clauses: ['on'],
        options: {
            count,
            inset,
            pitch: property(shape.length, 'From one hole to the next, up and down.', 'pitch 32mm'),
            up: property(shape.count, 'How many holes are bored above the one that it lies on.', 'up 3'),
            down: property(shape.count, 'How many holes are bored below the one that it lies on.', 'down 3'),
        },
    }),
    loose: row('It can be taken out.', 'loose', joint),
    free: row('It may move across its grain.', 'free at front', joint, { value: choice(...Object.keys(endWords)), clauses: ['at'] }),
    tight: row('Here it may not move.', 'tight at back', joint, { value: choice(...Object.keys(endWords)), clauses: ['at'] }),
    bolt: row('Bolts through both parts, by size and length.', 'bolt 6mm x 40mm count 4', joint, {
        value: either({ is: 'sizeByLength' }, shape.tradeSize),
        options: { ...layout, hole: property(shape.length, 'Diameter of its hole.', 'hole 7mm'), head },
    }),
    dovetail: row('Dovetails.', 'dovetail 1:7 spacing 1 1/4in', joint, {
        ...later,
        options: { spacing, count, lap: property(shape.length, 'Wood left in front.', 'lap 1/8in') },
    }),
    hinge: row('Hang it on hinges.', 'hinge ButtHinge count 2 inset 3in', joint, {
        ...later,
        value: thing('bought'),
        options: { count, inset },
    }),
    runner: row('Let it run on runners.', 'runner Runner longest', joint, { ...later, value: thing('bought') }),
    catch: row('Hold it shut.', 'catch ball', joint, later),
    inset: row('It closes in its opening, flush with the front.', 'inset', joint, later),
    overlay: row('It closes over the front of its opening.', 'overlay', joint, later),
    cut: row('Take a shape out.', 'cut hole ShelfPin at 37mm behind front', both, later),
    box: row('Where a drawer box stands in its opening.', 'box gap 1/2in at sides', joint, later),
    sand: row('Sand all that is finished, by the grit of the paper.', 'sand #180', finish, { value: shape.tradeSize }),
    coat: row('Put on a coating.', 'coat Lacquer count 3', finish, {
        value: thing('coating'),
        valueRequired: true,
        options: { count: property(shape.count, 'How many coats, one after the other.', 'count 3') },
    }),
    half: row('Half-blind dovetails.', 'half-blind dovetail 1:7', joint, later),
};
