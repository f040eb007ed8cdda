import { tolerance } from '../tolerance.js';
import { add, type Point, point, scale } from '../vector.js';
import { arcCurveOfRadius } from './arc.js';
import type { Curve, Interval } from './curve.js';
import { isJoined, joined } from './joined.js';
import { lineCurve } from './line.js';

/**
 * The curve, going on past its ends as far as a range of abscissas reaches: a circle on its circle, any other line straight on from its
 * ends, at which a strip that is free there has no curvature. As far as it goes where a circle turns upright, or an end stands upright.
 */
export function continuedCurve(curve: Curve, over: Interval): Curve {
    const from = Math.min(over.from, curve.span.from);
    const to = Math.max(over.to, curve.span.to);
    if (isJoined(curve)) {
        const { pieces } = curve;
        const last = pieces.length - 1;
        const ends = pieces.map((piece, index) =>
            continuedCurve(piece, { from: index === 0 ? from : piece.span.from, to: index === last ? to : piece.span.to }),
        );
        const outcome = joined(ends);
        return outcome.ok ? outcome.curve : curve;
    }
    return (curve.kind === 'arc' ? onItsCircle(curve, from, to) : undefined) ?? straightOn(curve, from, to);
}

function onItsCircle(curve: Curve, from: number, to: number): Curve | undefined {
    const curvature = curve.curvatureAt(0);
    if (Math.abs(curvature) <= tolerance.curvature) return undefined;
    const tangent = curve.tangentAt(0);
    const centre = add(curve.start, scale({ x: -tangent.y, y: tangent.x }, 1 / curvature));
    const radius = 1 / Math.abs(curvature);
    const at = (x: number): Point | undefined => {
        const across = x - centre.x;
        if (Math.abs(across) >= radius) return undefined;
        return point(x, centre.y - Math.sign(curvature) * Math.sqrt(radius ** 2 - across ** 2));
    };
    const [start, end] = [from < curve.span.from ? at(from) : curve.start, to > curve.span.to ? at(to) : curve.end];
    const outcome = start && end && arcCurveOfRadius(start, end, -Math.sign(curvature) * radius);
    return outcome?.ok ? outcome.curve : undefined;
}

function straightOn(curve: Curve, from: number, to: number): Curve {
    const on = (end: Point, angle: number, x: number): readonly Curve[] => {
        if (Math.abs(x - end.x) <= tolerance.geometry || Math.PI / 2 - Math.abs(angle) <= tolerance.angle) return [];
        const outcome = lineCurve(end, add(end, scale(point(1, Math.tan(angle)), x - end.x)));
        return outcome.ok ? [outcome.curve] : [];
    };
    const before = on(curve.start, curve.angleAt(0), from);
    const after = on(curve.end, curve.angleAt(curve.length), to);
    if (before.length + after.length === 0) return curve;
    const outcome = joined([...before, curve, ...after]);
    return outcome.ok ? outcome.curve : curve;
}
