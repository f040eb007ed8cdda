/** What stands under a shelf: boards that share its span, and boards on edge along it that bend with it. */
import type { Casework, Part } from '../casework/index.js';
import { tolerance } from '../geometry/index.js';
import { real } from '../quantity/index.js';
import { grouped } from './grouped.js';

/** A stretch of a shelf between two supports, in millimetres from the left of the case. */
export interface Stretch {
    readonly from: number;
    readonly to: number;
}

/** A board on edge along the whole span, right under the shelf: a kick, a rail, an apron. */
export interface Bearer {
    readonly part: Part;
    /** Glued, it is one section with the shelf; otherwise the two bend together and slide past one another. */
    readonly glued: boolean;
}

const lengthOf = ({ sizes }: Part, stage: 'opening' | 'finished'): number => {
    const length = sizes[stage].length;
    return length ? real.toNumber(length.quantity.value) : Number.NaN;
};

/** Between what holds it at its ends: without what goes into a dado there. */
function clearStretch(part: Part): Stretch {
    const { least, most } = part.box;
    const span = lengthOf(part, 'opening');
    const from = (least.x + most.x - span) / 2;
    return { from, to: from + span };
}

/**
 * The stretches of a shelf between its supports, from the left: upright boards right under it carry it as its ends are carried. None where
 * its length is not known.
 */
export function stretchesOf(casework: Casework, shelf: Part): readonly Stretch[] {
    const { from, to } = clearStretch(shelf);
    if (!(to > from)) return [];
    const ordered = postsUnder(casework, shelf, { from, to }).map(({ box }) => box);
    const stretches: Stretch[] = [];
    let at = from;
    for (const { stop, next } of [...ordered.map(({ least, most }) => ({ stop: least.x, next: most.x })), { stop: to, next: to }]) {
        stretches.push({ from: at, to: stop });
        at = next;
    }
    return stretches;
}

/** Upright boards that stand under a shelf between its ends, from the left. */
function postsUnder(casework: Casework, shelf: Part, { from, to }: Stretch): readonly Part[] {
    const depth = shelf.box.most.y - shelf.box.least.y;
    const posts = partsUnder(casework, shelf).filter(({ directions, box }) => {
        const shared = Math.min(box.most.y, shelf.box.most.y) - Math.max(box.least.y, shelf.box.least.y);
        return directions.thickness === 'x' && box.least.x > from && box.most.x < to && shared >= depth / 2;
    });
    return posts.sort((a, b) => a.box.least.x - b.box.least.x);
}

/** The place of the longest stretch among others; -1 where there is none. */
export function longestOf(stretches: readonly Stretch[]): number {
    const lengths = stretches.map(({ from, to }) => to - from);
    return lengths.indexOf(Math.max(...lengths));
}

/** Whether a shelf is joined to every post under it: only then it is held down there, and runs on over them as one beam. */
export function runsOn(casework: Casework, shelf: Part): boolean {
    const posts = postsUnder(casework, shelf, clearStretch(shelf));
    const joined = new Set(
        shelf.joints.flatMap((index) => {
            const joint = casework.joints[index];
            const isHeld = joint?.touching && !joint.steps.some(({ does }) => does === 'loose' || does === 'rest');
            return isHeld ? [joint.enters, joint.receives] : [];
        }),
    );
    return posts.length > 0 && posts.every(({ path }) => joined.has(path));
}

/** The boards on edge that run under the whole span of a shelf, joined to it. */
export function bearersOf(casework: Casework, shelf: Part): readonly Bearer[] {
    const { from, to } = clearStretch(shelf);
    return partsUnder(casework, shelf).flatMap((part): readonly Bearer[] => {
        const { directions, box } = part;
        const runsAlong = directions.thickness === 'y' && directions.length === 'x';
        const whole = box.least.x <= from + tolerance.fit && box.most.x >= to - tolerance.fit;
        const under = box.least.y >= shelf.box.least.y - tolerance.fit && box.most.y <= shelf.box.most.y + tolerance.fit;
        const joints = shelf.joints.map((index) => casework.joints[index]).filter((joint) => joint?.touching);
        const joint = joints.find((one) => one?.enters === part.path || one?.receives === part.path);
        if (!runsAlong || !whole || !under || !joint) return [];
        return [{ part, glued: joint.steps.some(({ does }) => does === 'glue') }];
    });
}

const partsByTop = new WeakMap<Casework['parts'], ReadonlyMap<string, readonly Part[]>>();

/** The parts of the same case whose tops lie at the underside of a shelf. */
function partsUnder({ parts }: Casework, shelf: Part): readonly Part[] {
    let byTop = partsByTop.get(parts);
    if (!byTop) {
        byTop = grouped(parts.values(), (part) => [levelOf(part, part.box.most.z)]);
        partsByTop.set(parts, byTop);
    }
    const bottom = shelf.box.least.z;
    // a level may be cut by the rounding: those beside it are looked at too
    const near = [bottom - tolerance.fit, bottom, bottom + tolerance.fit].map((z) => levelOf(shelf, z));
    return [...new Set(near)]
        .flatMap((level) => byTop.get(level) ?? [])
        .filter(({ box }) => Math.abs(box.most.z - bottom) <= tolerance.fit);
}

/** Its outermost case, from whose corner boxes are measured, and a height to a tenth of a millimetre. */
function levelOf({ path }: Part, z: number): string {
    return `${path.split('.', 1)[0]} ${Math.round(z * 10)}`;
}
