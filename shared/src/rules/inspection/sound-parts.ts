/** Parts that a rule may reason about: every size is known and something is left of each. Others have been reported at their origin. */
import type { Assembly, Casework, Measure, Part, Path, Size } from '../../casework/index.js';
import { tolerance } from '../../geometry/index.js';
import { real } from '../../quantity/index.js';

/** The value of a length in mm, as a plain number for comparisons within a tolerance. */
export function millimetresOf(measure: Measure): number {
    return real.toNumber(measure.quantity.value);
}

/** Whether a length is known and more than the fit tolerance. */
export function isSomething(measure: Measure | undefined): measure is Measure {
    return measure !== undefined && millimetresOf(measure) > tolerance.fit;
}

const sound = new WeakMap<Part, boolean>();

export function isSound(part: Part): boolean {
    let is = sound.get(part);
    if (is === undefined) {
        is = isWhole(part.sizes.finished) && hasPlace(part);
        sound.set(part, is);
    }
    return is;
}

function isWhole({ length, width, thickness }: Size): boolean {
    return isSomething(length) && isSomething(width) && isSomething(thickness);
}

function hasPlace({ box: { least, most } }: Part): boolean {
    return [least.x, least.y, least.z, most.x, most.y, most.z].every(Number.isFinite);
}

/** The sound parts, case by outermost case: only within one of these do boxes share a corner and so compare. In the order of building. */
export function soundPartsByCase(casework: Casework): readonly (readonly Part[])[] {
    const outermost = outermostCases(casework.assemblies);
    const found = new Map<Path, Part[]>();
    for (const part of casework.parts.values()) {
        if (!isSound(part)) continue;
        const home = outermost.get(part.assembly) ?? part.assembly;
        const parts = found.get(home);
        if (parts) parts.push(part);
        else found.set(home, [part]);
    }
    return [...found.values()];
}

/** The outermost case of each case; one that is inside none is its own. */
export function outermostCases(assemblies: readonly Assembly[]): ReadonlyMap<Path, Path> {
    const inside = new Map(assemblies.map((assembly) => [assembly.path, assembly.inside]));
    const outermost = new Map<Path, Path>();
    for (const { path } of assemblies) {
        let home = path;
        for (let next = inside.get(home); next !== undefined; next = inside.get(home)) home = next;
        outermost.set(path, home);
    }
    return outermost;
}
