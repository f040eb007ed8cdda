/** A form at full size: what a board is bent round, and clamped to until it holds its line. */
import { type ArcRun, type Curve, type Point, polylineRuns, tolerance } from '../geometry/index.js';
import { formatLength, sayMeasure } from '../quantity/index.js';
import type { Drawing, DrawnLine, DrawnText, LineRole } from './drawing.js';
import { drawingTolerance } from './drawing.js';
import type { FormShape } from './form-shape.js';
import { scaleBars } from './scale-bar.js';
import { runsBetween } from './stretch.js';
import type { TemplateWords } from './template-drawing.js';
import { wrapped } from './wrapped-text.js';

const small = 3.5;
const large = 5;
const lettersOfLegend = 60;
/** What is left of the form where it is least deep: enough to clamp against. Common practice, no source. */
const body = 76.2;

/** The drawing of a form, seen from above with the front of the case towards the viewer. */
export function formDrawing(shape: FormShape, words: TemplateWords): Drawing {
    const sheet = new FormSheet(shape);
    const say = (millimetres: number) => sayFormLength(millimetres, words.system);
    drawBody(sheet);
    drawMarks(sheet);
    drawFigures(sheet, words.spacing, say);
    drawLegend(sheet, legend(shape, words, say));
    const bars = scaleBars({ x: 0, y: sheet.below - 10 });
    return {
        title: `Bending form: ${words.serves}`,
        lines: [...sheet.lines, ...bars.lines],
        texts: [...sheet.texts, ...bars.texts],
        cut: {
            edge: [...sheet.runsOf(shape.face), ...sheet.runsOf(shape.outer)],
            from: { x: 'the left trim line', y: 'the straight edge' },
            isBelow: true,
        },
    };
}

/** Lines and texts given by where they are along the width and across it. */
class FormSheet {
    readonly lines: DrawnLine[] = [];
    readonly texts: DrawnText[] = [];
    readonly base: number;
    readonly from: number;
    readonly to: number;
    /** Where there is room under what is drawn so far. */
    below = 0;

    constructor(readonly shape: FormShape) {
        this.base = baseOf(shape);
        this.from = shape.start - shape.long;
        this.to = shape.start + shape.length + shape.long;
    }

    /** The front is towards the viewer: what is deeper lies lower on the sheet. */
    place(along: number, across: number): Point {
        return { x: along - this.shape.start, y: this.base - across };
    }

    draw(role: LineRole, runs: readonly ArcRun[], closed = false): void {
        this.lines.push({ role, runs, closed });
        this.below = Math.min(this.below, ...runs.flatMap(({ from, to }) => [from.y, to.y]));
    }

    mark(role: LineRole, along: number, across: number, toAcross: number): void {
        this.draw(role, polylineRuns([this.place(along, across), this.place(along, toAcross)]));
    }

    write(text: string, at: Point, height: number, { turned = false, anchor = 'start', isLegend }: Partial<DrawnText> = {}): void {
        this.texts.push({ text, at, height, anchor, turned, ...(isLegend ? { isLegend } : {}) });
    }

    runsOf(curve: Curve): readonly ArcRun[] {
        return runsBetween(curve, this.from, this.to).map(({ from, to, bulge }) => ({
            from: this.place(from.x, from.y),
            to: this.place(to.x, to.y),
            bulge: -bulge,
        }));
    }
}

type Say = (millimetres: number) => string;

function drawBody(sheet: FormSheet): void {
    const { shape, base, from, to } = sheet;
    const edge = sheet.runsOf(shape.face);
    const [first, last] = [edge[0]?.from, edge.at(-1)?.to];
    if (!first || !last) return;
    sheet.draw('core', [...edge, ...polylineRuns([last, sheet.place(to, base), sheet.place(from, base), first])], true);
    sheet.draw('finished', sheet.runsOf(shape.outer));
}

/** Where the piece is trimmed, and its middle. */
function drawMarks(sheet: FormSheet): void {
    const { start, length, face, outer } = sheet.shape;
    for (const end of [start, start + length]) sheet.mark('joint', end, face.valueAt(end).value, outer.valueAt(end).value);
    const middle = start + length / 2;
    sheet.mark('centre', middle, sheet.base, outer.valueAt(middle).value);
}

