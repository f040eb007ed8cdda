/** A sheet with what is cut from it, at a scale that it says: grain from left to right, cuts numbered in their order. */
import { type Point, polylineRuns } from '../geometry/index.js';
import type { Drawing, DrawnLine, DrawnText } from './drawing.js';
import { wrapped } from './wrapped-text.js';

/** Rectangles in millimetres at full size; x along the grain, y across it, from the lower left corner of the sheet. */
export interface DrawnRectangle {
    readonly x: number;
    readonly y: number;
    readonly width: number;
    readonly height: number;
}

export interface LayoutPicture {
    readonly title: string;
    /** Under the title. */
    readonly facts: readonly string[];
    readonly sheet: DrawnRectangle;
    /** How long it may be on paper, in millimetres, where that is not what goes on a page: a board is long and narrow. */
    readonly longestOnPaper?: number;
    /** What is taken off each edge beforehand. */
    readonly trim: number;
    readonly blanks: readonly (DrawnRectangle & { readonly mark: string; readonly name: string; readonly size: string })[];
    readonly offcuts: readonly (DrawnRectangle & { readonly size: string })[];
    /** Pieces that are cut further, with the letters that the steps call them by. */
    readonly strips: readonly (DrawnRectangle & { readonly letter: string })[];
    readonly cuts: readonly { readonly from: Point; readonly to: Point; readonly number: number }[];
    /** The cuts in words, in their order. */
    readonly steps: readonly string[];
}

/** Scales of ISO 5455 for making smaller. */
const scales = [5, 10, 20, 50] as const;
/** How long the sheet may be on paper, and how high: a letter or A4 page that lies, less its margins and the words. */
const room = { along: 250, across: 125 };
const [titleHeight, textHeight, smallHeight] = [4, 2.5, 2];
const lineOfText = 1.6;
/** The mean advance of a letter over the height of its capitals. */
const advance = 0.85;
const columns = 2;
/** Of small letters, which are narrower: for breaking lines of words. */
const advanceOfWords = 0.7;

/** The layout on a page. */
export function layoutDrawing(picture: LayoutPicture): Drawing {
    const { sheet, longestOnPaper = room.along } = picture;
    const factor = scales.find((scale) => sheet.width / scale <= longestOnPaper && sheet.height / scale <= room.across) ?? scales.at(-1)!;
    const at = (x: number, y: number): Point => ({ x: x / factor, y: y / factor });
    const lines: DrawnLine[] = [rectangle(sheet, 'core', at)];
    const texts: DrawnText[] = [];
    if (picture.trim > 0) lines.push(rectangle(inside(sheet, picture.trim), 'finished', at));
    for (const blank of picture.blanks) {
        lines.push(rectangle(blank, 'joint', at));
        texts.push(...labelOf(blank, factor));
    }
    for (const offcut of picture.offcuts) {
        lines.push(...crossOf(offcut, at));
        texts.push(...offcutLabel(offcut, factor));
    }
    const lettersAt = new Map<string, number>();
    for (const { x, y, letter } of picture.strips) {
        const before = lettersAt.get(`${x} ${y}`) ?? 0;
        lettersAt.set(`${x} ${y}`, before + letter.length + 1);
        const corner = { x: x / factor + 1 + before * textHeight, y: y / factor + 1 };
        texts.push({ text: letter, at: corner, height: textHeight, anchor: 'start', turned: false });
    }
    for (const cut of picture.cuts) texts.push(numberOf(cut, factor));
    return { title: picture.title, lines, texts: [...texts, ...heading(picture, factor), ...stepsBelow(picture.steps)] };
}

function inside({ x, y, width, height }: DrawnRectangle, by: number): DrawnRectangle {
    return { x: x + by, y: y + by, width: width - 2 * by, height: height - 2 * by };
}

function rectangle({ x, y, width, height }: DrawnRectangle, role: DrawnLine['role'], at: (x: number, y: number) => Point): DrawnLine {
    const corners = [at(x, y), at(x + width, y), at(x + width, y + height), at(x, y + height), at(x, y)];
    return { role, runs: polylineRuns(corners), closed: true };
}

