/** The wood of a part before anything is cut into it: its board or layers, and what is glued on its edges. */
import type { Casework, EdgeName, Part } from '../casework/index.js';
import type { Interval, Point } from '../geometry/index.js';
import { real } from '../quantity/index.js';
import { type BoardFrame, frameOf, inSpace } from './board-frame.js';
import { boxSolid } from './feature-cutter.js';
import { frontOf, type PartFront } from './front-line.js';
import type { Solid, Workbench } from './kernel.js';
import { type GluedStrip, gluedStrips } from './strip.js';

/** One piece of wood of a part. */
export interface Body {
    readonly role: 'board' | 'layer' | 'band' | 'nosing';
    /** Declaration id. */
    readonly material: string | undefined;
    readonly solid: Solid;
}

/** What a part is made of while it is worked on. */
export interface Blank {
    readonly part: Part;
    readonly frame: BoardFrame;
    readonly front: PartFront | undefined;
    readonly strips: readonly GluedStrip[];
    readonly bodies: readonly Body[];
}

const faceOfEdge: Readonly<Record<EdgeName, { readonly axis: 'x' | 'y' | 'z'; readonly end: 'least' | 'most' }>> = {
    left: { axis: 'x', end: 'least' },
    right: { axis: 'x', end: 'most' },
    back: { axis: 'y', end: 'least' },
    front: { axis: 'y', end: 'most' },
    bottom: { axis: 'z', end: 'least' },
    top: { axis: 'z', end: 'most' },
};

/** The wood of a part; undefined where a size or the line of its front is not known. */
export function blankOf(bench: Workbench, casework: Casework, part: Part): Blank | undefined {
    const front = frontOf(casework, part);
    const strips = gluedStrips(casework, part);
    if (front === 'unknown' || !strips || part.layers.some(({ box }) => !box)) return undefined;
    const frame = frameOf(part);
    const shaping = { bench, part, frame, front };
    const reach = part.bent ? thicknessOf(part) : reachOf(part, strips);
    let rest = wholeBoard(shaping, reach);
    if (!rest) return undefined;
    const glued: Body[] = [];
    // one glued on later covers the ends of those before it: they are taken off again from the last
    const taken = new Map<EdgeName, number>();
    for (const strip of strips.toReversed()) {
        const inset = (taken.get(strip.edge) ?? 0) + strip.takes;
        taken.set(strip.edge, inset);
        const parted = partedAt(shaping, rest, strip, inset);
        if (!parted) return undefined;
        glued.unshift({ role: strip.does, material: strip.material, solid: asGlued(shaping, parted.strip, strip) });
        rest = parted.rest;
    }
    const boards = boardsOf(shaping, rest);
    const gaps = gapsOfLayers(shaping);
    const onWood = glued.map((body) => ({ ...body, solid: bench.without(body.solid, gaps) }));
    return boards && { part, frame, front, strips, bodies: [...boards, ...onWood] };
}

/** Where a layer stops short, to leave room for another part: no strip is glued over that either. */
function gapsOfLayers({ bench, part, frame }: Shaping): readonly Solid[] {
    if (part.bent) return [];
    return part.layers.flatMap(({ box }) =>
        [frame.along, frame.across].flatMap((axis) =>
            (['least', 'most'] as const).flatMap((end) => {
                if (!box || box[end][axis] === part.box[end][axis]) return [];
                const beyond = part.box[end][axis] + (end === 'least' ? -faraway : faraway);
                const [from, to] = end === 'least' ? [beyond, box.least[axis]] : [box.most[axis], beyond];
                return [boxSolid(bench, { least: { ...box.least, [axis]: from }, most: { ...box.most, [axis]: to } })];
            }),
        ),
    );
}

interface Shaping {
    readonly bench: Workbench;
    readonly part: Part;
    readonly frame: BoardFrame;
    readonly front: PartFront | undefined;
}

/** The stretch through the board that all its strips lie within. */
function reachOf(part: Part, strips: readonly GluedStrip[]): Interval {
    const { from, to } = thicknessOf(part);
    return { from: Math.min(from, ...strips.map(({ over }) => over.from)), to: Math.max(to, ...strips.map(({ over }) => over.to)) };
}

export function thicknessOf(part: Part): Interval {
    const { through } = frameOf(part);
    return { from: part.box.least[through], to: part.box.most[through] };
}

/** All of the finished outline, as thick as the highest strip is. */
function wholeBoard({ bench, part, frame, front }: Shaping, over: Interval): Solid | undefined {
    const { least, most } = part.box;
    const along = { from: least[frame.along], to: most[frame.along] };
    const [back, deep] = [least[frame.across], most[frame.across]];
    // an end that enters another part goes on no deeper than its board is said to be
    const line = front
        ? front.pointsOver(along, 0)?.map(({ x, y }) => ({ x, y: Math.min(y, deep) }))
        : [along.from, along.to].map((x) => ({ x, y: deep }));
    const lean = front?.lean ?? 0;
    // only the front leans: the back is sawn off square
    const spare = lean === 0 ? 0 : faraway;
    const behind = part.bent ? front?.pointsOver(along, boardThickness(part)) : [along.from, along.to].map((x) => ({ x, y: back - spare }));
    if (!line || !behind) return undefined;
    const solid = drawnOut({ bench, part, frame, front }, [...behind, ...line.toReversed()], over, lean);
    return lean === 0 ? solid : bench.beyond(solid, frame.across, back, 'greater');
}

