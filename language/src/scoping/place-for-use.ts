// Where a further `use` goes in a file. Knows its first lines only.
import type { File } from '../generated/ast.js';

/** A text to put in at an offset. */
export interface Insertion {
    readonly offset: number;
    readonly text: string;
}

/** The line that uses a file, after the last such line, or else before all declarations, but after what is said of the file as a whole. */
export function insertionOfUse(root: File, text: string, use: string): Insertion {
    const before = root.statements.findLast(({ $type }) => $type === 'Use') ?? root.edition;
    if (before?.$cstNode) {
        return { offset: before.$cstNode.end, text: `\n${use}` };
    }
    const [first] = root.statements;
    return { offset: first?.$cstNode ? beginWithDoc(text, first.$cstNode.offset) : 0, text: `${use}\n\n` };
}

/** The begin of the line of a declaration, or of the comment that says what it is. */
function beginWithDoc(text: string, offset: number): number {
    let start = text.lastIndexOf('\n', offset - 1) + 1;
    for (;;) {
        const above = text.lastIndexOf('\n', start - 2) + 1;
        if (start === 0 || !text.slice(above, start).trimStart().startsWith('///')) {
            return start;
        }
        start = above;
    }
}
