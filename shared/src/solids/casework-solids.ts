/** All parts of a casework as solids, what they weigh, and where they do not fit. */
import type { Assembly, Casework, Path } from '../casework/index.js';
import type { Feature, FeatureKind, Joinery } from '../joinery/index.js';
import { type SolidKernel, Workbench } from './kernel.js';
import { type Collision, collisionsAmong, type OpenJoint, openJointsAmong } from './meetings.js';
import { type PartSolid, type WorkedPart, workPart } from './part-solid.js';
import { type SolidWeight, weightOfAssembly, weightOfPart } from './weights.js';

export interface CaseworkSolids {
    /** A part whose sizes are not all known has none. */
    readonly parts: ReadonlyMap<Path, PartSolid>;
    /** By the path of the part. */
    readonly weights: ReadonlyMap<Path, SolidWeight>;
    /** One of each case, with all that is in it, by its path. */
    readonly caseWeights: ReadonlyMap<Path, SolidWeight>;
    readonly collisions: readonly Collision[];
    readonly openJoints: readonly OpenJoint[];
}

export interface SolidOptions {
    /**
     * Whether screw holes, slots of biscuits and the like are cut. A hole lets no part in: where parts meet it changes nothing, and without
     * them it is several times as fast. They are cut where nothing is said.
     */
    readonly holes?: 'cut' | 'left out';
    /** Whether it is looked where the parts meet. It is where nothing is said. */
    readonly meetings?: 'found' | 'left out';
}

const holes: ReadonlySet<FeatureKind> = new Set([
    'pilot hole',
    'clearance hole',
    'counterbore',
    'countersink',
    'dowel hole',
    'pin hole',
    'bolt hole',
    'pocket',
    'biscuit slot',
] satisfies FeatureKind[]);

/**
 * Makes every part as a solid and looks where they meet, one outermost case after the other.
 * @param joinery the features that are cut into them
 */
export function solidsOf(casework: Casework, joinery: Joinery, kernel: SolidKernel, options: SolidOptions = {}): CaseworkSolids {
    const isCut = ({ does }: Feature) => options.holes !== 'left out' || !holes.has(does);
    const parts = new Map<Path, PartSolid>();
    const collisions: Collision[] = [];
    const openJoints: OpenJoint[] = [];
    for (const paths of partsByOutermost(casework).values()) {
        const bench = new Workbench(kernel);
        try {
            const worked = new Map<Path, WorkedPart>();
            for (const path of paths) {
                const part = workPart(bench, casework, casework.parts.get(path)!, (joinery.byPart.get(path)?.features ?? []).filter(isCut));
                if (part) worked.set(path, part);
            }
            for (const [path, { found }] of worked) parts.set(path, found);
            if (options.meetings === 'left out') continue;
            collisions.push(...collisionsAmong(bench, [...worked.values()]));
            openJoints.push(...openJointsAmong(casework, worked));
        } finally {
            bench.clear();
        }
    }
    const weights = known([...parts].map(([path, part]) => [path, weightOfPart(casework, part)]));
    const caseWeights = known(casework.assemblies.map((assembly) => [assembly.path, weightOfAssembly(casework, assembly, weights)]));
    return { parts, weights, caseWeights, collisions, openJoints };
}

function known<Value>(entries: readonly (readonly [Path, Value | undefined])[]): ReadonlyMap<Path, Value> {
    return new Map(entries.flatMap(([path, value]) => (value === undefined ? [] : [[path, value] as const])));
}

/** Only parts of one outermost case have their places from the same corner. */
function partsByOutermost({ assemblies, parts }: Casework): ReadonlyMap<Path, readonly Path[]> {
    const byPath = new Map(assemblies.map((assembly) => [assembly.path, assembly]));
    const outermost = (assembly: Assembly): Path => {
        const outside = assembly.inside === undefined ? undefined : byPath.get(assembly.inside);
        return outside ? outermost(outside) : assembly.path;
    };
    const found = new Map<Path, Path[]>();
    for (const { path, assembly: own } of parts.values()) {
        const assembly = byPath.get(own);
        const key = assembly ? outermost(assembly) : own;
        const list = found.get(key) ?? [];
        found.set(key, list);
        list.push(path);
    }
    return found;
}
