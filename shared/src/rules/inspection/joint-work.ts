/** What joints cut into parts and put between them, each with the sentence that it comes from. Found once for each casework: many rules ask. */
import type { Casework, FaceName, Joint, JointStep, Part } from '../../casework/index.js';
import type { Box, Interval } from '../../geometry/index.js';
import { type Contact, type Fastener, type Feature, type JointJoinery, joineryOf, spanOf } from '../../joinery/index.js';
import type { Report } from '../rule.js';
import { isSound } from './sound-parts.js';

/** A joint whose two parts have their places, with all that is driven or glued in. */
export interface JointWork {
    readonly joint: Joint;
    readonly contact: Contact;
    readonly enters: Part;
    readonly receives: Part;
    readonly fasteners: readonly FastenerOfJoint[];
    readonly cuts: readonly CutOfJoint[];
}

export interface FastenerOfJoint {
    readonly fastener: Fastener;
    readonly step: JointStep;
}

export interface CutOfJoint {
    readonly feature: Feature;
    readonly step: JointStep;
    /** The part that is cut. */
    readonly part: Part;
}

const known = new WeakMap<Casework, readonly JointWork[]>();

/** The joints with a contact, in the order of the text. */
export function jointWorkIn(casework: Casework): readonly JointWork[] {
    let found = known.get(casework);
    if (!found) {
        found = findJointWork(casework);
        known.set(casework, found);
    }
    return found;
}

function findJointWork(casework: Casework): readonly JointWork[] {
    return [...joineryOf(casework).byJoint.values()].flatMap((made) => {
        let work = workOf.get(made);
        if (work === undefined) {
            work = workWith(made);
            workOf.set(made, work);
        }
        return work ?? [];
    });
}

/** Kept by what was made of the joint, which an edit that leaves the joint alone keeps too. */
const workOf = new WeakMap<JointJoinery, JointWork | null>();

function workWith({ joint, enters, receives, contact, fasteners, features }: JointJoinery): JointWork | null {
    if (!contact || !isSound(enters) || !isSound(receives)) return null;
    const stepOf = ({ cause }: Fastener | Feature) => (cause.is === 'joint' ? joint.steps[cause.step] : undefined);
    return {
        joint,
        contact,
        enters,
        receives,
        fasteners: fasteners.flatMap((fastener) => {
            const step = stepOf(fastener);
            return step ? { fastener, step } : [];
        }),
        cuts: features.flatMap((feature) => {
            const step = stepOf(feature);
            return step ? { feature, step, part: feature.part === enters.path ? enters : receives } : [];
        }),
    };
}

/** The joints in which a rule found nothing. */
export type QuietJoints = WeakSet<JointWork>;

/**
 * Looks at each joint, but for those in which nothing was found before: for rules that ask of a joint and its two parts alone, which
 * are other objects after an edit that changes them.
 */
export function inspectJoints(
    casework: Casework,
    quiet: QuietJoints,
    report: Report,
    look: (work: JointWork, report: Report) => void,
): void {
    for (const work of jointWorkIn(casework)) {
        if (quiet.has(work)) continue;
        let isQuiet = true;
        look(work, (found) => {
            isQuiet = false;
            report(found);
        });
        if (isQuiet) quiet.add(work);
    }
}

const sides: Readonly<Record<FaceName, { readonly axis: 'x' | 'y' | 'z'; readonly isHigh: boolean }>> = {
    left: { axis: 'x', isHigh: false },
    right: { axis: 'x', isHigh: true },
    back: { axis: 'y', isHigh: false },
    front: { axis: 'y', isHigh: true },
    bottom: { axis: 'z', isHigh: false },
    top: { axis: 'z', isHigh: true },
};

export function axisOf(side: FaceName): 'x' | 'y' | 'z' {
    return sides[side].axis;
}

/** Whether a side of a part is one of its two faces, and not an edge or an end. */
export function isFaceOf({ directions }: Part, side: FaceName): boolean {
    return axisOf(side) === directions.thickness;
}

/** How far a stretch of a part stays from one of its sides; below zero where it stands out of it. */
export function distanceFrom(side: FaceName, within: Box, stretch: Interval): number {
    const { axis, isHigh } = sides[side];
    const { from, to } = spanOf(within, axis);
    return isHigh ? to - stretch.to : stretch.from - from;
}

/** The two sides of a part at the ends of an axis, the one that is seen more first. */
export function sidesAlong(axis: 'x' | 'y' | 'z'): readonly [FaceName, FaceName] {
    return axis === 'x' ? ['left', 'right'] : axis === 'y' ? ['front', 'back'] : ['top', 'bottom'];
}

/** How thick a part is along its thickness, in mm, by its box. */
export function stockOf({ box, directions: { thickness } }: Part): number {
    const { from, to } = spanOf(box, thickness);
    return to - from;
}

const called: Readonly<Record<string, string>> = {
    looseTenon: 'loose tenon',
    panelScrew: 'panel screw',
    pocket: 'pocket screw',
    rest: 'shelf pin',
};

/** What a maker calls what a step puts in: `dowel`, `#20 biscuit`, `loose tenon`. */
export function calledOf({ does, size }: JointStep): string {
    return does === 'biscuit' && size !== undefined ? `${size} biscuit` : (called[does] ?? does);
}
