/** The solid that a feature takes out of its part. */
import type { Box, SpacePoint } from '../geometry/index.js';
import type { Feature, FeatureSolid } from '../joinery/index.js';
import { axes, cutsPast, type Solid, type Workbench } from './kernel.js';

/** Sides of a hole: its polygon has the area of its circle. */
const sidesOfHole = 12;
const sidesOfDisc = 48;

/** Undefined for a tongue: that is what its shoulders leave. */
export function featureCutter(bench: Workbench, { does, solid }: Feature, part: Box): Solid | undefined {
    return does === 'tongue' ? undefined : cutterOf(bench, solid, part);
}

function cutterOf(bench: Workbench, solid: FeatureSolid, part: Box): Solid {
    switch (solid.is) {
        case 'box':
            return boxSolid(bench, pastSurfaces(solid.box, part));
        case 'cylinder': {
            const { start, direction, diameter, length, endDiameter = diameter } = solid;
            const grown = sameAreaAsCircle(sidesOfHole) / 2;
            const hole = bench.kernel.Manifold.cylinder(length + cutsPast, diameter * grown, endDiameter * grown, sidesOfHole);
            const [side, other] = squareTo(direction);
            return bench.placed(hole, moved(start, direction, -cutsPast), side, other, direction);
        }
        case 'segment': {
            const { middle, along, into, radius, depth, thickness } = solid;
            const axis = cross(along, into);
            const disc = bench.kernel.Manifold.cylinder(thickness, radius * sameAreaAsCircle(sidesOfDisc), -1, sidesOfDisc);
            const centre = moved(moved(middle, into, depth - radius), axis, -thickness / 2);
            const placed = bench.placed(disc, centre, along, into, axis);
            return bench.keep(placed.trimByPlane([into.x, into.y, into.z], dot(into, middle) - cutsPast));
        }
        case 'prism': {
            const { along, over, section } = solid;
            const drawn = bench.kernel.Manifold.extrude([section.map(({ x, y }) => [x, y] as [number, number])], over.to - over.from);
            const unit = (axis: 'x' | 'y' | 'z', length = 1): SpacePoint => ({ x: 0, y: 0, z: 0, [axis]: length });
            const [first, second] = crossAxes[along];
            return bench.placed(drawn, unit(along, over.from), unit(first), unit(second), unit(along));
        }
    }
}

const crossAxes = { x: ['y', 'z'], y: ['z', 'x'], z: ['x', 'y'] } as const;

export function boxSolid(bench: Workbench, { least, most }: Box): Solid {
    const solid = bench.keep(bench.kernel.Manifold.cube([most.x - least.x, most.y - least.y, most.z - least.z]));
    return bench.keep(solid.translate([least.x, least.y, least.z]));
}

/** A box that ends on a surface of the part goes a little past it. */
function pastSurfaces(cut: Box, part: Box): Box {
    const [least, most] = [{ ...cut.least }, { ...cut.most }];
    for (const axis of axes) {
        if (Math.abs(least[axis] - part.least[axis]) < cutsPast) least[axis] -= cutsPast;
        if (Math.abs(most[axis] - part.most[axis]) < cutsPast) most[axis] += cutsPast;
    }
    return { least, most };
}

/** The radius of a regular polygon with the area of the circle of radius 1: n sin(2 pi / n) / 2 = pi. */
function sameAreaAsCircle(sides: number): number {
    return Math.sqrt((2 * Math.PI) / sides / Math.sin((2 * Math.PI) / sides));
}

function moved(from: SpacePoint, direction: SpacePoint, by: number): SpacePoint {
    return { x: from.x + direction.x * by, y: from.y + direction.y * by, z: from.z + direction.z * by };
}

function dot(a: SpacePoint, b: SpacePoint): number {
    return a.x * b.x + a.y * b.y + a.z * b.z;
}

function cross(a: SpacePoint, b: SpacePoint): SpacePoint {
    return { x: a.y * b.z - a.z * b.y, y: a.z * b.x - a.x * b.z, z: a.x * b.y - a.y * b.x };
}

/** Two directions square to one and to each other. */
function squareTo(direction: SpacePoint): readonly [SpacePoint, SpacePoint] {
    const least = [...axes].sort((a, b) => Math.abs(direction[a]) - Math.abs(direction[b]))[0]!;
    const side = cross(direction, { x: 0, y: 0, z: 0, [least]: 1 });
    const length = Math.hypot(side.x, side.y, side.z);
    const unit = { x: side.x / length, y: side.y / length, z: side.z / length };
    return [unit, cross(direction, unit)];
}
