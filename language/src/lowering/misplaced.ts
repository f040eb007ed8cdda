// What stands where it says nothing. Knows words and places in the text: not what may stand there.
import type * as Ast from '../generated/ast.js';
import type { FileLowering } from './file-lowering.js';
import { nextWord } from './source-text.js';

/** Reports what stands where only other things may stand. */
export function reportStray(file: FileLowering, node: Ast.Clause | Ast.Member, around: string): void {
    const span = file.span(node);
    if (node.$type === 'StrayBlock') {
        return;
    }
    const word = /^[A-Za-z]+/.exec(file.text.slice(span.start, span.end))?.[0] ?? '';
    file.report(node.$type.endsWith('Clause') ? 'TXT-001' : 'NAM-013', file.word(span.start, word), {
        message: `\`${word}\` says nothing about ${around}`,
        hint:
            node.$type === 'Allow'
                ? 'put it in the braces of the case, or at the top of the file with the name of the case after `on`'
                : 'take it out, or put it where it belongs',
        found: `\`${word}\``,
        needed: `what ${around} can say`,
    });
}

/** Reports a statement that cannot stand where it stands. */
export function reportMisplaced(file: FileLowering, node: Ast.Member | Ast.Statement, word: string, message: string, hint: string): void {
    const { start } = file.span(node);
    file.report('NAM-013', file.word(nextWord(file.text, start), word), { message, hint, found: `\`${word}\` here` });
}
