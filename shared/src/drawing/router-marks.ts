/** What a router needs to know of a template: arrows for the way with the grain, hatching where it tears out, the bit for its hollows. */
import { innerCorners, leftInCorner, tightestHollow } from '../geometry/index.js';
import type { LineRole } from './drawing.js';
import { type GrainZone, grainZones } from './grain-zones.js';
import type { TemplateShape } from './template-shape.js';

type Draw = (role: LineRole, points: readonly (readonly [along: number, across: number])[]) => void;

const arrowLength = 40;
/** From one arrow to the next, and from the line that is cut to the arrows and the end of the hatching. */
const arrowPitch = 250;
const inside = { arrow: 12, hatchFrom: 1, hatchTo: 7 } as const;
const hatchPitch = 6;

/** The zones of the line that is cut; none where the wood has no grain. */
export function zonesOf(shape: TemplateShape, grain: 'along' | 'across' | 'none'): readonly GrainZone[] {
    const { core, finished, start, length } = shape;
    return grain === 'none' ? [] : grainZones(core ?? finished, start, length, grain);
}

export function drawZones({ core, finished, start, back }: TemplateShape, zones: readonly GrainZone[], draw: Draw): void {
    const line = core ?? finished;
    const depth = (along: number, inward: number) => [along, line.valueAt(start + along).value - back - inward] as const;
    for (const { along, way, tearsOut } of zones) {
        const count = Math.max(1, Math.round((along.to - along.from) / arrowPitch));
        const half = Math.min(arrowLength, 0.6 * (along.to - along.from)) / 2;
        for (let arrow = 0; arrow < count; arrow++) {
            const middle = along.from + ((arrow + 0.5) / count) * (along.to - along.from);
            const ahead = way === 'up' ? 1 : -1;
            const tip = depth(middle + ahead * half, inside.arrow);
            draw('grain', [depth(middle - ahead * half, inside.arrow), tip]);
            const barb = (side: number) => {
                const [place, across] = depth(middle + ahead * (half - 7), inside.arrow);
                return [place, across + side * 2.5] as const;
            };
            draw('grain', [barb(-1), tip, barb(1)]);
        }
        if (!tearsOut) continue;
        for (let place = along.from + hatchPitch; place < along.to; place += hatchPitch) {
            draw('tearOut', [depth(place - hatchPitch / 2, inside.hatchFrom), depth(place, inside.hatchTo)]);
        }
    }
}

/** What the marks mean, and which bit gets into the hollows, a line each. */
export function routerWords(shape: TemplateShape, zones: readonly GrainZone[], say: (millimetres: number) => string): readonly string[] {
    return [...zoneWords(shape, zones), ...hollowWords(shape, say)];
}

function zoneWords({ over }: TemplateShape, zones: readonly GrainZone[]): readonly string[] {
    if (zones.length === 0) return [];
    const feed = over === 'height' ? 'up along the front' : 'to the right along the front';
    if (!zones.some(({ tearsOut }) => tearsOut)) return [`arrows: with the grain, as an ordinary feed goes (${feed})`];
    return [`arrows: with the grain; hatched: an ordinary feed (${feed}) tears out: climb lightly, or turn over`];
}

/** No flush bit is so great, in millimetres of its diameter. Common practice, no source. */
const greatestBit = 100;

/** In a corner in which a small bit, of 1/2in, leaves less than this nothing has to be done by hand: a tenth of a millimetre. */
const leastLeft = 0.1;
const smallBit = 12.7;

function hollowWords({ core, finished, start, length }: TemplateShape, say: (millimetres: number) => string): readonly string[] {
    const line = core ?? finished;
    const over = { from: start, to: start + length };
    const hollow = tightestHollow(line, over);
    const corners = innerCorners(line, over).filter(({ turn }) => leftInCorner(turn ?? 0, smallBit / 2) > leastLeft);
    const cornerWords = corners.map(({ point }) => `inner corner at ${say(point.x - start)}: no bit gets into it, finish it by hand`);
    if (!hollow) return [...cornerWords, ...(corners.length > 0 ? [] : ['no hollow: a flush bit of any size follows the line'])];
    if (2 * hollow.radius > greatestBit) return [...cornerWords, 'the hollow is wide: a flush bit of any size follows it'];
    return [
        ...cornerWords,
        `tightest hollow at ${say(hollow.point.x - start)}: flush bit and bearing of at most ${say(2 * hollow.radius)}`,
    ];
}
