/** The argument of `--spacing`: how far apart offsets are. */
import { dimension, quantity, readMeasure, real, unitNamed } from 'casewright-shared/quantity';
import { CouldNotRun } from './could-not-run.js';

const example = 'write a length with its unit, such as `--spacing 2in` or `--spacing 50mm`';

/** Nearer together nobody marks them, and the table would have no end. In millimetres. */
const least = 1;

/**
 * A spacing as it is written on the command line: `2in`, `1 1/2in`, `50mm`.
 * @returns millimetres
 * @throws CouldNotRun if it is no length, has no unit, or leaves no room from one offset to the next
 */
export function readSpacing(argument: string): number {
    const text = argument.trim();
    if (text === '') throw new CouldNotRun('a spacing of offsets is missing', [example]);
    const isNegative = /^[-−]/.test(text);
    const reading = readMeasure(isNegative ? text.slice(1).trimStart() : text);
    if (!reading.ok) {
        const { message, replacement } = reading.problem;
        throw new CouldNotRun(`\`${text}\` is no spacing of offsets: ${message}`, [
            replacement ? `did you mean \`${replacement}\`?` : example,
        ]);
    }
    const { quantity: read, written } = reading;
    const amount = real.toNumber(read.value);
    if (isNegative || amount === 0) {
        const found = isNegative ? 'below zero' : 'zero';
        throw new CouldNotRun(`a spacing of offsets is more than zero, and \`${text}\` is ${found}`, [example]);
    }
    if (written.unit === undefined) {
        const hint = `write \`--spacing ${written.canonical}in\` or \`--spacing ${written.canonical}mm\``;
        throw new CouldNotRun(`\`${text}\` has no unit`, [hint]);
    }
    if (read.dimension !== dimension.length) throw new CouldNotRun(`\`${text}\` is not a length`, [example]);
    const millimetres = real.toNumber(quantity.valueIn(read, unitNamed('mm')));
    if (millimetres < least) throw new CouldNotRun(`offsets every \`${text}\` are too near together to be marked`, ['1mm is the least']);
    return millimetres;
}
