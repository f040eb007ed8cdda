/** Where the two parts of a joint meet: by which sides, how deep, and along which stretch there is wood in both. */
import type { Axis, Joint, Part } from '../casework/index.js';
import { type Box, boxContact, boxesShare, type Interval, tolerance } from '../geometry/index.js';
import { real } from '../quantity/index.js';
import { axes, lengthOf, middleOf, oppositeSide, sideAt, spanOf, thirdAxis, withSpan } from './axes.js';
import type { Contact } from './feature.js';
import { type FrontLines, frontWithin } from './front-limit.js';

/** Undefined where the two do not meet with a face. */
export function contactOf(index: number, joint: Joint, enters: Part, receives: Part, lines: FrontLines): Contact | undefined {
    const [a, b] = [enters.box, receives.box];
    const near = tolerance.fit + Math.max(0, -addedBy(joint));
    if (!boxesShare(a, b, -near)) return undefined;
    const axis = boxContact(a, b, near) ?? (boxesShare(a, b) ? axisOfEntry(joint, enters, receives) : undefined);
    if (!axis) return undefined;
    const way = middleOf(spanOf(a, axis)) < middleOf(spanOf(b, axis)) ? 1 : -1;
    const sideOfEntering = sideAt(axis, way);
    const at = way > 0 ? a.most[axis] : a.least[axis];
    const [one, other] = axes.filter((each) => each !== axis) as [Axis, Axis];
    const face = withSpan(withSpan(withSpan(a, axis, { from: at, to: at }), one, shared(a, b, one)), other, shared(a, b, other));
    const longest = lengthOf(spanOf(face, other)) > lengthOf(spanOf(face, one)) + tolerance.fit ? other : one;
    const reached = withWood(face, enters, receives, lines);
    return {
        joint: index,
        enters: enters.path,
        receives: receives.path,
        axis,
        sideOfEntering,
        sideOfReceiving: oppositeSide(sideOfEntering),
        depth: Math.max(0, lengthOf(shared(a, b, axis))),
        at,
        face: reached,
        along: longest,
        across: thirdAxis(axis, longest),
        reach: spanOf(reached, longest),
    };
}

/** What a joint adds to the end of the entering part; below zero where it keeps a gap. */
function addedBy({ adds }: Joint): number {
    return adds ? real.toNumber(adds.quantity.value) : 0;
}

function shared(a: Box, b: Box, axis: Axis): Interval {
    return { from: Math.max(a.least[axis], b.least[axis]), to: Math.min(a.most[axis], b.most[axis]) };
}

/**
 * Which way one part goes into the other. What is made longer by a joint goes in with that end; what lies in a cut of the other's edge lies
 * in it with its face.
 */
function axisOfEntry(joint: Joint, enters: Part, receives: Part): Axis {
    const depth = addedBy(joint);
    if (!(depth > tolerance.fit)) return enters.directions.thickness;
    const ends = axes.filter((axis) => axis !== enters.directions.thickness);
    const miss = (axis: Axis) => Math.abs(lengthOf(shared(enters.box, receives.box, axis)) - depth);
    return ends.reduce((best, axis) => (miss(axis) < miss(best) - tolerance.fit ? axis : best));
}

/** The face as far forward as both parts have wood over the whole of it. */
function withWood(face: Box, enters: Part, receives: Part, lines: FrontLines): Box {
    const { from, to } = spanOf(face, 'y');
    if (to - from <= tolerance.fit) return face;
    const limit = Math.min(frontWithin(lines, enters, face), frontWithin(lines, receives, face));
    return limit < to - tolerance.geometry ? withSpan(face, 'y', { from, to: Math.max(from, limit) }) : face;
}
