import type { Casework, Path } from '../casework/index.js';

/**
 * The casework without the cases that are checked but not built: a project may build only some of those that its file declares.
 * Joints keep their places in the list, because parts name them by these.
 */
export function onlyBuilt(casework: Casework): Casework {
    const unbuilt = casework.assemblies.filter(({ count }) => count === 0).map(({ path }) => path);
    if (unbuilt.length === 0) return casework;
    const isBuilt = (path: Path) => !unbuilt.some((assembly) => path === assembly || path.startsWith(`${assembly}.`));
    return {
        ...casework,
        assemblies: casework.assemblies.filter(({ path }) => isBuilt(path)),
        parts: new Map([...casework.parts].filter(([path]) => isBuilt(path))),
        pieces: casework.pieces.filter(({ part }) => isBuilt(part)),
        openings: new Map([...casework.openings].filter(([path]) => isBuilt(path))),
    };
}
