import * as path from 'node:path';
import type { Import } from './imports.js';

/**
 * Cycles between the folders of the importing files, each as one line that names an import for every step.
 * A folder's index.ts counts as a place of its own: it is a front door, which gathers what lies behind it.
 */
export function folderCycles(imports: readonly Import[]): string[] {
    const steps = new Map<string, Map<string, Import>>();
    for (const found of imports) {
        const [from, to] = [placeOf(found.from), found.target === undefined ? undefined : placeOf(found.target)];
        if (to !== undefined && to !== from) {
            const outgoing = steps.get(from) ?? new Map<string, Import>();
            outgoing.set(to, outgoing.get(to) ?? found);
            steps.set(from, outgoing);
        }
    }
    const cycles = new Map<string, string>();
    for (const start of [...steps.keys()].sort()) {
        const cycle = shortestWayBack(start, steps);
        if (cycle !== undefined) {
            const places = cycle.map(({ from }) => placeOf(from));
            const key = places.sort().join();
            cycles.set(
                key,
                cycles.get(key) ?? cycle.map(({ from, line, specifier }) => `${from}:${line} imports ${specifier}`).join(', then '),
            );
        }
    }
    return [...cycles.values()];
}

function placeOf(file: string): string {
    return path.basename(file) === 'index.ts' ? file : path.dirname(file);
}

function shortestWayBack(start: string, steps: ReadonlyMap<string, ReadonlyMap<string, Import>>): Import[] | undefined {
    const ways: { at: string; way: Import[] }[] = [{ at: start, way: [] }];
    const seen = new Set<string>();
    for (const { at, way } of ways) {
        for (const [next, found] of steps.get(at) ?? []) {
            if (next === start) {
                return [...way, found];
            }
            if (!seen.has(next)) {
                seen.add(next);
                ways.push({ at: next, way: [...way, found] });
            }
        }
    }
    return undefined;
}
