/** A beam that runs on over its supports: moments there, from the spans turning alike on both sides of each. Newtons and millimetres. */
import { type Beam, type Bending, bendingOf, turningOf, withEndMoments } from './beam.js';

/**
 * The bending of each span, simply supported at the two outer ends: three moments (Clapeyron), for spans whose stiffness may change along
 * them. At each inner support the span before it and the one behind it turn by the same angle.
 * @param spans from the left, each by itself, with simple ends
 */
export function continuousBending(spans: readonly Beam[]): readonly Bending[] {
    const simple = spans.map((span) => bendingOf({ ...span, ends: 'simple' }));
    const turnings = spans.map((span, index) => turningOf(span, simple[index]!));
    // a[i] M[i-1] + b[i] M[i] + c[i] M[i+1] = d[i], swept once each way
    const [upper, right]: [number[], number[]] = [[], []];
    for (let index = 1; index < spans.length; index++) {
        const [before, behind] = [turnings[index - 1]!, turnings[index]!];
        const pivot = before.rightByRight + behind.leftByLeft - before.rightByLeft * (upper.at(-1) ?? 0);
        const load = -(before.rightByLoad + behind.leftByLoad) - before.rightByLeft * (right.at(-1) ?? 0);
        upper.push(behind.rightByLeft / pivot);
        right.push(load / pivot);
    }
    const moments = new Array<number>(spans.length + 1).fill(0);
    for (let index = spans.length - 1; index > 0; index--) {
        moments[index] = right[index - 1]! - (index + 1 < spans.length ? upper[index - 1]! * moments[index + 1]! : 0);
    }
    return spans.map((span, index) => withEndMoments(span, simple[index]!, [moments[index]!, moments[index + 1]!]));
}
