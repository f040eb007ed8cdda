/** A template at full size: what is pinned to the wall, glued to a board, or sent to a router. */
import type { Grain } from '../casework/index.js';
import { type ArcRun, type Point, polylineRuns, tolerance } from '../geometry/index.js';
import { formatLength, sayMeasure } from '../quantity/index.js';
import { bevelledFront } from './bevelled-front.js';
import type { Drawing, DrawnLine, DrawnText, LineRole } from './drawing.js';
import { drawingTolerance } from './drawing.js';
import { offsetsFrom } from './offsets.js';
import { extentOf } from './place-drawing.js';
import { drawZones, routerWords, zonesOf } from './router-marks.js';
import { scaleBars } from './scale-bar.js';
import { runsBetween } from './stretch.js';
import type { TemplateShape } from './template-shape.js';
import { wrapped } from './wrapped-text.js';

export interface TemplateWords {
    readonly system: 'inch' | 'mm';
    /** Between printed offsets, in millimetres. */
    readonly spacing: number;
    /** `Kiln Lane display cases, revision B` */
    readonly project: string;
    /** What it serves: `Left, Right: 2 of each`. */
    readonly serves: string;
}

const small = 3.5;
const large = 5;

/** The drawing of a template. A part over the height stands, its front to the right; one over the width lies, its front to the viewer. */
export function templateDrawing(shape: TemplateShape, words: TemplateWords): Drawing {
    const sheet = new TemplateSheet(shape);
    const say = (millimetres: number) => sayTemplateLength(millimetres, words.system);
    drawEdges(sheet);
    drawRabbet(sheet, say);
    for (const joint of shape.joints) drawJoint(sheet, joint, say);
    drawOffsets(sheet, words, say);
    const zones = zonesOf(shape, grainAlong(shape));
    drawZones(shape, zones, (role, points) => sheet.draw(role, points));
    drawLegend(sheet, words, say, routerWords(shape, zones, say));
    const bars = scaleBars(sheet.below());
    return {
        title: `Template: ${words.serves}`,
        lines: [...sheet.lines, ...bars.lines],
        texts: [...sheet.texts, ...bars.texts],
        cut: {
            edge: sheet.edge,
            from: sheet.stands ? { x: 'the back edge', y: 'the bottom' } : { x: 'the left end', y: 'the back edge' },
            isBelow: !sheet.stands,
        },
    };
}

/** A length on a template: to 1/32in, or half a millimetre's tenth, with full or shy. */
function sayTemplateLength(millimetres: number, system: 'inch' | 'mm'): string {
    const style = system === 'inch' ? ({ system, denominator: 32 } as const) : ({ system, decimals: 1, zeros: 'dropped' } as const);
    return sayMeasure(formatLength(Math.abs(millimetres) < tolerance.geometry ? 0 : millimetres, style));
}

/** Lines and texts given by where they are on the part. */
class TemplateSheet {
    readonly lines: DrawnLine[] = [];
    readonly texts: DrawnText[] = [];
    /** The front, finished and core. */
    readonly edge: ArcRun[] = [];

    constructor(readonly shape: TemplateShape) {}

    get stands(): boolean {
        return this.shape.over === 'height';
    }

    place(along: number, across: number): Point {
        return this.stands ? { x: across, y: along } : { x: along, y: -across };
    }

    draw(role: LineRole, points: readonly (readonly [along: number, across: number])[], closed = false): void {
        const corners = points.map(([along, across]) => this.place(along, across));
        this.lines.push({ role, runs: polylineRuns(corners), closed });
    }

