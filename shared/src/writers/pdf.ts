/**
 * PDF of drawings at full size, tiled onto sheets of paper: a page that shows how the sheets go together, then each sheet with what it
 * shares with its neighbours, where it is cut, marks to lay it by, and a bar to measure. No dates: the same drawings give the same bytes.
 */
import {
    appendBezierCurve,
    clip,
    closePath,
    concatTransformationMatrix,
    degrees,
    endPath,
    lineTo,
    moveTo,
    PDFDocument,
    type PDFFont,
    type PDFOperator,
    type PDFPage,
    popGraphicsState,
    pushGraphicsState,
    rectangle,
    setDashPattern,
    setLineWidth,
    stroke,
} from '@cantoo/pdf-lib';
import { type Cut, type Drawing, type DrawnLine, type DrawnText, extentOf, type LineStyle, lineStyles, wrapped } from '../drawing/index.js';
import { type ArcRun, add, angleOf, direction, distance, type Extent, type Point, runMiddle, scale, subtract } from '../geometry/index.js';
import { formatLength, sayMeasure } from '../quantity/index.js';
import { type PaperName, papers } from './paper.js';
import { type Letters, noteOnLetters } from './pdf-letters.js';
import { type Typeface, typefaceFor } from './pdf-typeface.js';
import { textsOnSheets } from './sheet-texts.js';
import { overlap, sheetsOf, type Tile, type Tiling, tile, tileName } from './tiles.js';

/** Points of PDF in a millimetre. */
const pointsPerMillimetre = 72 / 25.4;
/** Height of the capitals over the size of Helvetica (its font metrics, from memory); of a typeface that is embedded about that. */
const capHeight = 0.718;

/** The bytes of a PDF file with every drawing at full size, one after the other. */
export async function writePdf(
    drawings: readonly Drawing[],
    paper: PaperName,
    units: 'in' | 'mm',
    typeface?: Typeface,
): Promise<Uint8Array> {
    const { document, addSheet, noteOn, lengthOf } = await newDocument(drawings, typeface);
    for (const drawing of drawings) {
        const tiling = tile(drawing, paper, units);
        const add = () => addSheet(tiling.paper);
        drawIndex(add(), drawing, tiling, { note: noteOn(drawing), units });
        const lines = drawing.lines.filter(({ isLegend }) => !isLegend);
        for (const [one, texts] of textsOnSheets(drawing.texts, tiling, lengthOf)) {
            drawTile(add(), one, { ...drawing, lines, texts }, tiling, units);
        }
    }
    return document.save({ useObjectStreams: false });
}

/** The bytes of a PDF file with a page for every drawing, which is made smaller where the paper is too small for it. */
export async function writePages(drawings: readonly Drawing[], paper: PaperName, typeface?: Typeface): Promise<Uint8Array> {
    const { document, addSheet, noteOn } = await newDocument(drawings, typeface);
    const { width, height } = papers[paper];
    for (const drawing of drawings) {
        const whole = grown(extentOf(drawing), pageMargin);
        const size = subtract(whole.most, whole.least);
        const lies = size.x > size.y;
        const [across, up] = lies ? [height, width] : [width, height];
        const factor = Math.min(1, across / size.x, up / size.y);
        const corner = { x: (across - size.x * factor) / 2, y: up - size.y * factor };
        const sheet = addSheet({ width: across, height: up });
        sheet.within(whole, corner, factor, () => drawContent(sheet, drawing, ({ role }) => lineStyles[role]));
        const note = noteOn(drawing);
        if (note) sheet.say(note, { x: pageMargin, y: pageMargin / 2 }, 2);
    }
    return document.save({ useObjectStreams: false });
}

/** Around a drawing that fits a page: what a printer cannot reach, with some to spare. */
const pageMargin = 12;

async function newDocument(drawings: readonly Drawing[], typeface: Typeface | undefined) {
    const document = await PDFDocument.create({ updateMetadata: false });
    document.setTitle(drawings.map(({ title }) => title).join('; '));
    document.setCreator('Casewright');
    const textsOf = ({ title, texts }: Drawing) => [title, ...texts.map(({ text }) => text)];
    const { font, letters } = await typefaceFor(document, drawings.flatMap(textsOf), typeface);
    const addSheet = ({ width, height }: { readonly width: number; readonly height: number }) => {
        const page = document.addPage([width * pointsPerMillimetre, height * pointsPerMillimetre]);
        page.pushOperators(concatTransformationMatrix(pointsPerMillimetre, 0, 0, pointsPerMillimetre, 0, 0));
        return new Sheet(page, font, letters);
    };
    const noteOn = (drawing: Drawing) => noteOnLetters(letters.changedIn(textsOf(drawing)));
    const lengthOf = ({ text, height }: DrawnText) => font.widthOfTextAtSize(letters.of(text), height / capHeight);
    return { document, addSheet, noteOn, lengthOf };
}

