/** Kinds of parts: their edges, their faces, what they may say, and the sizes that can be asked of them. */
import { choice, type DimensionName, dimensions, either, type Properties, property, type Shape, shape, thing } from './row.js';
import { sentences } from './sentences.js';

export interface PartKind {
    readonly doc: string;
    readonly example: string;
    readonly called: string;
    /** Upright, facing the room, or lying: what its edges and faces are follows from it. */
    readonly lies: 'upright' | 'facing' | 'flat' | 'assembly';
    readonly edges: readonly string[];
    readonly faces: readonly string[];
    readonly properties: Properties;
    /** Whether it may be declared by itself, as a design. */
    readonly design?: true;
    /** Read, but not used in this edition. */
    readonly built?: false;
}

const sizeOrShares: Shape = either(shape.length, shape.shares, { is: 'thing', kinds: ['curve'] });
const size = (doc: string, example: string) => property(sizeOrShares, doc, example);
const note = property(shape.text, 'Printed with the part.', 'note "figure runs up"', { repeats: true });
const grain = property(choice('length', 'width', 'none'), 'Which way the grain of the part runs.', 'grain length');
const show = property(choice('outer', 'inner', 'both', 'none'), 'Which face is seen: the better one of the sheet.', 'show outer');
const layers = property(shape.count, 'How many layers of its material are glued up.', 'layers 2');
const finished = property(
    either(thing('finish'), choice('none')),
    'How its surfaces are finished; said of a case it holds for all parts in it that say nothing else.',
    'finished none',
);
const thickness = property(shape.length, 'Its thickness, where it is not that of its material.', 'thickness 3/4in');
const later = { built: false } as const;
const angles: Properties = {
    hinge: property(choice('left', 'right', 'top', 'bottom'), 'The side it hangs on.', 'hinge left', later),
    turn: property(
        { is: 'worded', words: ['up', 'down', 'out', 'in'], value: shape.angle, optional: true },
        'Turns the part about one of its edges.',
        'turn 15deg up about front',
        later,
    ),
    planed: property(shape.length, 'Thickness after milling.', 'planed 26mm', later),
};

/** What every part may say. */
const common: Properties = {
    width: size('Size across its length: of a side or a shelf from back to front, of a kick or a rail from bottom to top.', 'width 4in'),
    height: size('Size from bottom to top, or shares of it.', 'height 34in'),
    depth: size('Size from back to front, or shares of it.', 'depth 12in'),
    length: size('Size along its length: of a side or a back from bottom to top, of a shelf or a kick from left to right.', 'length 24in'),
    thickness,
    layers,
    grain,
    show,
    finished,
    note,
    ...sentences,
    ...angles,
};
const clear = property(shape.shares, 'Openings between these parts: lengths, and shares of what remains.', 'clear 14in, rest, 14in');
const distanced: Properties = { clear, ...common };

const assembly: Properties = {
    width: size('Size from left to right over all, but for what stands past it.', 'width 40in'),
    height: size('Size from the floor up.', 'height 66in'),
    depth: property(
        either(shape.length, shape.shares, { is: 'thing', kinds: ['curve'] }, { is: 'both', kind: 'curve' }),
        'Size from the wall forward: a length, a curve, or a curve over the height and one over the width together, `depth Sweep + Bow`; it is then everywhere as deep as both come to.',
        'depth Sweep',
    ),
    anchor: property(
        dimensions('high'),
        'How high over the floor it is anchored to the wall. A case without it stands by itself, and is looked at for tipping.',
        'anchor 64in high',
    ),
    push: property(shape.force, 'The level push along the wall, at its top, that its back is to take.', 'push 50 lbf'),
    clear,
    finished,
    note,
    hinge: angles.hinge!,
    turn: angles.turn!,
    ...sentences,
};

const upright = { lies: 'upright', edges: ['front', 'back', 'top', 'bottom'], faces: ['inner', 'outer', 'left', 'right'] } as const;
const flat = { lies: 'flat', edges: ['front', 'back', 'left', 'right'], faces: ['upper', 'lower', 'top', 'bottom'] } as const;
const facing = { lies: 'facing', edges: ['top', 'bottom', 'left', 'right'], faces: ['front', 'back', 'inner', 'outer'] } as const;
const whole = { lies: 'assembly', edges: ['front', 'back', 'left', 'right', 'top', 'bottom'], faces: [] } as const;

