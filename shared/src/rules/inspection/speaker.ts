/** Lengths in the words of a finding: the user's own numbers, in the user's units. */
import type { Casework, Measure } from '../../casework/index.js';
import {
    dimension,
    formatLength,
    formatQuantity,
    type LengthStyle,
    type PrintedMeasure,
    type Quantity,
    type Real,
    usualStyle,
} from '../../quantity/index.js';

export interface Speaker {
    /** A size or another value of the model, in the unit it was written in. */
    measure(measure: Measure): string;
    /** A length in mm that was taken from boxes or curves, in the units of the design. */
    millimetres(length: number): string;
}

type System = 'inch' | 'mm';

/** The finest fraction that a tape shows; what lies between two of them is said in decimals, because a finding is about differences. */
const denominator = 64;
const decimals: Readonly<Record<System, LengthStyle>> = {
    inch: { system: 'inch', decimals: 3, zeros: 'dropped' },
    mm: { system: 'mm', decimals: 2, zeros: 'dropped' },
};

export function speakerFor(casework: Casework): Speaker {
    const system = systemOf(casework);
    return {
        measure: (measure) => sayQuantity(measure.quantity, system),
        millimetres: (length) => sayLength(length, system),
    };
}

/** The project's units, or else those that the first size of a case is written in. */
export function systemOf(casework: Casework): System {
    if (casework.project) return casework.project.units === 'mm' ? 'mm' : 'inch';
    for (const { width, height, depth } of casework.assemblies) {
        for (const size of [width, height, depth]) {
            const written = size && systemOfUnit(size.quantity);
            if (written) return written;
        }
    }
    return 'inch';
}

function systemOfUnit(of: Quantity): System | undefined {
    return of.unit?.dimension === dimension.length ? of.unit.system : undefined;
}

function sayQuantity(of: Quantity, system: System): string {
    if (of.dimension === dimension.length) return sayLength(of.value, systemOfUnit(of) ?? system);
    return formatQuantity(of, usualStyle(system, denominator)).text;
}

function sayLength(length: Real, system: System): string {
    if (system === 'mm') return formatLength(length, decimals.mm).text;
    const fraction = formatLength(length, { system: 'inch', denominator });
    return isTrue(fraction) ? fraction.text : formatLength(length, decimals.inch).text;
}

function isTrue(printed: PrintedMeasure): boolean {
    return printed.off === undefined;
}