/** A page that is drawn on in millimetres from its lower left corner. */
class Sheet {
    constructor(
        private readonly page: PDFPage,
        private readonly font: PDFFont,
        private readonly letters: Letters,
    ) {}

    /** What is drawn inside is moved and scaled, and cut off at a frame given in its own millimetres. */
    within(frame: Extent, corner: Point, factor: number, draw: () => void): void {
        const { least, most } = frame;
        this.page.pushOperators(
            pushGraphicsState(),
            concatTransformationMatrix(factor, 0, 0, factor, corner.x - least.x * factor, corner.y - least.y * factor),
            rectangle(least.x, least.y, most.x - least.x, most.y - least.y),
            clip(),
            endPath(),
        );
        draw();
        this.page.pushOperators(popGraphicsState());
    }

    path(runs: readonly ArcRun[], closed: boolean, { width, dashes }: Pick<LineStyle, 'width' | 'dashes'>): void {
        const from = runs[0]?.from;
        if (!from) return;
        this.page.pushOperators(
            setLineWidth(width),
            setDashPattern([...dashes], 0),
            moveTo(from.x, from.y),
            ...runs.flatMap(segments),
            ...(closed ? [closePath()] : []),
            stroke(),
        );
    }

    line(from: Point, to: Point, style: Pick<LineStyle, 'width' | 'dashes'>): void {
        this.path([{ from, to, bulge: 0 }], false, style);
    }

    text({ text, at, height, anchor, turned }: DrawnText): void {
        const size = height / capHeight;
        const shown = this.letters.of(text);
        const length = this.font.widthOfTextAtSize(shown, size);
        const before = { start: 0, middle: length / 2, end: length }[anchor];
        const start = add(at, scale(turned ? { x: 0, y: 1 } : { x: 1, y: 0 }, -before));
        this.page.drawText(shown, { x: start.x, y: start.y, size, font: this.font, rotate: degrees(turned ? 90 : 0) });
    }

    say(text: string, at: Point, height: number, anchor: DrawnText['anchor'] = 'start', turned = false): void {
        this.text({ text, at, height, anchor, turned });
    }
}

/** A straight line, or Bezier curves of at most an eighth of a turn, within a millionth of the radius (from memory; measured in tests). */
function segments(run: ArcRun): readonly PDFOperator[] {
    const { from, to, bulge } = run;
    if (bulge === 0) return [lineTo(to.x, to.y)];
    const turn = 4 * Math.atan(bulge);
    if (Math.abs(turn) > Math.PI / 4) {
        const middle = runMiddle(run);
        const half = Math.tan(turn / 8);
        return [...segments({ from, to: middle, bulge: half }), ...segments({ from: middle, to, bulge: half })];
    }
    const chord = subtract(to, from);
    const handle = ((4 / 3) * Math.tan(turn / 4) * distance(from, to)) / (2 * Math.sin(turn / 2));
    const first = add(from, scale(direction(angleOf(chord) - turn / 2), handle));
    const second = subtract(to, scale(direction(angleOf(chord) + turn / 2), handle));
    return [appendBezierCurve(first.x, first.y, second.x, second.y, to.x, to.y)];
}

function drawContent(sheet: Sheet, { lines, texts }: Drawing, styleOf: (line: DrawnLine) => Pick<LineStyle, 'width' | 'dashes'>): void {
    for (const line of lines) sheet.path(line.runs, line.closed, styleOf(line));
    for (const text of texts) sheet.text(text);
}

// ---------------------------------------------------------------- one sheet

const fine = { width: 0.13, dashes: [] };
const cutLine = { width: 0.13, dashes: [3, 2] };

function drawTile(sheet: Sheet, one: Tile, drawing: Drawing, tiling: Tiling, units: 'in' | 'mm'): void {
    sheet.within(one.shown, tiling.corner, 1, () => {
        drawContent(sheet, drawing, ({ role }) => lineStyles[role]);
        drawCuts(sheet, one);
    });
    drawNeighbours(sheet, one, tiling);
    drawFoot(sheet, one, drawing, tiling, units);
}

