/** A part as a closed solid: its wood, less what joints and edges take out. */
import type { Casework, Part, Path } from '../casework/index.js';
import { type Box, boxesShare, type SpacePoint } from '../geometry/index.js';
import type { Feature } from '../joinery/index.js';
import { arrisCutters } from './arris-cutter.js';
import { type Body, blankOf } from './board-solid.js';
import { featureCutter } from './feature-cutter.js';
import type { Solid, Workbench } from './kernel.js';
import { contentOf } from './solid-content.js';

/** A surface of triangles, outward counter-clockwise in the axes of the case; millimetres from the corner of the outermost case. */
export interface TriangleMesh {
    /** x, y and z of each corner in turn. */
    readonly places: Float32Array;
    /** Three corners for each triangle. */
    readonly triangles: Uint32Array;
}

/** One piece of wood of a part, as it is when all is cut. */
export interface SolidBody {
    readonly role: Body['role'];
    /** Declaration id of its material. */
    readonly material: string | undefined;
    /** In cubic millimetres. */
    readonly volume: number;
    readonly centre: SpacePoint;
    readonly mesh: TriangleMesh;
}

/** A part with all its pieces of wood. */
export interface PartSolid {
    readonly part: Path;
    readonly bodies: readonly SolidBody[];
    /** In cubic millimetres. */
    readonly volume: number;
    /** A nosing may stand out of the box of its part. */
    readonly extent: Box;
}

/** A part on the workbench. */
export interface WorkedPart {
    readonly part: Part;
    readonly found: PartSolid;
    readonly solid: Solid;
}

/** Undefined where a size or the line of its front is not known. */
export function workPart(bench: Workbench, casework: Casework, part: Part, features: readonly Feature[]): WorkedPart | undefined {
    const blank = blankOf(bench, casework, part);
    if (!blank) return undefined;
    const cutters = [...arrisCutters(bench, blank), ...features.flatMap((feature) => featureCutter(bench, feature, part.box) ?? [])];
    const bodies = blank.bodies.map((body) => {
        const extent = extentOf(body.solid);
        const near = cutters.filter((cutter) => boxesShare(extentOf(cutter), extent, 0));
        return { ...body, solid: bench.without(body.solid, near) };
    });
    const solid = bodies.length === 1 ? bodies[0]!.solid : bench.keep(bench.kernel.Manifold.union(bodies.map((body) => body.solid)));
    const described = bodies.map(describe);
    const volume = described.reduce((sum, body) => sum + body.volume, 0);
    return { part, solid, found: { part: part.path, bodies: described, volume, extent: extentOf(solid) } };
}

function describe({ role, material, solid }: Body): SolidBody {
    const { vertProperties, triVerts, numProp } = solid.getMesh();
    const places = numProp === 3 ? vertProperties : firstThree(vertProperties, numProp);
    const mesh = { places, triangles: triVerts };
    return { role, material, volume: solid.volume(), centre: contentOf(mesh).centre, mesh };
}

function firstThree(properties: Float32Array, each: number): Float32Array {
    return properties.filter((_, index) => index % each < 3);
}

export function extentOf(solid: Solid): Box {
    const { min, max } = solid.boundingBox();
    return { least: { x: min[0], y: min[1], z: min[2] }, most: { x: max[0], y: max[1], z: max[2] } };
}
