import { tolerance } from '../tolerance.js';
import type { Curve, CurvePlace } from './curve.js';
import { justInside } from './curve-by-distance.js';
import { isJoined } from './joined.js';

/**
 * What an eye or a hand finds along a line.
 *
 * bump: a place in a bend that is bent more than both its neighbourhoods, though not the most of its bend; flat: the place between two
 * such where it is bent less; corner: the direction changes at once; jump: the bend changes at once; inflection: from belly to hollow.
 */
export interface CurveFeature extends CurvePlace {
    readonly is: 'bump' | 'flat' | 'corner' | 'jump' | 'inflection';
    /** Radius there; of a jump that before it; Infinity where it is straight. */
    readonly radius: number;
    /** Of a jump, the radius after it. */
    readonly radiusAfter?: number;
    /** Of a corner, in radians, counter-clockwise positive. */
    readonly turn?: number;
    /** Curvature changes its side here, which on a jump comes with it. */
    readonly turnsBack?: boolean;
}

/** Places on each stretch between two breaks at which the bend is looked at. */
const places = 96;

/** A change of the bend that is less than this share of the greatest bend of the curve goes unseen. Common practice, no source. */
const leastSeen = 0.05;

interface Station {
    readonly distance: number;
    readonly bend: number;
}

/**
 * Looks along a curve: corners and jumps where pieces meet, inflections, bumps and flats within each bend.
 * @returns what is found, in order along the curve
 */
export function surveyOf(curve: Curve): readonly CurveFeature[] {
    const stations = stationsOf(curve);
    const greatest = Math.max(...stations.map(({ bend }) => Math.abs(bend)));
    const seen = Math.max(greatest * leastSeen, tolerance.curvature);
    const sudden = suddenChanges(curve, seen);
    const inflections = curve
        .inflections()
        .filter(({ distance }) => !sudden.some((one) => Math.abs(one.distance - distance) <= tolerance.geometry))
        .map((place): CurveFeature => ({ ...place, is: 'inflection', radius: Number.POSITIVE_INFINITY }));
    const uneven = bendsBetween(stations).flatMap((bend) => bumpsAndFlats(bend, seen));
    const gradual = uneven.map(({ station, is }): CurveFeature => {
        return { is, distance: station.distance, point: curve.pointAt(station.distance), radius: 1 / Math.abs(station.bend) };
    });
    return [...sudden, ...inflections, ...gradual].sort((a, b) => a.distance - b.distance);
}

/** Curvatures along the curve; at a break one on each side of it. */
function stationsOf(curve: Curve): readonly Station[] {
    const stops = [0, ...curve.breaks, curve.length];
    return stops.slice(1).flatMap((to, index) => {
        const from = stops[index] as number;
        const inside = curve.curvaturePeaks.filter((peak) => peak > from && peak < to);
        const even = Array.from({ length: places }, (_, place) => from + ((to - from) * place) / places);
        const along = [...even, ...inside, justInside(to, from)].sort((a, b) => a - b);
        return along.map((distance) => ({ distance, bend: curve.curvatureAt(distance) }));
    });
}

/** Corners and jumps at breaks. */
function suddenChanges(curve: Curve, seen: number): readonly CurveFeature[] {
    const stops = [0, ...curve.breaks];
    return curve.breaks.flatMap((distance, index): readonly CurveFeature[] => {
        const before = justInside(distance, stops[index] as number);
        const point = curve.pointAt(distance);
        const [bendBefore, bendAfter] = [curve.curvatureAt(before), curve.curvatureAt(distance)];
        const jump = bendAfter - bendBefore;
        const turn = turnAt(curve, distance, before);
        const radius = 1 / Math.abs(bendBefore);
        const turnsBack = bendBefore * bendAfter < 0;
        if (Math.abs(turn) > tolerance.angle) return [{ is: 'corner', distance, point, radius, turn }];
        if (Math.abs(jump) <= seen) return [];
        return [{ is: 'jump', distance, point, radius, radiusAfter: 1 / Math.abs(bendAfter), turnsBack }];
    });
}

/** Exactly where the curve knows its joints. */
function turnAt(curve: Curve, distance: number, before: number): number {
    if (isJoined(curve)) {
        return curve.joints.find((joint) => Math.abs(joint.distance - distance) <= tolerance.geometry)?.turn ?? 0;
    }
    const turn = curve.angleAt(distance) - curve.angleAt(before);
    const bent = (distance - before) * Math.max(Math.abs(curve.curvatureAt(before)), Math.abs(curve.curvatureAt(distance)));
    return Math.abs(turn) > bent + tolerance.angle ? turn : 0;
}

/** Runs of stations that bend one way. */
function bendsBetween(stations: readonly Station[]): readonly (readonly Station[])[] {
    const bends: Station[][] = [];
    let sign = 0;
    for (const station of stations) {
        const way = Math.abs(station.bend) <= tolerance.curvature ? sign : Math.sign(station.bend);
        if (way !== sign || bends.length === 0) bends.push([]);
        sign = way;
        bends.at(-1)?.push(station);
    }
    return bends;
}

interface Uneven {
    readonly is: 'bump' | 'flat';
    readonly station: Station;
}

/**
 * In one bend the amount of it rises to a greatest and falls again. Every further rise is a bump, and what lies between two is a flat;
 * rises and falls that go unseen do not count.
 */
function bumpsAndFlats(bend: readonly Station[], seen: number): readonly Uneven[] {
    const turns = turnsOf(bend, seen);
    const peaks = turns.filter(({ is }) => is === 'bump');
    if (peaks.length < 2) return [];
    const most = peaks.reduce((a, b) => (Math.abs(b.station.bend) > Math.abs(a.station.bend) ? b : a));
    return turns.filter((turn) => turn !== most);
}

/** Peaks of the amount of bend and the hollows between them, each apart from the next by more than what goes unseen. */
function turnsOf(bend: readonly Station[], seen: number): readonly Uneven[] {
    const turns: Uneven[] = [];
    const amount = ({ bend: curvature }: Station) => Math.abs(curvature);
    let highest = bend[0] as Station;
    let lowest = highest;
    let isRising = true;
    for (const station of bend) {
        if (amount(station) > amount(highest)) highest = station;
        if (amount(station) < amount(lowest)) lowest = station;
        if (isRising && amount(highest) - amount(station) > seen) {
            turns.push({ is: 'bump', station: highest });
            lowest = station;
            isRising = false;
        } else if (!isRising && amount(station) - amount(lowest) > seen) {
            turns.push({ is: 'flat', station: lowest });
            highest = station;
            isRising = true;
        }
    }
    if (isRising) turns.push({ is: 'bump', station: highest });
    return turns;
}
