/** Why a shelf sags as far as it does, in lines for a terminal. */
import type { Casework, Path } from '../../casework/index.js';
import { heldEnds, sagLimitOf, shelfStrengths } from '../../strength/index.js';
import type { DocumentOptions } from '../document-options.js';
import { printStyle } from '../print-style.js';
import { jointSteps } from './joint-steps.js';
import { shelfSteps } from './shelf-steps.js';
import { type Step, sayFigure, type Units, unitsOf } from './worked.js';

export interface SagInWords {
    /** `0.03835in at once, 0.08203in in years` */
    readonly sag: string;
    /** Its calculation and that of the joints at its ends, a line for each step. */
    readonly lines: readonly string[];
}

/** The sag of a part that carries something; undefined for one that carries nothing, or of which too little is known. */
export function whySag(casework: Casework, path: Path, options: Pick<DocumentOptions, 'units' | 'locate'>): SagInWords | undefined {
    const shelf = shelfStrengths(casework).find(({ part }) => part.path === path);
    if (shelf?.is !== 'known') return undefined;
    const units = unitsOf(printStyle(casework, options));
    const steps = shelfSteps(shelf, { casework, units, limit: sagLimitOf(casework), locate: options.locate });
    return {
        sag: `${sayFigure(units.length(shelf.sagAtOnce))} at once, ${sayFigure(units.length(shelf.sagInYears))} in years`,
        lines: [...steps.map(lineOf), ...endLines(casework, path, units)],
    };
}

/** What holds its ends; ends that come to the same are one. */
function endLines(casework: Casework, path: Path, units: Units): readonly string[] {
    const alike = new Map<string, string[]>();
    for (const end of heldEnds(casework)) {
        if (end.part.path !== path) continue;
        const lines = jointSteps(end, units).map(lineOf).join('\n');
        alike.set(lines, [...(alike.get(lines) ?? []), end.support.name]);
    }
    return [...alike].flatMap(([lines, supports]) => [`At ${supports.join(', ')}`, lines]);
}

/** `s = 5 w L^4 / (384 EI) = 5 × 0.8911 × 37.12^4 / (384 EI) = 0.03835in   sags at once  (Wood Handbook ...)` */
function lineOf({ symbol, what, formula, figures, result, source, verdict }: Step): string {
    const sums = [symbol, formula, figures, result && sayFigure(result).trim()].filter((part) => part !== undefined).join(' = ');
    return `${what}: ${sums}${verdict === undefined ? '' : `, ${verdict}`}${source === undefined ? '' : `  (${source})`}`;
}
