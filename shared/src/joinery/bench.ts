/** What the steps of one joint are worked out with, and where they put what they make. */
import type { FaceName, Joint, JointStep, Part, Thing } from '../casework/index.js';
import type { SpacePoint } from '../geometry/index.js';
import { along, type axes, middleOf, spanOf, wayOf } from './axes.js';
import type { Cause, Contact, Fastener, Feature } from './feature.js';
import { layoutOf } from './layout.js';
import type { FastenersBySize } from './trade-sizes.js';

export interface Bench {
    readonly joint: Joint;
    readonly enters: Part;
    readonly receives: Part;
    readonly contact: Contact;
    readonly fasteners: FastenersBySize;
    readonly things: ReadonlyMap<string, Thing>;
    cut(feature: Feature): void;
    /** Its place in `Joinery.fasteners`. */
    place(fastener: Fastener): number;
}

/** Works out one step; gives why it has no place, as what the step does, where it has none. */
export type StepMaker = (bench: Bench, step: JointStep, cause: Cause) => string | undefined;

/** The unit vector from the entering part into the receiving one. */
export function inwards({ sideOfEntering }: Contact): SpacePoint {
    const { axis, way } = wayOf(sideOfEntering);
    return along(axis, way);
}

/** A place on the face of a joint, in the middle across it. */
function onFace({ axis, at, along: way, across, face }: Contact, place: number): SpacePoint {
    const point: Record<(typeof axes)[number], number> = { x: 0, y: 0, z: 0 };
    point[axis] = at;
    point[way] = place;
    point[across] = middleOf(spanOf(face, across));
    return point;
}

/** Does something at each place where the fasteners of a step stand; gives why there is none, otherwise. */
export function atEachPlace({ contact }: Bench, step: JointStep, make: (on: SpacePoint) => void): string | undefined {
    const layout = layoutOf(step, contact.reach);
    if (!layout.ok) return layout.because;
    for (const place of layout.places) make(onFace(contact, place));
    return undefined;
}

interface Bore {
    readonly start: SpacePoint;
    readonly direction: SpacePoint;
    readonly diameter: number;
    readonly endDiameter?: number;
    readonly length: number;
}

/** A hole into one of the parts, square to its surface or along a slanted axis. */
export function hole(does: Feature['does'], part: Part, side: FaceName, cause: Cause, bore: Bore, fastener?: number): Feature {
    return {
        does,
        part: part.path,
        side,
        cause,
        solid: { is: 'cylinder', ...bore },
        depth: bore.length,
        ...(fastener === undefined ? {} : { fastener }),
    };
}
