/** SVG (2, and readable as 1.1) at full size: one user unit is a millimetre, and y goes down, as the format has it. */
import { type Drawing, type DrawnLine, type DrawnText, extentOf, type LineRole, lineStyles } from '../drawing/index.js';
import type { ArcRun, Point } from '../geometry/index.js';
import { circularSegment, distance } from '../geometry/index.js';

const typeface = 'Helvetica, Arial, Liberation Sans, DejaVu Sans, sans-serif';
/** Height of the capitals over the size of the typeface: that of Helvetica (its font metrics, from memory). */
const capHeight = 0.718;
/** White space around a drawing, in millimetres. */
const margin = 10;

/** A drawing as the text of an SVG file. */
export function writeSvg(drawing: Drawing): string {
    const { least, most } = extentOf(drawing);
    const left = number(least.x - margin);
    const top = number(-most.y - margin);
    const width = number(most.x - least.x + 2 * margin);
    const height = number(most.y - least.y + 2 * margin);
    return [
        `<svg xmlns="http://www.w3.org/2000/svg" width="${width}mm" height="${height}mm" viewBox="${left} ${top} ${width} ${height}">`,
        `<title>${escaped(drawing.title)}</title>`,
        `<style>${styleSheet()}</style>`,
        ...drawing.lines.map(pathOf),
        ...drawing.texts.map(textOf),
        '</svg>',
        '',
    ].join('\n');
}

function styleSheet(): string {
    const rules = (Object.keys(lineStyles) as LineRole[]).map((role) => {
        const { width, dashes } = lineStyles[role];
        return `.${role}{stroke-width:${width}${dashes.length === 0 ? '' : `;stroke-dasharray:${dashes.join(' ')}`}}`;
    });
    return [`path{fill:none;stroke:#000}`, ...rules, `text{font-family:${typeface};fill:#000}`].join('');
}

function pathOf({ role, runs, closed }: DrawnLine): string {
    const from = runs[0]?.from ?? { x: 0, y: 0 };
    return `<path class="${role}" d="M${pair(from)}${runs.map(segment).join('')}${closed ? 'Z' : ''}"/>`;
}

/** Counter-clockwise with y up is sweep 0 with y down. */
function segment({ from, to, bulge }: ArcRun): string {
    if (bulge === 0) return `L${pair(to)}`;
    const chord = distance(from, to);
    const { radius, includedAngle } = circularSegment(chord, (Math.abs(bulge) * chord) / 2);
    return `A${number(radius)} ${number(radius)} 0 ${includedAngle > Math.PI ? 1 : 0} ${bulge > 0 ? 0 : 1} ${pair(to)}`;
}

function textOf({ text, at, height, anchor, turned }: DrawnText): string {
    const place = `x="${number(at.x)}" y="${number(-at.y)}"`;
    const turn = turned ? ` transform="rotate(-90 ${pair(at)})"` : '';
    const end = anchor === 'start' ? '' : ` text-anchor="${anchor}"`;
    return `<text ${place} font-size="${number(height / capHeight)}"${end}${turn}>${escaped(text)}</text>`;
}

function pair({ x, y }: Point): string {
    return `${number(x)} ${number(-y)}`;
}

/** To a ten-millionth of a millimetre, without zeros at the end. */
function number(value: number): string {
    return String(Number(value.toFixed(7)) + 0);
}

function escaped(text: string): string {
    return text.replace(/[&<>]/g, (sign) => ({ '&': '&amp;', '<': '&lt;', '>': '&gt;' })[sign] ?? sign);
}
