/** What would keep shelves straight, in the words of a hint. */
import type { Casework } from '../../casework/index.js';
import { leastNosing, type ShelfSag } from '../../strength/index.js';
import { type Speaker, systemOf } from './speaker.js';

/** No nosing is higher; one that would have to be is no answer. In millimetres. */
const highest = 76.2;
/** The next step of a tape up is enough. */
const nosingSteps = { inch: 25.4 / 16, mm: 1 } as const;
/** Nobody plans a span more finely. */
const spanSteps = { inch: 25.4, mm: 10 } as const;

/** What of a shelf is too great: its sag at once or in years, over a share of its span. */
export interface SagJudged {
    readonly when: 'sagAtOnce' | 'sagInYears';
    readonly share: number;
}

/** What would do for a shelf and for those that are mended with it, in millimetres. */
export interface Stiffening {
    /** Undefined where one of them has no nosing, or none would do. */
    readonly nosing: number | undefined;
    readonly span: number;
}

/** @param others what would do for those that are mended with it */
export function stiffeningOf(casework: Casework, shelf: ShelfSag, { when, share }: SagJudged, others: Stiffening | undefined): Stiffening {
    const { span, load } = shelf;
    const nosing = leastNosing(casework, shelf, when, span * share, highest);
    // the sag over the span goes with the cube of the span, and with its square under a load at the middle (Wood Handbook, Table 9-1)
    const longest = span * ((span * share) / shelf[when]) ** (load.way === 'at the middle' ? 1 / 2 : 1 / 3);
    if (!others) return { nosing, span: longest };
    return {
        nosing: nosing === undefined || others.nosing === undefined ? undefined : Math.max(nosing, others.nosing),
        span: Math.min(longest, others.span),
    };
}

/** `a nosing 1 1/8in high would do; as it is it may span about 30in` */
export function stiffeningInWords({ nosing, span }: Stiffening, casework: Casework, speaker: Speaker): string {
    const system = systemOf(casework);
    const [nosingStep, spanStep] = [nosingSteps[system], spanSteps[system]];
    const mend =
        nosing === undefined
            ? 'a nosing on edge, a rail or a divider under it, or a thicker board carries more'
            : `a nosing ${speaker.millimetres(Math.ceil(nosing / nosingStep) * nosingStep)} high would do`;
    return `${mend}; as it is it may span about ${speaker.millimetres(Math.floor(span / spanStep) * spanStep)}`;
}
