/** Text of unknown origin made fit for a terminal. */

/** Characters that move the cursor, change colours, or turn round the direction of writing; tabs and line ends are not among them. */
// biome-ignore lint/suspicious/noControlCharactersInRegex: finding them is what this is for
const unsafe = /[\u0000-\u0008\u000b-\u001f\u007f-\u009f\u200e\u200f\u202a-\u202e\u2066-\u2069]/g;

/** The text with a mark in the place of each character that a terminal would act upon instead of showing it. */
export function visibleText(text: string): string {
    return text.replace(unsafe, '\ufffd');
}
