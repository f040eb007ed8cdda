/** What a command may ask of the place it runs in: a folder to start from, and somewhere to write to. */
import type { WriteStream } from 'node:tty';
import { styleText } from 'node:util';
import type { CouldNotRun } from './could-not-run.js';
import { visibleText } from './visible-text.js';

/** What a stretch of text is, to be told apart by colour where there are colours. */
export type Emphasis = 'error' | 'warning' | 'note' | 'strong' | 'faint';
export type Paint = (emphasis: Emphasis, text: string) => string;

export interface Terminal {
    /** The absolute path of the folder in which relative paths start. */
    readonly workingFolder: string;
    /** Writes a result. */
    write(text: string): void;
    /** Writes what went wrong, or what should be known beside the result. */
    tell(text: string): void;
    /** Paints what goes to `write`. */
    readonly paint: Paint;
}

const formats: Readonly<Record<Emphasis, Parameters<typeof styleText>[0]>> = {
    error: ['red', 'bold'],
    warning: ['yellow', 'bold'],
    note: ['cyan', 'bold'],
    strong: 'bold',
    faint: 'dim',
};

/** Leaves every text as it is. */
export const withoutColours: Paint = (_, text) => text;

const inColours: Paint = (emphasis, text) => styleText(formats[emphasis], text, { validateStream: false });

/** Paints for a stream: in colours if it is a screen that has them and the user has not said no to them (`NO_COLOR`). */
export function paintFor(stream: Pick<WriteStream, 'isTTY' | 'hasColors'>, environment: NodeJS.ProcessEnv): Paint {
    return stream.isTTY && stream.hasColors(environment) ? inColours : withoutColours;
}

/** Says what kept a command from running, and what to do about it. */
export function tellCouldNotRun({ message, advice }: CouldNotRun, terminal: Terminal): void {
    terminal.tell(visibleText([`casewright: ${message}`, ...advice.map((line) => `    ${line}`), ''].join('\n')));
}
