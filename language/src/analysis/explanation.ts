// Where a size comes from, as a text: the same on the command line and in an editor. Knows measures and places: not who asks.
import { type Casework, type Measure, type Path, sayBoth, sayTolerance, whyText } from 'casewright-shared/casework';
import { whySag } from 'casewright-shared/documents';
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

export interface SagExplanation {
    /** `PotteryCase.Tier[2].sag = 0.03835in at once, 0.08203in in years` */
    readonly headline: string;
    /** `0.03835in at once, 0.08203in in years` */
    readonly sag: string;
    /** Its calculation, a line for each step. */
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

/**
 * Explains how far a part sags: no size of the model, so that its calculation takes the place of a derivation.
 * @returns undefined for a part that carries nothing, or of which too little is known
 */
export function explainSag(part: Path, analysis: Analysis): SagExplanation | undefined {
    const why = whySag(analysis.casework, part, { locate: (span) => analysis.locate(span) });
    return why && { headline: `${part}.sag = ${why.sag}`, sag: why.sag, steps: why.lines.join('\n') };
}

/** The system that the project states; inches if it states none. */
function systemOf(casework: Casework): 'inch' | 'mm' {
    return casework.project?.units === 'mm' ? 'mm' : 'inch';
}
