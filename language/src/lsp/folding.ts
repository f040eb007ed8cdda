// What can be folded: everything in braces, runs of comments, the files that are used. Knows lines and tokens.
import { AstUtils, type CstNode, CstUtils, type LangiumDocument } from 'langium';
import type { FoldingRangeProvider } from 'langium/lsp';
import { type FoldingRange, FoldingRangeKind } from 'vscode-languageserver';
import type * as Ast from '../generated/ast.js';

export class CasewrightFolding implements FoldingRangeProvider {
    getFoldingRanges(document: LangiumDocument): FoldingRange[] {
        const root = document.parseResult.value;
        if (!root.$cstNode) {
            return [];
        }
        return [...blocks(root as Ast.File), ...uses(root as Ast.File), ...comments(root.$cstNode)].sort(
            (a, b) => a.startLine - b.startLine,
        );
    }
}

/** From the line with the opening brace to the line before the closing one, which stays to be seen. */
function* blocks(root: Ast.File): Iterable<FoldingRange> {
    for (const node of AstUtils.streamAllContents(root)) {
        const range = node.$type === 'Body' || node.$type === 'WorkBlock' ? node.$cstNode?.range : undefined;
        if (range && range.end.line - range.start.line > 1) {
            yield { startLine: range.start.line, endLine: range.end.line - 1 };
        }
    }
}

function uses({ statements }: Ast.File): readonly FoldingRange[] {
    const lines = (statements ?? [])
        .filter((statement) => statement?.$type === 'Use')
        .flatMap(({ $cstNode }) => $cstNode?.range.start.line ?? []);
    const [first, last] = [lines[0], lines.at(-1)];
    return first !== undefined && last !== undefined && last > first
        ? [{ startLine: first, endLine: last, kind: FoldingRangeKind.Imports }]
        : [];
}

/** Comments that fill lines of their own, one under the other. */
function* comments(root: CstNode): Iterable<FoldingRange> {
    let run: { start: number; end: number } | undefined;
    let lastLine = -1;
    for (const leaf of CstUtils.flattenCst(root)) {
        const { start, end } = leaf.range;
        const isComment = leaf.hidden && leaf.text.startsWith('//');
        if (isComment && start.line > lastLine) {
            if (run && start.line === run.end + 1) {
                run.end = end.line;
            } else {
                yield* folded(run);
                run = { start: start.line, end: end.line };
            }
        }
        if (!leaf.hidden || isComment) {
            lastLine = end.line;
        }
    }
    yield* folded(run);
}

function* folded(run: { readonly start: number; readonly end: number } | undefined): Iterable<FoldingRange> {
    if (run && run.end > run.start) {
        yield { startLine: run.start, endLine: run.end, kind: FoldingRangeKind.Comment };
    }
}
