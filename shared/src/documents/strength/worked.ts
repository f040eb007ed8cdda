/** Worked calculations: steps that another person can follow with a pencil, and the rows they become. */
import type { PrintStyle } from '../print-style.js';
import type { Cell, Column, Row } from '../sheet.js';

/** What a check comes to: it holds, it does not, it is only to be noted, or it cannot be known. */
export type Verdict = 'holds' | 'fails' | 'to be noted' | 'not known';

/** A number with its unit. */
export interface Figure {
    readonly value: number;
    readonly unit: string;
}

/** One line of a calculation. */
export interface Step {
    readonly symbol?: string;
    readonly what: string;
    readonly formula?: string;
    /** The formula with its numbers put in. */
    readonly figures?: string;
    readonly result?: Figure;
    readonly source?: string;
    /** What the calculation comes to here. */
    readonly verdict?: Verdict;
    /** What was judged, for the summary: `sag at once`, `0.13in of 0.26in`. */
    readonly judged?: { readonly what: string; readonly figures: string };
}

/** Found and limit of a judgement, in words. */
export function judged(what: string, found: Figure, limit: Figure, called = 'limit'): NonNullable<Step['judged']> {
    return { what, figures: `${sayFigure(found)}, ${called} ${sayFigure(limit)}` };
}

export const strengthColumns: readonly Column[] = [
    { key: 'check', heading: 'Check', align: 'left', saidByGroup: true },
    { key: 'what', heading: 'What', align: 'left' },
    { key: 'symbol', heading: 'Sign', align: 'left' },
    { key: 'formula', heading: 'Formula', align: 'left' },
    { key: 'figures', heading: 'With its numbers', align: 'left' },
    { key: 'value', heading: 'Result', align: 'right' },
    { key: 'unit', heading: 'Unit', align: 'left' },
    { key: 'verdict', heading: 'Verdict', align: 'left' },
    { key: 'source', heading: 'From', align: 'left' },
];

const text = (of: string): Cell => ({ is: 'text', text: of });

export function rowOf(check: string, { symbol, what, formula, figures, result, source, verdict }: Step): Row {
    return {
        check: text(check),
        what: text(what),
        ...(symbol === undefined ? {} : { symbol: text(symbol) }),
        ...(formula === undefined ? {} : { formula: text(formula) }),
        ...(figures === undefined ? {} : { figures: text(figures) }),
        ...(result === undefined
            ? {}
            : { value: { is: 'number', number: result.value, text: digits(result.value) }, unit: text(result.unit) }),
        ...(verdict === undefined ? {} : { verdict: text(verdict) }),
        ...(source === undefined ? {} : { source: text(source) }),
    };
}

/** Four figures: more than any strength is known to, and enough that a pencil comes to the same result. */
export function digits(value: number): string {
    if (value === 0) return '0';
    const place = Math.floor(Math.log10(Math.abs(value))) - 3;
    const rounded = place > 0 ? Math.round(value / 10 ** place) * 10 ** place : value;
    const [whole = '', fraction] = rounded.toFixed(Math.max(0, Math.min(9, -place))).split('.');
    const grouped = whole.replace(/\B(?=(\d{3})+(?!\d))/g, ',');
    const kept = fraction?.replace(/0+$/, '') ?? '';
    return kept === '' ? grouped : `${grouped}.${kept}`;
}

/** `37.12in`, `520,000 psi` */
export function sayFigure({ value, unit }: Figure): string {
    return `${digits(value)}${unit === 'in' || unit === 'mm' ? '' : ' '}${unit}`;
}

/** A calculation in words, for telling whether two are the same as far as anyone can see. */
export function inWords(steps: readonly Step[]): string {
    return JSON.stringify(steps.map(({ result, ...step }) => [step, result && sayFigure(result)]));
}

/** From millimetres, newtons and kilograms to the units of a sheet. */
export interface Units {
    length(millimetres: number): Figure;
    force(newtons: number): Figure;
    mass(kilograms: number): Figure;
    lineForce(newtonsPerMillimetre: number): Figure;
    areaForce(newtonsPerSquareMillimetre: number): Figure;
    stress(megapascals: number): Figure;
    moment(newtonMillimetres: number): Figure;
    rigidity(newtonSquareMillimetres: number): Figure;
}

const inch = 25.4;
/** The pound (1 lb = 0.45359237 kg) under standard gravity. */
const poundForce = 4.4482216152605;
const pound = 0.45359237;

export function unitsOf({ system }: PrintStyle): Units {
    return system === 'inch' ? inchUnits : metricUnits;
}

const inchUnits: Units = {
    length: (of) => ({ value: of / inch, unit: 'in' }),
    force: (of) => ({ value: of / poundForce, unit: 'lbf' }),
    mass: (of) => ({ value: of / pound, unit: 'lb' }),
    lineForce: (of) => ({ value: (of * inch) / poundForce, unit: 'lbf/in' }),
    areaForce: (of) => ({ value: (of * (12 * inch) ** 2) / poundForce, unit: 'lbf/ft2' }),
    stress: (of) => ({ value: (of * inch ** 2) / poundForce, unit: 'psi' }),
    moment: (of) => ({ value: of / inch / poundForce, unit: 'lbf in' }),
    rigidity: (of) => ({ value: of / inch ** 2 / poundForce, unit: 'lbf in2' }),
};

const metricUnits: Units = {
    length: (of) => ({ value: of, unit: 'mm' }),
    force: (of) => ({ value: of, unit: 'N' }),
    mass: (of) => ({ value: of, unit: 'kg' }),
    lineForce: (of) => ({ value: of, unit: 'N/mm' }),
    areaForce: (of) => ({ value: of * 1000, unit: 'kPa' }),
    stress: (of) => ({ value: of, unit: 'MPa' }),
    moment: (of) => ({ value: of, unit: 'N mm' }),
    rigidity: (of) => ({ value: of, unit: 'N mm2' }),
};
