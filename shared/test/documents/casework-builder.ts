/** Casework said briefly: measures as they are written, parts and pieces with what a test needs to say of them. */
import type {
    Axis,
    Edge,
    EdgeStep,
    Joint,
    JointStep,
    Measure,
    Part,
    Piece,
    Size,
    Span,
    Thing,
    ThingValue,
} from '../../src/casework/index.js';
import { type Box, boxBetween } from '../../src/geometry/index.js';
import { type Quantity, quantity, Rational, type Real, readMeasure, real } from '../../src/quantity/index.js';

export const span: Span = { file: 'fern-alley.case', start: 0, end: 4 };

/** A measure as it is written: `23 5/8in`. */
export function measure(written: string): Measure {
    const reading = readMeasure(written);
    if (!reading.ok) throw new Error(reading.problem.message);
    return of(reading.quantity);
}

function of(value: Quantity): Measure {
    return { quantity: value, why: { kind: 'literal', about: [], inputs: [], span } };
}

/** A length in mm that came through a curve, so that it is approximate. */
export function approximate(millimetres: number): Measure {
    const one = measure('1mm').quantity;
    return of(quantity.scale(one, millimetres));
}

/** `size('37 1/8in', '12in', '0.72in')`; a measure that is not known is undefined. */
export function size(length: string | undefined, width: string | undefined, thickness: string | undefined): Size {
    const known = (written: string | undefined) => (written === undefined ? undefined : measure(written));
    return { length: known(length), width: known(width), thickness: known(thickness) };
}

// ---------------------------------------------------------------- things

type Properties = Readonly<Record<string, ThingValue>>;

export function thing(kind: string, name: string, family: string | undefined, properties: Properties): Thing {
    return {
        id: `shop.case#${name}`,
        kind,
        name,
        ...(family === undefined ? {} : { family }),
        properties: new Map(Object.entries(properties)),
        span,
        nameSpan: span,
    };
}

export const property = {
    measure: (written: string): ThingValue => ({ is: 'measure', measure: measure(written), span }),
    word: (word: string): ThingValue => ({ is: 'word', word, span }),
    thing: (name: string): ThingValue => ({ is: 'thing', id: `shop.case#${name}`, name, span }),
    sheets: (...sheets: readonly (readonly [string, string])[]): ThingValue => ({
        is: 'sizes',
        sizes: sheets.map((sheet) => sheet.map(measure)),
        span,
    }),
};

export const material = (name: string): string => `shop.case#${name}`;

// ---------------------------------------------------------------- parts

export type EdgeWords = Omit<EdgeStep, 'span' | 'amount' | 'width' | 'proud' | 'material'> & {
    readonly amount: string;
    readonly width?: string;
    readonly proud?: string;
    readonly of?: string;
};

export function edge(name: Edge['name'], ...steps: readonly EdgeWords[]): Edge {
    return {
        name,
        recipe: '',
        steps: steps.map(
            ({ does, amount, width, proud, of: made, for: forPart }): EdgeStep => ({
                does,
                amount: measure(amount),
                ...(width === undefined ? {} : { width: measure(width) }),
                ...(proud === undefined ? {} : { proud: measure(proud) }),
                ...(made === undefined ? {} : { material: material(made) }),
                ...(forPart === undefined ? {} : { for: forPart }),
                span,
            }),
        ),
        takesOff: undefined,
        span,
    };
}

export const noFaces = { left: undefined, right: undefined, back: undefined, front: undefined, bottom: undefined, top: undefined };

interface PartWords {
    readonly path: string;
    readonly kind: string;
    readonly quantity?: number;
    readonly hand?: 'left' | 'right';
    readonly size: Size;
    /** Length, width, thickness. */
    readonly along: readonly [Axis, Axis, Axis];
    readonly at: readonly [number, number, number];
    readonly edges?: readonly Edge[];
    readonly joints?: readonly number[];
    readonly frontCurve?: string;
}

/** A part whose core and rough sizes are its finished ones; its pieces say what is cut. */
export function part(words: PartWords): Part {
    const [length, width, thickness] = words.along;
    const name = words.path.slice(words.path.lastIndexOf('.') + 1);
    return {
        path: words.path,
        name,
        kind: words.kind,
        assembly: words.path.slice(0, words.path.lastIndexOf('.')),
        quantity: words.quantity ?? 2,
        ...(words.hand === undefined ? {} : { hand: words.hand }),
        sizes: { opening: words.size, finished: words.size, core: words.size, rough: words.size },
        directions: { length, width, thickness },
        faces: noFaces,
        box: boxOf(words),
        bounds: noFaces,
        layers: [],
        edges: words.edges ?? [],
        ...(words.frontCurve === undefined ? {} : { frontCurve: words.frontCurve }),
        past: [],
        joints: words.joints ?? [],
        pieces: [],
        openings: [],
        span,
        nameSpan: span,
        notes: [],
    };
}

function boxOf({ size: { length, width, thickness }, along, at }: PartWords): Box {
    const millimetres = (found: Measure | undefined) => (found ? real.toNumber(found.quantity.value) : 0);
    const lengths: Record<Axis, number> = { x: 0, y: 0, z: 0 };
    [length, width, thickness].forEach((found, index) => {
        lengths[along[index] ?? 'x'] = millimetres(found);
    });
    const [x, y, z] = at;
    return boxBetween({ x, y, z }, { x: x + lengths.x, y: y + lengths.y, z: z + lengths.z });
}

export interface PieceWords {
    readonly part: string;
    readonly role: Piece['role'];
    readonly name: string;
    readonly material: string | undefined;
    readonly quantity: number;
    readonly hand?: 'left' | 'right';
    readonly grain?: Piece['grain'];
    readonly finished: Size;
    readonly core?: Size;
    readonly rough?: Size;
    readonly notes?: Piece['notes'];
}

export function piece({ finished, core = finished, rough = core, ...words }: PieceWords): Piece {
    const grain = words.grain ?? 'length';
    const made = { ...words, grain, finished, core, rough, notes: words.notes ?? [], edges: [] };
    return { ...made, id: `${words.part} ${words.name}`, alike: alikeKey(made) };
}

function alikeKey(made: Omit<Piece, 'id' | 'alike'>): string {
    const exact = (found: Measure | undefined): string => (found ? exactText(found.quantity.value) : '?');
    const sizes = [made.finished, made.core, made.rough].map((each) => [each.length, each.width, each.thickness].map(exact).join(' '));
    return [made.material, made.role, made.hand, made.grain, ...sizes].join(' | ');
}

function exactText(value: Real): string {
    return value instanceof Rational ? value.toString() : `~${value}`;
}

export function joint(
    enters: string,
    receives: string,
    recipe: string,
    ...steps: readonly (Omit<JointStep, 'span' | 'amount' | 'spacing' | 'inset'> & {
        readonly amount?: string;
        readonly spacing?: string;
        readonly inset?: string;
    })[]
): Joint {
    return {
        enters,
        receives,
        recipe,
        steps: steps.map(({ amount, spacing, inset, ...rest }) => ({
            ...rest,
            ...(amount === undefined ? {} : { amount: measure(amount) }),
            ...(spacing === undefined ? {} : { spacing: measure(spacing) }),
            ...(inset === undefined ? {} : { inset: measure(inset) }),
            span,
        })),
        adds: undefined,
        onSite: false,
        touching: true,
        span,
    };
}
