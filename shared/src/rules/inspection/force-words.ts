/** Forces, masses and shares of a span in the words of a finding, in the design's own system. */
import type { Casework } from '../../casework/index.js';
import { formatNumber, quantity, type Unit, unitNamed } from '../../quantity/index.js';
import { systemOf } from './speaker.js';

/** `18 lbf`, `80 N` */
export function forceInWords(newtons: number, casework: Casework): string {
    const unit = unitNamed(systemOf(casework) === 'inch' ? 'lbf' : 'N');
    return `${amount(newtons * 1000, unit)} ${unit.symbol}`;
}

/** `64lb`, `29kg` */
export function massInWords(kilograms: number, casework: Casework): string {
    const unit = unitNamed(systemOf(casework) === 'inch' ? 'lb' : 'kg');
    return `${amount(kilograms, unit)}${unit.symbol}`;
}

/** `1/118 of its span` */
export function shareOfSpan(sag: number, span: number): string {
    return `1/${Math.floor(span / sag)} of its span`;
}

/** Two figures are all that a strength is good for. */
function amount(inBaseUnits: number, unit: Unit): string {
    const value = quantity.valueIn(quantity.inBaseUnits(inBaseUnits, unit.dimension), unit);
    const number = typeof value === 'number' ? value : value.toNumber();
    return formatNumber(number, { decimals: number < 10 ? 1 : 0, zeros: 'dropped' });
}
