import { tolerance } from '../tolerance.js';
import { distance } from '../vector.js';
import { CompositeCurve, type CurveJoint, jointBetween } from './composite.js';
import { type Curve, type CurveOutcome, made, refused } from './curve.js';

/** Pieces end to end. */
export interface JoinedCurve extends Curve {
    readonly kind: 'joined';
    /** In order of the abscissa. */
    readonly pieces: readonly Curve[];
    /** One fewer than the pieces. */
    readonly joints: readonly CurveJoint[];
}

class Joined extends CompositeCurve implements JoinedCurve {
    readonly kind = 'joined';
    readonly joints: readonly CurveJoint[];

    constructor(readonly pieces: readonly Curve[]) {
        super(pieces);
        this.joints = pieces.slice(1).map((after, index) => jointBetween(pieces[index] as Curve, after, this.starts[index + 1] as number));
    }
}

/**
 * Pieces end to end as one curve, given in any order; a joined curve among them counts as its pieces.
 * @returns the curve, with the continuity at each joint; refused when two neighbours do not meet in a point
 */
export function joined(pieces: readonly Curve[]): CurveOutcome<JoinedCurve> {
    const ordered = pieces.map((piece, index) => ({ piece, index })).sort((a, b) => a.piece.start.x - b.piece.start.x);
    if (ordered.length === 0) {
        return refused({ reason: 'no-pieces' });
    }
    for (const [place, { piece, index }] of ordered.entries()) {
        const before = ordered[place - 1]?.piece;
        if (before !== undefined) {
            const gap = distance(before.end, piece.start);
            if (gap > tolerance.geometry) {
                return refused({ reason: 'pieces-apart', index, gap, at: before.end });
            }
        }
    }
    return made(new Joined(ordered.flatMap(({ piece }) => (isJoined(piece) ? piece.pieces : [piece]))));
}

/** Whether a curve is made of pieces. */
export function isJoined(curve: Curve): curve is JoinedCurve {
    return curve.kind === 'joined';
}
