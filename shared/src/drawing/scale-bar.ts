/** Bars of known length, to be measured before anything is cut: paper shrinks, and printers scale. */
import { add, type Point, polylineRuns } from '../geometry/index.js';
import type { DrawnLine, DrawnText } from './drawing.js';

interface Bars {
    readonly lines: readonly DrawnLine[];
    readonly texts: readonly DrawnText[];
}

const inch = 25.4;
const bars = [
    { step: inch, steps: 10, label: '10in' },
    { step: 25, steps: 10, label: '250mm' },
] as const;

/** A bar of 10 inches and under it one of 250 mm, from a place to the right. */
export function scaleBars(from: Point): Bars {
    const lines: DrawnLine[] = [];
    const texts: DrawnText[] = [];
    bars.forEach(({ step, steps, label }, index) => {
        const left = add(from, { x: 0, y: -index * 15 });
        const along = (x: number, y: number) => add(left, { x, y });
        lines.push({ role: 'dimension', runs: polylineRuns([along(0, 0), along(step * steps, 0)]), closed: false, isLegend: true });
        for (let tick = 0; tick <= steps; tick++) {
            const height = tick % 5 === 0 ? 5 : 3;
            lines.push({
                role: 'dimension',
                runs: polylineRuns([along(tick * step, 0), along(tick * step, height)]),
                closed: false,
                isLegend: true,
            });
        }
        texts.push({ text: label, at: along(step * steps + 4, 0), height: 3.5, anchor: 'start', turned: false, isLegend: true });
    });
    return { lines, texts };
}
