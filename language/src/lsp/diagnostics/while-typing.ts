// Holds back what a half-written line does to finished ones, until typing pauses. Knows texts and diagnostics: not what they say.
//
// A line that is being written is wrong most of the time, and so is what depends on it: a shelf without its place, a name without its last
// letter. What is wrong with that line is shown at once; what is new on other lines waits, and mostly never comes.
import type { LangiumDocument } from 'langium';
import type { Diagnostic } from 'vscode-languageserver';

/** Runs something after a time in milliseconds, and gives back how to call it off. */
export type Later = (run: () => void, milliseconds: number) => () => void;

/** So long a pause means that a person looks at what stands there. */
const pause = 700;

/** A change of more lines than this was not typed: all of it is shown at once. */
const mostLines = 2;

interface Shown {
    readonly text: string;
    readonly keys: ReadonlySet<string>;
    readonly callOff: () => void;
}

export class WhileTyping {
    private readonly byUri = new Map<string, Shown>();

    constructor(
        private readonly later: Later,
        private readonly publish: (document: LangiumDocument, diagnostics: Diagnostic[]) => void,
    ) {}

    /** What to show now of the diagnostics of a document; the rest is published after a pause, unless the text changes before. */
    nowOf(document: LangiumDocument, all: Diagnostic[]): Diagnostic[] {
        const uri = document.uri.toString();
        const text = document.textDocument.getText();
        const before = this.byUri.get(uri);
        before?.callOff();
        const typed = before && before.text !== text ? linesTyped(before.text, text) : undefined;
        const now = before && typed ? all.filter((one) => isOn(one, typed) || before.keys.has(keyOf(one))) : all;
        const callOff = now.length === all.length ? () => {} : this.later(() => this.showRest(document, text, all), pause);
        this.byUri.set(uri, { text, keys: new Set(now.map(keyOf)), callOff });
        return now;
    }

    forget(uri: string): void {
        this.byUri.get(uri)?.callOff();
        this.byUri.delete(uri);
    }

    private showRest(document: LangiumDocument, text: string, all: Diagnostic[]): void {
        this.byUri.set(document.uri.toString(), { text, keys: new Set(all.map(keyOf)), callOff: () => {} });
        this.publish(document, all);
    }
}

interface Lines {
    readonly first: number;
    readonly last: number;
}

/** The lines of a text that differ from what stood there before; undefined if they are more than a person types at once. */
function linesTyped(before: string, text: string): Lines | undefined {
    const most = Math.min(before.length, text.length);
    let start = 0;
    while (start < most && before[start] === text[start]) {
        start++;
    }
    let end = 0;
    while (end < most - start && before[before.length - 1 - end] === text[text.length - 1 - end]) {
        end++;
    }
    const first = text.slice(0, start).split('\n').length - 1;
    const last = first + text.slice(start, text.length - end).split('\n').length - 1;
    const gone = before.slice(start, before.length - end).split('\n').length - 1;
    return last - first < mostLines && gone < mostLines ? { first, last } : undefined;
}

function isOn({ range }: Diagnostic, { first, last }: Lines): boolean {
    return range.start.line <= last && range.end.line >= first;
}

/** Diagnostics move with their lines, so places do not tell them apart. */
function keyOf({ code, message }: Diagnostic): string {
    return `${code} ${message}`;
}
