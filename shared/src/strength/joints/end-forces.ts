/** What a lying part that carries something presses on what holds its ends. Newtons and millimetres. */
import type { Casework, Part } from '../../casework/index.js';
import { type BeamLoad, bendingOf } from '../beam.js';
import { loadsOn, type PartLoad } from '../loads.js';
import { depthOf, edgeDepth, weightOf } from '../shelf-shape.js';
import { type Stretch, stretchesOf } from '../shelf-supports.js';

export type End = 'left' | 'right';

/** The most that one end presses, of all that the part carries, with its own weight. */
export interface EndForce {
    readonly end: End;
    readonly force: number;
    readonly load: PartLoad;
    /** Of the part, from that end to its next support. */
    readonly stretch: Stretch;
}

/** Both ends of a part; none where it carries nothing, or its length is not known. Statics of simple supports: what stands on the part besides is not in it. */
export function endForces(casework: Casework, part: Part): readonly EndForce[] {
    if (part.directions.thickness !== 'z' || part.directions.length !== 'x') return [];
    const [first, ...others] = loadsOn(casework, part);
    const stretches = stretchesOf(casework, part);
    const [left, right] = [stretches[0], stretches.at(-1)];
    if (!first || !left || !right) return [];
    const ends: readonly (readonly [End, Stretch])[] = [
        ['left', left],
        ['right', right],
    ];
    return ends.map(([end, stretch]) => {
        const forces = [first, ...others].map((load) => ({ end, stretch, load, force: reaction(casework, part, end, stretch, load) }));
        return forces.reduce((a, b) => (b.force > a.force ? b : a));
    });
}

function reaction(casework: Casework, part: Part, end: End, { from, to }: Stretch, load: PartLoad): number {
    const span = to - from;
    const core = depthOf(casework, part);
    const edges = edgeDepth(part);
    const own = weightOf(casework, part) / (part.box.most.x - part.box.least.x);
    const loads: readonly BeamLoad[] = [
        { is: 'spread', from: 0, to: span, perLength: () => own },
        load.way === 'at the middle'
            ? { is: 'point', at: span / 2, force: load.intensity }
            : {
                  is: 'spread',
                  from: 0,
                  to: span,
                  perLength: (x) => (load.way === 'along' ? load.intensity : load.intensity * (core(from + x) + edges)),
              },
    ];
    const { reactions } = bendingOf({ span, stiffnessAt: () => 1, ends: 'simple', loads });
    return reactions[end === 'left' ? 0 : 1];
}