/** An offcut is crossed out. */
function crossOf({ x, y, width, height }: DrawnRectangle, at: (x: number, y: number) => Point): readonly DrawnLine[] {
    const line = (from: Point, to: Point): DrawnLine => ({ role: 'tearOut', runs: polylineRuns([from, to]), closed: false });
    return [line(at(x, y), at(x + width, y + height)), line(at(x, y + height), at(x + width, y))];
}

/** Mark, name and size in the middle of a blank, as far as there is room: turned where only that fits, and at least the mark. */
function labelOf(blank: LayoutPicture['blanks'][number], factor: number): readonly DrawnText[] {
    const [width, height] = [blank.width / factor, blank.height / factor];
    const middle = { x: (blank.x + blank.width / 2) / factor, y: (blank.y + blank.height / 2) / factor };
    for (const words of [[`${blank.mark}  ${blank.name}`, blank.size], [blank.mark, blank.size], [blank.mark]]) {
        for (const turned of [false, true]) {
            const [along, across] = turned ? [height, width] : [width, height];
            const longest = Math.max(...words.map((word) => word.length));
            const fits = longest * textHeight * advance < along - 2 && words.length * textHeight * lineOfText < across - 0.5;
            if (fits) return stacked(words, middle, textHeight, turned);
        }
    }
    return stacked([blank.mark], middle, smallHeight, height > width);
}

/** Beside the middle, where the lines that cross an offcut leave room. */
function offcutLabel(offcut: LayoutPicture['offcuts'][number], factor: number): readonly DrawnText[] {
    const [width, height] = [offcut.width / factor, offcut.height / factor];
    const turned = height > width;
    const [long, short] = turned ? [height, width] : [width, height];
    if (offcut.size.length * smallHeight * advance > long / 2 || short < smallHeight * 4) return [];
    const place = {
        x: (offcut.x + offcut.width * (turned ? 0.25 : 0.5)) / factor,
        y: (offcut.y + offcut.height * (turned ? 0.5 : 0.75)) / factor,
    };
    return stacked([offcut.size], place, smallHeight, turned);
}

/** Lines of text around a point. */
function stacked(words: readonly string[], middle: Point, height: number, turned: boolean): readonly DrawnText[] {
    return words.map((text, index) => {
        const down = ((words.length - 1) / 2 - index) * height * lineOfText - height / 2;
        const at = turned ? { x: middle.x - down, y: middle.y } : { x: middle.x, y: middle.y + down };
        return { text, at, height, anchor: 'middle', turned };
    });
}

/** The number of a cut, at the end of it where the saw begins. */
function numberOf({ from, to, number }: LayoutPicture['cuts'][number], factor: number): DrawnText {
    const runsAlong = from.y === to.y;
    const at = runsAlong ? { x: to.x / factor - 1, y: to.y / factor + 0.6 } : { x: from.x / factor - 0.6, y: from.y / factor + 1 };
    return { text: String(number), at, height: smallHeight, anchor: runsAlong ? 'end' : 'start', turned: !runsAlong };
}

function heading({ title, facts, sheet }: LayoutPicture, factor: number): readonly DrawnText[] {
    const top = sheet.height / factor + 6 + facts.length * textHeight * 2;
    const line = (text: string, y: number, height: number): DrawnText => ({
        text,
        at: { x: 0, y },
        height,
        anchor: 'start',
        turned: false,
    });
    return [
        line(`${title}  (1:${factor})`, top + 3, titleHeight),
        ...facts.map((fact, index) => line(fact, top - (index + 1) * textHeight * 2 + 1.5, textHeight)),
    ];
}

/** The steps under the sheet, in columns; a step stays in one. */
function stepsBelow(steps: readonly string[]): readonly DrawnText[] {
    const letters = Math.floor(room.along / columns / (textHeight * advanceOfWords)) - 4;
    const blocks = steps.map((step) => wrapped(step, letters).map((text, index) => (index === 0 ? text : `      ${text}`)));
    const perColumn = Math.ceil(blocks.flat().length / columns);
    const texts: DrawnText[] = [];
    let [column, row] = [0, 0];
    for (const block of blocks) {
        if (row > 0 && row + block.length > perColumn && column < columns - 1) [column, row] = [column + 1, 0];
        for (const text of block) {
            const at = { x: column * (room.along / columns), y: -8 - row * textHeight * lineOfText };
            texts.push({ text, at, height: textHeight, anchor: 'start', turned: false });
            row++;
        }
    }
    return texts;
}
