/** How a piece speaks of lengths, angles and lines. */
import { formatLength, real } from '../../quantity/index.js';
import type { FrontEdge, Words } from '../model/casework.js';
import type { Measure } from '../model/measure.js';
import type { CurveLaw } from './curve-law.js';

/** In the system it was written in: inches to 1/64in, millimetres to a tenth. */
export function inWords(measure: Measure | undefined): string {
    if (!measure) return '?';
    const of = measure.quantity;
    if (of.dimension.key.startsWith('angle')) return `${real.toNumber(of.value)}°`;
    const isMetric = of.unit?.system === 'mm';
    return formatLength(of, isMetric ? { system: 'mm', decimals: 1, zeros: 'dropped' } : { system: 'inch', denominator: 64 }).text;
}

/** A bevel to a tenth of a degree, finer than a saw is set. */
export function sayBevel({ bevel }: Pick<FrontEdge, 'bevel'>): string {
    return `${Math.abs(real.toNumber(bevel.quantity.value)).toFixed(1)}°`;
}

/** `Bow, 1in outside` */
export function sayLine({ name, away }: CurveLaw): Words {
    return away === undefined ? [name] : [name, ', ', ...away];
}

/** Words with their lengths as they were written. */
export function asWritten(words: Words): string {
    return words.map((word) => (typeof word === 'string' ? word : inWords(word))).join('');
}
