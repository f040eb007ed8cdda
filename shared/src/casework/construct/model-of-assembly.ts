/** A case as the model shows it: its room as written, and its size over all. */
import { type Box, boxBetween } from '../../geometry/index.js';
import { dimension } from '../../quantity/index.js';
import type { Assembly, Axis } from '../model/casework.js';
import type { Measure } from '../model/measure.js';
import type { CaseBuild } from './case-build.js';
import { evaluateMeasure, expectLength } from './evaluate.js';
import { axes, facesOfAxis } from './kinds.js';
import { larger, minus, numberOf, smaller } from './measures.js';
import type { PlacedPart } from './placed-part.js';
import { noOne } from './room.js';

const nameOfAxis = { x: 'width', y: 'depth', z: 'height' } as const;

export function modelOfAssembly(build: CaseBuild, count: number, extent: Box | undefined): Assembly {
    const ends = axes.map((axis) => {
        const { lo, hi } = facesOfAxis[axis];
        return [build.room.face(lo, noOne)?.measure, build.room.face(hi, noOne)?.measure] as const;
    });
    const size = (index: number, axis: Axis): Measure | undefined => {
        const [lo, hi] = ends[index] ?? [];
        return minus(hi, lo, { kind: 'between', about: [`the case's ${facesOfAxis[axis].lo}`, `the case's ${facesOfAxis[axis].hi}`] });
    };
    const own = roomBox(ends);
    // the room is turned over with the case that it is in
    const room = own && build.parent ? build.parent.mirror.box(own) : own;
    const [anchor, push] = [anchorOf(build), pushOf(build)];
    return {
        path: build.path,
        name: build.name,
        kind: build.declaration.kind,
        count,
        mirrored: build.mirror.isTurned,
        width: size(0, 'x'),
        depth: size(1, 'y'),
        height: size(2, 'z'),
        room,
        extent: extent ?? room ?? boxBetween({ x: 0, y: 0, z: 0 }, { x: 0, y: 0, z: 0 }),
        overall: { width: overall(build, 'x'), depth: overall(build, 'y'), height: overall(build, 'z') },
        parts: build.parts.filter((part) => !part.isAssembly).map((part) => part.path),
        span: build.span,
        ...(build.parent ? { inside: build.parent.path } : {}),
        ...(anchor ? { anchor } : {}),
        ...(push ? { push } : {}),
        ...(build.declaration.doc === undefined ? {} : { doc: build.declaration.doc }),
    };
}

/** `anchor 64in high` */
function anchorOf(build: CaseBuild): Measure | undefined {
    const value = build.declaration.phrases.properties.find(({ name }) => name === 'anchor')?.value;
    const height = value?.is === 'dimensions' ? value.items[0]?.value : undefined;
    return height && expectLength(build.construction, evaluateMeasure(build.construction, height, build.scope), height.span);
}

/** `push 50 lbf` */
function pushOf(build: CaseBuild): Measure | undefined {
    const value = build.declaration.phrases.properties.find(({ name }) => name === 'push')?.value;
    const push = value && evaluateMeasure(build.construction, value, build.scope);
    return push?.quantity.dimension === dimension.force ? push : undefined;
}

function roomBox(ends: readonly (readonly [Measure | undefined, Measure | undefined])[]): Box | undefined {
    const [x, y, z] = ends.map(([lo, hi]) => [numberOf(lo), numberOf(hi)] as const);
    if (!x || !y || !z || [...x, ...y, ...z].some(Number.isNaN)) return undefined;
    return boxBetween({ x: x[0], y: y[0], z: z[0] }, { x: x[1], y: y[1], z: z[1] });
}

/** From the part that stands out most on one side to the one that does on the other. */
function overall(build: CaseBuild, axis: Axis): Measure | undefined {
    let [low, high]: [Measure | undefined, Measure | undefined] = [undefined, undefined];
    let [lowest, highest] = ['', ''];
    for (const part of partsOf(build)) {
        const extent = part.extents.value?.[axis];
        if (!extent?.lo.measure || !extent.hi.measure) continue;
        const nextLow: Measure | undefined = low ? smaller(low, extent.lo.measure) : extent.lo.measure;
        const nextHigh: Measure | undefined = high ? larger(high, extent.hi.measure) : extent.hi.measure;
        if (nextLow !== low) [low, lowest] = [nextLow, part.name];
        if (nextHigh !== high) [high, highest] = [nextHigh, part.name];
    }
    return minus(high, low, { kind: 'measured', about: [`the ${nameOfAxis[axis]} over all`, lowest, highest] });
}

function partsOf(build: CaseBuild): readonly PlacedPart[] {
    return build.parts.flatMap((part) => (part.nested ? [part, ...partsOf(part.nested)] : [part]));
}
