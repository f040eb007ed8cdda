/** What a round or a chamfer takes off the arrises of an edge. */
import type { EdgeName } from '../casework/index.js';
import { magnitude, type Point, subtract } from '../geometry/index.js';
import { type BoardFrame, inSpace } from './board-frame.js';
import { type Blank, thicknessOf } from './board-solid.js';
import type { Solid, Workbench } from './kernel.js';
import { millimetres } from './strip.js';

/** Past the surface and past the ends of the edge, so that no film is left. */
const past = 1;

/** Chords of a quarter of a circle. */
const chords = 6;

/** By how much further out the corners of the chords lie than the circle, so that they hold as much: n sin(pi / 2n) / 2 = pi / 4. */
const sameArea = Math.sqrt(Math.PI / 2 / chords / Math.sin(Math.PI / 2 / chords));

/** A place on an edge and the way into the board from it, on the board. */
interface EdgePlace {
    readonly at: Point;
    readonly inward: Point;
}

/** The solids that rounds and chamfers take off a part. A board that is bent keeps its arrises. */
export function arrisCutters(bench: Workbench, blank: Blank): readonly Solid[] {
    const { part, frame, strips } = blank;
    if (part.bent) return [];
    return part.edges.flatMap((edge) => {
        const outer = strips.findLast((strip) => strip.edge === edge.name);
        const over = outer?.over ?? thicknessOf(part);
        const path = pathAlong(blank, edge.name);
        return edge.steps.flatMap((step) => {
            const size = millimetres(step.amount);
            if ((step.does !== 'round' && step.does !== 'chamfer') || size === undefined || !path || !(size > 0)) return [];
            const held = Math.min(size, (over.to - over.from) / 2);
            const profile = step.does === 'round' ? roundProfile(held) : chamferProfile(held);
            const lean = edge.name === 'front' ? (blank.front?.lean ?? 0) : 0;
            const { from, to } = thicknessOf(part);
            const holds = blank.front?.deeper === 'high' ? to : from;
            const way = { bench, frame, path, profile, lean, holds };
            return [swept({ ...way, face: over.to, into: -1 }), swept({ ...way, face: over.from, into: 1 })];
        });
    });
}

/** From the arris: how far in from the edge, and how far in from the face. The first corner sees all others. */
function roundProfile(radius: number): readonly Point[] {
    const arc = Array.from({ length: chords + 1 }, (_, index) => {
        const angle = (Math.PI / 2) * (index / chords);
        return { x: radius * (1 - sameArea * Math.sin(angle)), y: radius * (1 - sameArea * Math.cos(angle)) };
    });
    return [{ x: -past, y: -past }, { x: radius, y: -past }, ...arc, { x: -past, y: radius }];
}

function chamferProfile(width: number): readonly Point[] {
    return [
        { x: -past, y: -past },
        { x: width, y: -past },
        { x: width, y: 0 },
        { x: 0, y: width },
        { x: -past, y: width },
    ];
}

/** Along an edge from end to end, with the ways in square to it. Undefined for an edge that has no line. */
function pathAlong({ part, frame, front }: Blank, edge: EdgeName): readonly EdgePlace[] | undefined {
    const { least, most } = part.box;
    const along = { from: least[frame.along] - past, to: most[frame.along] + past };
    const across = { from: least[frame.across] - past, to: most[frame.across] + past };
    if (edge === 'front' && front) return inwardsOf(front.pointsOver(along, 0));
    const { axis, end } = axisOf(edge);
    const sign = end === 'least' ? 1 : -1;
    const place = part.box[end][axis];
    if (axis === frame.along) {
        const inward = { x: sign, y: 0 };
        return [across.from, across.to].map((y) => ({ at: { x: place, y }, inward }));
    }
    if (axis !== frame.across) return undefined;
    return [along.from, along.to].map((x) => ({ at: { x, y: place }, inward: { x: 0, y: sign } }));
}

function axisOf(edge: EdgeName): { readonly axis: 'x' | 'y' | 'z'; readonly end: 'least' | 'most' } {
    const axis = edge === 'left' || edge === 'right' ? 'x' : edge === 'back' || edge === 'front' ? 'y' : 'z';
    return { axis, end: edge === 'left' || edge === 'back' || edge === 'bottom' ? 'least' : 'most' };
}

/** At each point of a front the way in is square to the chords before and after it. */
function inwardsOf(points: readonly Point[] | undefined): readonly EdgePlace[] | undefined {
    return points?.map((at, index) => {
        const chord = subtract(points[Math.min(index + 1, points.length - 1)]!, points[Math.max(index - 1, 0)]!);
        const length = magnitude(chord);
        return { at, inward: { x: chord.y / length, y: -chord.x / length } };
    });
}

interface Sweep {
    readonly bench: Workbench;
    readonly frame: BoardFrame;
    readonly path: readonly EdgePlace[];
    readonly profile: readonly Point[];
    readonly lean: number;
    /** The face at which the path lies. */
    readonly holds: number;
    /** The face of the arris, and which way from it the wood lies. */
    readonly face: number;
    readonly into: 1 | -1;
}

/** A profile drawn along a path, closed by fans at its ends. */
function swept({ bench, frame, path, profile, lean, holds, face, into }: Sweep): Solid {
    const corners = profile.length;
    const places = path.flatMap(({ at, inward }) =>
        profile.map(({ x: inset, y: below }) => {
            const t = face + into * below;
            return inSpace(frame, at.x + inward.x * inset, at.y + inward.y * inset + lean * (t - holds), t);
        }),
    );
    const triangles: [number, number, number][] = [];
    for (let ring = 0; ring + 1 < path.length; ring++) {
        for (let corner = 0; corner < corners; corner++) {
            const next = (corner + 1) % corners;
            const [a, b] = [ring * corners + corner, ring * corners + next];
            triangles.push([a, b, a + corners], [b, b + corners, a + corners]);
        }
    }
    const last = (path.length - 1) * corners;
    for (let corner = 1; corner + 1 < corners; corner++) {
        triangles.push([0, corner + 1, corner], [last, last + corner, last + corner + 1]);
    }
    const outward = signedVolume(places, triangles) > 0 ? triangles : triangles.map(([a, b, c]) => [a, c, b]);
    const { Manifold, Mesh } = bench.kernel;
    const vertProperties = Float32Array.from(places.flatMap(({ x, y, z }) => [x, y, z]));
    return bench.keep(Manifold.ofMesh(new Mesh({ numProp: 3, vertProperties, triVerts: Uint32Array.from(outward.flat()) })));
}

function signedVolume(
    places: readonly { readonly x: number; readonly y: number; readonly z: number }[],
    triangles: readonly (readonly [number, number, number])[],
): number {
    const origin = places[0]!;
    const from = (index: number) => {
        const { x, y, z } = places[index]!;
        return { x: x - origin.x, y: y - origin.y, z: z - origin.z };
    };
    return triangles.reduce((sum, [i, j, k]) => {
        const [a, b, c] = [from(i), from(j), from(k)];
        return sum + a.x * (b.y * c.z - b.z * c.y) + a.y * (b.z * c.x - b.x * c.z) + a.z * (b.x * c.y - b.y * c.x);
    }, 0);
}
