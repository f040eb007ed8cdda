/** How to draw what no string draws: the pins of a batten, the trammel of an arc. */
import { type ArcCurve, add, battenPins, type Curve, type Interval, isFair, type Point, scale, surveyOf } from '../../geometry/index.js';
import { lengthInWords, type PrintStyle } from '../print-style.js';
import type { Group, Row } from '../sheet.js';
import { lengthCell, text } from './curve-cells.js';
import type { LineOfSheet } from './line-groups.js';

/** From one pin to the next, widest first: what divides by the marks of a rule. Common practice, no source. */
const pinSpacings = {
    inch: [24, 18, 12, 9, 6, 4, 3, 2].map((inches) => inches * 25.4),
    mm: [600, 450, 300, 200, 150, 100, 75, 50],
} as const;

/** What a batten may stray between its pins, in millimetres: a 64th of an inch, under what a sharp pencil shows. Common practice, no source. */
const mostStray = { inch: 25.4 / 64, mm: 0.4 } as const;

/** Pins for each stretch between two corners: a batten goes round none. */
export function pinGroups(line: LineOfSheet): readonly Group[] {
    const stretches = smoothStretches(line.curve);
    return stretches.flatMap((over, index): readonly Group[] => {
        const called = `${line.name}: pins for a batten${stretches.length === 1 ? '' : `, stretch ${index + 1} of ${stretches.length}`}`;
        const group = pinGroup(line, over, called);
        return group ? [group] : [];
    });
}

function pinGroup({ curve, print }: LineOfSheet, over: Interval, heading: string): Group | undefined {
    if (isFair(curve)) {
        return {
            heading,
            rows: curve.points.map((pin, index) => pinRow(pin, index, print)),
            notes: ['The pins stand at the points that are given; the batten is free at its ends.'],
        };
    }
    const most = mostStray[print.system];
    const pins = battenPins(curve, over, pinSpacings[print.system], most);
    if (!pins || pins.at.length < 3) return undefined;
    const near = pins.deviation <= most;
    const stray = lengthInWords(pins.deviation, print);
    const spacing = `Pins every ${lengthInWords(pins.spacing ?? 0, print)} from the low end, and one at the high end`;
    const note = near
        ? `${spacing}: a batten that is free at its ends strays from the line by less than ${lengthInWords(most, print, 'down')} between them.`
        : `${spacing}: a batten still strays by ${stray} between them, so draw this line from its offsets.`;
    return { heading, rows: pins.at.map((pin, index) => pinRow(pin, index, print)), notes: [note] };
}

function pinRow({ x, y }: Point, index: number, print: PrintStyle): Row {
    return { what: text(`Pin ${index + 1}`), along: lengthCell(x, print), depth: lengthCell(y, print) };
}

function smoothStretches(curve: Curve): readonly Interval[] {
    const corners = surveyOf(curve)
        .filter(({ is }) => is === 'corner')
        .map(({ point }) => point.x);
    const stops = [curve.span.from, ...corners, curve.span.to];
    return stops.slice(1).map((to, index) => ({ from: stops[index] as number, to }));
}

// ---------------------------------------------------------------- arcs

/** Past this a trammel wants a longer floor than most shops have. Common practice, no source. */
const longTrammel = 3000;

export function trammelGroup({ name, print, model }: LineOfSheet, arc: ArcCurve, bandThickness: number | undefined): Group | undefined {
    if (!Number.isFinite(arc.radius)) return undefined;
    const centre = centreOf(arc);
    const rows: Row[] = [
        { what: text('Trammel, to the finished line'), radius: lengthCell(arc.radius, print) },
        ...(bandThickness ? [{ what: text('Trammel, to the core line'), radius: lengthCell(coreRadius(arc, bandThickness), print) }] : []),
        { what: text('Centre'), along: lengthCell(centre.x, print), depth: lengthCell(centre.y, print) },
        { what: text('Rise over the middle of the chord'), rise: lengthCell(Math.abs(arc.rise), print) },
    ];
    const where = `The centre is measured as the line is: along from the ${model.over === 'height' ? 'bottom' : 'left'} of the case, and from its back; below zero is past them.`;
    const long = `A trammel of this length wants a long floor: two straightedges against pins at the ends, joined at the middle of the rise with a pencil in their corner, draw the same arc (common practice, no source).`;
    return { heading: `${name}: trammel`, rows, notes: arc.radius > longTrammel ? [where, long] : [where] };
}

function centreOf(arc: ArcCurve): Point {
    const along = arc.tangentAt(0);
    // Curvature is positive where the curve turns counter-clockwise, to the left of its way.
    const left = { x: -along.y, y: along.x };
    return add(arc.start, scale(left, 1 / arc.curvatureAt(0)));
}

/** Inside a belly the circle of the core is smaller, inside a hollow greater. */
function coreRadius(arc: ArcCurve, band: number): number {
    return arc.curvatureAt(0) < 0 ? arc.radius - band : arc.radius + band;
}
