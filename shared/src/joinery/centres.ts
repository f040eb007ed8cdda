/** The point by which a slot or a hole is marked out. */
import type { SpacePoint } from '../geometry/index.js';
import { middleOf, spanOf } from './axes.js';
import type { Feature } from './feature.js';

/**
 * The middle of a hole or slot on the surface, in millimetres; undefined for what runs along a whole joint or edge. Of a slanted hole only
 * the place along the joint is that of the mark.
 */
export function centreOf({ solid, does }: Feature): SpacePoint | undefined {
    if (solid.is === 'cylinder') return solid.start;
    if (solid.is === 'segment') return solid.middle;
    if (solid.is !== 'box' || does !== 'mortise') return undefined;
    const { box } = solid;
    return { x: middleOf(spanOf(box, 'x')), y: middleOf(spanOf(box, 'y')), z: middleOf(spanOf(box, 'z')) };
}