/** Dashed lines where the sheet is cut, and at their crossings marks that every neighbour has at the same place. */
function drawCuts(sheet: Sheet, { cut, shown }: Tile): void {
    for (const x of [cut.least.x, cut.most.x]) sheet.line({ x, y: shown.least.y }, { x, y: shown.most.y }, cutLine);
    for (const y of [cut.least.y, cut.most.y]) sheet.line({ x: shown.least.x, y }, { x: shown.most.x, y }, cutLine);
    const middle = scale(add(cut.least, cut.most), 0.5);
    for (const x of [cut.least.x, middle.x, cut.most.x]) {
        for (const y of [cut.least.y, middle.y, cut.most.y]) if (x !== middle.x || y !== middle.y) drawMark(sheet, { x, y });
    }
}

const markRadius = 3;

/** A cross in a circle. */
function drawMark(sheet: Sheet, at: Point): void {
    const left = add(at, { x: -markRadius, y: 0 });
    const right = add(at, { x: markRadius, y: 0 });
    const circle = [
        { from: left, to: right, bulge: 1 },
        { from: right, to: left, bulge: 1 },
    ];
    sheet.path(circle, true, fine);
    const arm = 1.6 * markRadius;
    sheet.line(add(at, { x: -arm, y: 0 }), add(at, { x: arm, y: 0 }), fine);
    sheet.line(add(at, { x: 0, y: -arm }), add(at, { x: 0, y: arm }), fine);
}

/** At each join, the name of the sheet on its other side. */
function drawNeighbours(sheet: Sheet, one: Tile, { corner, tiles }: Tiling): void {
    const width = one.shown.most.x - one.shown.least.x;
    const height = one.shown.most.y - one.shown.least.y;
    const beside = (columns: number, rows: number) =>
        tiles.find(({ column, row, isBlank }) => column === one.column + columns && row === one.row + rows && !isBlank);
    const places: readonly (readonly [number, number, Point, boolean])[] = [
        [-1, 0, { x: overlap / 4 + 1, y: height / 4 }, true],
        [1, 0, { x: width - overlap / 4 + 1, y: height / 4 }, true],
        [0, -1, { x: width / 4, y: height - overlap / 4 - 1 }, false],
        [0, 1, { x: width / 4, y: overlap / 4 - 1 }, false],
    ];
    for (const [columns, rows, at, turned] of places) {
        const other = beside(columns, rows);
        if (other) sheet.say(`joins ${tileName(other)}`, add(corner, at), 2, 'middle', turned);
    }
}

/** The number of the sheet, what it is of, and a bar to measure. */
function drawFoot(sheet: Sheet, one: Tile, drawing: Drawing, { corner, columns, rows, paper }: Tiling, units: 'in' | 'mm'): void {
    const base = corner.y - 10;
    sheet.say(tileName(one), { x: corner.x, y: base }, 6);
    const placed = drawing.cut ? placesOf(one, drawing.cut, units) : [`${columns} across, ${rows} down`];
    [drawing.title, ...placed, 'print at 100 %'].forEach((line, index) => {
        sheet.say(line, { x: corner.x + 18, y: base + 6 - index * 2.9 }, 1.8);
    });
    const [length, label] = units === 'in' ? [76.2, '3in'] : [75, '75mm'];
    drawBar(sheet, { x: paper.width - corner.x - length - 12, y: base }, length / 3, 3, label);
}

/** A bar to measure, with a tick at each step. */
function drawBar(sheet: Sheet, { x: left, y }: Point, step: number, steps: number, label: string): void {
    sheet.line({ x: left, y }, { x: left + step * steps, y }, fine);
    for (let tick = 0; tick <= steps; tick++) {
        const x = left + tick * step;
        sheet.line({ x, y }, { x, y: y + 4 }, fine);
    }
    sheet.say(label, { x: left + step * steps + 2, y }, 2.5);
}

/** `dashed lines at 7 1/4in and 14 1/4in from the back edge,` and `3in past the bottom, and 9in from it` */
function placesOf({ cut: { least, most } }: Tile, { from, isBelow }: Cut, units: 'in' | 'mm'): readonly string[] {
    const [low, high] = isBelow ? [-most.y, -least.y] : [least.y, most.y];
    const pair = (a: number, b: number, zero: string) => {
        const [first, second] = [sayPlace(a, units), sayPlace(b, units)];
        if (b < 0) return `${first} and ${second} past ${zero}`;
        return a < 0 ? `${first} past ${zero}, and ${second} from it` : `${first} and ${second} from ${zero}`;
    };
    return [`dashed lines at ${pair(least.x, most.x, from.x)};`, `and at ${pair(low, high, from.y)}`];
}

