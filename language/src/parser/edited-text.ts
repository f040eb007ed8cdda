// Parses what an edit has touched, and keeps the rest of the syntax tree. Knows statements of a file as stretches of lines: nothing in them.
import type { ParseResult, RootCstNode } from 'langium';
import type * as Ast from '../generated/ast.js';
import type { BraceReport, CasewrightLexer } from './casewright-lexer.js';
import type { CasewrightParser } from './casewright-parser.js';
import { errorsWithin, type Movement, makeFileOf, moveErrors, moveNodes, setText } from './moved-syntax.js';

/** The only stretch in which two texts differ. */
interface Edit {
    readonly start: number;
    readonly endBefore: number;
    readonly endAfter: number;
}

/** The statements that are parsed anew, and the lines that they had in the old text. */
interface Stretch {
    /** Index of the first of them, and of the first one after them. */
    readonly first: number;
    readonly next: number;
    readonly start: number;
    readonly end: number;
}

/**
 * The syntax tree of an edited text, made of that of the text before. Statements of the file that the edit leaves alone are the same
 * nodes as before, moved to where they stand now, so the old tree must not be used any more.
 * It is the same as that of the whole text: tokens end with their lines, and nothing of a statement depends on another one but where
 * it ends, for which the begin of the next is read. What is not so plain is not parsed here: braces that do not balance, and errors
 * from which the parser would go on in another statement.
 * @param before the result for the old text; unchanged if the answer is undefined
 * @returns undefined if the whole text must be parsed
 */
export function parseEdited(
    { parser, lexer }: { readonly parser: CasewrightParser; readonly lexer: CasewrightLexer },
    before: ParseResult<Ast.File>,
    text: string,
): ParseResult<Ast.File> | undefined {
    const root = before.value.$cstNode?.root;
    if (!root || hasUnbalancedBraces(before) || hasOtherBreaks(root.fullText) || hasOtherBreaks(text)) return undefined;
    const edit = editBetween(root.fullText, text);
    const stretch = stretchOf(before.value, root.fullText, edit);
    if (!stretch) return undefined;
    const parseStretch = ({ first, start, end }: Stretch) => {
        const words = text.slice(start, end + edit.endAfter - edit.endBefore);
        const result = parser.parse<Ast.File>(words);
        const isWhole = parser.isRead && !hasUnbalancedBraces(result) && (first === 0 || !result.value.edition);
        return isWhole && areNodes(result.value.statements) ? result : undefined;
    };
    const result = parseStretch(stretch);
    if (!result) return undefined;
    const isLast = stretch.next === before.value.statements.length;
    if (result.parserErrors.length === 0 || isLast) {
        const ends = isLast || endsBeforeNext(lexer, text, stretch, edit);
        return ends && !failsAtOnce(result, stretch) ? joined(before, root, stretch, result, text, edit) : undefined;
    }
    // after an error the parser must have found the next statement again
    const longer = withNext(before.value, root.fullText, stretch);
    const again = longer && parseStretch(longer);
    if (!longer || !again || failsAtOnce(again, longer)) return undefined;
    const isFound = findsAgain(before.value, again, longer, edit) && endsBeforeNext(lexer, text, longer, edit);
    return isFound ? joined(before, root, longer, again, text, edit) : undefined;
}

function hasUnbalancedBraces({ lexerReport }: ParseResult): boolean {
    return !(lexerReport as BraceReport | undefined)?.isBalanced;
}

/** Lines are counted by line feeds here; the lexer knows one more break. */
function hasOtherBreaks(text: string): boolean {
    return /\r(?!\n)/.test(text);
}

function areNodes(statements: readonly (Ast.Statement | undefined)[]): boolean {
    return statements.every((one) => one?.$cstNode !== undefined);
}

function editBetween(before: string, after: string): Edit {
    const shorter = Math.min(before.length, after.length);
    let start = 0;
    while (start < shorter && before.charCodeAt(start) === after.charCodeAt(start)) start += 1;
    let same = 0;
    while (same < shorter - start && before.charCodeAt(before.length - 1 - same) === after.charCodeAt(after.length - 1 - same)) {
        same += 1;
    }
    return { start, endBefore: before.length - same, endAfter: after.length - same };
}

function stretchOf(file: Ast.File, text: string, edit: Edit): Stretch | undefined {
    const { statements } = file;
    if (!areNodes(statements)) return undefined;
    const first = firstTouched(statements, text, edit);
    const start = first === 0 ? 0 : lineAfter(text, statements[first - 1]!.$cstNode!.end);
    return start === undefined || isInComment(file, start) ? undefined : upTo(statements, text, { first, start }, edit.endBefore, first);
}

/** A statement stays if all that tells where it ends stays: the first words of the next, for which two tokens are read. */
function firstTouched(statements: readonly Ast.Statement[], text: string, edit: Edit): number {
    for (let index = statements.length - 1; index > 0; index--) {
        const [, second] = leavesOf(statements[index]!);
        const line = second === undefined ? undefined : lineAfter(text, second);
        if (line !== undefined && line <= edit.start && isOnOwnLine(statements, index, text)) return index;
    }
    return 0;
}

