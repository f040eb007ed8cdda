/** Arguments that name one or several of a few words. */
import { closestWords } from 'casewright-shared/casework';
import { CouldNotRun } from './could-not-run.js';

/**
 * A reader of an argument that is one of a few words.
 * @param what one of them is called in a message: `a format`
 * The reader throws CouldNotRun if the argument is none of them.
 */
export function oneOf<Word extends string>(words: readonly Word[], what: string): (argument: string) => Word {
    return (argument) => {
        const found = words.find((word) => word === argument);
        if (found === undefined) throw notOneOf(words, what, argument);
        return found;
    };
}

/** A reader of an argument that is a list of words with commas between them; the same list may be given in several arguments. */
export function someOf<Word extends string>(words: readonly Word[], what: string): (argument: string, before?: readonly Word[]) => Word[] {
    const read = oneOf(words, what);
    return (argument, before = []) => [...new Set([...before, ...argument.split(',').map((one) => read(one.trim()))])];
}

function notOneOf(words: readonly string[], what: string, argument: string): CouldNotRun {
    const [closest] = closestWords(argument, words);
    return new CouldNotRun(argument === '' ? `${what} is missing` : `\`${argument}\` is not ${what}`, [
        ...(closest === undefined ? [] : [`did you mean \`${closest}\`?`]),
        `there is ${listed(words)}`,
    ]);
}

/** `a`, `b` and `c` */
function listed(words: readonly string[]): string {
    const quoted = words.map((word) => `\`${word}\``);
    const last = quoted.pop() ?? '';
    return quoted.length === 0 ? last : `${quoted.join(', ')} and ${last}`;
}
