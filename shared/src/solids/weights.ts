/** What parts and cases weigh as they are when all is cut, and where the middle of it is. */
import type { Assembly, Casework, Path } from '../casework/index.js';
import type { SpacePoint } from '../geometry/index.js';
import { dimension, real } from '../quantity/index.js';
import { densityOf } from '../strength/index.js';
import type { PartSolid } from './part-solid.js';

/** Kilograms, and millimetres from the corner of the outermost case. */
export interface SolidWeight {
    readonly mass: number;
    readonly centre: SpacePoint;
}

/** The weight of a part; undefined where a density is not known. */
export function weightOfPart(casework: Casework, { bodies }: PartSolid): SolidWeight | undefined {
    const weights: SolidWeight[] = [];
    for (const { material, volume, centre } of bodies) {
        const density = densityOf(casework, material === undefined ? undefined : casework.things.get(material));
        if (density?.dimension !== dimension.density) return undefined;
        weights.push({ mass: real.toNumber(density.value) * volume, centre });
    }
    return together(weights);
}

/** The weight of one case with all that is in it; undefined where that of one of its parts is not known. */
export function weightOfAssembly(
    casework: Casework,
    assembly: Assembly,
    weights: ReadonlyMap<Path, SolidWeight | undefined>,
): SolidWeight | undefined {
    const inside = new Set([assembly.path]);
    for (const other of casework.assemblies) if (other.inside !== undefined && inside.has(other.inside)) inside.add(other.path);
    const own: SolidWeight[] = [];
    for (const part of casework.parts.values()) {
        if (!inside.has(part.assembly)) continue;
        const weight = weights.get(part.path);
        if (!weight) return undefined;
        own.push(weight);
    }
    return together(own);
}

function together(weights: readonly SolidWeight[]): SolidWeight | undefined {
    const mass = weights.reduce((sum, weight) => sum + weight.mass, 0);
    if (!(mass > 0)) return undefined;
    const along = (axis: 'x' | 'y' | 'z') => weights.reduce((sum, weight) => sum + weight.mass * weight.centre[axis], 0) / mass;
    return { mass, centre: { x: along('x'), y: along('y'), z: along('z') } };
}
