/** `format FILE...`: designs laid out as the editor lays them out. */
import { realpath, stat } from 'node:fs/promises';
import * as path from 'node:path';
import { createTextFormatter } from 'casewright-language';
import { plural } from 'casewright-shared/rules';
import { CouldNotRun } from '../could-not-run.js';
import { type ExitCode, exitCode } from '../exit-code.js';
import { shownPath } from '../paths.js';
import { Designs } from '../reading/designs.js';
import { readingError } from '../reading/nesting.js';
import { readTextFile } from '../reading/text-file.js';
import { systemReason } from '../system-error.js';
import { type Terminal, tellCouldNotRun } from '../terminal.js';
import { NotWritten, replaceFiles } from '../writing/replace-files.js';

export interface FormatOptions {
    /** Whether files are only looked at. */
    readonly check: boolean;
}

interface DesignFile {
    /** Absolute. */
    readonly file: string;
    readonly shown: string;
}

/** Formats designs, or says which are not formatted. One that cannot be read or written does not keep the others from it. */
export async function format(files: readonly string[], { check }: FormatOptions, terminal: Terminal): Promise<ExitCode> {
    const formatText = createTextFormatter();
    const changed: string[] = [];
    let isLeftOut = false;
    for (const name of files) {
        const file = path.resolve(terminal.workingFolder, name);
        const design = { file, shown: shownPath(terminal.workingFolder, file) };
        try {
            if (await formatOne(design, formatText, check)) changed.push(design.shown);
            await tellOfUnreadLines(design, terminal);
        } catch (error) {
            if (!(error instanceof CouldNotRun)) throw error;
            tellCouldNotRun(error, terminal);
            isLeftOut = true;
        }
    }
    terminal.write(changed.map((shown) => `${check ? 'not formatted' : 'formatted'}: ${shown}\n`).join(''));
    terminal.write(`${plural(changed.length, 'file')} of ${files.length} ${check ? 'to be formatted' : 'changed'}\n`);
    if (isLeftOut) return exitCode.couldNotRun;
    return check && changed.length > 0 ? exitCode.errorsFound : exitCode.sound;
}

/** Whether the text of a file is not as formatting leaves it; it is then written, unless it is only to be checked. */
async function formatOne({ file, shown }: DesignFile, formatText: (text: string) => string, isCheck: boolean): Promise<boolean> {
    const text = await readTextFile(file, shown);
    let formatted: string;
    try {
        formatted = formatText(text);
    } catch (error) {
        throw readingError(error, shown);
    }
    if (formatted === text) return false;
    if (!isCheck) await write({ file, shown }, formatted);
    return true;
}

/** Replaces the file itself, where its name is a link to it, and leaves it its rights. */
async function write({ file, shown }: DesignFile, text: string): Promise<void> {
    try {
        const itself = await realpath(file);
        await replaceFiles([{ file: itself, content: text, mode: (await stat(itself)).mode }]);
    } catch (error) {
        throw new CouldNotRun(`\`${shown}\` cannot be written: ${systemReason(error instanceof NotWritten ? error.cause : error)}`);
    }
}

/** A statement that cannot be read stays as it is written, and with braces that do not match the whole text does. */
async function tellOfUnreadLines({ file, shown }: DesignFile, terminal: Terminal): Promise<void> {
    const { design, problems } = await new Designs(terminal.workingFolder).analyse(file);
    const unread = problems.filter(({ code, span }) => code.startsWith('TXT-') && span.file === design.file).length;
    if (unread === 0) return;
    terminal.tell(`\`${shown}\` has ${plural(unread, 'line')} that cannot be read, left as written: \`casewright check\` shows more\n`);
}
