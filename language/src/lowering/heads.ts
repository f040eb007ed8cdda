// Where the words of a declaration's head stand. Knows the text: not what is declared.
import type { Span } from 'casewright-shared/casework';
import type * as Ast from '../generated/ast.js';
import type { FileLowering } from './file-lowering.js';
import { nextWord } from './source-text.js';

export interface Head {
    readonly span: Span;
    readonly kindSpan: Span;
    readonly nameSpan: Span;
    readonly doc: { readonly doc?: string };
    readonly private: { readonly private?: true };
}

/** Where the words of a head stand: `private material Walnut`. */
export function headOf(
    file: FileLowering,
    node: { readonly visibility?: string; readonly name?: string } & Ast.Statement,
    kind: string,
): Head {
    const span = file.span(node);
    const kindStart = wordAfterVisibility(file, span.start, node.visibility);
    const kindSpan = file.word(kindStart, kind);
    const nameSpan = node.name === undefined ? kindSpan : file.word(nextWord(file.text, kindSpan.end), node.name);
    return { span, kindSpan, nameSpan, doc: file.doc(span.start), private: node.visibility === 'private' ? { private: true } : {} };
}

/** Where the kind stands: after `private`, if that is there. */
export function wordAfterVisibility(file: FileLowering, start: number, visibility: string | undefined): number {
    return visibility === undefined ? start : nextWord(file.text, start + visibility.length);
}