    /** The outline that the curve closes, with straight back and ends. */
    outline(role: LineRole, front: readonly ArcRun[], back: number): void {
        const [first, last] = [front[0], front.at(-1)];
        if (!first || !last) return;
        const { start, back: ordinate } = this.shape;
        const onSheet = ({ x, y }: Point) => this.place(x - start, y - ordinate);
        // Changing along for across, or turning across round, is a reflection: what turned left turns right.
        const runs = front.map(({ from, to, bulge }) => ({ from: onSheet(from), to: onSheet(to), bulge: -bulge }));
        const corners = [
            onSheet(last.to),
            this.place(last.to.x - start, back),
            this.place(first.from.x - start, back),
            onSheet(first.from),
        ];
        this.edge.push(...runs);
        this.lines.push({ role, runs: [...runs, ...polylineRuns(corners)], closed: true });
    }

    write(
        text: string,
        along: number,
        across: number,
        { height = small, anchor = 'start', turned = false, ...more }: Partial<Omit<DrawnText, 'text' | 'at'>> = {},
    ): void {
        this.texts.push({ text, at: this.place(along, across), height, anchor, turned, ...more });
    }

    /** Where there is room under the template and its words. */
    below(): Point {
        return { x: 0, y: extentOf({ title: '', lines: this.lines, texts: this.texts }).least.y - 20 };
    }
}

type Say = (millimetres: number) => string;

function drawEdges(sheet: TemplateSheet): void {
    const { finished, core, start, length, takesOff } = sheet.shape;
    const isBanded = Object.values(takesOff).some((amount) => amount > 0);
    if (isBanded) sheet.outline('finished', runsBetween(finished, start, start + length), 0);
    if (core) sheet.outline('core', runsBetween(core, start + takesOff.low, start + length - takesOff.high), takesOff.back);
}

function drawRabbet(sheet: TemplateSheet, say: Say): void {
    const { rabbet, length } = sheet.shape;
    if (!rabbet) return;
    sheet.draw('joint', [
        [0, rabbet.width],
        [length, rabbet.width],
    ]);
    const text = `rabbet ${say(rabbet.width)} wide, ${say(rabbet.depth)} deep`;
    const names = { from: sheet.place(0, rabbet.width), to: sheet.place(length, rabbet.width) };
    sheet.write(text, widestGap(sheet.shape)[0] + 15, rabbet.width + 2 + small, { turned: sheet.stands, names });
}

function drawJoint(sheet: TemplateSheet, { name, along, across }: TemplateShape['joints'][number], say: Say): void {
    const { shape, stands } = sheet;
    const middle = (along.from + along.to) / 2;
    // A square front stands out past a line that falls away under it: the mark ends where the wood does.
    const front = (place: number) => {
        const line = (shape.core ?? shape.finished).valueAt(shape.start + place).value - shape.back;
        return Math.min(across.to, line);
    };
    for (const face of [along.from, along.to]) {
        sheet.draw('joint', [
            [face, across.from],
            [face, front(face)],
        ]);
    }
    sheet.draw('centre', [
        [middle, across.from],
        [middle, front(middle)],
    ]);
    const names = (place: number) => ({ from: sheet.place(place, across.from), to: sheet.place(place, front(place)) });
    const label = (face: string, place: number) => `${name}, ${face} face ${say(place)}`;
    // Outside of the two faces, where it is clear of their lines.
    if (stands) {
        sheet.write(label('lower', along.from), along.from - clearOfLine - small, across.from + 25, { names: names(along.from) });
        sheet.write(label('upper', along.to), along.to + clearOfLine, across.from + 25, { names: names(along.to) });
    } else {
        const turned = { turned: true, anchor: 'end' } as const;
        sheet.write(label('left', along.from), along.from - clearOfLine, across.from + 25, { ...turned, names: names(along.from) });
        sheet.write(label('right', along.to), along.to + clearOfLine + small, across.from + 25, { ...turned, names: names(along.to) });
    }
}

const clearOfLine = 1.5;

/** Inside of the line a figure stands beyond the arrows of the router. */
const clearOfArrows = 17;