function sayPlace(at: number, units: 'in' | 'mm'): string {
    const style =
        units === 'in' ? ({ system: 'inch', denominator: 32 } as const) : ({ system: 'mm', decimals: 1, zeros: 'dropped' } as const);
    return sayMeasure(formatLength(Math.abs(at), style));
}

// ---------------------------------------------------------------- how the sheets go together

interface OnIndex {
    readonly note: string | undefined;
    readonly units: 'in' | 'mm';
}

function drawIndex(sheet: Sheet, drawing: Drawing, tiling: Tiling, { note, units }: OnIndex): void {
    const { paper, tiles, columns } = tiling;
    let top = paper.height - 22;
    for (const line of wrapped(drawing.title, lettersAcross(paper, 4))) {
        sheet.say(line, { x: 15, y: top }, 4);
        top -= 6;
    }
    top += 2;
    const said = [...wordsOnIndex(drawing, tiling), ...(note ? [note] : []), ...legendOf(drawing)];
    for (const line of said.flatMap((one) => wrapped(one, lettersAcross(paper, 2.3)))) {
        top -= 4;
        sheet.say(line, { x: 15, y: top }, 2.3);
    }
    top -= 9;
    drawBar(sheet, { x: 15, y: top }, units === 'in' ? 25.4 : 25, 6, units === 'in' ? '6in' : '150mm');
    top -= 8;
    const whole = { least: tiles.at(-columns)!.cut.least, most: tiles[columns - 1]!.cut.most };
    const size = subtract(whole.most, whole.least);
    const room = { x: paper.width - 30, y: top - 15 };
    const factor = Math.min(room.x / size.x, room.y / size.y);
    const corner = { x: 15, y: 15 + room.y - size.y * factor };
    sheet.within(grown(whole, 1 / factor), add(corner, { x: -1, y: -1 }), factor, () => {
        for (const { role, runs, closed, isLegend } of drawing.lines) {
            if (role !== 'dimension' && !isLegend) sheet.path(runs, closed, { width: (lineStyles[role].width * 0.6) / factor, dashes: [] });
        }
        for (const one of tiles) if (!one.isBlank) drawTileOfIndex(sheet, one, factor);
    });
}

/** How many letters there is room for beside one another: their mean width over the height of the capitals is 0.72 (from memory). */
function lettersAcross({ width }: Tiling['paper'], height: number): number {
    return Math.floor((width - 30) / (height * 0.72));
}

function wordsOnIndex({ cut }: Drawing, tiling: Tiling): readonly string[] {
    const { columns, rows } = tiling;
    const count = sheetsOf(tiling);
    const sheets = count === 1 ? '1 sheet follows' : `${count} sheets follow`;
    return [
        `${sheets}${cut ? ': those through which the curve goes' : ''}, of ${columns} across and ${rows} down. Print at 100 %, not fitted to the page.`,
        'Sheets are named by their row, from the top, and their place in it, from the left: 2-4 is the fourth place of the second row.',
        'Measure the bars first. Cut one of two neighbours along its dashed line, and lay it on the marks of the other.',
        ...(cut
            ? ['What is straight needs no paper: set it out with a square. The foot of each sheet says where its dashed lines lie.']
            : []),
    ];
}

/** The sentences of the legend, unbroken. */
function legendOf({ texts }: Drawing): readonly string[] {
    const lines = texts.filter(({ isLegend, height }) => isLegend && height > barText).map(({ text }) => text);
    return lines.reduce<string[]>((said, line) => {
        if (line.startsWith('    ') && said.length > 0) said.push(`${said.pop()} ${line.trim()}`);
        else said.push(line);
        return said;
    }, []);
}

/** The height of the text at a bar, which is no sentence. */
const barText = 4;

function drawTileOfIndex(sheet: Sheet, one: Tile, factor: number): void {
    const { least, most } = one.cut;
    const corners = [least, { x: most.x, y: least.y }, most, { x: least.x, y: most.y }];
    const runs = corners.map((from, index) => ({ from, to: corners[(index + 1) % 4]!, bulge: 0 }));
    sheet.path(runs, true, { width: 0.13 / factor, dashes: [2 / factor, 1 / factor] });
    const middle = scale(add(least, most), 0.5);
    sheet.say(tileName(one), middle, 4 / factor, 'middle');
}

function grown({ least, most }: Extent, by: number): Extent {
    return { least: { x: least.x - by, y: least.y - by }, most: { x: most.x + by, y: most.y + by } };
}
