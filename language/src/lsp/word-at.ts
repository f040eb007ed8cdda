// The word at a place in a text, and the part it plays. Knows syntax trees: nothing of meanings.
import { type AstNode, CstUtils, GrammarUtils, type LangiumDocument, type LeafCstNode } from 'langium';
import type { Position, Range } from 'vscode-languageserver';

/** Characters of names, so that a cursor right behind a word still means the word. */
const partOfWord = /[0-9A-Za-z_À-ÖØ-öø-ɏ]/;

export interface WordAt {
    readonly text: string;
    readonly range: Range;
    /** The node that the word belongs to. */
    readonly node: AstNode;
    /** What the word is to its node: `name`, `kind`, `target`; undefined for words that only join. */
    readonly feature: string | undefined;
    readonly leaf: LeafCstNode;
}

/** The word under a cursor or right before it. */
export function wordAt(document: LangiumDocument, position: Position): WordAt | undefined {
    const tree = document.parseResult.value.$cstNode;
    const offset = document.textDocument.offsetAt(position);
    const leaf = CstUtils.findDeclarationNodeAtOffset(tree, offset, partOfWord);
    if (!leaf || leaf.hidden || leaf.length === 0) {
        return undefined;
    }
    return { text: leaf.text, range: leaf.range, node: leaf.astNode, feature: GrammarUtils.findAssignment(leaf)?.feature, leaf };
}