/** Further than any board reaches from its edge, in millimetres. */
const faraway = 1000;

function boardThickness(part: Part): number {
    return part.layers.reduce((sum, { thickness }) => sum + (thickness ? real.toNumber(thickness.quantity.value) : 0), 0);
}

/** A polygon on the board as a solid, over a stretch through it; it leans forward on the way about the face at which its line holds. */
function drawnOut({ bench, part, frame, front }: Shaping, polygon: readonly Point[], over: Interval, lean: number): Solid {
    const { from, to } = thicknessOf(part);
    const holds = front?.deeper === 'high' ? to : from;
    const solid = bench.kernel.Manifold.extrude([polygon.map(({ x, y }) => [x, y] as [number, number])], over.to - over.from);
    const start = inSpace(frame, 0, lean * (over.from - holds), over.from);
    return bench.placed(solid, start, inSpace(frame, 1, 0, 0), inSpace(frame, 0, 1, 0), inSpace(frame, 0, lean, 1));
}

/** Saws a strip off an edge. */
function partedAt(shaping: Shaping, solid: Solid, strip: GluedStrip, inset: number): { rest: Solid; strip: Solid } | undefined {
    const { bench, part, frame, front } = shaping;
    const { axis, end } = faceOfEdge[strip.edge];
    if (strip.edge === 'front' && front && !part.bent) {
        const { least, most } = part.box;
        const room = { from: least[frame.along] - 1, to: most[frame.along] + 1 };
        const line = front.pointsOver(room, inset);
        if (!line) return undefined;
        const far = least[frame.across] - faraway;
        const polygon = [{ x: room.from, y: far }, { x: room.to, y: far }, ...line.toReversed()];
        const through = reachOf(part, [strip]);
        // a nosing is glued on a square edge and bevelled itself
        const lean = strip.does === 'nosing' ? 0 : front.lean;
        const behind = drawnOut(shaping, polygon, { from: through.from - 1, to: through.to + 1 }, lean);
        const [rest, sawn] = bench.keepAll(solid.split(behind));
        return { rest, strip: sawn };
    }
    const place = part.box[end][axis] + (end === 'least' ? inset : -inset);
    const [inner, outer] = end === 'least' ? (['greater', 'lesser'] as const) : (['lesser', 'greater'] as const);
    return { rest: bench.beyond(solid, axis, place, inner), strip: bench.beyond(solid, axis, place, outer) };
}

/** A strip as high as it is, and cut off where its board enters another part and it cannot. */
function asGlued({ bench, part, frame }: Shaping, solid: Solid, strip: GluedStrip): Solid {
    let glued = part.bent ? solid : bench.between(solid, frame.through, strip.over.from, strip.over.to);
    for (const [face, depth] of strip.stopsShort) {
        const { axis, end } = faceOfEdge[face];
        const place = part.box[end][axis] + (end === 'least' ? depth : -depth);
        glued = bench.beyond(glued, axis, place, end === 'least' ? 'greater' : 'lesser');
    }
    return glued;
}

/** The board, or the layers it is glued up from. */
function boardsOf(shaping: Shaping, rest: Solid): readonly Body[] | undefined {
    const { bench, part, frame } = shaping;
    if (part.bent) return bentLayers(shaping, rest);
    const role = part.layers.length > 1 ? 'layer' : 'board';
    return part.layers.map(({ material, box }) => {
        let solid = rest;
        for (const axis of [frame.through, frame.along, frame.across]) {
            const isWhole = (end: 'least' | 'most') => axis !== frame.through && box![end][axis] === part.box[end][axis];
            if (!isWhole('least')) solid = bench.beyond(solid, axis, box!.least[axis], 'greater');
            if (!isWhole('most')) solid = bench.beyond(solid, axis, box!.most[axis], 'lesser');
        }
        return { role, material, solid };
    });
}

/** The layers of a bent board lie one behind the other, the first in front. */
function bentLayers(shaping: Shaping, rest: Solid): readonly Body[] | undefined {
    const { bench, part, front, frame } = shaping;
    const { least, most } = part.box;
    const along = { from: least[frame.along] - 1, to: most[frame.along] + 1 };
    const bodies: Body[] = [];
    let [left, inset] = [rest, 0];
    for (const [index, { material, thickness }] of part.layers.entries()) {
        const role = part.layers.length > 1 ? 'layer' : 'board';
        if (index === part.layers.length - 1) return [...bodies, { role, material, solid: left }];
        inset += real.toNumber(thickness!.quantity.value);
        const line = front?.pointsOver(along, inset);
        if (!line) return undefined;
        const far = Math.min(...line.map(({ y }) => y)) - faraway;
        const behind = drawnOut(
            shaping,
            [{ x: along.from, y: far }, { x: along.to, y: far }, ...line.toReversed()],
            { from: least.z - 1, to: most.z + 1 },
            0,
        );
        const [inner, outer] = bench.keepAll(left.split(behind));
        bodies.push({ role, material, solid: outer });
        left = inner;
    }
    return bodies;
}
