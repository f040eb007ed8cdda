/** What belongs to a case. */
import type { Assembly, Casework, Part } from '../casework/index.js';
import { grouped } from './grouped.js';

const partsByAssembly = new WeakMap<Casework['parts'], ReadonlyMap<string, readonly Part[]>>();

/** The parts of a case and of all cases in it, in the order of building. */
export function partsIn(casework: Casework, assembly: Assembly): readonly Part[] {
    let byAssembly = partsByAssembly.get(casework.parts);
    if (!byAssembly) {
        byAssembly = grouped(casework.parts.values(), ({ assembly: path }) => [path]);
        partsByAssembly.set(casework.parts, byAssembly);
    }
    const inside = new Set([assembly.path]);
    for (const other of casework.assemblies) if (other.inside !== undefined && inside.has(other.inside)) inside.add(other.path);
    if (inside.size === 1) return byAssembly.get(assembly.path) ?? [];
    return [...casework.parts.values()].filter((part) => inside.has(part.assembly));
}
