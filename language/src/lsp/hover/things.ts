// Hovers over materials, species, goods and other things: what is said of them, with its source. Knows evaluated things.
import type { Casework, Thing, ThingValue } from 'casewright-shared/casework';
import { dimension, formatQuantity, type Quantity, usualStyle } from 'casewright-shared/quantity';
import type { Analysis } from '../../analysis/analysis.js';
import { paragraphs, table } from './markdown.js';
import { systemFor } from './measures.js';

/** A thing with all its properties, also those it takes over from another: as they are written, and in the other system of units. */
export function thingText(thing: Thing, analysis: Analysis): string {
    const family = thing.family === undefined ? '' : ` : ${thing.family}`;
    const rows = [...thing.properties].map(([name, value]) => [
        name,
        asWritten(name, value, analysis),
        inOtherSystem(value, analysis.casework),
    ]);
    return paragraphs(
        `**${thing.kind}** \`${thing.name}\`${family}`,
        thing.doc,
        rows.length > 0 ? table(['', 'as written', ''], rows) : undefined,
    );
}

function asWritten(name: string, value: ThingValue, analysis: Analysis): string {
    const words = analysis.textAt(value.span).replace(/\s+/g, ' ').trim();
    const rest = words.startsWith(name) ? words.slice(name.length).trim() : words;
    return value.is === 'text' ? value.text : rest;
}

function inOtherSystem(value: ThingValue, casework: Casework): string {
    switch (value.is) {
        case 'measure':
            return translated(value.measure.quantity, casework);
        case 'measures':
            return value.measures.map(({ quantity }) => translated(quantity, casework)).join(', ');
        case 'sizes':
            return value.sizes.map((size) => size.map(({ quantity }) => translated(quantity, casework)).join(' x ')).join(', ');
        default:
            return '';
    }
}

/** A quantity in the system it is not written in; nothing for what both systems write alike. */
function translated(of: Quantity, casework: Casework): string {
    const written = of.unit?.system ?? (of.unit ? undefined : systemFor(casework));
    if (written === undefined || of.dimension === dimension.none) {
        return '';
    }
    return formatQuantity(of, { ...usualStyle(written === 'mm' ? 'inch' : 'mm', 64), units: 'of the system' }).text;
}
