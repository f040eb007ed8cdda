/** Drawings read back and measured by programs that have nothing to do with ours. */
import { execFileSync } from 'node:child_process';
import { mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import * as path from 'node:path';
import DxfParser from 'dxf-parser';
import { chromium } from 'playwright-core';
import { afterAll, beforeAll, expect, test } from 'vitest';
import { templates } from '../../src/documents/templates.js';
import { integral, parallelCurve } from '../../src/geometry/index.js';
import { papers, writeDocument } from '../../src/writers/index.js';
import { tile } from '../../src/writers/tiles.js';
import { bowedBookcase, sweep } from '../drawing/bowed-bookcase.js';

const inch = 25.4;
const made = templates(bowedBookcase, { units: 'in' });
if (made?.is !== 'drawings') throw new Error('no templates');
const folder = mkdtempSync(path.join(tmpdir(), 'casewright-drawings-'));
/** Without what says that only the curve has to be printed: all of it is, in many sheets that join on all sides. */
const whole = { ...made, drawings: made.drawings.map(({ cut: _, ...drawing }) => drawing) };
const tiling = tile(whole.drawings[0]!, 'letter', 'in');
const file = (name: string) => path.join(folder, name);

beforeAll(async () => {
    for (const format of ['dxf', 'svg'] as const) writeFileSync(file(`templates.${format}`), await writeDocument(made, format));
    writeFileSync(file('templates.pdf'), await writeDocument(whole, 'pdf'));
    writeFileSync(file('edge.pdf'), await writeDocument(made, 'pdf'));
});
afterAll(() => rmSync(folder, { recursive: true }));

test.each(['dxf', 'svg', 'pdf'] as const)('%s: the same bytes each time', async (format) => {
    expect(await writeDocument(made, format)).toEqual(await writeDocument(made, format));
});

// ---------------------------------------------------------------- DXF

interface Vertex {
    readonly x: number;
    readonly y: number;
    readonly bulge?: number;
}

/** Of a closed polyline with bulges, by the shoelace formula and circular segments: R = c (1 + b^2) / 4b, angle 4 atan b (DXF reference). */
function measured(vertices: readonly Vertex[]): { readonly area: number; readonly lengths: readonly number[] } {
    let area = 0;
    const lengths = vertices.map((from, index) => {
        const to = vertices[(index + 1) % vertices.length]!;
        const chord = Math.hypot(to.x - from.x, to.y - from.y);
        const bulge = from.bulge ?? 0;
        area += (from.x * to.y - to.x * from.y) / 2;
        if (bulge === 0) return chord;
        const radius = (chord * (1 + bulge * bulge)) / (4 * bulge);
        const angle = 4 * Math.atan(bulge);
        area += (Math.sign(bulge) * (radius * radius * (Math.abs(angle) - Math.sin(Math.abs(angle))))) / 2;
        return radius * angle;
    });
    return { area: Math.abs(area), lengths };
}

const inner = parallelCurve(sweep, inch / 8);
if (!inner.ok) throw new Error(inner.refusal.reason);
const outlines = [
    { layer: 'FINISHED_LINE', curve: sweep, top: 66 * inch },
    { layer: 'CORE_LINE', curve: inner.curve, top: 66 * inch - inch / 8 },
] as const;

test.each(outlines)('$layer of the DXF, read by dxf-parser: area and length of the front to 1e-6', ({ layer, curve, top }) => {
    const dxf = new DxfParser().parseSync(readFileSync(file('templates.dxf'), 'utf8'));
    expect(dxf?.header.$INSUNITS).toBe(4); // millimetres (DXF reference, header)
    const found = dxf?.entities.filter((entity) => entity.type === 'LWPOLYLINE' && entity.layer === layer) ?? [];
    expect(found).toHaveLength(1);
    const { vertices, shape } = found[0] as unknown as { vertices: Vertex[]; shape: boolean };
    expect(shape).toBe(true);
    const { area, lengths } = measured(vertices);
    const under = integral((along) => curve.valueAt(along).value, 0, top, 64);
    expect(Math.abs(area / under - 1)).toBeLessThan(1e-6);
    const front = lengths.slice(0, -3).reduce((sum, length) => sum + length, 0); // the last three are the straight edges
    const exact = integral((along) => Math.hypot(1, curve.slopeAt(along)), 0, top, 64);
    expect(Math.abs(front / exact - 1)).toBeLessThan(1e-6);
});

test("the DXF has no errors for ezdxf's auditor", () => {
    const program = 'import ezdxf, sys; a = ezdxf.readfile(sys.argv[1]).audit(); print(len(a.errors), len(a.fixes))';
    const found = execFileSync('/usr/bin/python3', ['-c', program, file('templates.dxf')], { encoding: 'utf8' });
    expect(found.trim()).toBe('0 0');
});

// ---------------------------------------------------------------- SVG

test('in the SVG, laid out by Chromium, the bars are 10 in and 250 mm long', async () => {
    const browser = await chromium.launch({ executablePath: process.env.CHROMIUM ?? '/usr/bin/chromium', args: ['--no-sandbox'] });
    try {
        const page = await browser.newPage();
        await page.setContent(readFileSync(file('templates.svg'), 'utf8'));
        const widths = await page
            .locator('path.dimension')
            .evaluateAll((paths) => paths.map((one) => one.getBoundingClientRect().width / 96));
        // 96 pixels to the inch (CSS Values and Units 4, section 6.2).
        expect(widths.filter((width) => Math.abs(width - 10) < 0.001)).toHaveLength(1);
        expect(widths.filter((width) => Math.abs(width - 250 / inch) < 0.001)).toHaveLength(1);
    } finally {
        await browser.close();
    }
});

// ---------------------------------------------------------------- PDF

const perMillimetre = 10;

/** Where a row of a page, counted from the top, is dark: from and to in pixels. */
interface Page {
    runsInRow(row: number): readonly (readonly [from: number, to: number])[];
}

/** Some rows of a page drawn by poppler at ten pixels to the millimetre, as a portable graymap. */
function drawn(number: number, top: number, rows: number): Page {
    const width = Math.ceil(tiling.paper.width * perMillimetre);
    const args = [
        '-gray',
        '-r',
        String(perMillimetre * inch),
        '-f',
        String(number),
        '-l',
        String(number),
        '-x',
        '0',
        '-y',
        String(top),
        '-W',
        String(width),
        '-H',
        String(rows),
        file('templates.pdf'),
    ];
    const bytes = execFileSync('pdftoppm', args, { maxBuffer: 1e9 });
    const head = /^P5\s+(\d+)\s+(\d+)\s+255\s/.exec(bytes.subarray(0, 40).toString('latin1'))!;
    expect([Number(head[1]), Number(head[2])]).toEqual([width, rows]);
    const pixels = bytes.subarray(head[0].length);
    return {
        runsInRow: (row) => {
            const runs: (readonly [number, number])[] = [];
            let from: number | undefined;
            for (let column = 0; column <= width; column++) {
                const dark = column < width && pixels[row * width + column]! < 128;
                if (dark && from === undefined) from = column;
                if (!dark && from !== undefined) {
                    runs.push([from, column]);
                    from = undefined;
                }
            }
            return runs;
        },
    };
}

const pageHeight = Math.round(tiling.paper.height * perMillimetre);

test('on a sheet of the PDF, drawn by poppler, the bar at the foot is 3 in long', () => {
    const rows = 250;
    const page = drawn(2, pageHeight - rows, rows);
    const foot = Array.from({ length: rows }, (_, row) => page.runsInRow(row)).flat();
    const longest = Math.max(...foot.map(([from, to]) => to - from));
    // From outside to outside of marks 0.13 mm wide, and a pixel that is partly covered at each end.
    expect(Math.abs(longest / perMillimetre - 3 * inch)).toBeLessThan(0.33);
});

const printed = tiling.tiles.filter(({ isBlank }) => !isBlank);
const neighbour = (of: number, columns: number, rows: number) =>
    printed.findIndex(({ column, row }) => column === printed[of]!.column + columns && row === printed[of]!.row + rows);

test('a template cut at its joins is continuous: the wide lines meet to a tenth of a millimetre', () => {
    // A millimetre over a cut, where neither its dashes nor the names of neighbours are.
    const wideLines = (index: number, y: number) => {
        const row = Math.round(pageHeight - (tiling.corner.y + y - printed[index]!.shown.least.y) * perMillimetre);
        return drawn(index + 2, row, 1)
            .runsInRow(0)
            .filter(([from, to]) => to - from >= 4);
    };
    let lines = 0;
    for (const [index, above] of printed.entries()) {
        const below = neighbour(index, 0, 1);
        if (below < 0) continue;
        const y = above.cut.least.y + 1;
        const [before, after] = [wideLines(index, y), wideLines(below, y)];
        expect(after).toHaveLength(before.length);
        before.forEach(([from], at) => {
            expect(Math.abs(from - after[at]![0])).toBeLessThanOrEqual(1);
        });
        lines += before.length;
    }
    expect(lines).toBeGreaterThan(10);
});

test('sheets side by side join as well: what lies at a cut from top to bottom is on both, at one height', () => {
    // A stripe of a millimetre just right of the cut, which both sheets print: the rows in which anything dark crosses all of it.
    const crossing = (index: number, x: number) => {
        const left = Math.round((tiling.corner.x + x - printed[index]!.shown.least.x) * perMillimetre);
        const page = drawn(index + 2, 0, pageHeight);
        const rows: number[] = [];
        // between the foot and the head of what is shown, where the names of neighbours and the bar are not
        const [first, last] = [20 * perMillimetre, pageHeight - (tiling.corner.y + 12) * perMillimetre];
        for (let row = first; row < last; row++) {
            if (page.runsInRow(row).some(([from, to]) => from <= left && to >= left + perMillimetre)) rows.push(row);
        }
        return rows;
    };
    let rows = 0;
    for (const [index, one] of printed.entries()) {
        const right = neighbour(index, 1, 0);
        if (right < 0) continue;
        const x = one.cut.most.x + 1;
        const [here, there] = [crossing(index, x), crossing(right, x)];
        const isNear = (row: number) => there.some((other) => Math.abs(other - row) <= 1);
        expect(here.filter((row) => !isNear(row))).toEqual([]);
        expect(Math.abs(here.length - there.length)).toBeLessThanOrEqual(4);
        rows += here.length;
    }
    expect(rows).toBeGreaterThan(10);
});

test('papers are those of ISO 216: each the half of the one before, rounded down', () => {
    const sizes = [papers.a0, papers.a1, papers.a2, papers.a3, papers.a4];
    sizes.slice(1).forEach(({ width, height }, index) => {
        expect([height, width]).toEqual([sizes[index]!.width, Math.floor(sizes[index]!.height / 2)]);
    });
});

test('of a template only the sheets are printed through which its curve goes, and each says where it lies', () => {
    const [drawing] = made.drawings;
    const edge = tile(drawing!, 'letter', 'in');
    const printedHere = edge.tiles.filter(({ isBlank }) => !isBlank);
    // 66in on sheets that show 9in of it each, where all of it takes more
    expect(printedHere).toHaveLength(8);
    expect(printed.length).toBeGreaterThan(12);
    for (let along = 0; along <= 66; along += 0.5) {
        const at = { x: sweep.valueAt(along * inch).value, y: along * inch };
        const shows = printedHere.filter(
            ({ cut: { least, most } }) => least.x <= at.x && at.x <= most.x && least.y <= at.y && at.y <= most.y,
        );
        expect(shows.length).toBeGreaterThan(0);
    }
    // cut at quarters of an inch, at none of which an edge of the part lies
    for (const { cut } of printedHere)
        for (const at of [cut.least.x, cut.most.y]) expect((Math.abs(at / (inch / 4)) + 1e-9) % 2).toBeCloseTo(1, 6);
    const text = execFileSync('pdftotext', ['-layout', file('edge.pdf'), '-'], { encoding: 'utf8' });
    expect(text).toContain('8 sheets follow: those through which the curve goes');
    const { least, most } = printedHere[0]!.cut;
    const say = (millimetres: number) => `${Math.floor(millimetres / inch)} ${(millimetres / inch) % 1 > 0.5 ? '3/4' : '1/4'}in`;
    expect(text.replace(/\s+/g, ' ')).toContain(`dashed lines at ${say(least.x)} and ${say(most.x)} from the back edge;`);
    // the legend is on the first page, and not cut up on the sheets
    expect(text.match(/wide line: core, cut here/g)).toHaveLength(1);
});
