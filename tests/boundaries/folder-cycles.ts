import type { Import } from './imports.js';

/**
 * Circles among what lies in one folder, its subfolders and its files, if a subfolder is part of the circle: each as one line
 * that names an import for every step. Files of one folder may know one another.
 */
export function folderCycles(imports: readonly Import[]): string[] {
    const cycles: string[] = [];
    for (const steps of stepsByFolder(imports).values()) {
        const seen = new Set<string>();
        for (const start of [...steps.keys()].filter((place) => !isFile(place)).sort()) {
            const cycle = shortestWayBack(start, steps);
            const key = cycle
                ?.map(({ place }) => place)
                .sort()
                .join();
            if (cycle !== undefined && key !== undefined && !seen.has(key)) {
                seen.add(key);
                cycles.push(cycle.map(({ found }) => `${found.from}:${found.line} imports ${found.specifier}`).join(', then '));
            }
        }
    }
    return cycles;
}

/** From each place in a folder the other places in it that are imported there, with one such import. */
type Steps = Map<string, Map<string, Import>>;

function stepsByFolder(imports: readonly Import[]): Map<string, Steps> {
    const byFolder = new Map<string, Steps>();
    for (const found of imports) {
        const split = found.target === undefined ? undefined : placesInCommonFolder(found.from, found.target);
        if (split !== undefined) {
            const steps = byFolder.get(split.folder) ?? new Map<string, Map<string, Import>>();
            byFolder.set(split.folder, steps);
            const outgoing = steps.get(split.from) ?? new Map<string, Import>();
            steps.set(split.from, outgoing);
            outgoing.set(split.to, outgoing.get(split.to) ?? found);
        }
    }
    return byFolder;
}

/** The innermost folder that holds both files, and what in it each of them is or lies in. */
function placesInCommonFolder(from: string, to: string): { folder: string; from: string; to: string } | undefined {
    const [fromParts, toParts] = [from.split('/'), to.split('/')];
    const depth = fromParts.findIndex((part, index) => part !== toParts[index]);
    const [fromPlace, toPlace] = [fromParts[depth], toParts[depth]];
    return fromPlace === undefined || toPlace === undefined
        ? undefined
        : { folder: fromParts.slice(0, depth).join('/'), from: fromPlace, to: toPlace };
}

function isFile(place: string): boolean {
    return /\.m?ts$/.test(place);
}

function shortestWayBack(start: string, steps: Steps): { place: string; found: Import }[] | undefined {
    const ways: { at: string; way: { place: string; found: Import }[] }[] = [{ at: start, way: [] }];
    const seen = new Set<string>();
    for (const { at, way } of ways) {
        for (const [next, found] of steps.get(at) ?? []) {
            const longer = [...way, { place: at, found }];
            if (next === start) {
                return longer;
            }
            if (!seen.has(next)) {
                seen.add(next);
                ways.push({ at: next, way: longer });
            }
        }
    }
    return undefined;
}
