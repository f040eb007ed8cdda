// Langium's hook for diagnostics, filled from the analysis of a file. Knows where the two meet: nothing of rules.
import { type Cancellation, type DocumentValidator, interruptAndCheck, type LangiumDocument } from 'langium';
import type { Diagnostic } from 'vscode-languageserver';
import type { Analyses } from '../../analysis/analyses.js';
import type { UsedFiles } from '../../workspace/used-files.js';
import { diagnosticOf } from './finding-diagnostic.js';
import { usedFileDiagnostics } from './used-file-diagnostics.js';
import type { WhileTyping } from './while-typing.js';

/** All diagnostics of a file are findings: syntax and names among them, so that nothing is said twice. */
export class CasewrightValidator implements DocumentValidator {
    constructor(
        private readonly analyses: Analyses,
        private readonly usedFiles: UsedFiles,
        /** Undefined where nobody types: everything is shown at once. */
        private readonly whileTyping: WhileTyping | undefined,
    ) {}

    async validateDocument(
        document: LangiumDocument,
        _options?: unknown,
        cancelToken?: Cancellation.CancellationToken,
    ): Promise<Diagnostic[]> {
        if (cancelToken) {
            await interruptAndCheck(cancelToken);
        }
        const all = this.diagnosticsOf(document);
        return this.whileTyping ? this.whileTyping.nowOf(document, all) : all;
    }

    private diagnosticsOf(document: LangiumDocument): Diagnostic[] {
        const analysis = this.analyses.of(document);
        const own = analysis.findings.filter(({ span, allowed }) => span.file === analysis.design.file && allowed === undefined);
        return [...own.map((finding) => diagnosticOf(finding, analysis)), ...usedFileDiagnostics(analysis, this.usedFiles)];
    }
}
