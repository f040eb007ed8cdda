/** Casework made by hand from boards given by where their faces are, so that each check is tried at its limits without a text. */
import type {
    Assembly,
    Axis,
    Casework,
    Edge,
    EdgeName,
    EdgeStep,
    Joint,
    JointStep,
    Measure,
    Part,
    Piece,
    Span,
    Thing,
    ThingValue,
} from '../../src/casework/index.js';
import { type Box, boxAround, boxBetween } from '../../src/geometry/index.js';
import { type Quantity, quantity, readMeasure, real } from '../../src/quantity/index.js';
import { type Finding, type RunOptions, runRules } from '../../src/rules/index.js';

/** From and to, as written: `['0.72in', '28.56in']`. */
export type Stretch = readonly [string, string];

const directions: Readonly<Record<string, Part['directions']>> = {
    side: { length: 'z', width: 'y', thickness: 'x' },
    divider: { length: 'z', width: 'y', thickness: 'x' },
    shelf: { length: 'x', width: 'y', thickness: 'z' },
    top: { length: 'x', width: 'y', thickness: 'z' },
    back: { length: 'z', width: 'x', thickness: 'y' },
    kick: { length: 'x', width: 'z', thickness: 'y' },
};

const file = 'hand-made.case';
const noFace = { left: undefined, right: undefined, back: undefined, front: undefined, bottom: undefined, top: undefined };

/** A span of its own for each number. */
export function spanOf(place: number): Span {
    return { file, start: place * 10, end: place * 10 + 5 };
}

/** A measure as it is written: `23 5/8in`. */
export function measure(written: string): Measure {
    const reading = readMeasure(written);
    if (!reading.ok) throw new Error(reading.problem.message);
    return of(reading.quantity);
}

function of(value: Quantity): Measure {
    return { quantity: value, why: { kind: 'literal', about: [], inputs: [], span: spanOf(90) } };
}

export type StepWords = Omit<EdgeStep, 'span' | 'amount' | 'width'> & { readonly amount: string; readonly width?: string };

/** An edge written at a place of its own; its steps stand there too, or, with `recipeAt`, in an edging elsewhere. */
export function edgeOf(place: number, name: EdgeName, steps: readonly StepWords[], recipeAt?: number): Edge {
    const stepped = steps.map(({ amount, width, ...step }, index): EdgeStep => {
        const span = spanOf(recipeAt === undefined ? place : recipeAt + index);
        return { ...step, amount: measure(amount), ...(width === undefined ? {} : { width: measure(width) }), span };
    });
    return { name, recipe: '', steps: stepped, takesOff: undefined, span: spanOf(place) };
}

export function jointOf(
    place: number,
    enters: string,
    receives: string,
    steps: readonly (readonly [does: string, amount: string])[],
): Joint {
    return {
        enters: `Case.${enters}`,
        receives: `Case.${receives}`,
        recipe: '',
        steps: steps.map(([does, amount]): JointStep => ({ does, amount: measure(amount), span: spanOf(place) })),
        adds: undefined,
        onSite: false,
        touching: true,
        span: spanOf(place),
    };
}

/** A material or a species at a place of its own. */
export function thingOf(kind: string, name: string, family: string, properties: Readonly<Record<string, ThingValue>> = {}): Thing {
    return {
        id: `${file}#${name}`,
        kind,
        name,
        family,
        properties: new Map(Object.entries(properties)),
        span: spanOf(91),
        nameSpan: spanOf(91),
    };
}

export const property = {
    measure: (written: string): ThingValue => ({ is: 'measure', measure: measure(written), span: spanOf(92) }),
    word: (word: string): ThingValue => ({ is: 'word', word, span: spanOf(92) }),
    thing: (name: string): ThingValue => ({ is: 'thing', id: `${file}#${name}`, name, span: spanOf(92) }),
    sheets: (...sheets: readonly (readonly [string, string])[]): ThingValue => ({
        is: 'sizes',
        sizes: sheets.map((sheet) => sheet.map(measure)),
        span: spanOf(92),
    }),
};

export type BoardWords = Partial<Part>;

