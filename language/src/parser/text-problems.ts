// What is wrong with single characters and texts, before any grammar. Knows tokens and characters only.
import type { IToken } from 'chevrotain';
import { DefaultLexerErrorMessageProvider } from 'langium';

/** A problem at the begin of a token. */
export interface TextProblem {
    at: IToken;
    length: number;
    message: string;
    /** What to read as blanks, so that the rest of the line makes sense. */
    blanks: { from: number; to: number }[];
}

const NOT_CLOSED = 'this text is not closed: a `"` is missing at its end; inside a text an inch mark is written `\\"`';

/** Texts that are not closed, and inch marks that look like one. */
export function findTextProblems(tokens: readonly IToken[]): TextProblem[] {
    const problems: TextProblem[] = [];
    tokens.forEach((token, index) => {
        const isOpen = token.tokenType.name === 'OPEN_STRING';
        if (isOpen || token.tokenType.name === 'STRING') {
            const problem = explainInchMark(token, isOpen, tokens[index - 1], tokens[index - 2]);
            if (problem) {
                problems.push(problem);
            } else if (isOpen) {
                problems.push({ at: token, length: token.image.length, message: NOT_CLOSED, blanks: [] });
            }
        }
    });
    return problems;
}

function explainInchMark(text: IToken, isOpen: boolean, word: IToken | undefined, number: IToken | undefined): TextProblem | undefined {
    const from = text.startOffset;
    if (isOpen && word && word.endLine === text.startLine && /^[0-9./ -]+$/.test(word.image)) {
        const message = `an inch mark touches its number: \`${word.image}"\``;
        return { at: text, length: 1, message, blanks: [{ from, to: from + 1 }] };
    }
    if (number && word && /^x[0-9]/.test(word.image) && touches(number, word) && touches(word, text)) {
        const message = `the \`x\` between two sizes has blanks around it: \`${number.image} x ${word.image.slice(1)}"\``;
        return { at: word, length: word.image.length + 1, message, blanks: [{ from: word.startOffset, to: from + 1 }] };
    }
    return undefined;
}

/** The text with blanks for what is left out: every other character keeps its place. */
export function withBlanks(text: string, problems: readonly TextProblem[]): string {
    let blanked = text;
    for (const { from, to } of problems.flatMap((problem) => problem.blanks)) {
        blanked = blanked.slice(0, from) + ' '.repeat(to - from) + blanked.slice(to);
    }
    return blanked;
}

function touches(left: IToken, right: IToken): boolean {
    return left.endOffset! + 1 === right.startOffset;
}

/** What is written in place of a character that the language does not have. */
const INSTEAD: Readonly<Record<string, string>> = {
    '“': 'a text stands between straight quotes: `"..."`',
    '”': 'a text stands between straight quotes: `"..."`',
    '„': 'a text stands between straight quotes: `"..."`',
    '‘': 'a foot mark is `\'`, a text stands between straight quotes: `"..."`',
    '’': 'a foot mark is `\'`, a text stands between straight quotes: `"..."`',
    "'": 'a foot mark touches its number: `5\'`; a text stands between double quotes: `"..."`',
    '×': 'sizes are joined by `x` with blanks around it: `48in x 96in`',
    '–': 'a difference is written with `-`',
    '—': 'a difference is written with `-`',
    '−': 'a difference is written with `-`',
    '&': 'two conditions are joined by `and`',
    '|': 'of two conditions one is asked for with `or`',
    '!': 'a condition is turned round by `not`',
    '≤': 'write `<=`',
    '≥': 'write `>=`',
    '≠': 'write `!=`',
    '÷': 'a division is written with `/`',
    '°': 'a degree sign touches its number: `12°`',
    '%': 'a percent sign touches its number: `8%`',
    '#': 'a trade size is a `#` and what touches it: `#8`',
};

export class CharacterMessages extends DefaultLexerErrorMessageProvider {
    override buildUnexpectedCharactersMessage(fullText: string, startOffset: number, length: number): string {
        const text = fullText.slice(startOffset, startOffset + length);
        const feet = text.startsWith("'") ? /([0-9.]+)'$/.exec(fullText.slice(Math.max(0, startOffset - 12), startOffset)) : null;
        if (feet) {
            return `two foot marks are no inch mark: write \`${feet[1]}"\` or \`${feet[1]}in\``;
        }
        const inches = /^[”“″]/.test(text) ? /([0-9./]+)$/.exec(fullText.slice(Math.max(0, startOffset - 12), startOffset)) : null;
        if (inches) {
            return `an inch mark is straight: write \`${inches[1]}"\` or \`${inches[1]}in\``;
        }
        if (text.startsWith('#') && fullText.slice(fullText.lastIndexOf('\n', startOffset) + 1, startOffset).trim() === '') {
            return 'a comment begins with `//`';
        }
        const instead = INSTEAD[text.charAt(0)];
        const said = length === 1 ? `\`${text}\` is no sign of the language` : `\`${text}\` are no signs of the language`;
        return instead === undefined ? said : `${said}; ${instead}`;
    }
}