/** How far the face is from the straight edge, at even steps from the middle. */
function drawFigures(sheet: FormSheet, spacing: number, say: Say): void {
    const { start, length, face, lies } = sheet.shape;
    const middle = start + length / 2;
    const inwards = lies === 'behind' ? -1 : 1;
    for (const along of stations(sheet.shape, spacing)) {
        const across = face.valueAt(along).value;
        sheet.mark('dimension', along, across, across + inwards * 6);
        const from = Math.abs(along - middle);
        const isMiddle = from < tolerance.fit;
        const text = `${isMiddle ? 'middle' : say(from)}: ${say(Math.abs(across - sheet.base))}`;
        const { x, y } = sheet.place(along, across + inwards * 8);
        sheet.write(text, { x: x + small * (isMiddle ? 1.4 : 0.5), y }, small, {
            turned: true,
            anchor: lies === 'behind' ? 'start' : 'end',
        });
    }
}

function drawLegend(sheet: FormSheet, said: readonly string[]): void {
    const lines = said.flatMap((line) => wrapped(line, lettersOfLegend).map((part, index) => (index === 0 ? part : `    ${part}`)));
    sheet.below -= 15;
    for (const line of lines) {
        sheet.below -= large * 1.7;
        sheet.write(line, { x: 0, y: sheet.below }, large, { isLegend: true });
    }
}

/** The straight edge of the form, as far behind (or before) its face as leaves enough of it everywhere. */
function baseOf({ face, lies, start, length, long }: FormShape): number {
    const depths = face.turns().map(({ y }) => y);
    const ends = [start - long, start + length + long].map((along) => face.valueAt(along).value);
    return lies === 'behind' ? Math.min(...ends, ...depths) - body : Math.max(...ends, ...depths) + body;
}

/** From the middle both ways, and the ends of the piece. */
function stations({ start, length }: FormShape, spacing: number): readonly number[] {
    const middle = start + length / 2;
    const steps = Math.floor((length / 2 - tolerance.fit) / spacing);
    const inner = Array.from({ length: 2 * steps + 1 }, (_, index) => middle + (index - steps) * spacing);
    return [start, ...inner.filter((along) => Math.abs(along - middle) < length / 2 - small * 1.5), start + length];
}

function legend(
    { layers, thickness, height, long, lies, face, start, length }: FormShape,
    words: TemplateWords,
    say: (mm: number) => string,
) {
    const stock = layers > 1 ? `${layers} layers, ${say(thickness)} together` : `one board of ${say(thickness)}`;
    const least = face.leastRadius().radius;
    const round = face.distanceAt(start + length) - face.distanceAt(start);
    return [
        words.project,
        words.serves,
        `bending form: ${stock}, ${say(height)} wide; make the form as high`,
        `wide line: cut the form here; the ${lies === 'behind' ? 'back' : 'front'} face of the board lies on it`,
        `chain line with two dots: the other face. Thin cross lines: trim here, after it is bent; ${say(long)} is over at each end`,
        'chain line with one dot: the middle',
        ...(Number.isFinite(least) ? [`least radius of the form ${say(least)}; way round it between the trim lines ${say(round)}`] : []),
        'figures: from the middle line, and from the straight edge of the form',
        springback(layers),
        `curves are drawn as arcs within ${drawingTolerance} mm`,
    ];
}

/**
 * Layers that slide on one another while they are bent and are glued in the bend keep all of it but 1/n^2: the moment of n thin layers
 * against the stiffness of all as one (elastic beams; wood creeps and glue gives, so it is no more than a first guess).
 */
function springback(layers: number): string {
    const drawn = 'The form has the line that is wanted, with nothing added for springback: no published value is known for it.';
    const guess =
        layers > 1
            ? ` By the theory of elastic beams ${layers} layers glued in the bend go back by 1/${layers ** 2} of it.`
            : ' A single board keeps its bend only where it is fastened, or was plasticized first.';
    return `${drawn}${guess} Bend a sample piece, and correct the form by what it goes back.`;
}

function sayFormLength(millimetres: number, system: 'inch' | 'mm'): string {
    const style = system === 'inch' ? ({ system, denominator: 32 } as const) : ({ system, decimals: 1, zeros: 'dropped' } as const);
    return sayMeasure(formatLength(Math.abs(millimetres) < tolerance.geometry ? 0 : millimetres, style));
}
