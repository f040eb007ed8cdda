/** Where solids meet: which of them claim the same place, and which joints gape. */
import type { Casework, Joint, Path } from '../casework/index.js';
import { type Box, boxesShare, tolerance } from '../geometry/index.js';
import type { Workbench } from './kernel.js';
import type { WorkedPart } from './part-solid.js';
import { extentOf } from './part-solid.js';

/** Two parts that are partly in one place. */
export interface Collision {
    /** In the order of the casework. */
    readonly parts: readonly [Path, Path];
    /** What both claim, in cubic millimetres, and where it lies. */
    readonly volume: number;
    readonly extent: Box;
}

/** Two parts that are joined and do not touch. */
export interface OpenJoint {
    /** Its place in `Casework.joints`. */
    readonly joint: number;
    /** Where they are nearest, in millimetres. */
    readonly gap: number;
}

/** Further apart than this, two parts are not at a joint that gapes: that they do not meet is told of elsewhere. */
const farthest = 25;

/** Pairs whose extents share room, each once, by a sweep along the width. */
function pairsNear(parts: readonly WorkedPart[], within: number): readonly (readonly [WorkedPart, WorkedPart])[] {
    const order = new Map(parts.map((part, index) => [part, index]));
    const waiting = [...parts].sort((a, b) => a.found.extent.least.x - b.found.extent.least.x);
    const pairs: [WorkedPart, WorkedPart][] = [];
    let open: WorkedPart[] = [];
    for (const part of waiting) {
        const { extent } = part.found;
        open = open.filter((other) => other.found.extent.most.x - extent.least.x > within);
        for (const other of open) {
            if (!boxesShare(other.found.extent, extent, within)) continue;
            pairs.push(order.get(other)! < order.get(part)! ? [other, part] : [part, other]);
        }
        open.push(part);
    }
    return pairs.sort(([a, b], [c, d]) => order.get(a)! - order.get(c)! || order.get(b)! - order.get(d)!);
}

/** Parts that share wood. What is thinner than the fit tolerance, as two curved faces on each other leave it, is touching. */
export function collisionsAmong(bench: Workbench, parts: readonly WorkedPart[]): readonly Collision[] {
    return pairsNear(parts, tolerance.fit).flatMap(([one, other]) => {
        const shared = bench.keep(bench.kernel.Manifold.intersection(one.solid, other.solid));
        const volume = shared.volume();
        // The volume of a plate is its thickness times half its surface.
        const thickness = volume > 0 ? (2 * volume) / shared.surfaceArea() : 0;
        if (thickness <= tolerance.fit) return [];
        return [{ parts: [one.part.path, other.part.path] as const, volume, extent: extentOf(shared) }];
    });
}

/** Joints between two of the parts that were meant to close and do not. */
export function openJointsAmong(casework: Casework, parts: ReadonlyMap<Path, WorkedPart>): readonly OpenJoint[] {
    return casework.joints.flatMap((joint, index) => {
        const [one, other] = [parts.get(joint.enters), parts.get(joint.receives)];
        if (!one || !other || !isMeantToClose(joint)) return [];
        const gap = one.solid.minGap(other.solid, farthest);
        return gap > tolerance.fit && gap < farthest ? [{ joint: index, gap }] : [];
    });
}

/** A joint of the site has what is scribed or shimmed between its parts; a gap that is said is meant. */
function isMeantToClose({ touching, steps, onSite }: Joint): boolean {
    return touching && !onSite && !steps.some(({ does }) => does === 'gap');
}
