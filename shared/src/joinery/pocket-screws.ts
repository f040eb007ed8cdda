/**
 * Screws in slanted holes. The hole slants by 15 degrees from the face, and its axis leaves the end of the board in the middle of the
 * thickness t: from (t/2)/tan 15 along the face, (t/2)/sin 15 along the axis. Plain geometry; the angle is that of the trade's jigs.
 */
import type { FaceName, Part } from '../casework/index.js';
import type { SpacePoint } from '../geometry/index.js';
import { along, displaced, middleOf, spanOf, stockOf, wayOf } from './axes.js';
import { atEachPlace, hole, inwards, type StepMaker } from './bench.js';
import { placed } from './driven.js';
import { millimetres } from './layout.js';
import { rodSizes } from './trade-sizes.js';

/** From the face of the board to the axis of the hole, in radians. */
const pocketAngle = (15 * Math.PI) / 180;
const inch = 25.4;

/** Common practice, no source: a stepped bit of 3/8 in with a tip of 9/64 in, whose step stops 1/2 in before the end of a board of 3/4 in. */
const usual = { bore: (3 / 8) * inch, tip: (9 / 64) * inch, seatShare: 2 / 3 } as const;

/** The faces in which pockets are bored where nothing is said: those that are seen least. */
function hiddenFace({ directions: { thickness }, hand }: Part): FaceName | undefined {
    return thickness === 'z' ? 'bottom' : thickness === 'y' ? 'back' : hand;
}

export const makePockets: StepMaker = (bench, step, cause) => {
    const { enters, contact } = bench;
    const { thickness } = enters.directions;
    if (thickness === contact.axis) return 'is bored beside the end or the edge of a board, and here it lies with its face';
    const face = step.face ?? hiddenFace(enters);
    if (!face || wayOf(face).axis !== thickness) return 'does not say in which `face` of the board it is bored';
    const stock = stockOf(enters);
    const seat = millimetres(step.lengths?.seat) ?? usual.seatShare * stock;
    const bore = millimetres(step.lengths?.bore) ?? usual.bore;
    const onAxis = stock / 2 / Math.sin(pocketAngle);
    if (seat >= onAxis) return 'has its seat outside the board: `seat` is measured from the end, along the screw';
    const direction = slanted(inwards(contact), along(thickness, -wayOf(face).way));
    const sizes = rodSizes(step, 'screw', bench.fasteners);
    return atEachPlace(bench, step, (on) => {
        const leaves: SpacePoint = { ...on, [thickness]: middleOf(spanOf(enters.box, thickness)) };
        const head = displaced(leaves, direction, -seat);
        const length = millimetres(step.amount);
        const { index } = placed(bench, { kind: 'pocket screw', step, cause, sizes, length, ray: { head, direction } });
        // begun so far outside that the whole oval is cut
        const outside = bore / 2 / Math.tan(pocketAngle);
        const start = displaced(leaves, direction, -onAxis - outside);
        const pocket = hole('pocket', enters, face, cause, { start, direction, diameter: bore, length: onAxis - seat + outside }, index);
        bench.cut({ ...pocket, depth: onAxis - seat });
        const tip = { start: head, direction, diameter: sizes.shank ?? usual.tip, length: seat };
        bench.cut(hole('clearance hole', enters, face, cause, tip, index));
    });
};

/** Towards the other part, and by the angle of the pocket off the face. */
function slanted(towards: SpacePoint, offFace: SpacePoint): SpacePoint {
    const [cosine, sine] = [Math.cos(pocketAngle), Math.sin(pocketAngle)];
    return displaced({ x: towards.x * cosine, y: towards.y * cosine, z: towards.z * cosine }, offFace, sine);
}
