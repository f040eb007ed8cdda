/** Beams whose stiffness and load may change along them: what bends them, and how far. Newtons and millimetres. */
import { integral } from '../geometry/index.js';

export interface Beam {
    /** Between its supports. */
    readonly span: number;
    /** Modulus times second moment of area at a distance from the left support, in N mm². */
    stiffnessAt(x: number): number;
    readonly ends: 'simple' | 'fixed';
    readonly loads: readonly BeamLoad[];
    /** Where stiffness or load change their law, besides the places of the loads: the integrals are taken between them. */
    readonly breaks?: readonly number[];
}

export type BeamLoad =
    /** Spread over a stretch: N/mm at a distance from the left support. */
    | { readonly is: 'spread'; readonly from: number; readonly to: number; perLength(x: number): number }
    | { readonly is: 'point'; readonly at: number; readonly force: number };

/** The bending moments of a beam under its loads. */
export interface Bending {
    /** Support forces, left and right, in N. */
    readonly reactions: readonly [number, number];
    /** N mm, positive where the beam sags. */
    momentAt(x: number): number;
}

/** Places between which load and stiffness follow one law each. */
function stationsOf({ span, loads, breaks = [] }: Beam): readonly number[] {
    const places = loads.flatMap((load) => (load.is === 'point' ? [load.at] : [load.from, load.to]));
    const inside = [...places, ...breaks].filter((place) => place > 0 && place < span);
    return [...new Set([0, ...inside, span])].sort((a, b) => a - b);
}

/** Panels of the quadrature between two stations: good to the last place but one for a front of one belly. */
const panels = 2;

function integralOver(stations: readonly number[], f: (x: number) => number, from: number, to: number): number {
    let sum = 0;
    for (let index = 0; index + 1 < stations.length; index++) {
        const [low, high] = [Math.max(from, stations[index]!), Math.min(to, stations[index + 1]!)];
        if (high > low) sum += integral(f, low, high, panels);
    }
    return sum;
}

/** Moments and support forces: statics for simple ends, and no turning at the supports besides for fixed ones. */
export function bendingOf(beam: Beam): Bending {
    const simple = simplySupported(beam);
    if (beam.ends === 'simple') return simple;
    // two equations: the beam turns nowhere at its ends, whatever its stiffness
    const { leftByLeft: a, rightByLeft: b, rightByRight: c, leftByLoad: p, rightByLoad: q } = turningOf(beam, simple);
    const determinant = a * c - b * b;
    return withEndMoments(beam, simple, [(b * q - c * p) / determinant, (b * p - a * q) / determinant]);
}

/** How far the ends of a simple beam turn, under its load and by a moment of one at either end. */
export interface Turning {
    readonly leftByLeft: number;
    readonly rightByLeft: number;
    readonly rightByRight: number;
    readonly leftByLoad: number;
    readonly rightByLoad: number;
}

/** By virtual work, with a unit moment at the end whose turning is asked for. */
export function turningOf(beam: Beam, { momentAt }: Bending): Turning {
    const { span } = beam;
    const stations = stationsOf(beam);
    const flexibility = (weigh: (x: number) => number) => integralOver(stations, (x) => weigh(x) / beam.stiffnessAt(x), 0, span);
    const [left, right] = [(x: number) => 1 - x / span, (x: number) => x / span];
    return {
        leftByLeft: flexibility((x) => left(x) ** 2),
        rightByLeft: flexibility((x) => left(x) * right(x)),
        rightByRight: flexibility((x) => right(x) ** 2),
        leftByLoad: flexibility((x) => momentAt(x) * left(x)),
        rightByLoad: flexibility((x) => momentAt(x) * right(x)),
    };
}

/** A simple beam with moments at its ends besides, positive where they make it sag. */
export function withEndMoments({ span }: Beam, simple: Bending, [atLeft, atRight]: readonly [number, number]): Bending {
    const shear = (atRight - atLeft) / span;
    return {
        reactions: [simple.reactions[0] + shear, simple.reactions[1] - shear],
        momentAt: (x) => simple.momentAt(x) + atLeft * (1 - x / span) + (atRight * x) / span,
    };
}

function simplySupported(beam: Beam): Bending {
    const { span, loads } = beam;
    const stations = stationsOf(beam);
    let [whole, turning] = [0, 0];
    for (const load of loads) {
        if (load.is === 'point') {
            whole += load.force;
            turning += load.force * load.at;
        } else {
            whole += integralOver(stations, (x) => load.perLength(x), load.from, load.to);
            turning += integralOver(stations, (x) => load.perLength(x) * x, load.from, load.to);
        }
    }
    const right = turning / span;
    const momentAt = (x: number): number => {
        let moment = (whole - right) * x;
        for (const load of loads) {
            if (load.is === 'point') moment -= load.force * Math.max(0, x - load.at);
            else moment -= integralOver(stations, (s) => load.perLength(s) * (x - s), load.from, Math.min(x, load.to));
        }
        return moment;
    };
    return { reactions: [whole - right, right], momentAt };
}

/**
 * How far the beam sags at a place, by virtual work: `∫ M m / (E I)`, with `m` the moment of a unit load there.
 * Deflection by shear is left out: tabulated moduli of wood include it (Wood Handbook FPL-GTR-282, Table 5-3b, note c).
 */
export function sagAt(beam: Beam, bending: Bending, place: number): number {
    const { span } = beam;
    const stations = stationsOf({ ...beam, breaks: [...(beam.breaks ?? []), place] });
    const unit = (x: number) => (x < place ? (x * (span - place)) / span : (place * (span - x)) / span);
    return integralOver(stations, (x) => (bending.momentAt(x) * unit(x)) / beam.stiffnessAt(x), 0, span);
}

export interface Extreme {
    readonly at: number;
    readonly value: number;
}

/** How finely a span is searched before the greatest value is found between two neighbours. */
const searchSteps = 24;

/** Where it sags most, and how far. */
export function greatestSag(beam: Beam, bending: Bending): Extreme {
    return greatestOver(beam.span, (x) => sagAt(beam, bending, x));
}

/** Where the bending moment is greatest, either way. */
export function greatestMoment(beam: Beam, bending: Bending): Extreme {
    const stations = stationsOf(beam);
    const candidates = [...stations.map((x) => ({ at: x, value: Math.abs(bending.momentAt(x)) }))];
    candidates.push(greatestOver(beam.span, (x) => Math.abs(bending.momentAt(x))));
    return candidates.reduce((a, b) => (b.value > a.value ? b : a));
}

function greatestOver(span: number, f: (x: number) => number): Extreme {
    let best: Extreme = { at: 0, value: f(0) };
    const step = span / searchSteps;
    for (let index = 1; index <= searchSteps; index++) {
        const value = f(index * step);
        if (value > best.value) best = { at: index * step, value };
    }
    return goldenSection(f, Math.max(0, best.at - step), Math.min(span, best.at + step), best);
}

/** The greatest value of a function with one top between two places, to a millionth of their distance. */
function goldenSection(f: (x: number) => number, low: number, high: number, known: Extreme): Extreme {
    const share = (Math.sqrt(5) - 1) / 2;
    let [a, b] = [low, high];
    const enough = (high - low) * 1e-6;
    while (b - a > enough) {
        const [first, second] = [b - share * (b - a), a + share * (b - a)];
        if (f(first) < f(second)) a = first;
        else b = second;
    }
    const found = { at: (a + b) / 2, value: f((a + b) / 2) };
    return found.value > known.value ? found : known;
}
