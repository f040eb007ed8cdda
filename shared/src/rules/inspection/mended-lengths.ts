/** Lengths that a finding proposes: of sizes that are sold or measured off, in the units in which the text has the one that they replace. */
import type { Casework, Measure, TextEdit } from '../../casework/index.js';
import { tolerance } from '../../geometry/index.js';
import { formatLength } from '../../quantity/index.js';
import { systemOf } from './speaker.js';

/** Of a distance that is measured off: an eighth of an inch, or a whole millimetre. */
const steps = { inch: 25.4 / 8, mm: 1 } as const;

/** The diameters that dowels are sold in, in mm: common practice, no source. */
const dowels = { inch: [1 / 4, 5 / 16, 3 / 8, 1 / 2].map((inches) => 25.4 * inches), mm: [6, 8, 10, 12] } as const;

function unitsOf(casework: Casework, measure: Measure | undefined): 'inch' | 'mm' {
    const system = measure?.quantity.unit?.system;
    return system === 'inch' || system === 'mm' ? system : systemOf(casework);
}

/** The least length that can be measured off and is not less than a length in mm, in the units of the measure that it replaces. */
export function measuredOff(casework: Casework, atLeast: number, instead: Measure | undefined): number {
    const step = steps[unitsOf(casework, instead)];
    return Math.ceil((atLeast - tolerance.fit) / step) * step;
}

/** The greatest length that can be measured off and is not more than a length in mm. */
export function measuredDown(casework: Casework, atMost: number, instead: Measure | undefined): number {
    const step = steps[unitsOf(casework, instead)];
    return Math.floor((atMost + tolerance.fit) / step) * step;
}

/** The thickest dowel that is sold and is no thicker than a length in mm; undefined where there is none. */
export function thickestDowel(casework: Casework, atMost: number, instead: Measure | undefined): number | undefined {
    return dowels[unitsOf(casework, instead)].findLast((diameter) => diameter <= atMost + tolerance.fit);
}

/** Writes another length, in mm, where one was written out; it may be wrong for other joints that use the same recipe. */
export function writtenAnew(casework: Casework, instead: Measure | undefined, length: number): { readonly fix?: TextEdit } {
    const span = instead?.why.kind === 'literal' ? instead.why.span : undefined;
    if (!span) return {};
    const system = unitsOf(casework, instead);
    const { text } = formatLength(length, system === 'mm' ? { system, decimals: 2, zeros: 'dropped' } : { system, denominator: 64 });
    return { fix: { title: `write \`${text}\``, span, text, safe: false } };
}
