// A size for a hover: in both systems of units, with its tolerance, and the first steps of how it came about.
import { type Casework, type Measure, type Span, sayBoth, sayTolerance, whyText } from 'casewright-shared/casework';
import { dimension, formatQuantity, type LengthStyle, type Quantity, real, usualStyle } from 'casewright-shared/quantity';
import type { Analysis } from '../../analysis/analysis.js';
import { libraryModule } from '../../workspace/library.js';
import { paragraphs, plain } from './markdown.js';

/** How many steps of a derivation a hover shows; `why` on the command line shows all. */
const steps = 2;

/** The whole of a size: value, tolerance, and the first steps of why. */
export function measureText(measure: Measure, analysis: Analysis): string {
    const system = systemFor(analysis.casework, measure.quantity);
    const tolerance = sayTolerance(measure, analysis.casework, system);
    return paragraphs(
        `**${inBothSystems(measure.quantity, analysis.casework)}**`,
        tolerance,
        isPlain(measure) ? undefined : plain(whyText(measure, { system, depth: steps, locate: (span) => shortPlace(span, analysis) })),
    );
}

/** Whether a size is only what is written: that needs no explanation. */
function isPlain({ why, quantity }: Measure): boolean {
    const [only, ...others] = why.inputs;
    return !only || (others.length === 0 && only.why.kind === 'literal' && real.compare(only.quantity.value, quantity.value) === 0);
}

/** A quantity in the project's units, with those of the other system behind it. */
export function inBothSystems(of: Quantity, casework: Casework): string {
    const system = systemFor(casework, of);
    if (of.dimension === dimension.length) {
        return sayBoth(of, system);
    }
    const own = formatQuantity(of, usualStyle(system, 32)).text;
    const other = formatQuantity(of, { ...usualStyle(system === 'mm' ? 'inch' : 'mm', 32), units: 'of the system' }).text;
    const isAlike = own.split(' ').at(-1) === other.split(' ').at(-1) || of.dimension === dimension.none;
    return isAlike ? own : `${own} (${other})`;
}

/** The system that the project states, or the one that the quantity is written in. */
export function systemFor(casework: Casework, of?: Quantity): 'inch' | 'mm' {
    if (casework.project) {
        return casework.project.units === 'mm' ? 'mm' : 'inch';
    }
    return of?.unit?.system === 'mm' ? 'mm' : 'inch';
}

export function lengthStyle(casework: Casework): LengthStyle {
    return systemFor(casework) === 'mm' ? { system: 'mm', decimals: 1, zeros: 'dropped' } : { system: 'inch', denominator: 32 };
}

/** `shop.case:12`, `casewright.species:40` */
function shortPlace(span: Span, analysis: Analysis): string {
    const { uri } = analysis.documentOf(span.file);
    return `${libraryModule(uri) ?? span.file}:${analysis.locate(span).line}`;
}
