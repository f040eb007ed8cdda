// Langium's hook for diagnostics, filled from the analysis of a file. Knows where the two meet: nothing of rules.
import { type Cancellation, type DocumentValidator, interruptAndCheck, type LangiumDocument } from 'langium';
import type { Diagnostic } from 'vscode-languageserver';
import type { Analyses } from '../../analysis/analyses.js';
import type { UsedFiles } from '../../workspace/used-files.js';
import { diagnosticOf, keyOf } from './finding-diagnostic.js';
import type { ProjectDiagnostics } from './project-diagnostics.js';
import { usedFileDiagnostics } from './used-file-diagnostics.js';
import type { WhileTyping } from './while-typing.js';

/** All diagnostics of a file are findings: syntax and names among them, so that nothing is said twice. */
export class CasewrightValidator implements DocumentValidator {
    constructor(
        private readonly analyses: Analyses,
        private readonly usedFiles: UsedFiles,
        private readonly shown: {
            readonly ProjectDiagnostics: ProjectDiagnostics;
            /** Undefined where nobody types: everything is shown at once. */
            readonly WhileTyping: WhileTyping | undefined;
        },
    ) {}

    async validateDocument(
        document: LangiumDocument,
        _options?: unknown,
        cancelToken?: Cancellation.CancellationToken,
    ): Promise<Diagnostic[]> {
        if (cancelToken) {
            await interruptAndCheck(cancelToken);
        }
        const own = this.diagnosticsOf(document);
        const known = new Set(own.map(keyOf));
        const all = [...own, ...this.shown.ProjectDiagnostics.of(document).filter((one) => !known.has(keyOf(one)))];
        return this.shown.WhileTyping ? this.shown.WhileTyping.nowOf(document, all) : all;
    }

    private diagnosticsOf(document: LangiumDocument): Diagnostic[] {
        const analysis = this.analyses.of(document);
        const own = analysis.findings.filter(({ span, allowed }) => span.file === analysis.design.file && allowed === undefined);
        return [...own.map((finding) => diagnosticOf(finding, analysis)), ...usedFileDiagnostics(analysis, this.usedFiles)];
    }
}
