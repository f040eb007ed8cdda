/**
 * The record of a build: a file beside the documents that says which of them the tool wrote, and what it wrote. By it the tool knows a
 * document of its own from a file of somebody else's, and from a document that somebody has edited since.
 */

/** The name of the record's file. */
export const recordName = '.casewright-build.json';

const version = 1;

export interface BuildRecord {
    /** The design that the documents are of, as seen from their folder. */
    readonly design: string;
    /** The hash of what was written, by the name of the file. */
    readonly files: ReadonlyMap<string, string>;
}

/** The text of a record's file; the files in the order of their names. */
export function writeRecord({ design, files }: BuildRecord): string {
    const record = {
        writtenBy: 'casewright build, to know its own files again',
        version,
        design,
        files: Object.fromEntries([...files].sort(([a], [b]) => (a < b ? -1 : 1))),
    };
    return `${JSON.stringify(record, null, 2)}\n`;
}

/** The record that a text is; undefined if it is none. */
export function parseRecord(text: string): BuildRecord | undefined {
    let found: unknown;
    try {
        found = JSON.parse(text);
    } catch {
        return undefined;
    }
    if (!isObject(found) || found.version !== version || typeof found.design !== 'string' || !isObject(found.files)) return undefined;
    const files = Object.entries(found.files);
    if (!files.every((entry): entry is [string, string] => typeof entry[1] === 'string')) return undefined;
    return { design: found.design, files: new Map(files) };
}

function isObject(value: unknown): value is Record<string, unknown> {
    return typeof value === 'object' && value !== null && !Array.isArray(value);
}
