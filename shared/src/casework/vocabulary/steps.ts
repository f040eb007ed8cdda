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
    finish: { doc: 'What is put on a surface.', example: 'finish Oiled { }', called: 'a finish', built: false },
};

const count = property(shape.count, 'How many in one joint.', 'count 2');
const spacing = property(shape.length, 'From one to the next.', 'spacing 6in');
const inset = property(shape.length, 'From the end of the joint to the first.', 'inset 2 1/2in');
const row = (
    does: string,
    example: string,
    where: readonly RecipeKindName[],
    more: Partial<Omit<StepKind, 'doc' | 'example' | 'in'>> = {},
): StepKind => ({ doc: does, example, in: where, clauses: [], options: {}, since: 1, ...more });

const edging = ['edging'] as const;
const joint = ['joint'] as const;
const both = ['edging', 'joint'] as const;
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
    dado: row('Cut a slot across the grain: the other part enters it.', 'dado 1/4in deep', joint, {
        value: either(dimensions('wide', 'deep'), shape.length),
        valueRequired: true,
        clauses: ['for', 'at'],
    }),
    tenon: row('Leave a tongue on the end: it enters a mortise.', 'tenon 1/3 thick 30mm long', joint, {
        value: either(dimensions('thick', 'long', 'wide'), shape.length),
        valueRequired: true,
    }),
    biscuit: row('Flat dowels in sawn slots.', 'biscuit #20 count 2 inset 2 1/2in', joint, {
        value: shape.tradeSize,
        options: { count, spacing, inset },
    }),
    dowel: row('Round dowels.', 'dowel 8mm count 4', joint, { value: shape.length, options: { count, spacing, inset } }),
    pocket: row('Screws in slanted holes, by their length.', 'pocket 1 1/4in count 6', joint, {
        value: shape.length,
        options: { count, spacing, inset },
    }),
    screw: row('Screws, by size and length.', 'screw #8 x 1 1/4in spacing 6in', joint, {
        value: { is: 'sizeByLength' },
        options: { count, spacing, inset },
    }),
    nail: row('Nails or brads, by their length.', 'nail 1 1/4in spacing 6in', joint, {
        value: either(shape.length, shape.tradeSize),
        options: { count, spacing, inset },
    }),
    pin: row('Headless pins.', 'pin spacing 8in', joint, {
        value: either(shape.length, shape.tradeSize),
        options: { count, spacing, inset },
    }),
    glue: row('Glue.', 'glue', joint),
    gap: row('Keep the two apart.', 'gap 1mm at each end', joint, { value: shape.length, valueRequired: true, clauses: ['at'] }),
    rest: row('It lies on something, and is not fixed.', 'rest on ShelfPin count 4', joint, {
        clauses: ['on'],
        options: { count },
    }),
    loose: row('It can be taken out.', 'loose', joint),
    free: row('It may move across its grain.', 'free at front', joint, { value: choice(...Object.keys(endWords)), clauses: ['at'] }),
    tight: row('Here it may not move.', 'tight at back', joint, { value: choice(...Object.keys(endWords)), clauses: ['at'] }),
    dovetail: row('Dovetails.', 'dovetail 1:7 spacing 1 1/4in', joint, {
        ...later,
        options: { spacing, count, lap: property(shape.length, 'Wood left in front.', 'lap 1/8in') },
    }),
    bolt: row('Machine screws.', 'bolt M6 count 4', joint, { ...later, value: shape.tradeSize, options: { count, spacing, inset } }),
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
    half: row('Half-blind dovetails.', 'half-blind dovetail 1:7', joint, later),
};
