// Changes that mend what was found, as an editor offers them. Knows findings with their fixes: makes none of its own but `allow`.
import type { Finding } from 'casewright-shared/rules';
import type { LangiumDocument } from 'langium';
import type { CodeActionProvider } from 'langium/lsp';
import {
    type CodeAction,
    CodeActionKind,
    type CodeActionParams,
    type Diagnostic,
    type Range,
    TextEdit,
    type WorkspaceEdit,
} from 'vscode-languageserver';
import type { Analyses } from '../analysis/analyses.js';
import type { Analysis } from '../analysis/analysis.js';
import { locationOf } from './diagnostics/finding-diagnostic.js';

/** All changes that are safe to make without a look. */
export const fixAll = `${CodeActionKind.SourceFixAll}.casewright`;

export class CasewrightCodeActions implements CodeActionProvider {
    constructor(private readonly analyses: Analyses) {}

    getCodeActions(document: LangiumDocument, { range, context }: CodeActionParams): CodeAction[] {
        const analysis = this.analyses.of(document);
        const own = analysis.findings.filter(({ span, allowed }) => span.file === analysis.design.file && allowed === undefined);
        const wants = (kind: string): boolean => !context.only || context.only.some((only) => kind === only || kind.startsWith(`${only}.`));
        const actions: CodeAction[] = [];
        if (wants(CodeActionKind.QuickFix)) {
            for (const finding of own) {
                const found = locationOf(finding.span, analysis).range;
                if (overlap(found, range)) {
                    const diagnostics = context.diagnostics.filter((one) => one.code === finding.code && isSame(one.range, found));
                    actions.push(...mend(finding, analysis, diagnostics), ...allow(finding, analysis, diagnostics));
                }
            }
        }
        if (context.only && wants(fixAll)) {
            actions.push(...mendAll(own, analysis));
        }
        return actions;
    }
}

function mend({ fix }: Finding, analysis: Analysis, diagnostics: Diagnostic[]): CodeAction[] {
    if (!fix) {
        return [];
    }
    const { title, safe } = fix;
    return [{ title, kind: CodeActionKind.QuickFix, diagnostics, edit: editOf([fix], analysis), ...(safe ? { isPreferred: true } : {}) }];
}

function mendAll(findings: readonly Finding[], analysis: Analysis): CodeAction[] {
    const fixes = findings.flatMap(({ fix }) => (fix?.safe ? [fix] : []));
    const apart = fixes.filter(
        (fix, index) => !fixes.slice(0, index).some((other) => other.span.end > fix.span.start && fix.span.end > other.span.start),
    );
    return apart.length === 0 ? [] : [{ title: 'Make all safe changes', kind: fixAll, edit: editOf(apart, analysis) }];
}

function editOf(fixes: readonly NonNullable<Finding['fix']>[], analysis: Analysis): WorkspaceEdit {
    const changes: Record<string, TextEdit[]> = {};
    for (const { span, text } of fixes.flatMap((fix) => [fix, ...(fix.also ?? [])])) {
        const { uri, range } = locationOf(span, analysis);
        changes[uri] = [...(changes[uri] ?? []), TextEdit.replace(range, text)];
    }
    return { changes };
}

/** `allow RULE on PART because "..."` as the last line of the case that the part is in; the reason is left to be written. */
function allow({ severity, name, part }: Finding, analysis: Analysis, diagnostics: Diagnostic[]): CodeAction[] {
    if (severity === 'error' || part === undefined) {
        return [];
    }
    const { casework, design } = analysis;
    const assembly = casework.assemblies.find(({ path, inside }) => inside === undefined && part.startsWith(`${path}.`));
    const declared = design.cases.find((one) => one.name === assembly?.name || one.id === buildOf(assembly?.name, analysis));
    const end = declared && declared.span.file === design.file ? closingBrace(declared.span.end, analysis) : undefined;
    if (!assembly || end === undefined) {
        return [];
    }
    const text = `    allow ${name} on ${alike(part, assembly.path, casework).join(', ')} because ""\n`;
    const edit = editOf([{ title: '', span: { file: design.file, start: end, end }, text, safe: false }], analysis);
    return [{ title: `Allow ${name} here, with a reason`, kind: CodeActionKind.QuickFix, diagnostics, edit }];
}

/** A part and those of one statement with it, as they are called in their case: what is flagged in one is said of all of them. */
function alike(part: string, assembly: string, { parts }: Analysis['casework']): readonly string[] {
    const span = parts.get(part)?.span;
    const together = [...parts.values()].filter(
        (one) => one.span === span || (one.span.start === span?.start && one.span.file === span.file),
    );
    const names = together.map(({ path }) => path).filter((path) => path.startsWith(`${assembly}.`));
    return [...new Set((names.length > 0 ? names : [part]).map((path) => path.slice(assembly.length + 1).replace(/\[[0-9]+\]$/, '')))];
}

function buildOf(name: string | undefined, { design }: Analysis): string | undefined {
    return design.project?.builds.find((build) => build.name === name)?.design;
}

/** The begin of the line with the brace that ends a case; none if other words stand before it. */
function closingBrace(end: number, { document }: Analysis): number | undefined {
    const text = document.textDocument.getText();
    const line = text.lastIndexOf('\n', end - 1) + 1;
    return text.slice(line, end).trim() === '}' ? line : undefined;
}

function overlap(a: Range, b: Range): boolean {
    return compare(a.start, b.end) <= 0 && compare(b.start, a.end) <= 0;
}

function isSame(a: Range, b: Range): boolean {
    return compare(a.start, b.start) === 0 && compare(a.end, b.end) === 0;
}

function compare(a: Range['start'], b: Range['start']): number {
    return a.line - b.line || a.character - b.character;
}
