import type { Curve, CurveOutcome, CurveRefusal } from '../../../src/geometry/index.js';

/** The curve that was made; a refusal fails the test with its own numbers. */
export function curveOf<Found extends Curve>(outcome: CurveOutcome<Found>): Found {
    if (!outcome.ok) {
        throw new Error(`refused: ${JSON.stringify(outcome.refusal)}`);
    }
    return outcome.curve;
}

/** The refusal; a curve that was made after all fails the test. */
export function refusalOf(outcome: CurveOutcome): CurveRefusal {
    if (outcome.ok) {
        throw new Error(`expected a refusal, got a ${outcome.curve.kind} of length ${outcome.curve.length}`);
    }
    return outcome.refusal;
}
