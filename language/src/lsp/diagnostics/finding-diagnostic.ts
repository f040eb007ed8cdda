// A finding as a diagnostic of the language server protocol. Knows both: nothing of how findings are found.
import type { Span } from 'casewright-shared/casework';
import type { Finding } from 'casewright-shared/rules';
import {
    type Diagnostic,
    type DiagnosticRelatedInformation,
    DiagnosticSeverity,
    DiagnosticTag,
    type Location,
} from 'vscode-languageserver';
import type { Analysis } from '../../analysis/analysis.js';
import { rulePageUri } from '../rule-pages.js';

const severities: Readonly<Record<Finding['severity'], DiagnosticSeverity>> = {
    error: DiagnosticSeverity.Error,
    warning: DiagnosticSeverity.Warning,
    note: DiagnosticSeverity.Information,
};

/** Rules that flag what could be left out: editors show such words faded. */
const unnecessary: ReadonlySet<string> = new Set(['unused-declaration', 'allow-silences-nothing']);

/** What a client may send back with a request for code actions. */
export interface DiagnosticData {
    readonly code: string;
}

export function diagnosticOf(finding: Finding, analysis: Analysis): Diagnostic {
    const { code, severity, message, hint, name, related } = finding;
    return {
        range: locationOf(finding.span, analysis).range,
        severity: severities[severity],
        code,
        codeDescription: { href: rulePageUri(code) },
        source: 'casewright',
        message: hint === undefined ? message : `${message}\n${hint}`,
        ...(unnecessary.has(name) ? { tags: [DiagnosticTag.Unnecessary] } : {}),
        ...(related.length > 0 ? { relatedInformation: related.map((one) => relatedInformation(one, analysis)) } : {}),
        data: { code } satisfies DiagnosticData,
    };
}

/** Tells the diagnostics of one file apart. */
export function keyOf({ range: { start, end }, code, message }: Diagnostic): string {
    return [start.line, start.character, end.line, end.character, code, message].join(' ');
}

function relatedInformation({ span, message }: Finding['related'][number], analysis: Analysis): DiagnosticRelatedInformation {
    return { location: locationOf(span, analysis), message };
}

/** Where a span is, in the terms of the protocol. */
export function locationOf(span: Span, analysis: Analysis): Location {
    const { textDocument, uri } = analysis.documentOf(span.file);
    return { uri: uri.toString(), range: { start: textDocument.positionAt(span.start), end: textDocument.positionAt(span.end) } };
}
