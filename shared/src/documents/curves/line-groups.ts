/** What a line is, however it is drawn: its length, its chord, where it bends most and where it turns from belly to hollow. */
import type { CurveModel } from '../../casework/index.js';
import { type Curve, type CurveFeature, distance, isArc, isJoined, surveyOf } from '../../geometry/index.js';
import { lengthInWords, type PrintStyle } from '../print-style.js';
import type { Group, Row } from '../sheet.js';
import { lengthCell, radiusCell, roundedRadius, straightFrom, text } from './curve-cells.js';

/** A line with the words that its groups need. */
export interface LineOfSheet {
    readonly model: CurveModel;
    readonly curve: Curve;
    /** `Sweep`, or with its case where several have one of that name. */
    readonly name: string;
    readonly print: PrintStyle;
    /** From one place to the next at which the bend is told, in millimetres. */
    readonly spacing: number;
}

const kindInWords: Readonly<Record<Curve['kind'], string>> = {
    line: 'a straight line',
    arc: 'an arc of a circle',
    bow: 'the bow of a sprung strip',
    fair: 'a fair line through points',
    joined: 'pieces joined end to end',
    parallel: 'parallel to another line',
};

export function lineGroup({ model, curve, name, print }: LineOfSheet): Group {
    const least = curve.leastRadius();
    const rows: Row[] = [
        { what: text('Length along the line'), length: lengthCell(curve.length, print) },
        { what: text('Chord, from end to end'), length: lengthCell(distance(curve.start, curve.end), print) },
        { what: text('Low end'), along: lengthCell(curve.start.x, print), depth: lengthCell(curve.start.y, print) },
        { what: text('High end'), along: lengthCell(curve.end.x, print), depth: lengthCell(curve.end.y, print) },
        {
            what: text(isArc(curve) ? 'Radius, everywhere' : 'Least radius'),
            ...(isArc(curve) ? {} : { along: lengthCell(least.point.x, print), depth: lengthCell(least.point.y, print) }),
            radius: isArc(curve) ? lengthCell(least.radius, print) : radiusCell(least.radius, print),
            note: text(sideInWords(curve.curvatureAt(least.distance))),
        },
        ...surveyOf(curve).map((feature): Row => featureRow(feature, print)),
        ...jointRows(curve, print),
    ];
    const heading = `${name}: depth over ${model.over}, ${kindInWords[curve.kind]}`;
    return { heading, rows, notes: [] };
}

export function sideInWords(curvature: number): string {
    if (Math.abs(curvature) * straightFrom < 1) return 'straight';
    return curvature < 0 ? 'belly to the room' : 'hollow';
}

const featureNames: Readonly<Record<CurveFeature['is'], string>> = {
    bump: 'Bump',
    flat: 'Flat spot',
    corner: 'Corner',
    jump: 'Sudden change of the bend',
    inflection: 'From belly to hollow, or back',
};

/** `Flat spot` */
export function featureInWords({ is }: CurveFeature): string {
    return featureNames[is];
}

function featureRow(feature: CurveFeature, print: PrintStyle): Row {
    return {
        what: text(featureNames[feature.is]),
        along: lengthCell(feature.point.x, print),
        depth: lengthCell(feature.point.y, print),
        ...(feature.is === 'inflection' || feature.is === 'corner' ? {} : { radius: radiusCell(feature.radius, print) }),
        note: text(featureNote(feature, print)),
    };
}

function featureNote({ is, turn, radiusAfter, turnsBack }: CurveFeature, print: PrintStyle): string {
    if (is === 'corner') return `turns by ${((Math.abs(turn ?? 0) * 180) / Math.PI).toFixed(1)} degrees at once`;
    if (is !== 'jump' || radiusAfter === undefined) return '';
    const after = radiusAfter < straightFrom ? `a radius of ${radiusInWords(radiusAfter, print)} goes on` : 'straight from here';
    return turnsBack ? `${after}, to the other side` : after;
}

export function radiusInWords(millimetres: number, print: PrintStyle): string {
    return millimetres > straightFrom ? 'straight' : lengthInWords(roundedRadius(millimetres, print), print);
}

/** Where pieces meet smoothly: what a survey finds nothing at. */
function jointRows(curve: Curve, print: PrintStyle): readonly Row[] {
    if (!isJoined(curve)) return [];
    return curve.joints.map(({ point, continuity }) => ({
        what: text('Joint of two pieces'),
        along: lengthCell(point.x, print),
        depth: lengthCell(point.y, print),
        note: text(continuityInWords[continuity]),
    }));
}

const continuityInWords = {
    position: 'they meet at a corner',
    tangent: 'one direction, but the bend changes at once',
    curvature: 'one direction and one bend',
} as const;
