/** The bits of a shop: in steps of 1/64in or of half a millimetre. Common practice, no source. */
import { lengthInWords, type PrintStyle } from '../print-style.js';

const inch = 25.4;
const steps = { inch: inch / 64, mm: 0.5 } as const;
/** A hole that is said in the other system keeps its own bit: it is a whole number of its steps. */
const same = 1e-4;

/**
 * The bit for a hole of so many millimetres: `7/64in`, `5mm`.
 * @param rounding `up` for a hole that something has to pass
 */
export function bitInWords(diameter: number, print: PrintStyle, rounding: 'up' | 'nearest'): string {
    const other = print.system === 'inch' ? 'mm' : 'inch';
    if (!isWhole(diameter / steps[print.system]) && isWhole(diameter / steps[other])) {
        return lengthInWords(diameter, { ...print, system: other });
    }
    const step = steps[print.system];
    const count = rounding === 'up' ? Math.ceil(diameter / step - same) : Math.round(diameter / step);
    return lengthInWords(Math.max(1, count) * step, print, 'down');
}

function isWhole(count: number): boolean {
    return Math.abs(count - Math.round(count)) < same;
}
