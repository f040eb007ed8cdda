/** The sizes behind the trade's numbers. What the text or a library that it uses declares as a `fastener` goes before these. */
import type { Casework, JointStep, Thing } from '../casework/index.js';
import { real } from '../quantity/index.js';
import { millimetres } from './layout.js';

const inch = 25.4;

/** Of a screw, in millimetres; what is not known is left out. */
export interface RodSizes {
    readonly thing?: string;
    readonly shank?: number;
    readonly rolledRoot?: number;
    readonly cutRoot?: number;
    readonly headDiameter?: number;
}

/** The diameter of the shank of a wood screw by its number: 0.060 in and 0.013 in for each number (ASME B18.6.1), in millimetres. */
function woodScrewShank(number: number): number {
    return (0.06 + 0.013 * number) * inch;
}

/** Root of a rolled thread, in inches: ANSI/AWC NDS-2018, Appendix L, Table L3 (from memory but for #10). */
const rolledRoots: Readonly<Record<number, number>> = {
    6: 0.113,
    7: 0.122,
    8: 0.131,
    9: 0.142,
    10: 0.152,
    12: 0.171,
    14: 0.196,
    16: 0.209,
    18: 0.232,
    20: 0.255,
    24: 0.298,
};

/** Root of a cut thread, in inches: a trade table, about two thirds of the shank. */
const cutRoots: Readonly<Record<number, number>> = { 6: 0.094, 8: 0.112, 10: 0.13, 12: 0.148, 14: 0.165, 16: 0.184 };

/** A biscuit and its slot, in millimetres. */
export interface BiscuitSizes {
    readonly thing?: string;
    readonly length: number;
    readonly width: number;
    readonly thickness: number;
    /** Of the slot in each part. */
    readonly depth: number;
}

/** Trade sizes; all but the size of #20 from memory. Slots are cut 4 mm wide. */
const biscuits: Readonly<Record<string, BiscuitSizes>> = {
    '#0': { length: 47, width: 15, thickness: 4, depth: 8 },
    '#10': { length: 53, width: 19, thickness: 4, depth: 10 },
    '#20': { length: 56, width: 23, thickness: 4, depth: 12.3 },
};

/** The cutter of a biscuit joiner, 100 mm across: trade size. */
export const biscuitCutterRadius = 50;

/** How much wider than its bolt a hole is: ISO 273, medium series (from memory), by the size of the thread, in millimetres. */
const boltHoles: Readonly<Record<number, number>> = { 3: 3.4, 4: 4.5, 5: 5.5, 6: 6.6, 8: 9, 10: 11, 12: 13.5 };

/** The hole for a bolt of a thread; undefined for one that the table does not have. */
export function boltHole(thread: number): number | undefined {
    return boltHoles[Math.round(thread * 100) / 100];
}

/** Fasteners of a casework by family and size: `screw #8`. */
export type FastenersBySize = ReadonlyMap<string, Thing>;

export function fastenersBySize({ things }: Casework): FastenersBySize {
    const found = new Map<string, Thing>();
    for (const thing of things.values()) {
        const size = thing.kind === 'fastener' ? thing.properties.get('size') : undefined;
        if (size?.is === 'word') found.set(`${thing.family} ${size.word}`, thing);
    }
    return found;
}

function lengthIn(thing: Thing | undefined, name: string): number | undefined {
    const value = thing?.properties.get(name);
    return value?.is === 'measure' ? real.toNumber(value.measure.quantity.value) : undefined;
}

/** What is known of a screw, nail or bolt: by its step, by what is declared under its size, or by its number. */
export function rodSizes(step: JointStep, family: string, fasteners: FastenersBySize): RodSizes {
    const thing = step.size === undefined ? undefined : fasteners.get(`${family} ${step.size}`);
    const number = family === 'screw' ? numberOf(step.size, '#') : undefined;
    const thread = family === 'bolt' ? numberOf(step.size, 'M') : undefined;
    const inches = (value: number | undefined) => (value === undefined ? undefined : value * inch);
    const shank = millimetres(step.diameter) ?? lengthIn(thing, 'diameter') ?? (number === undefined ? thread : woodScrewShank(number));
    const rolledRoot = lengthIn(thing, 'rolledRoot') ?? inches(number === undefined ? undefined : rolledRoots[number]);
    const cutRoot = lengthIn(thing, 'cutRoot') ?? inches(number === undefined ? undefined : cutRoots[number]);
    const headDiameter = millimetres(step.lengths?.head) ?? lengthIn(thing, 'head');
    return {
        ...(thing ? { thing: thing.id } : {}),
        ...(shank === undefined ? {} : { shank }),
        ...(rolledRoot === undefined ? {} : { rolledRoot }),
        ...(cutRoot === undefined ? {} : { cutRoot }),
        ...(headDiameter === undefined ? {} : { headDiameter }),
    };
}

/** The number of `#8` or `M6`. */
function numberOf(size: string | undefined, mark: string): number | undefined {
    const number = size?.startsWith(mark) ? Number(size.slice(mark.length)) : Number.NaN;
    return Number.isFinite(number) ? number : undefined;
}

/** A biscuit by its number; undefined for one that nothing declares and the trade does not have. */
export function biscuitSizes(size: string, fasteners: FastenersBySize): BiscuitSizes | undefined {
    const thing = fasteners.get(`biscuit ${size}`);
    const [length, width, thickness, depth] = ['length', 'width', 'thickness', 'depth'].map((name) => lengthIn(thing, name));
    if (thing && length !== undefined && width !== undefined && thickness !== undefined && depth !== undefined) {
        return { thing: thing.id, length, width, thickness, depth };
    }
    return biscuits[size];
}