/** A mark across the line at each step, with the depth outside of it. */
function drawOffsets(sheet: TemplateSheet, { spacing }: TemplateWords, say: Say): void {
    const { takesOff } = sheet.shape;
    for (const { along, finished, core } of offsetsFrom('low', sheet.shape, spacing)) {
        sheet.draw('dimension', [
            [along, finished - 6],
            [along, finished + 6],
        ]);
        const inner = takesOff.front === 0 ? '' : `, core ${core === undefined ? 'none' : say(core)}`;
        const text = `at ${say(along)}: ${say(finished)}${inner}`;
        const inside = finished - takesOff.front - clearOfArrows;
        const clear = clearOfJoints(along, sheet.shape);
        if (sheet.stands) {
            const elsewhere = [{ at: sheet.place(clear - small / 2, inside), anchor: 'end' }] as const;
            sheet.write(text, along - small / 2, finished + 8, { elsewhere });
        } else {
            const elsewhere = [{ at: sheet.place(clear + small / 2, inside), anchor: 'start' }] as const;
            sheet.write(text, along + small / 2, finished + 8, { turned: true, anchor: 'end', elsewhere });
        }
    }
}

/** The place nearest to one, in steps of a line of text, at which no line of a joint or an end goes through a text. */
function clearOfJoints(along: number, { joints, length }: TemplateShape): number {
    const lines = [0, length, ...joints.flatMap(({ along: { from, to } }) => [from, (from + to) / 2, to])];
    const steps = [0, 1, -1, 2, -2, 3, -3, 4, -4, 5, -5, 6, -6];
    const places = steps.map((step) => along + step * small);
    return places.find((place) => lines.every((line) => Math.abs(line - place) > small)) ?? along;
}

function drawLegend(sheet: TemplateSheet, words: TemplateWords, say: Say, router: readonly string[]): void {
    const { shape, stands } = { shape: sheet.shape, stands: sheet.stands };
    const [from, to] = widestGap(shape);
    const said = [words.project, words.serves, handOf(shape), grainOf(shape), ...lineWords(shape, say), ...router];
    const letters = lettersOfLegend(sheet, from, to);
    const lines = said.flatMap((line) => wrapped(line, letters).map((part, index) => (index === 0 ? part : `    ${part}`)));
    const pitch = large * 1.7;
    const top = stands ? (from + to) / 2 + (lines.length * pitch) / 2 : from + 30;
    lines.forEach((line, index) => {
        if (stands) sheet.write(line, top - (index + 1) * pitch, 45, { height: large, isLegend: true });
        else sheet.write(line, top, 30 + index * pitch, { height: large, isLegend: true });
    });
    drawGrain(sheet, (from + to) / 2);
}

/** Mean width of a letter over the height of its capitals (Helvetica's font metrics, from memory). */
const letterWidth = 0.72;
const marginOfLegend = 45;
const fewestLetters = 28;

/** How many letters stand on a line of the legend, clear of the line that is cut. */
function lettersOfLegend({ shape, stands }: TemplateSheet, from: number, to: number): number {
    const { core, finished, start, back } = shape;
    const depths = [0, 1, 2, 3, 4].map((quarter) => (core ?? finished).valueAt(start + from + ((to - from) * quarter) / 4).value - back);
    const room = stands ? Math.min(...depths) - marginOfLegend - 20 : to - from - marginOfLegend;
    return Math.max(fewestLetters, Math.floor(room / (letterWidth * large)));
}

/** The clear stretch between two joints that has most room for words; a blank one has all of it. */
function widestGap({ joints, length }: TemplateShape): readonly [number, number] {
    const stops = [0, ...joints.flatMap(({ along }) => [along.from, along.to]), length];
    let widest: readonly [number, number] = [0, 0];
    for (let index = 0; index + 1 < stops.length; index += 2) {
        const [from, to] = [stops[index]!, stops[index + 1]!];
        if (to - from > widest[1] - widest[0]) widest = [from, to];
    }
    return widest;
}

/**
 * Which face is seen. On a template that stands with its front to the right, a left side shows its inner face and a right side its outer
 * one; turned over, the other way round.
 */