/** A board between three pairs of faces; `place` numbers its words in the text. */
export function board(place: number, kind: string, name: string, x: Stretch, y: Stretch, z: Stretch, more: BoardWords = {}): Part {
    const faces = { x: x.map(measure), y: y.map(measure), z: z.map(measure) };
    const way = directions[kind]!;
    const along = (axis: Axis): Measure => of(quantity.subtract(faces[axis][1]!.quantity, faces[axis][0]!.quantity)!);
    const size = { length: along(way.length), width: along(way.width), thickness: along(way.thickness) };
    const at = (end: 0 | 1) => ({ x: mm(faces.x[end]!), y: mm(faces.y[end]!), z: mm(faces.z[end]!) });
    const [left, right] = faces.x;
    const [back, front] = faces.y;
    const [bottom, top] = faces.z;
    return {
        path: `Case.${name}`,
        name,
        kind,
        assembly: 'Case',
        quantity: 1,
        sizes: { opening: size, finished: size, core: size, rough: size },
        directions: way,
        faces: { left, right, back, front, bottom, top },
        box: boxBetween(at(0), at(1)),
        bounds: noFace,
        layers: [],
        edges: [],
        past: [],
        joints: [],
        pieces: [],
        openings: [],
        span: spanOf(place),
        nameSpan: spanOf(place),
        notes: [],
        ...more,
    };
}

function mm(of: Measure): number {
    return real.toNumber(of.quantity.value);
}

export interface CaseworkWords extends Partial<Omit<Casework, 'parts' | 'things'>> {
    readonly parts: readonly Part[];
    readonly things?: readonly Thing[];
    /** The room of the case, from its corner; by default it holds all parts. */
    readonly room?: Box;
}

/** One case called `Case`. Joints are added to the parts that they name. */
export function caseworkOf({ parts, things = [], room, ...more }: CaseworkWords): Casework {
    const joints: readonly Joint[] = more.joints ?? [];
    const joined = parts.map((part) => ({ ...part, joints: joints.flatMap((joint, index) => (names(joint, part) ? [index] : [])) }));
    const extent = boxAround(parts.map(({ box }) => box)) ?? boxBetween({ x: 0, y: 0, z: 0 }, { x: 0, y: 0, z: 0 });
    const assembly: Assembly = {
        path: 'Case',
        name: 'Case',
        kind: 'case',
        count: 1,
        mirrored: false,
        width: measure('30in'),
        height: measure('36in'),
        depth: measure('11in'),
        room: room ?? extent,
        extent,
        overall: { width: undefined, height: undefined, depth: undefined },
        parts: parts.map(({ path }) => path),
        span: spanOf(0),
    };
    return {
        design: {
            file,
            files: [file],
            declarations: new Map(),
            defaults: [],
            requirements: [],
            allowances: [],
            cases: [],
            used: new Set(),
        },
        assemblies: [assembly],
        parts: new Map(joined.map((part) => [part.path, part])),
        pieces: [],
        openings: new Map(),
        curves: [],
        loads: [],
        requirements: [],
        allowances: [],
        things: new Map(things.map((thing) => [thing.id, thing])),
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
        ...more,
        joints,
    };
}

function names({ enters, receives }: Joint, { path }: Part): boolean {
    return enters === path || receives === path;
}

/** The findings of one rule, as `part: message`. */
export function findingsOf(code: string, casework: Casework, options?: RunOptions): readonly string[] {
    return shown(casework, options).flatMap((finding) => (finding.code === code ? [`${finding.part ?? '-'}: ${finding.message}`] : []));
}

/** All findings that are not allowed. */
export function shown(casework: Casework, options?: RunOptions): readonly Finding[] {
    return runRules(casework, options).filter(({ allowed }) => allowed === undefined);
}

/** A bookcase 30 x 36 x 11in of 0.72in board, with shelves given by their upper faces in inches. Nothing is joined. */
export function bookcase(shelves: readonly number[], more: { readonly thickness?: number } = {}): Part[] {
    const thickness = more.thickness ?? 0.72;
    const wide: Stretch = ['0.72in', '29.28in'];
    const deep: Stretch = ['0in', '11in'];
    return [
        board(1, 'side', 'Left', ['0in', '0.72in'], deep, ['0in', '36in'], { hand: 'left' }),
        board(2, 'side', 'Right', ['29.28in', '30in'], deep, ['0in', '36in'], { hand: 'right' }),
        ...shelves.map((upper, index) => board(3, 'shelf', `Tier[${index + 1}]`, wide, deep, [inch(upper - thickness), inch(upper)])),
    ];
}

/** To a hundred-thousandth, so that decimals of an inch stay what they were. */
function inch(value: number): string {
    return `${Number(value.toFixed(5))}in`;
}

export function pieceOf(part: Part, more: Partial<Piece> = {}): Piece {
    return {
        id: `${part.path} core`,
        part: part.path,
        role: 'core',
        name: part.name,
        material: undefined,
        quantity: 1,
        grain: 'length',
        finished: part.sizes.finished,
        core: part.sizes.core,
        rough: part.sizes.rough,
        edges: [],
        notes: [],
        alike: part.path,
        ...more,
    };
}
