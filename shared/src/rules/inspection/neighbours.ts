/** Which parts meet: touch or overlap within the fit tolerance. Found by a sweep, once for each casework. */
import type { Casework, Joint, Part, Path } from '../../casework/index.js';
import { type Box, type SpaceAxis, tolerance } from '../../geometry/index.js';
import { soundPartsByCase } from './sound-parts.js';

/** Two parts that meet; `earlier` was built before `later`. */
export interface Neighbours {
    readonly earlier: Part;
    readonly later: Part;
}

const known = new WeakMap<Casework, readonly Neighbours[]>();

/** All pairs of sound parts that meet, in the order of building of the later, then of the earlier one. */
export function neighboursIn(casework: Casework): readonly Neighbours[] {
    let found = known.get(casework);
    if (!found) {
        found = soundPartsByCase(casework).flatMap(meetings);
        known.set(casework, found);
    }
    return found;
}

function meetings(parts: readonly Part[]): Neighbours[] {
    const pairs: [number, number][] = [];
    const axis = sparsestAxis(parts.map(({ box }) => box));
    const order = parts.map((_, index) => index).sort((a, b) => parts[a]!.box.least[axis] - parts[b]!.box.least[axis] || a - b);
    let open: number[] = [];
    for (const index of order) {
        const { box } = parts[index]!;
        open = open.filter((other) => parts[other]!.box.most[axis] >= box.least[axis] - tolerance.fit);
        for (const other of open) {
            if (meet(box, parts[other]!.box)) pairs.push(index < other ? [index, other] : [other, index]);
        }
        open.push(index);
    }
    pairs.sort((a, b) => a[1] - b[1] || a[0] - b[0]);
    return pairs.map(([earlier, later]) => ({ earlier: parts[earlier]!, later: parts[later]! }));
}

/**
 * The axis along which the fewest boxes lie side by side: a tall stack of shelves is swept upwards, a long wall of cases sideways.
 * Counts the pairs that share a stretch of each axis from the sorted ends, without listing them.
 */
function sparsestAxis(boxes: readonly Box[]): SpaceAxis {
    const axes: readonly SpaceAxis[] = ['x', 'y', 'z'];
    const counts = axes.map((axis) => {
        const starts = boxes.map(({ least }) => least[axis]).sort((a, b) => a - b);
        const ends = boxes.map(({ most }) => most[axis]).sort((a, b) => a - b);
        let ended = 0;
        return starts.reduce((pairs, start, begun) => {
            while (ended < begun && ends[ended]! < start - tolerance.fit) ended++;
            return pairs + begun - ended;
        }, 0);
    });
    return axes[counts.indexOf(Math.min(...counts))]!;
}

function meet(a: Box, b: Box): boolean {
    const near = (axis: SpaceAxis) => Math.min(a.most[axis], b.most[axis]) - Math.max(a.least[axis], b.least[axis]) >= -tolerance.fit;
    return near('x') && near('y') && near('z');
}

/** The joints between two parts, whichever of them enters. */
export function jointsBetween(casework: Casework, a: Part, b: Part): Joint[] {
    const fewer = a.joints.length < b.joints.length ? a : b;
    return fewer.joints
        .map((index) => casework.joints[index]!)
        .filter(({ enters, receives }) => (enters === a.path && receives === b.path) || (enters === b.path && receives === a.path));
}

/** Whether two parts are joined: one to the other, or a case that holds the one to the other or to a case that holds it. */
export function joinedIn(casework: Casework): (a: Part, b: Part) => boolean {
    const inside = new Map(casework.assemblies.map((assembly) => [assembly.path, assembly.inside]));
    const wholes = new Set<string>();
    for (const { enters, receives } of casework.joints) {
        if (inside.has(enters) || inside.has(receives)) wholes.add(`${enters} ${receives}`).add(`${receives} ${enters}`);
    }
    const holders = (part: Part): readonly Path[] => {
        const paths = [part.path];
        for (let next: Path | undefined = part.assembly; next !== undefined; next = inside.get(next)) paths.push(next);
        return paths;
    };
    return (a, b) => {
        if (jointsBetween(casework, a, b).length > 0) return true;
        return wholes.size > 0 && holders(a).some((one) => holders(b).some((other) => wholes.has(`${one} ${other}`)));
    };
}