function handOf({ parts, over }: TemplateShape): string {
    if (over === 'width') return 'seen from above, front towards you';
    const left = parts.filter(({ hand }) => hand === 'left').map(({ name }) => name);
    const right = parts.filter(({ hand }) => hand === 'right').map(({ name }) => name);
    const seen = [
        ...(left.length === 0 ? [] : [`inner face of ${left.join(', ')} (left hand)`]),
        ...(right.length === 0 ? [] : [`outer face of ${right.join(', ')} (right hand)`]),
    ];
    if (seen.length === 0) return 'seen from the right, front to the right';
    return `this face: ${seen.join('; ')}${right.length === 0 ? '' : '; turn over for the other'}`;
}

/** The way of the grain of the outer layer, as it lies on the drawing. */
function grainAlong({ parts, over }: TemplateShape): 'along' | 'across' | 'none' {
    const part = parts[0];
    const grain: Grain = part?.layers[0]?.grain ?? 'none';
    if (!part || grain === 'none') return 'none';
    const axis = part.directions[grain];
    return axis === (over === 'height' ? 'z' : 'x') ? 'along' : 'across';
}

function grainOf(shape: TemplateShape): string {
    const way = grainAlong(shape);
    if (way === 'none') return 'no grain';
    return way === 'along' ? `grain along the ${shape.over}: arrow` : 'grain from front to back: arrow';
}

const arrowLength = 80;

/** A line with a head at each end, along the grain. */
function drawGrain(sheet: TemplateSheet, middle: number): void {
    const way = grainAlong(sheet.shape);
    if (way === 'none') return;
    const at = (lengthwise: number, sideways: number): [number, number] =>
        way === 'along' ? [middle + lengthwise, 32 + sideways] : [middle + sideways, 72 + lengthwise];
    const half = arrowLength / 2;
    sheet.draw('dimension', [at(-half, 0), at(half, 0)]);
    for (const end of [-1, 1]) sheet.draw('dimension', [at(end * (half - 8), -3), at(end * half, 0), at(end * (half - 8), 3)]);
}

/** What each line that is drawn means. */
function lineWords(shape: TemplateShape, say: Say): readonly string[] {
    const { takesOff, joints, rabbet, over } = shape;
    const faces = over === 'height' ? 'lower and upper' : 'left and right';
    return [
        ...edgeWords(shape, say),
        ...bevelWords(shape, say),
        ...(joints.length > 0
            ? [`thin lines from back to front: the ${faces} face of what meets it; chain line with one dot: its middle`]
            : []),
        ...(rabbet ? ['thin line along the back: as far as the rabbet for the back reaches'] : []),
        `short thin lines across the front: figures, ${over === 'height' ? 'at a height' : 'at a place from the left end'} and the depth there${takesOff.front > 0 ? ', finished and of the core' : ''}`,
        ...(grainAlong(shape) === 'none' ? [] : ['long arrow with two heads: the way of the grain']),
        `curves are drawn as arcs within ${drawingTolerance} mm`,
    ];
}

function bevelWords({ parts }: TemplateShape, say: Say): readonly string[] {
    const bevelled = parts[0] && bevelledFront(parts[0]);
    if (!bevelled) return [];
    const { deeper, shallower, behind } = bevelled;
    return [`bevelled front: its lines are those of the ${deeper} face; at the ${shallower} face they lie ${say(behind)} further back`];
}

function edgeWords({ takesOff, core }: TemplateShape, say: Say): readonly string[] {
    if (!core) return ['chain line with two dots: finished; there is no core line, the band is too thick for the curve'];
    const banded = (['front', 'back', 'low', 'high'] as const).filter((edge) => takesOff[edge] > 0);
    if (banded.length === 0) return ['wide line: cut here'];
    const taken = takesOff.front > 0 ? `, ${say(takesOff.front)} inside at the front` : '';
    return [`wide line: core, cut here${taken}`, 'chain line with two dots: finished, with its bands'];
}
