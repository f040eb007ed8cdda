const mostNames = 4;

/** Names in a sentence: `` `Left`, `Right` and 3 more ``. */
export function namesInWords(names: readonly string[]): string {
    const ticked = names.map((name) => `\`${name}\``);
    const shown = ticked.length > mostNames ? [...ticked.slice(0, mostNames - 1), `${ticked.length - mostNames + 1} more`] : ticked;
    return shown.length > 1 ? `${shown.slice(0, -1).join(', ')} and ${shown.at(-1)}` : shown.join('');
}
