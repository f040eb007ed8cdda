/** The argument of `--date`: the day that stands on a quote. */
import { CouldNotRun } from './could-not-run.js';

const example = 'write year, month and day, such as `--date 2026-12-01`';

/**
 * A date as it is written on the command line: `2026-12-01`, a calendar date of ISO 8601.
 * @returns the date as it was written
 * @throws CouldNotRun if it is written otherwise, or if the month has no such day
 */
export function readDate(argument: string): string {
    const text = argument.trim();
    const [, year, month, day] = /^([0-9]{4})-([0-9]{2})-([0-9]{2})$/.exec(text) ?? [];
    if (!year || !month || !day) throw new CouldNotRun(`\`${text}\` is no date`, [example]);
    const date = new Date(Date.UTC(Number(year), Number(month) - 1, Number(day)));
    if (date.toISOString().slice(0, 10) !== text) throw new CouldNotRun(`there is no ${text} in the calendar`, [example]);
    return text;
}
