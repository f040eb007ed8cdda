/** Dados, grooves, rabbets, tongues and tenons: what is cut in the part that receives, and what is left on the end that enters. */
import type { Axis, JointStep } from '../casework/index.js';
import { type Box, boxOverlap, type Interval, tolerance } from '../geometry/index.js';
import { dimension, real } from '../quantity/index.js';
import { lengthOf, middleOf, sideAt, spanOf, thirdAxis, wayOf, withSpan } from './axes.js';
import type { Bench, StepMaker } from './bench.js';
import type { Cause, FeatureKind } from './feature.js';
import { millimetres } from './layout.js';

/** A dado, groove or rabbet as wide as the part that enters, or less wide: that part is then rabbeted in its `face`. */
export function socketMaker(does: 'dado' | 'groove' | 'rabbet'): StepMaker {
    return (bench, step, cause) => {
        const stock = spanOf(bench.enters.box, bench.enters.directions.thickness);
        const wide = millimetres(step.lengths?.wide);
        if (wide === undefined || wide >= lengthOf(stock) - tolerance.fit)
            return letIn(bench, cause, does, { tongue: widened(stock, wide) });
        if (!step.face || wayOf(step.face).axis !== bench.enters.directions.thickness) {
            return 'is less wide than the part is thick, and does not say by `face` on which side that is rabbeted';
        }
        const isLow = wayOf(step.face).way > 0;
        const tongue = isLow ? { from: stock.from, to: stock.from + wide } : { from: stock.to - wide, to: stock.to };
        return letIn(bench, cause, does, { tongue });
    };
}

function widened(stock: Interval, wide: number | undefined): Interval {
    return wide === undefined || wide <= lengthOf(stock) ? stock : around(middleOf(stock), wide);
}

/** A tongue in the middle of the edge, in a groove. */
export const makeTongue: StepMaker = (bench, step, cause) => centred(bench, step, cause, 'groove');

/** A tenon in the middle of the end, in a mortise. */
export const makeTenon: StepMaker = (bench, step, cause) => centred(bench, step, cause, 'mortise');

function centred(bench: Bench, step: JointStep, cause: Cause, does: FeatureKind): string | undefined {
    const stock = spanOf(bench.enters.box, bench.enters.directions.thickness);
    const said = step.lengths?.thick;
    const share = said?.quantity.dimension === dimension.none ? real.toNumber(said.quantity.value) : undefined;
    const thick = share === undefined ? millimetres(said) : share * lengthOf(stock);
    if (thick === undefined) return 'does not say how `thick` it is';
    if (thick > lengthOf(stock) + tolerance.fit) return 'is thicker than the part that it is cut on';
    const wide = millimetres(step.lengths?.wide);
    return letIn(bench, cause, does, { tongue: around(middleOf(stock), thick), ...(wide === undefined ? {} : { wide }) });
}

interface Tongue {
    /** Across the thickness of the entering part. */
    readonly tongue: Interval;
    /** How much of its width enters, in the middle; all of it where nothing is said. */
    readonly wide?: number;
}

function around(middle: number, length: number): Interval {
    return { from: middle - length / 2, to: middle + length / 2 };
}

function letIn(bench: Bench, cause: Cause, does: FeatureKind, { tongue, wide }: Tongue): string | undefined {
    const { enters, receives, contact } = bench;
    const { axis } = contact;
    const { thickness } = enters.directions;
    const common = boxOverlap(enters.box, receives.box);
    if (!common) return 'is cut where one part enters the other, and here they only touch';
    if (axis === thickness) return 'takes an end or an edge, and here the part lies with its face';
    const width = thirdAxis(axis, thickness);
    const kept = wide === undefined ? spanOf(enters.box, width) : around(middleOf(spanOf(enters.box, width)), wide);
    const within = (box: Box, span: Interval, way: Axis) => withSpan(box, way, clipped(span, spanOf(box, way)));
    const room = withSpan(common, thickness, spanOf(receives.box, thickness));
    const socket = within(within(room, tongue, thickness), kept, width);
    bench.cut({
        does,
        part: receives.path,
        side: contact.sideOfReceiving,
        cause,
        solid: { is: 'box', box: socket },
        depth: lengthOf(spanOf(common, axis)),
    });
    shoulders(bench, cause, withSpan(enters.box, axis, spanOf(common, axis)), tongue, kept);
    return undefined;
}

/** What is taken off the end that enters, on the four sides of its tongue, and the tongue itself where anything is. */
function shoulders({ enters, contact, cut }: Bench, cause: Cause, end: Box, tongue: Interval, kept: Interval): void {
    const { thickness } = enters.directions;
    const width = thirdAxis(contact.axis, thickness);
    const left = withSpan(withSpan(end, thickness, clipped(tongue, spanOf(end, thickness))), width, clipped(kept, spanOf(end, width)));
    const middle = withSpan(end, thickness, spanOf(left, thickness));
    const pieces = [...beside(end, thickness, spanOf(left, thickness)), ...beside(middle, width, spanOf(left, width))];
    for (const { box, axis, way } of pieces) {
        const depth = lengthOf(spanOf(box, axis));
        cut({ does: 'shoulder', part: enters.path, side: sideAt(axis, way), cause, solid: { is: 'box', box }, depth });
    }
    if (pieces.length === 0) return;
    const depth = lengthOf(spanOf(end, contact.axis));
    cut({ does: 'tongue', part: enters.path, side: contact.sideOfEntering, cause, solid: { is: 'box', box: left }, depth });
}

/** The parts of a box below and above a stretch of it. */
function beside(box: Box, axis: Axis, { from, to }: Interval): readonly { readonly box: Box; readonly axis: Axis; readonly way: -1 | 1 }[] {
    const whole = spanOf(box, axis);
    const low = { box: withSpan(box, axis, { from: whole.from, to: from }), axis, way: -1 } as const;
    const high = { box: withSpan(box, axis, { from: to, to: whole.to }), axis, way: 1 } as const;
    return [low, high].filter((one) => lengthOf(spanOf(one.box, axis)) > tolerance.fit);
}

function clipped({ from, to }: Interval, within: Interval): Interval {
    return { from: Math.max(from, within.from), to: Math.min(to, within.to) };
}
