/** Reads a design from disk, or says in words why it cannot be read. */
import { isUtf8 } from 'node:buffer';
import { readdir, readFile, stat } from 'node:fs/promises';
import * as path from 'node:path';
import { closestWords } from 'casewright-shared/casework';
import { CouldNotRun } from '../could-not-run.js';
import { systemCode, systemReason } from '../system-error.js';

const extension = '.case';

/** More than any design has: what is larger was named by mistake, and to read it would take minutes. */
const mostBytes = 16 * 1024 * 1024;
const mostLines = 200_000;

/** A file that is not there. */
export class MissingFile extends CouldNotRun {}

/**
 * The text of a file. A byte order mark is left out.
 * @param file its absolute path
 * @param shown how the user is told which file it is
 * @throws CouldNotRun if it is no text in UTF-8, cannot be read, or (MissingFile) is not there
 */
export async function readTextFile(file: string, shown: string): Promise<string> {
    const found = await stat(file).catch(async (error: unknown) => {
        throw systemCode(error) === 'ENOENT'
            ? new MissingFile(`there is no file \`${shown}\``, await namesLike(file))
            : new CouldNotRun(`\`${shown}\` cannot be read: ${systemReason(error)}`);
    });
    if (found.isDirectory()) {
        throw new CouldNotRun(`\`${shown}\` is a folder, not a file`, designsIn(await namesOfDesigns(file)));
    }
    if (!found.isFile()) throw new CouldNotRun(`\`${shown}\` is not an ordinary file`, [`name a file that ends in \`${extension}\``]);
    if (path.extname(file).toLowerCase() !== extension) {
        throw new CouldNotRun(`\`${shown}\` is no design: the name of a design ends in \`${extension}\``);
    }
    if (found.size > mostBytes) throw tooLarge(shown, found.size / 1024 / 1024, mostBytes / 1024 / 1024, 'MB');
    const bytes = await readFile(file).catch((error: unknown) => {
        throw new CouldNotRun(`\`${shown}\` cannot be read: ${systemReason(error)}`);
    });
    const text = decode(bytes, shown);
    const lines = text.split('\n').length;
    if (lines > mostLines) throw tooLarge(shown, lines, mostLines, 'lines');
    return text;
}

function tooLarge(shown: string, found: number, most: number, unit: string): CouldNotRun {
    const inWords = (count: number) => `${Math.ceil(count).toLocaleString('en-US')} ${unit}`;
    return new CouldNotRun(`\`${shown}\` has ${inWords(found)}; a design may have ${inWords(most)} at most`);
}

function decode(bytes: Buffer, shown: string): string {
    const isUtf16 = bytes.length >= 2 && [0xfeff, 0xfffe].includes(bytes.readUInt16BE(0));
    if (isUtf16) throw new CouldNotRun(`\`${shown}\` is text in UTF-16`, ['save it as UTF-8']);
    if (bytes.includes(0))
        throw new CouldNotRun(`\`${shown}\` is no text: line ${lineOf(bytes, bytes.indexOf(0))} has a zero byte in it, which no text has`);
    if (!isUtf8(bytes)) {
        throw new CouldNotRun(`\`${shown}\` is no text in UTF-8: line ${firstBrokenLine(bytes)} has bytes that are no character`, [
            'save it as UTF-8',
        ]);
    }
    return new TextDecoder().decode(bytes);
}

/** The number of the line that a byte is in. */
function lineOf(bytes: Buffer, at: number): number {
    const lineEnd = 0x0a;
    return bytes.subarray(0, at).filter((byte) => byte === lineEnd).length + 1;
}

/** The number of the first line that is no UTF-8. No character of UTF-8 has the byte of a line end inside it. */
function firstBrokenLine(bytes: Buffer): number {
    const lineEnd = 0x0a;
    let line = 1;
    for (let start = 0; ; line++) {
        const end = bytes.indexOf(lineEnd, start);
        if (end < 0 || !isUtf8(bytes.subarray(start, end))) return line;
        start = end + 1;
    }
}

async function namesLike(file: string): Promise<string[]> {
    const [closest] = closestWords(path.basename(file), await namesOfDesigns(path.dirname(file)));
    return closest === undefined ? [] : [`did you mean \`${closest}\`?`];
}

function designsIn(names: readonly string[]): string[] {
    if (names.length === 0) return ['it holds no designs'];
    const most = 8;
    const more = names.length > most ? [`and ${names.length - most} more`] : [];
    return [`it holds ${[...names.slice(0, most).map((name) => `\`${name}\``), ...more].join(', ')}`];
}

/** The names of the designs in a folder; none if it cannot be looked into, since they only serve to help. */
async function namesOfDesigns(folder: string): Promise<string[]> {
    const names = await readdir(folder).catch(() => []);
    return names.filter((name) => path.extname(name) === extension).sort();
}