export const partKinds: Readonly<Record<string, PartKind>> = {
    case: {
        ...whole,
        design: true,
        doc: 'A room with parts in it; it may stand in another case.',
        example: 'case PotteryCase { width 40in  height 66in  depth 12in }',
        called: 'a case',
        properties: assembly,
    },
    side: {
        ...upright,
        doc: 'An upright board that closes a case to the left or the right.',
        example: 'side Left, Right of WalnutPly',
        called: 'a side',
        properties: common,
    },
    divider: {
        ...upright,
        doc: 'An upright board that divides a room.',
        example: 'divider Post[2] clear 14in, rest, 14in',
        called: 'a divider',
        properties: distanced,
    },
    top: { ...flat, doc: 'A lying board that closes a case above.', example: 'top of WalnutPly', called: 'a top', properties: common },
    bottom: { ...flat, doc: 'A lying board that closes a case below.', example: 'bottom at 4in', called: 'a bottom', properties: common },
    shelf: {
        ...flat,
        doc: 'A lying board; its place is that of its upper face.',
        example: 'shelf Tier[3] above Floor clear 13in, 1, 1, 1',
        called: 'a shelf',
        properties: distanced,
    },
    back: {
        ...facing,
        doc: 'A board that closes a case to the wall.',
        example: 'back of WalnutPly4',
        called: 'a back',
        properties: common,
    },
    kick: {
        ...facing,
        doc: 'A board under the lowest shelf, set back from the front.',
        example: 'kick of Walnut at 2 1/2in behind Floor.front',
        called: 'a kick',
        properties: common,
    },
    rail: {
        ...facing,
        doc: 'A narrow board from side to side.',
        example: 'rail Top at top height 100mm',
        called: 'a rail',
        properties: distanced,
    },
    stretcher: {
        ...flat,
        doc: 'A narrow lying board that holds two sides together.',
        example: 'stretcher Front at front depth 4in',
        called: 'a stretcher',
        properties: distanced,
    },
    filler: {
        ...facing,
        doc: 'A narrow board between a case and a wall.',
        example: 'filler Left at left width 1in',
        called: 'a filler',
        properties: common,
    },
    panel: {
        ...facing,
        doc: 'A board that stands for itself.',
        example: 'panel False at front height 6in',
        called: 'a panel',
        properties: common,
    },
    layer: {
        lies: 'facing',
        edges: ['front', 'back', 'top', 'bottom', 'left', 'right'],
        faces: ['inner', 'outer'],
        doc: 'One of the boards that a laminated board is glued from.',
        example: 'layer Outer of ShopPly',
        called: 'a layer',
        properties: { thickness, grain, show, note },
    },
    stile: {
        ...facing,
        ...later,
        doc: 'An upright of a frame.',
        example: 'stile Left, Right width 65mm',
        called: 'a stile',
        properties: distanced,
    },
    door: {
        ...whole,
        ...later,
        design: true,
        doc: 'Closes an opening, and opens.',
        example: 'door Near in LeftBay hinge left',
        called: 'a door',
        properties: assembly,
    },
    drawer: {
        ...whole,
        ...later,
        design: true,
        doc: 'A box that is pulled out.',
        example: 'drawer Pull[2] of Dovetailed',
        called: 'a drawer',
        properties: assembly,
    },
    frame: {
        ...whole,
        ...later,
        design: true,
        doc: 'Stiles and rails.',
        example: 'frame Face of Oak at front',
        called: 'a frame',
        properties: assembly,
    },
    plinth: {
        ...whole,
        ...later,
        design: true,
        doc: 'What a case stands on.',
        example: 'plinth of Ladder height 150mm',
        called: 'a plinth',
        properties: assembly,
    },
    skirting: {
        ...facing,
        ...later,
        doc: 'A board along the floor, in front of the case.',
        example: 'skirting of Oak at 6mm before Face',
        called: 'a skirting',
        properties: common,
    },
    cornice: {
        ...facing,
        ...later,
        doc: 'A moulding along the top.',
        example: 'cornice of Crown at front',
        called: 'a cornice',
        properties: common,
    },
};

export interface SizeOfPart {
    readonly doc: string;
    readonly dimension: DimensionName;
}

/** What can be asked of a part: `Tier[1].clear`, `Left.length`. Where nothing else is said, sizes are the finished ones. */
export const sizesOfParts: Readonly<Record<string, SizeOfPart>> = {
    length: { doc: 'Along its length, finished.', dimension: 'length' },
    width: { doc: 'Across its length, finished; of a case or an opening from left to right.', dimension: 'length' },
    thickness: { doc: 'Its actual thickness.', dimension: 'length' },
    height: { doc: 'From its lowest to its highest point.', dimension: 'length' },
    depth: { doc: 'From its back to its front.', dimension: 'length' },
    clear: { doc: 'Clear height above a shelf, up to what is over it.', dimension: 'length' },
    area: { doc: 'Of its better face, finished.', dimension: 'area' },
    mass: { doc: 'What it weighs.', dimension: 'mass' },
};

/** `Tier[2].core.width`: sizes before the edges are on, and before trimming. */
export const stagesOfParts: Readonly<Record<string, string>> = {
    opening: 'The room it runs in, before joints add or take off.',
    finished: 'As it is delivered, with bands and nosings.',
    core: 'What is cut from the panel: finished less bands and nosings.',
    rough: 'Core plus what trimming, routing or milling takes off.',
};

/** Other places on a part that can be named: `Post[1].middle`. */
export const placesOnParts: Readonly<Record<string, string>> = {
    middle: 'Half way through it.',
};
