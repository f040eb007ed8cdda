/** Words of the language that are neither kinds nor properties: functions, types, and what places and lists know. */
import type { DimensionName } from './row.js';

export interface BuiltInFunction {
    readonly doc: string;
    /** How it is called. */
    readonly signature: string;
    readonly example: string;
    readonly least: number;
    readonly most: number;
}

export const functions: Readonly<Record<string, BuiltInFunction>> = {
    min: {
        doc: 'The smallest of its values.',
        signature: 'min(a, b, ...)',
        example: 'min(width, 36in)',
        least: 1,
        most: Number.POSITIVE_INFINITY,
    },
    max: {
        doc: 'The greatest of its values.',
        signature: 'max(a, b, ...)',
        example: 'max(Left.width, Right.width)',
        least: 1,
        most: Number.POSITIVE_INFINITY,
    },
    round: {
        doc: 'To the nearest whole number, or to the nearest multiple of a step.',
        signature: 'round(a, step)',
        example: 'round(width, 1/16in)',
        least: 1,
        most: 2,
    },
    ceil: {
        doc: 'Up to a whole number, or to a multiple of a step.',
        signature: 'ceil(a, step)',
        example: 'ceil(width / 32in)',
        least: 1,
        most: 2,
    },
    floor: {
        doc: 'Down to a whole number, or to a multiple of a step.',
        signature: 'floor(a, step)',
        example: 'floor(height / 14in)',
        least: 1,
        most: 2,
    },
    sqrt: {
        doc: 'The square root; of an area it is a length.',
        signature: 'sqrt(a)',
        example: 'sqrt(width * width + depth * depth)',
        least: 1,
        most: 1,
    },
    sin: { doc: 'The sine of an angle.', signature: 'sin(angle)', example: 'sin(15deg)', least: 1, most: 1 },
    cos: { doc: 'The cosine of an angle.', signature: 'cos(angle)', example: 'cos(15deg)', least: 1, most: 1 },
    tan: { doc: 'The tangent of an angle.', signature: 'tan(angle)', example: 'tan(15deg)', least: 1, most: 1 },
};

/** What a curve can be asked: `Sweep.at(29in)`. */
export const functionsOfCurves: Readonly<Record<string, BuiltInFunction>> = {
    at: {
        doc: 'The depth of the curve at a height, or at a place along its width.',
        signature: 'at(height)',
        example: 'Sweep.at(29in)',
        least: 1,
        most: 1,
    },
};

export interface TypeOfValue {
    readonly doc: string;
    /** For measures. */
    readonly dimension?: DimensionName;
    /** For things: the kinds it takes. */
    readonly kinds?: readonly string[];
}

/** What may stand after the `:` of a parameter or a `let`. */
export const types: Readonly<Record<string, TypeOfValue>> = {
    Length: { doc: 'A length, such as 40in.', dimension: 'length' },
    Angle: { doc: 'An angle, such as 15deg.', dimension: 'angle' },
    Area: { doc: 'An area, such as 3 ft2.', dimension: 'area' },
    Volume: { doc: 'A volume, such as 12 bdft.', dimension: 'volume' },
    Mass: { doc: 'A mass, such as 2.5lb.', dimension: 'mass' },
    Force: { doc: 'A force, such as 30 lbf.', dimension: 'force' },
    Pressure: { doc: 'A pressure, such as 1000 psi.', dimension: 'pressure' },
    Density: { doc: 'A density, such as 40 lb/ft3.', dimension: 'density' },
    Duration: { doc: 'A time, such as 2 hours.', dimension: 'time' },
    Count: { doc: 'A whole number.', dimension: 'none' },
    Ratio: { doc: 'A plain number or a percentage.', dimension: 'none' },
    Money: { doc: 'An amount of money, such as 12 USD.' },
    Material: { doc: 'A material.', kinds: ['material'] },
    Species: { doc: 'A species.', kinds: ['species'] },
    Joint: { doc: 'A joint.', kinds: ['joint'] },
    Edging: { doc: 'An edging.', kinds: ['edging'] },
    Finish: { doc: 'A finish.', kinds: ['finish'] },
    Curve: { doc: 'A curve.', kinds: ['curve'] },
    Goods: { doc: 'Goods.', kinds: ['goods'] },
    Design: {
        doc: 'A case, or another thing with parts, that is declared by itself.',
        kinds: ['case', 'drawer', 'door', 'frame', 'plinth'],
    },
    Text: { doc: 'A text in quotes.' },
    Truth: { doc: 'yes or no.' },
    Choice: { doc: 'One of a few words.' },
};

/** The faces of the room that a part is in. */
export const roomFaces: Readonly<Record<string, string>> = {
    left: 'The left end of the room.',
    right: 'The right end of the room.',
    back: 'The back of the room, to the wall.',
    front: 'The front of the room.',
    bottom: 'The bottom of the room.',
    top: 'The top of the room.',
};

/** Other things that a place may name without anyone declaring them. */
export const placeWords: Readonly<Record<string, string>> = {
    middle: 'Half way between the ends of the room.',
    case: 'The case itself, at its full size.',
    floor: 'The floor that the case stands on.',
    wall: 'The wall behind the case, or beside it.',
    ceiling: 'The ceiling over the case.',
};

/** What room can be kept for besides parts: `leave left 25mm for scribe`. */
export const reserveWords: Readonly<Record<string, string>> = {
    scribe: 'Wood that is cut to the wall on site.',
};

/** How a front edge meets a curved line: `edge front bevelled`. */
export const frontForms: Readonly<Record<'square' | 'bevelled', string>> = {
    square: 'Square to its faces, at the shallower of the two.',
    bevelled: 'At a bevel, so that both faces reach the line.',
};

/** What a list of shares may say besides lengths and numbers. */
export const shareWords: Readonly<Record<string, string>> = {
    equal: 'All openings alike.',
    rest: 'What the others leave.',
};

/** Words that say where on a part a step of a joint is done. */
export const endWords: Readonly<Record<string, string>> = {
    elsewhere: 'Everywhere that is not named.',
    ends: 'Both ends.',
    sides: 'Both sides.',
};

/** Ways from a thing to a place. */
export const relations: Readonly<Record<string, string>> = {
    above: 'Up from it.',
    below: 'Down from it.',
    before: 'Towards the room from it.',
    behind: 'Towards the wall from it.',
    'left of': 'To the left of it.',
    'right of': 'To the right of it.',
    past: 'Out over it, so that it stands past.',
    'short of': 'Back from it, so that it stops short.',
};
