/** How high a nosing would have to be to keep a shelf straight, in the words of a hint. */
import type { Casework } from '../../casework/index.js';
import { leastNosing, type ShelfSag } from '../../strength/index.js';
import { type Speaker, systemOf } from './speaker.js';

/** No nosing is higher; one that would have to be is no answer. In millimetres. */
const highest = 76.2;
/** The next step of a tape up is enough. */
const steps = { inch: 25.4 / 16, mm: 1 } as const;

/** `a nosing 1 1/8in high would do`; undefined where the shelf has no nosing, or none would do. */
export function nosingInWords(
    casework: Casework,
    shelf: ShelfSag,
    when: 'sagAtOnce' | 'sagInYears',
    limit: number,
    speaker: Speaker,
): string | undefined {
    const height = leastNosing(casework, shelf, when, limit, highest);
    const step = steps[systemOf(casework)];
    return height === undefined ? undefined : `a nosing ${speaker.millimetres(Math.ceil(height / step) * step)} high would do`;
}
