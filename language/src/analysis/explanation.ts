// Where a size comes from, as a text: the same on the command line and in an editor. Knows measures and places: not who asks.
import { type Casework, type Measure, sayBoth, sayTolerance, whyText } from 'casewright-shared/casework';
import type { Analysis } from './analysis.js';
import type { PlaceInText } from './place.js';

export interface Explanation {
    /** `PotteryCase.Tier[2].depth = 9 1/2in (241.3mm)` */
    readonly headline: string;
    /** What its tolerances amount to, if anything deviates. */
    readonly tolerance: string | undefined;
    /** Step by step down to what is written, a line for each. */
    readonly steps: string;
}

/**
 * Explains a size.
 * @param name what the size is called: its path, or the words that it is the value of
 * @param shownFile how the reader is told which file a place is in
 */
export function explainSize(name: string, measure: Measure, analysis: Analysis, shownFile: (place: PlaceInText) => string): Explanation {
    const system = systemOf(analysis.casework);
    return {
        headline: `${name} = ${sayBoth(measure.quantity, system)}`,
        tolerance: sayTolerance(measure, analysis.casework, system),
        steps: whyText(measure, {
            system,
            locate: (span) => {
                const place = analysis.locate(span);
                return `${shownFile(place)}:${place.line}`;
            },
        }),
    };
}

/** The system that the project states; inches if it states none. */
function systemOf(casework: Casework): 'inch' | 'mm' {
    return casework.project?.units === 'mm' ? 'mm' : 'inch';
}
