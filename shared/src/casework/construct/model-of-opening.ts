/** An opening as the model shows it. */
import { boxBetween } from '../../geometry/index.js';
import type { Bound, FaceName, Opening } from '../model/casework.js';
import type { Measure } from '../model/measure.js';
import { axes, facesOfAxis } from './kinds.js';
import { minus, numberOf } from './measures.js';
import { anyone, type Room } from './room.js';

export function modelOfOpening(room: Room): Opening {
    const { mirror } = room.build;
    const bounds = {} as Record<FaceName, Bound | undefined>;
    const sizes: (Measure | undefined)[] = [];
    const ends: [number, number][] = [];
    for (const axis of axes) {
        const { lo, hi } = facesOfAxis[axis];
        const [a, b] = [room.face(lo, anyone), room.face(hi, anyone)];
        bounds[mirror.face(lo)] = a?.bound;
        bounds[mirror.face(hi)] = b?.bound;
        sizes.push(a && b && minus(b.measure, a.measure, { kind: 'between', about: [a.bound.name, b.bound.name], span: room.span }));
        ends.push([numberOf(a?.measure), numberOf(b?.measure)]);
    }
    const [x, y, z] = ends as [[number, number], [number, number], [number, number]];
    const isKnown = !ends.flat().some(Number.isNaN);
    return {
        path: room.path,
        name: room.name,
        box: isKnown ? mirror.box(boxBetween({ x: x[0], y: y[0], z: z[0] }, { x: x[1], y: y[1], z: z[1] })) : undefined,
        width: sizes[0],
        depth: sizes[1],
        height: sizes[2],
        bounds,
        span: room.span,
    };
}
