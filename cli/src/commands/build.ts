/** `build FILE`: the documents that the shop works from. */
import * as path from 'node:path';
import type { Analysis } from 'casewright-language';
import { type DocumentKind, type DocumentOptions, documentKinds, type FormatName } from 'casewright-shared/documents';
import { type PaperName, papers, writeDocument } from 'casewright-shared/writers';
import { listed } from '../choices.js';
import { CouldNotRun } from '../could-not-run.js';
import { type ExitCode, exitCode } from '../exit-code.js';
import { findingAsText, findingInOneLine } from '../findings/as-text.js';
import { countFound, countInWords, plural } from '../findings/count.js';
import { type FoundInText, foundIn, notAllowed } from '../findings/found.js';
import { shownPath } from '../paths.js';
import { Designs } from '../reading/designs.js';
import type { Terminal } from '../terminal.js';
import { visibleText } from '../visible-text.js';
import { type NewDocument, writeDocuments } from '../writing/output-folder.js';
import { readTypeface } from '../writing/typeface.js';

export const kindNames = documentKinds.map(({ kind }) => kind);
export const formatNames: readonly FormatName[] = [...new Set(documentKinds.flatMap(({ formats }) => formats))];

export const paperNames = Object.keys(papers) as PaperName[];

export interface BuildOptions {
    /** The folder to write to; `out/NAME` beside the design if it is not given, with the name of the design. */
    readonly out?: string;
    /** All kinds if it is not given. */
    readonly only?: readonly DocumentKind['kind'][];
    /** All formats in which a document comes if it is not given. */
    readonly format?: readonly FormatName[];
    /** Those of the project if they are not given. */
    readonly units?: 'in' | 'mm';
    /** What templates are tiled onto; letter for inches and A4 for millimetres if it is not given. */
    readonly paper?: PaperName;
    /** From one offset of a curve to the next, in millimetres; 2in or 50mm if it is not given. */
    readonly spacing?: number;
}

interface BuiltDocument extends NewDocument {
    readonly of: DocumentKind;
}

/**
 * Writes the documents of a design and says which. Where the design has errors nothing is written, and they are shown.
 * @throws CouldNotRun if the design builds nothing, or the folder cannot be written to
 */
export async function build(file: string, options: BuildOptions, terminal: Terminal): Promise<ExitCode> {
    if (options.out === '') throw new CouldNotRun('`--out` names no folder');
    const chosen = choose(options);
    const designs = new Designs(terminal.workingFolder);
    const analysis = await designs.analyse(file);
    const found = notAllowed(foundIn([analysis], terminal.workingFolder));
    designs.tellOfUnreadable(terminal);
    const errors = found.filter(({ record }) => record.severity === 'error');
    if (errors.length > 0) return refuse(errors, file, terminal);
    if (analysis.casework.assemblies.length === 0) {
        throw new CouldNotRun(`\`${file}\` builds nothing, so there is nothing to write`, [
            'a design has a `case`; what it builds of it is said by `build` in its `project`',
        ]);
    }
    const documents = await make(chosen, analysis, options);
    const design = path.resolve(terminal.workingFolder, file);
    const folder = path.resolve(terminal.workingFolder, options.out ?? folderBeside(design));
    const shown = shownPath(terminal.workingFolder, folder);
    const older = await writeDocuments(documents, { folder, shown, design });
    terminal.write(visibleText(summary(documents, { shown, title: analysis.casework.project?.title, older })));
    tellOfWarnings(found, file, terminal);
    return exitCode.sound;
}

/** Where the documents of a design go by default: into a folder of its name in a folder `out` beside it. */
function folderBeside(design: string): string {
    const { dir, name } = path.parse(design);
    return path.join(dir, 'out', name);
}

interface Choice {
    readonly kind: DocumentKind;
    readonly formats: readonly FormatName[];
}

/** Which documents are asked for, in which formats. What is asked for by name must come in one of the formats. */
function choose({ only, format }: BuildOptions): readonly Choice[] {
    const choices = documentKinds
        .filter(({ kind }) => only?.includes(kind) ?? true)
        .map((kind) => ({ kind, formats: kind.formats.filter((one) => format?.includes(one) ?? true) }));
    const without = choices.find(({ formats }) => formats.length === 0);
    if (without && only) {
        const { kind, formats } = without.kind;
        throw new CouldNotRun(`\`${kind}\` does not come as ${listed(format ?? [])}`, [`it comes as ${listed(formats)}`]);
    }
    return choices;
}

/** A document that the design has nothing of is left out, unless it is asked for by name. */
async function make(
    choices: readonly Choice[],
    analysis: Analysis,
    { units, only, paper, spacing }: BuildOptions,
): Promise<readonly BuiltDocument[]> {
    const options: DocumentOptions = {
        ...(units ? { units } : {}),
        ...(spacing === undefined ? {} : { spacing }),
        locate: (span) => {
            const { file, line, column } = analysis.locate(span);
            return { file, line, column };
        },
        findings: analysis.findings,
    };
    const built: BuiltDocument[] = [];
    for (const { kind, formats } of choices) {
        const document = kind.make(analysis.casework, options);
        if (!document && only) throw new CouldNotRun(`the design has no \`${kind.kind}\`: ${kind.missing}`);
        for (const format of document ? formats : []) {
            const content = await writeDocument(document!, format, { typeface: readTypeface, ...(paper ? { paper } : {}) });
            built.push({ of: kind, name: `${kind.fileName}.${format}`, content });
        }
    }
    return built;
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

function summary(documents: readonly BuiltDocument[], { shown, title, older }: Written): string {
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
