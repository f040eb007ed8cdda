/**
 * Why a size is what it is, as lines of text: the size, and under it, step by step, what it comes from, down to what is written.
 * Steps that only hand a value on are left out; what was explained before is not explained again.
 */
import {
    dimension,
    formatLength,
    formatQuantity,
    largestContributor,
    likelyCase,
    type Quantity,
    real,
    sayMeasure,
    usualStyle,
    worstCase,
} from '../../quantity/index.js';
import type { Span } from '../design/design.js';
import type { Casework } from '../model/casework.js';
import type { Measure } from '../model/measure.js';
import { sentenceOf } from './sentence.js';

export interface WhyOptions {
    readonly system: 'inch' | 'mm';
    /** A place in the text as `file:line`; nothing for a place that is not worth saying. */
    readonly locate: (span: Span) => string | undefined;
    /** How many steps deep; everything if it is left out. */
    readonly depth?: number;
}

interface WhyLine {
    readonly depth: number;
    readonly value: string;
    readonly sentence: string;
    readonly place: string | undefined;
}

/** The steps of a size, the size itself first. */
function whyLines(measure: Measure, options: WhyOptions): readonly WhyLine[] {
    const lines: WhyLine[] = [];
    const seen = new Set<Measure>();
    const visit = (one: Measure, depth: number): void => {
        const shown = depth === 0 ? one : skipped(one);
        if (depth > (options.depth ?? Number.POSITIVE_INFINITY)) return;
        const known = seen.has(shown) && shown.why.inputs.length > 0;
        seen.add(shown);
        const { span } = shown.why;
        lines.push({
            depth,
            value: sayQuantity(shown.quantity, options.system),
            sentence: known ? `${sentenceOf(shown.why)}, as above` : sentenceOf(shown.why),
            place: span && options.locate(span),
        });
        if (!known) for (const input of shown.why.inputs) visit(input, depth + 1);
    };
    visit(measure, 0);
    return lines;
}

/** Past the steps that only hand a value on. */
function skipped(measure: Measure): Measure {
    const { kind, inputs } = measure.why;
    const [only] = inputs;
    const isPlain = kind === 'face' || kind === 'stage' || (kind === 'thickness' && measure.why.about[0] === '1');
    if (!isPlain || inputs.length !== 1 || !only || only.quantity.dimension !== measure.quantity.dimension) return measure;
    return real.compare(only.quantity.value, measure.quantity.value) === 0 ? skipped(only) : measure;
}

/** The lines as text, indented by depth. */
export function whyText(measure: Measure, options: WhyOptions): string {
    const lines = whyLines(measure, options);
    const width = Math.max(...lines.map((line) => line.depth * 2 + line.value.length));
    return lines
        .map(({ depth, value, sentence, place }) => {
            const head = `${'  '.repeat(depth)}${value}`.padEnd(width);
            return `${head}  ${sentence}${place ? `  (${place})` : ''}`;
        })
        .join('\n');
}

/** A quantity in the system asked for, with the other one behind it where it is a length. */
export function sayBoth(of: Quantity, system: 'inch' | 'mm'): string {
    if (of.dimension !== dimension.length) return sayQuantity(of, system);
    const inch = sayMeasure(formatLength(of, { system: 'inch', denominator: 32 }));
    const metric = formatLength(of, { system: 'mm', decimals: 1, zeros: 'dropped' }).text;
    return system === 'mm' ? `${metric} (${inch})` : `${inch} (${metric})`;
}

/** A quantity as the shop says it: lengths in the system's usual steps, decimal inches where a fraction would hide a digit. */
export function sayQuantity(of: Quantity, system: 'inch' | 'mm'): string {
    if (of.dimension !== dimension.length) return sayMeasure(formatQuantity(of, usualStyle(system, 32)));
    if (system === 'mm') return sayMeasure(formatLength(of, { system: 'mm', decimals: 1, zeros: 'dropped' }));
    const fraction = formatLength(of, { system: 'inch', denominator: 64 });
    if (fraction.exact) return fraction.text;
    return formatLength(of, { system: 'inch', decimals: 3, zeros: 'dropped' }).text;
}

/**
 * What the tolerances amount to: `worst ±0.040in, likely ±0.020in; most of it from Case.Left`, where more than half comes of one part;
 * undefined if nothing deviates.
 */
export function sayTolerance(measure: Measure, casework: Casework, system: 'inch' | 'mm'): string | undefined {
    const of = measure.quantity;
    if (!of.deviations) return undefined;
    const worst = worstCase(of, casework.deviations);
    const likely = likelyCase(of, casework.deviations);
    const say = (value: Parameters<typeof real.toNumber>[0]): string =>
        formatLength(value, system === 'mm' ? { system: 'mm', decimals: 2 } : { system: 'inch', decimals: 3 }).text;
    const both = (minus: string, plus: string): string => (minus === plus ? `±${plus}` : `-${minus} +${plus}`);
    const most = largestContributor(of, casework.deviations);
    const share = !most || most.share <= 0.5 ? undefined : most.share === 1 ? 'all' : 'most';
    const from = most && share ? `; ${share} of it from ${nameOfSource(most.source.id)}` : '';
    return `worst ${both(say(worst.minus), say(worst.plus))}, likely ${both(say(likely.minus), say(likely.plus))}${from}`;
}

/** A source of deviation is one piece of a part, `where PotteryCase.Left/1`; a maker looks for the part. */
function nameOfSource(id: string): string {
    const piece = id.slice(id.indexOf(' ') + 1);
    return id.includes(' ') ? piece.replace(/\/\d+$/, '') : 'one tolerance';
}
