// Moves what was read of a text to where it stands after an edit. Knows places in trees and errors: nothing of grammar or of edits.
// Langium and Chevrotain make their nodes and tokens once and for all; these are the only places that write in them.
import type { ILexingError, IToken } from 'chevrotain';
import type { AstNode, CompositeCstNode, CstNode, LeafCstNode, ParseResult, RootCstNode } from 'langium';
import type * as Ast from '../generated/ast.js';

/** By how many characters, and by how many lines. */
export interface Movement {
    readonly by: number;
    readonly lines: number;
}

export type Errors = Pick<ParseResult, 'lexerErrors' | 'parserErrors'>;

interface MovableLeaf {
    _offset: number;
    _startLine: number;
    _endLine: number;
}
interface MovableComposite {
    _rangeCache: unknown;
    _text?: string;
    content: CstNode[];
}
interface Contained {
    $container?: AstNode;
    $containerIndex?: number;
    $cstNode?: CstNode;
}
type Mutable<Node> = { -readonly [Key in keyof Node]: Node[Key] };

/** Moves nodes and all that is in them. */
export function moveNodes(nodes: readonly CstNode[], movement: Movement): void {
    if (movement.by === 0 && movement.lines === 0) return;
    for (const node of nodes) {
        if (isComposite(node)) {
            (node as unknown as MovableComposite)._rangeCache = undefined;
            moveNodes(node.content, movement);
        } else {
            const leaf = node as LeafCstNode as unknown as MovableLeaf;
            leaf._offset += movement.by;
            leaf._startLine += movement.lines;
            leaf._endLine += movement.lines;
        }
    }
}

function isComposite(node: CstNode): node is CompositeCstNode {
    return 'content' in node;
}

/** Gives the root of a tree another text, and what was read of it. */
export function setText(root: RootCstNode, text: string, content: CstNode[]): void {
    const changed = root as unknown as MovableComposite;
    changed._rangeCache = undefined;
    changed._text = text;
    changed.content = content;
    for (const node of content) (node as Mutable<CstNode>).container = root;
}

/** What a file is made of. */
interface Made {
    readonly edition: Ast.Literal | undefined;
    readonly statements: Ast.Statement[];
}

/** Makes a node that was just read the file of a tree. */
export function makeFileOf(root: RootCstNode, file: Ast.File, parts: Made): Ast.File {
    const { edition, statements } = parts;
    const made: Mutable<Ast.File> = file;
    if (edition) {
        made.edition = edition;
        (edition as Contained).$container = made;
    }
    made.statements = statements;
    statements.forEach((statement: Contained, index) => {
        statement.$container = made;
        statement.$containerIndex = index;
    });
    made.$cstNode = root;
    (root as Mutable<CstNode>).astNode = made;
    return made;
}

/** The errors in a stretch of a text; what points at no place is at its end. */
export function errorsWithin({ lexerErrors, parserErrors }: Errors, from: number, to: number): Errors {
    const isWithin = (offset: number) => (Number.isNaN(offset) ? to === Number.POSITIVE_INFINITY : offset >= from && offset < to);
    return {
        lexerErrors: lexerErrors.filter(({ offset }) => isWithin(offset)),
        parserErrors: parserErrors.filter(({ token }) => isWithin(token.startOffset)),
    };
}

/** The same errors, moved; the tokens at which those of the parser are, are moved in place. */
export function moveErrors({ lexerErrors, parserErrors }: Errors, { by, lines }: Movement): Errors {
    for (const token of new Set(parserErrors.map((error) => error.token))) moveToken(token, { by, lines });
    const moved = lexerErrors.map(
        (error): ILexingError => ({
            ...error,
            offset: error.offset + by,
            ...(error.line === undefined ? {} : { line: error.line + lines }),
        }),
    );
    return { lexerErrors: moved, parserErrors };
}

function moveToken(token: IToken, { by, lines }: Movement): void {
    // the end of any text is one and the same token
    if (Number.isNaN(token.startOffset)) return;
    token.startOffset += by;
    if (token.endOffset !== undefined) token.endOffset += by;
    if (token.startLine !== undefined) token.startLine += lines;
    if (token.endLine !== undefined) token.endLine += lines;
}
