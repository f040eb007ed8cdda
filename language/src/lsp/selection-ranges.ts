// Grows a selection from a word to its phrase, its statement, its block. Knows syntax trees.
import { type CstNode, CstUtils, type LangiumDocument } from 'langium';
import type { Position, SelectionRange } from 'vscode-languageserver';

/** The stretches around a place, the innermost first, each within the next. */
export function selectionRangeAt(document: LangiumDocument, position: Position): SelectionRange {
    const tree = document.parseResult.value.$cstNode;
    const leaf = tree && CstUtils.findLeafNodeAtOffset(tree, document.textDocument.offsetAt(position));
    const around: CstNode[] = [];
    for (let node: CstNode | undefined = leaf; node; node = node.container) {
        const within = around.at(-1);
        if (!within || node.length > within.length) {
            around.push(node);
        }
    }
    return (
        around.reduceRight<SelectionRange | undefined>((parent, { range }) => (parent ? { range, parent } : { range }), undefined) ?? {
            range: { start: position, end: position },
        }
    );
}
