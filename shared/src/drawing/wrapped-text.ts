/** Text in lines of at most so many letters, broken between words; a longer word has a line of its own. */
export function wrapped(text: string, letters: number): readonly string[] {
    const lines: string[] = [];
    let line = '';
    for (const word of text.split(' ')) {
        if (line !== '' && line.length + word.length + 1 > letters) {
            lines.push(line);
            line = word;
        } else {
            line = line === '' ? word : `${line} ${word}`;
        }
    }
    return [...lines, line];
}
