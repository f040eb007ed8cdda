// Where words stand in the text of a file. Knows characters: asking the syntax tree for each word would cost more than the lowering.

/** The offset of the next word or mark at or after an offset; blanks, commas and comments are passed over. */
export function nextWord(text: string, from: number): number {
    let at = from;
    for (;;) {
        const code = text.charCodeAt(at);
        if (code === 32 || code === 9 || code === 10 || code === 13 || code === 44 /* , */) {
            at++;
        } else if (code === 47 && text.charCodeAt(at + 1) === 47 /* // */) {
            const end = text.indexOf('\n', at);
            at = end < 0 ? text.length : end;
        } else {
            return at;
        }
    }
}

/** The text of the `///` lines that stand right above an offset, without their marks. */
export function docBefore(text: string, start: number): string | undefined {
    const lines: string[] = [];
    let lineStart = text.lastIndexOf('\n', start - 1) + 1;
    if (text.slice(lineStart, start).trim() !== '') {
        return undefined;
    }
    while (lineStart > 0) {
        const end = lineStart - 1;
        lineStart = text.lastIndexOf('\n', end - 1) + 1;
        const line = text.slice(lineStart, end).trim();
        if (!line.startsWith('///') || line.startsWith('////')) {
            break;
        }
        lines.push(line.slice(3).trim());
    }
    return lines.length === 0 ? undefined : lines.reverse().join('\n');
}
