// Small pieces of Markdown that hovers are made of. Knows Markdown only.

/** A word, what it means, and how it is written. */
export function explained(word: string, doc: string | undefined, example?: string): string {
    return [`**${word}**`, doc, example === undefined ? undefined : code(example)].filter((part) => part !== undefined).join('\n\n');
}

export function code(text: string): string {
    return `\`\`\`casewright\n${text}\n\`\`\``;
}

/** Text whose columns stand under each other. */
export function plain(text: string): string {
    return `\`\`\`text\n${text}\n\`\`\``;
}

export function table(head: readonly string[], rows: readonly (readonly string[])[]): string {
    const line = (cells: readonly string[]): string => `| ${cells.map((cell) => cell.replaceAll('|', '\\|')).join(' | ')} |`;
    return [line(head), line(head.map(() => '---')), ...rows.map(line)].join('\n');
}

export function paragraphs(...parts: readonly (string | undefined)[]): string {
    return parts.filter((part) => part !== undefined && part !== '').join('\n\n');
}

/** Said after what a word means, if this edition does not use it yet. */
export function notBuilt({ built }: { readonly built?: false }): string {
    return built === false ? ' It is read, and not used in this edition.' : '';
}
