/** The words of a line that a finding points at, with marks under them. */
import stringWidth from 'string-width';
import { visibleText } from '../visible-text.js';

export interface Excerpt {
    /** The line as it is shown: tabs as blanks, without what surrounds it, cut short where it is very long. */
    readonly text: string;
    /** Blanks, and a `~` under each column of the words. */
    readonly marks: string;
}

/** Widest excerpt, in columns of the terminal. */
const widest = 110;
/** How much of a long line is kept before the words. */
const before = 40;
const cut = '…';
const tab = '    ';

/**
 * The excerpt of a line.
 * @param from,to columns in the line, from 1; the end lies behind the last character. What ends on a later line is marked to the end of this one.
 */
export function excerpt(line: string, from: number, to: number): Excerpt {
    const indent = line.length - line.trimStart().length;
    // A place in the white space before the words keeps that much of it.
    const start = Math.min(indent, from - 1);
    const isCutBefore = stringWidth(line.slice(start)) > widest && from - 1 - start > before;
    const first = isCutBefore ? from - 1 - before : start;
    const lead = (isCutBefore ? cut : '') + shown(line.slice(first, from - 1));
    const words = shown(line.slice(from - 1, to - 1));
    const rest = shown(line.slice(to - 1).trimEnd());
    const text = cutTo(widest, lead + words + rest);
    const room = Math.max(stringWidth(text) - stringWidth(lead), 1);
    return { text, marks: ' '.repeat(stringWidth(lead)) + '~'.repeat(Math.min(Math.max(stringWidth(words), 1), room)) };
}

function shown(text: string): string {
    return visibleText(text.replaceAll('\t', tab));
}

/** A text cut to a width, with a sign that it goes on. */
function cutTo(width: number, text: string): string {
    if (stringWidth(text) <= width) return text;
    let kept = '';
    let columns = stringWidth(cut);
    for (const character of text) {
        columns += stringWidth(character);
        if (columns > width) break;
        kept += character;
    }
    return kept + cut;
}
