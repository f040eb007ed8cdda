/** How much surface is finished, by finish: what a shop sands and coats. Square millimetres over all that is built. */
import type { Casework, Measure, Part, Path } from '../../casework/index.js';
import { joineryOf } from '../../joinery/index.js';
import { quantity, real, unitNamed } from '../../quantity/index.js';
import { shareUnderCurve } from '../../strength/index.js';
import { onlyBuilt } from '../only-built.js';

/** What is counted, for the foot of a list. */
export const countedSurface =
    'Finished surface: both faces and all edges of every part that says `finished`, less where it is joined to another; what merely touches, ' +
    'the face to the wall and the inside of slots are not told apart.';

export interface FinishedArea {
    /** Declaration id of the finish. */
    readonly finish: string;
    readonly area: number;
    readonly parts: number;
    /** Parts whose size is not known. */
    readonly unknown: readonly Path[];
}

/** In the order in which the parts come. */
export function finishedAreas(evaluated: Casework): readonly FinishedArea[] {
    const { parts, pieces } = onlyBuilt(evaluated);
    const covered = coveredArea(evaluated);
    const hanging = hangingArea(parts, pieces);
    const found = new Map<string, { area: number; parts: number; unknown: Path[] }>();
    for (const part of parts.values()) {
        if (part.finish === undefined || part.quantity === 0) continue;
        const known = found.get(part.finish) ?? { area: 0, parts: 0, unknown: [] };
        found.set(part.finish, known);
        const whole = surfaceOf(evaluated, part);
        if (whole === undefined) known.unknown.push(part.path);
        else known.area += Math.max(0, whole * part.quantity + (hanging.get(part.path) ?? 0) - (covered.get(part.path) ?? 0));
        known.parts += part.quantity;
    }
    return [...found].map(([finish, one]) => ({ finish, ...one }));
}

/** Two faces, as far as the part reaches under a curved front, and four edges. */
function surfaceOf(casework: Casework, part: Part): number | undefined {
    const { length, width, thickness } = part.sizes.finished;
    const share = shareUnderCurve(casework, part);
    if (!length || !width || !thickness || share === undefined) return undefined;
    const [long, wide, thick] = [length, width, thickness].map(millimetres) as [number, number, number];
    return 2 * long * wide * real.toNumber(share) + 2 * (long + wide) * thick;
}

/** Where parts are joined, the face in which they meet is finished on neither. By part, over all of its copies. */
function coveredArea(casework: Casework): ReadonlyMap<Path, number> {
    const covered = new Map<Path, number>();
    for (const { enters, receives, face, along, across } of joineryOf(casework).contacts.values()) {
        const [one, other] = [casework.parts.get(enters), casework.parts.get(receives)];
        if (!one || !other) continue;
        const area = (face.most[along] - face.least[along]) * (face.most[across] - face.least[across]);
        const times = Math.max(one.quantity, other.quantity);
        for (const path of [enters, receives]) covered.set(path, (covered.get(path) ?? 0) + area * times);
    }
    return covered;
}

/** A nosing that hangs below its board has a front and a back there. */
function hangingArea(parts: Casework['parts'], pieces: Casework['pieces']): ReadonlyMap<Path, number> {
    const hanging = new Map<Path, number>();
    for (const { role, part, finished, quantity: count } of pieces) {
        const thickness = parts.get(part)?.sizes.core.thickness;
        if (role !== 'nosing' || !finished.length || !finished.width || !thickness) continue;
        const over = Math.max(0, millimetres(finished.width) - millimetres(thickness));
        hanging.set(part, (hanging.get(part) ?? 0) + 2 * over * millimetres(finished.length) * count);
    }
    return hanging;
}

function millimetres({ quantity: of }: Measure): number {
    return real.toNumber(quantity.valueIn(of, unitNamed('mm')));
}