/** The ends of the first two tokens of a statement. */
function leavesOf({ $cstNode }: Ast.Statement): readonly number[] {
    const ends: number[] = [];
    const visit = (node: { readonly end: number; readonly hidden?: boolean; readonly content?: readonly unknown[] }): void => {
        if (ends.length === 2 || node.hidden) return;
        if (node.content) for (const one of node.content) visit(one as typeof node);
        else ends.push(node.end);
    };
    if ($cstNode) visit($cstNode);
    return ends;
}

function isOnOwnLine(statements: readonly Ast.Statement[], index: number, text: string): boolean {
    const before = statements[index - 1]?.$cstNode;
    const { offset } = statements[index]!.$cstNode!;
    return before ? text.slice(before.end, offset).includes('\n') : true;
}

/** Ends the stretch at the line of the first statement from an index on that the edit has not touched. */
function upTo(
    statements: readonly Ast.Statement[],
    text: string,
    from: Pick<Stretch, 'first' | 'start'>,
    edited: number,
    index: number,
): Stretch {
    for (let next = index; next < statements.length; next++) {
        const line = text.lastIndexOf('\n', statements[next]!.$cstNode!.offset - 1) + 1;
        // the break before the line must be there still
        if (next > from.first && line > edited && isOnOwnLine(statements, next, text)) return { ...from, next, end: line };
    }
    return { ...from, next: statements.length, end: text.length };
}

function withNext(file: Ast.File, text: string, stretch: Stretch): Stretch | undefined {
    return upTo(file.statements, text, stretch, stretch.end, stretch.next + 1);
}

function lineAfter(text: string, offset: number): number | undefined {
    const found = text.indexOf('\n', offset);
    return found < 0 ? undefined : found + 1;
}

/** Lines of a comment on a declaration are one token. */
function isInComment(file: Ast.File, offset: number): boolean {
    return file.$cstNode!.root.content.some((node) => node.hidden && node.offset < offset && node.end > offset);
}

/** Whether the last statement of the stretch ends before the first one that is kept after it. */
function endsBeforeNext(lexer: CasewrightLexer, text: string, { start, end }: Stretch, edit: Edit): boolean {
    const border = end + edit.endAfter - edit.endBefore;
    const line = lineAfter(text, border) ?? text.length;
    const twoLines = lineAfter(text, line) ?? text.length;
    return lexer.endsStatementAt(text.slice(start, twoLines), border - start);
}

/** The message about a first word names what stands before it. */
function failsAtOnce({ parserErrors, value }: ParseResult<Ast.File>, { first }: Stretch): boolean {
    const begin = value.statements[0]?.$cstNode?.offset ?? Number.POSITIVE_INFINITY;
    return first > 0 && parserErrors.some(({ token }) => !(token.startOffset > begin));
}

/** Whether the last statement of a stretch is the one that stood there before, and was read without an error. */
function findsAgain(file: Ast.File, again: ParseResult<Ast.File>, { next, start }: Stretch, edit: Edit): boolean {
    const before = file.statements[next - 1]!.$cstNode!;
    const found = again.value.statements.at(-1)?.$cstNode;
    const by = edit.endAfter - edit.endBefore - start;
    if (!found || found.offset !== before.offset + by || found.end !== before.end + by) return false;
    return again.parserErrors.every(({ token }) => token.startOffset < found.offset);
}

/** Puts the new statements in place of the old ones. From here on the old tree is gone. */
function joined(
    before: ParseResult<Ast.File>,
    root: RootCstNode,
    stretch: Stretch,
    result: ParseResult<Ast.File>,
    text: string,
    edit: Edit,
): ParseResult<Ast.File> {
    const { first, next, start, end } = stretch;
    const breaks = (of: string, from: number, to: number) => of.slice(from, to).split('\n').length - 1;
    const old = root.fullText;
    const into: Movement = { by: start, lines: breaks(old, 0, start) };
    const by = edit.endAfter - edit.endBefore;
    const down: Movement = { by, lines: breaks(text, start, end + by) - breaks(old, start, end) };

    const contentBefore = root.content.filter(({ offset }) => offset < start);
    const contentAfter = root.content.filter(({ offset }) => offset >= end);
    const contentBetween = [...result.value.$cstNode!.root.content];
    moveNodes(contentBetween, into);
    moveNodes(contentAfter, down);
    setText(root, text, [...contentBefore, ...contentBetween, ...contentAfter]);

    const file = makeFileOf(root, result.value, {
        edition: first === 0 ? result.value.edition : before.value.edition,
        statements: [...before.value.statements.slice(0, first), ...result.value.statements, ...before.value.statements.slice(next)],
    });
    const errors = moveErrors(result, into);
    const earlier = errorsWithin(before, 0, start);
    const isLast = next === before.value.statements.length;
    const later = isLast ? { lexerErrors: [], parserErrors: [] } : moveErrors(errorsWithin(before, end, Number.POSITIVE_INFINITY), down);
    return {
        value: file,
        lexerErrors: [...earlier.lexerErrors, ...errors.lexerErrors, ...later.lexerErrors],
        parserErrors: [...earlier.parserErrors, ...errors.parserErrors, ...later.parserErrors],
        ...(before.lexerReport ? { lexerReport: before.lexerReport } : {}),
    };
}
