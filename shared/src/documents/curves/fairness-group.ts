/** The fairness report: how a line bends along its way, and what an eye or a hand would find on it. */
import { type CurveFeature, surveyOf } from '../../geometry/index.js';
import { lengthInWords, type PrintStyle } from '../print-style.js';
import type { Group, Row } from '../sheet.js';
import { lengthCell, radiusCell, straightFrom, text } from './curve-cells.js';
import { type LineOfSheet, radiusInWords, sideInWords } from './line-groups.js';

export function fairnessGroup(line: LineOfSheet): Group {
    const { curve, name, print, spacing } = line;
    const { from, to } = curve.span;
    const steps = Math.floor((to - from) / spacing - 1e-9) + 1;
    const places = [...Array.from({ length: steps }, (_, step) => from + step * spacing), to];
    const rows = places.map((along): Row => {
        const distance = curve.distanceAt(along);
        const curvature = curve.curvatureAt(distance);
        return {
            along: lengthCell(along, print),
            depth: lengthCell(curve.valueAt(along).value, print),
            radius: radiusCell(1 / Math.abs(curvature), print),
            ...(Math.abs(curvature) * straightFrom < 1 ? {} : { note: text(sideInWords(curvature)) }),
        };
    });
    return { heading: `${name}: how it bends`, rows, notes: fairnessInWords(line) };
}

/** Bumps, flats, corners and jumps by their places, in the words of a maker; one sentence where there is none. */
export function fairnessInWords({ curve, model, print }: Pick<LineOfSheet, 'curve' | 'model' | 'print'>): readonly string[] {
    const found = surveyOf(curve);
    const unfair = found.filter(({ is }) => is !== 'inflection').map((feature) => inWords(feature, model.over, print));
    const turns = found.filter(({ is, turnsBack }) => is === 'inflection' || turnsBack === true);
    const places = turns.map(({ point }) => placeInWords(point.x, model.over, print)).join(' and ');
    const even = turns.length > 1 ? 'No corner, no sudden change of the bend, no bump and no flat spot; but the line waves.' : fair;
    return [
        ...(unfair.length === 0 ? [even] : unfair),
        ...(turns.length === 0 ? [] : [`It changes from belly to hollow, or back, ${places}.`]),
    ];
}

const fair = 'The line is fair: no corner, no sudden change of its bend, no bump and no flat spot.';

function inWords({ is, point, radius, radiusAfter, turn }: CurveFeature, over: 'height' | 'width', print: PrintStyle): string {
    const at = placeInWords(point.x, over, print);
    switch (is) {
        case 'corner':
            return `Corner ${at}: the line turns by ${((Math.abs(turn ?? 0) * 180) / Math.PI).toFixed(1)} degrees at once.`;
        case 'jump':
            return `Sudden change of the bend ${at}: from ${radiusPhrase(radius, print)} to ${radiusPhrase(radiusAfter ?? radius, print)}. The hand feels nothing, but a polished front shows it in its reflection.`;
        case 'flat':
            return `Flat spot ${at}: the line bends less there than on both sides of it (${radiusPhrase(radius, print)}).`;
        default:
            return `Bump ${at}: the line bends more there than beside it (${radiusPhrase(radius, print)}).`;
    }
}

function radiusPhrase(radius: number, print: PrintStyle): string {
    const words = radiusInWords(radius, print);
    return words === 'straight' ? words : `a radius of ${words}`;
}

function placeInWords(along: number, over: 'height' | 'width', print: PrintStyle): string {
    return over === 'height' ? `at a height of ${lengthInWords(along, print)}` : `at ${lengthInWords(along, print)} from the left`;
}

/** How a maker looks at a template before it is used. */
export const threeLooks =
    'Three looks at a template before it is used (common practice, no source). By eye: sight along it from one end, low, against the light; a bump throws a shadow. By hand: draw the fingertips along the edge with eyes closed; a flat spot feels like a hollow. By rocking: stand the edge on a flat bench and roll it from end to end; it rolls evenly where it is fair, halts on a flat spot and drops over a bump. A hollow is rocked on its offcut.';
