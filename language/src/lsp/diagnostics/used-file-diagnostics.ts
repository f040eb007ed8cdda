// Errors of used files, shown in one line where the file is used: the file itself may not be open. Knows findings and `use` statements.
import type { Finding } from 'casewright-shared/rules';
import type { LangiumDocument } from 'langium';
import { type Diagnostic, DiagnosticSeverity } from 'vscode-languageserver';
import type { Analysis } from '../../analysis/analysis.js';
import type { UsedFiles } from '../../workspace/used-files.js';
import { locationOf } from './finding-diagnostic.js';

/** One warning for each `use` that leads to files with errors: sizes that depend on them are not known. */
export function usedFileDiagnostics(analysis: Analysis, usedFiles: UsedFiles): Diagnostic[] {
    const { document, design } = analysis;
    const errors = analysis.findings.filter(({ severity, span }) => severity === 'error' && span.file !== design.file);
    if (errors.length === 0) {
        return [];
    }
    const told = new Set<Finding>();
    return usedFiles.usedBy(document).flatMap(({ use, uri }) => {
        const used = uri && usedFiles.documentOf(use, document);
        const range = use.$cstNode?.range;
        if (!used || !range) {
            return [];
        }
        const within = new Set<LangiumDocument>(usedFiles.closure(used));
        const here = errors.filter((error) => !told.has(error) && within.has(analysis.documentOf(error.span.file)));
        for (const error of here) {
            told.add(error);
        }
        return here.length === 0 ? [] : [summary(here, analysis, range)];
    });
}

function summary(errors: readonly Finding[], analysis: Analysis, range: Diagnostic['range']): Diagnostic {
    const files = [...new Set(errors.map(({ span }) => span.file))];
    const count = errors.length === 1 ? 'an error' : `${errors.length} errors`;
    return {
        range,
        severity: DiagnosticSeverity.Warning,
        source: 'casewright',
        message: `there ${errors.length === 1 ? 'is' : 'are'} ${count} in ${files.join(' and ')}: what depends on it is not known here`,
        relatedInformation: errors.slice(0, 10).map((error) => ({ location: locationOf(error.span, analysis), message: error.message })),
    };
}
