/** Findings with all that a person or a program is shown of them: places in files instead of offsets, and the line they point at. */
import type { Analysis } from 'casewright-language';
import { loadSolidKernel } from 'casewright-language/node-solid-kernel';
import type { Span } from 'casewright-shared/casework';
import { type FindingRecord, findingRecord } from 'casewright-shared/documents';
import type { Finding } from 'casewright-shared/rules';
import { shownUri } from '../paths.js';

/** A stretch of a file; lines and columns from 1, the end behind its last character. */
export interface Place {
    /** As it is shown. */
    readonly file: string;
    readonly start: { readonly line: number; readonly column: number };
    readonly end: { readonly line: number; readonly column: number };
}

export interface FoundInText {
    readonly record: FindingRecord;
    /** The line on which it starts, without its end. */
    readonly line: string;
    readonly related: readonly { readonly place: Place; readonly message: string }[];
    /** A change that mends it. */
    readonly fix?: { readonly title: string; readonly changes: readonly { readonly place: Place; readonly text: string }[] };
}

/** The findings of designs, each once: what is wrong in a file that two of them use is found in both. */
export function foundIn(analyses: readonly Analysis[], workingFolder: string): readonly FoundInText[] {
    return eachOnce(
        analyses.map((analysis) => [analysis, analysis.findings]),
        workingFolder,
    );
}

/** As `foundIn`, with what only shows when the parts are made as solids. */
export async function foundWithSolids(analyses: readonly Analysis[], workingFolder: string): Promise<readonly FoundInText[]> {
    const found: [Analysis, readonly Finding[]][] = [];
    for (const analysis of analyses) found.push([analysis, await analysis.findingsOfSolids(loadSolidKernel)]);
    return eachOnce(found, workingFolder);
}

function eachOnce(analyses: readonly (readonly [Analysis, readonly Finding[]])[], workingFolder: string): readonly FoundInText[] {
    const found = new Map<string, FoundInText>();
    for (const [analysis, findings] of analyses) {
        for (const finding of findings) {
            const { start, end, file } = finding.span;
            const key = `${start} ${end} ${finding.code} ${analysis.documentOf(file).uri} ${finding.message}`;
            if (!found.has(key)) found.set(key, foundInText(finding, analysis, workingFolder));
        }
    }
    return [...found.values()];
}

/** Only what is shown by default: what is allowed, a person has looked at and keeps. */
export function notAllowed(found: readonly FoundInText[]): readonly FoundInText[] {
    return found.filter(({ record }) => record.allowed === null);
}

function foundInText(finding: Finding, analysis: Analysis, workingFolder: string): FoundInText {
    const placeOf = (span: Span): Place => {
        const { uri, line, column, endLine, endColumn } = analysis.locate(span);
        return { file: shownUri(workingFolder, uri), start: { line, column }, end: { line: endLine, column: endColumn } };
    };
    const place = placeOf(finding.span);
    const { fix } = finding;
    return {
        record: findingRecord(finding, (span) => {
            const { file, start } = placeOf(span);
            return { file, ...start };
        }),
        line: lineOf(analysis, finding.span.file, place.start.line),
        related: finding.related.map(({ span, message }) => ({ place: placeOf(span), message })),
        ...(fix ? { fix: { title: fix.title, changes: changesOf(fix, placeOf) } } : {}),
    };
}

function changesOf(fix: NonNullable<Finding['fix']>, placeOf: (span: Span) => Place): NonNullable<FoundInText['fix']>['changes'] {
    return [fix, ...(fix.also ?? [])].map(({ span, text }) => ({ place: placeOf(span), text }));
}

/** A line of a file by its number, without its end. */
function lineOf(analysis: Analysis, file: string, line: number): string {
    const range = { start: { line: line - 1, character: 0 }, end: { line, character: 0 } };
    return analysis
        .documentOf(file)
        .textDocument.getText(range)
        .replace(/\r?\n$/, '');
}
