/** `build FILE`: the documents that the shop works from. */
import * as path from 'node:path';
import { chooseDocuments, type DocumentStyle, type MadeDocument, makeDocuments, NotMade } from 'casewright-language';
import { loadSolidKernel } from 'casewright-language/node-solid-kernel';
import { type DocumentKind, documentKinds, type FormatName } from 'casewright-shared/documents';
import { folderBeside } from 'casewright-shared/output';
import { countInWords, plural } from 'casewright-shared/rules';
import { type PaperName, papers } from 'casewright-shared/writers';
import { CouldNotRun } from '../could-not-run.js';
import { type ExitCode, exitCode } from '../exit-code.js';
import { findingAsText, findingInOneLine } from '../findings/as-text.js';
import { countFound } from '../findings/count.js';
import { type FoundInText, foundWithSolids, notAllowed } from '../findings/found.js';
import { shownPath } from '../paths.js';
import { Designs } from '../reading/designs.js';
import type { Terminal } from '../terminal.js';
import { visibleText } from '../visible-text.js';
import { writeDocuments } from '../writing/output-folder.js';
import { readTypeface } from '../writing/typeface.js';

export const kindNames = documentKinds.map(({ kind }) => kind);
export const formatNames: readonly FormatName[] = [...new Set(documentKinds.flatMap(({ formats }) => formats))];

export const paperNames = Object.keys(papers) as PaperName[];

export interface BuildOptions extends DocumentStyle {
    /** The folder to write to; `out/NAME` beside the design if it is not given, with the name of the design. */
    readonly out?: string;
    /** All kinds if it is not given. */
    readonly only?: readonly DocumentKind['kind'][];
    /** All formats in which a document comes if it is not given. */
    readonly format?: readonly FormatName[];
}

/**
 * Writes the documents of a design and says which. Where the design has errors nothing is written, and they are shown.
 * @throws CouldNotRun if the design builds nothing, or the folder cannot be written to
 */
export async function build(file: string, options: BuildOptions, terminal: Terminal): Promise<ExitCode> {
    if (options.out === '') throw new CouldNotRun('`--out` names no folder');
    const { out, only, format, ...style } = options;
    const wanted = orCouldNotRun(() => chooseDocuments(only, format));
    const designs = new Designs(terminal.workingFolder);
    const analysis = await designs.analyse(file);
    const found = notAllowed(await foundWithSolids([analysis], terminal.workingFolder));
    designs.tellOfUnreadable(terminal);
    const errors = found.filter(({ record }) => record.severity === 'error');
    if (errors.length > 0) return refuse(errors, file, terminal);
    const documents = await makeDocuments(analysis, wanted, { typeface: readTypeface, solidKernel: loadSolidKernel, ...style }).catch(
        couldNotRun,
    );
    const design = path.resolve(terminal.workingFolder, file);
    const { dir, name } = path.parse(design);
    const folder = path.resolve(terminal.workingFolder, out ?? path.join(dir, folderBeside(name)));
    const shown = shownPath(terminal.workingFolder, folder);
    const older = await writeDocuments(documents, { folder, shown, design });
    terminal.write(visibleText(summary(documents, { shown, title: analysis.casework.project?.title, older })));
    tellOfWarnings(found, file, terminal);
    return exitCode.sound;
}

function orCouldNotRun<Result>(act: () => Result): Result {
    try {
        return act();
    } catch (error) {
        return couldNotRun(error);
    }
}

function couldNotRun(error: unknown): never {
    throw error instanceof NotMade ? new CouldNotRun(error.message, error.advice) : error;
}

function refuse(errors: readonly FoundInText[], file: string, terminal: Terminal): ExitCode {
    terminal.write(errors.map((error) => `${findingAsText(error, terminal.paint)}\n`).join(''));
    terminal.write(`${countInWords(countFound(errors))} in \`${visibleText(file)}\`: nothing is written\n`);
    return exitCode.errorsFound;
}

interface Written {
    readonly shown: string;
    readonly title: string | undefined;
    readonly older: readonly string[];
}

function summary(documents: readonly MadeDocument[], { shown, title, older }: Written): string {
    const width = Math.max(...documents.map(({ name }) => name.length));
    const lines = documents.map(({ name, of }, index) => {
        const isFirst = documents[index - 1]?.of !== of;
        return `    ${isFirst ? `${name.padEnd(width)}  ${of.title}: ${lowerFirst(of.description)}` : name}`;
    });
    const head = `${title === undefined ? '' : `${title}: `}${plural(documents.length, 'document')} written to ${shown}`;
    const left = older.length === 0 ? [] : [`left there from an earlier build, and not brought up to date: ${older.join(', ')}`];
    return [head, ...lines, ...left, ''].join('\n');
}

/** Warnings in a line each: whoever cuts by the documents should have seen them. */
function tellOfWarnings(found: readonly FoundInText[], file: string, terminal: Terminal): void {
    if (found.length === 0) return;
    const warnings = found.filter(({ record }) => record.severity === 'warning');
    const lines = warnings.map((warning) => `${findingInOneLine(warning, terminal.paint)}\n`);
    terminal.write(`\n${lines.join('')}${countInWords(countFound(found))}: \`casewright check ${file}\` says more\n`);
}

function lowerFirst(sentence: string): string {
    return sentence.charAt(0).toLowerCase() + sentence.slice(1);
}
