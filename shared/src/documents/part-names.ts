/** Names of parts as a list says them: without what every one of them has in common, and neighbours in one range. */
import type { Casework, Path, Piece } from '../casework/index.js';

/**
 * How parts are called in a document: by their paths, without the case's name where only one case is built.
 */
export function partNamer(casework: Casework): (path: Path) => string {
    const outermost = casework.assemblies.filter((assembly) => assembly.inside === undefined);
    const only = outermost.length === 1 ? `${outermost[0]!.path}.` : undefined;
    return (path) => (only !== undefined && path.startsWith(only) ? path.slice(only.length) : path);
}

/** What a piece is called within its part: `layer 1`, `front band`; nothing for a part that is one board. */
export function nameWithinPart(piece: Piece, casework: Casework): string {
    const part = casework.parts.get(piece.part)?.name ?? '';
    if (piece.name === part) return '';
    return piece.name.startsWith(`${part}, `) ? piece.name.slice(part.length + 2) : piece.name;
}

/**
 * Names in one text: `Left, Tier[1..3]`. Names that differ in one index only and are neighbours become a range, the last index
 * first: `Unit[1..3].High[1..4]`. The order is that of the first of each range.
 */
export function namesInWords(names: readonly string[]): string {
    let compressed = [...new Set(names)];
    const mostIndices = Math.max(0, ...compressed.map((name) => indicesOf(name).length));
    for (let fromTheEnd = 1; fromTheEnd <= mostIndices; fromTheEnd++) compressed = joinRanges(compressed, fromTheEnd);
    return compressed.join(', ');
}

function indicesOf(name: string): readonly RegExpMatchArray[] {
    return [...name.matchAll(/\[([0-9.]+)\]/g)];
}

/** Joins names that differ only in the index that is the so-manieth from the end. */
function joinRanges(names: readonly string[], fromTheEnd: number): string[] {
    const families = new Map<string, number[]>();
    const inOrder: (string | { readonly before: string; readonly after: string; readonly indices: number[] })[] = [];
    for (const name of names) {
        const index = indicesOf(name).at(-fromTheEnd);
        if (!index || !/^[0-9]+$/.test(index[1]!)) {
            inOrder.push(name);
            continue;
        }
        const before = name.slice(0, index.index);
        const after = name.slice(index.index! + index[0].length);
        const key = `${before}[]${after}`;
        const known = families.get(key);
        if (known) {
            known.push(Number(index[1]));
        } else {
            const indices = [Number(index[1])];
            families.set(key, indices);
            inOrder.push({ before, after, indices });
        }
    }
    return inOrder.flatMap((item) => {
        if (typeof item === 'string') return [item];
        return runsOf(item.indices).map(([first, last]) => `${item.before}[${first === last ? first : `${first}..${last}`}]${item.after}`);
    });
}

/** The runs of neighbours among numbers, rising: 1, 2, 3, 5 are 1 to 3, and 5. */
function runsOf(numbers: readonly number[]): readonly (readonly [number, number])[] {
    const runs: [number, number][] = [];
    for (const number of [...numbers].sort((a, b) => a - b)) {
        const run = runs.at(-1);
        if (run && number === run[1] + 1) run[1] = number;
        else runs.push([number, number]);
    }
    return runs;
}
