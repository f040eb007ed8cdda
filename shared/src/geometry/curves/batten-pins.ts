import { tolerance } from '../tolerance.js';
import type { Point } from '../vector.js';
import type { Curve, Interval } from './curve.js';
import { fairThrough } from './fair.js';

/** Where a batten is held so that it takes the line of a curve. */
export interface BattenPins {
    /** In order of the abscissa, the first and the last at the ends of the stretch. */
    readonly at: readonly Point[];
    /** How far the batten strays from the curve between its pins at most, measured at 32 places between each two, in millimetres. */
    readonly deviation: number;
    /** From one pin to the next along the abscissa; undefined where they stand at points that were given. */
    readonly spacing: number | undefined;
}

const measuredPlaces = 32;

/**
 * The pins for a batten over a stretch of a curve without a corner: the widest of the spacings at which a batten that is free at its ends
 * (see `fairThrough`) stays near the curve.
 * @param over abscissas within the span of the curve
 * @param spacings widest first, in millimetres, counted from the low end
 * @param within how far it may stray
 * @returns the pins at the narrowest spacing, with how far the batten strays, where none is near enough; undefined where the stretch is
 *     too short for a batten, or turns so tightly that no batten follows it
 */
export function battenPins(curve: Curve, over: Interval, spacings: readonly number[], within: number): BattenPins | undefined {
    let found: BattenPins | undefined;
    for (const spacing of spacings) {
        const at = pinsAlong(curve, over, spacing);
        const deviation = strayOf(curve, at);
        if (deviation === undefined) {
            continue;
        }
        if (found === undefined || deviation < found.deviation) {
            found = { at, deviation, spacing };
        }
        if (deviation <= within) {
            return found;
        }
    }
    return found;
}

function pinsAlong(curve: Curve, { from, to }: Interval, spacing: number): readonly Point[] {
    const pin = (x: number) => ({ x, y: curve.valueAt(x).value });
    // A last step of less than a quarter is left out: two pins so near together would only fix the batten's direction.
    const steps = Math.max(1, Math.floor((to - from) / spacing + 0.75 - tolerance.relative));
    return [...Array.from({ length: steps }, (_, step) => pin(from + step * spacing)), pin(to)];
}

/** How far a batten through the pins strays from the curve; undefined where none goes through them. */
function strayOf(curve: Curve, pins: readonly Point[]): number | undefined {
    const batten = fairThrough(pins);
    if (!batten.ok) {
        return undefined;
    }
    let stray = 0;
    for (let index = 0; index + 1 < pins.length; index++) {
        const [from, to] = [pins[index] as Point, pins[index + 1] as Point];
        for (let place = 1; place < measuredPlaces; place++) {
            const x = from.x + ((to.x - from.x) * place) / measuredPlaces;
            // Square to the curve: along the ordinate it would be counted too great where the curve is steep.
            const upright = batten.curve.valueAt(x).value - curve.valueAt(x).value;
            stray = Math.max(stray, Math.abs(upright) * Math.cos(Math.atan(curve.slopeAt(x))));
        }
    }
    return stray;
}
