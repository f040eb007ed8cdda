/** A text with so many blocks inside one another that reading it uses up the stack of calls. */
import { CouldNotRun } from '../could-not-run.js';

/** What an error means that was thrown while a file was read: too many blocks inside one another, or what it says itself. */
export function readingError(error: unknown, shown: string): unknown {
    if (!(error instanceof RangeError && error.message.includes('call stack'))) return error;
    return new CouldNotRun(`\`${shown}\` cannot be read: blocks or parentheses in it are nested thousands deep`, [
        'if it is a design, look for a `{` or `(` without its other half',
    ]);
}
