/** How documents speak of materials, and in which order. */
import type { Casework, Thing } from '../casework/index.js';
import { dimension, formatLength } from '../quantity/index.js';
import { isSolidWood, measureProperty, thingName, wordOf } from '../strength/index.js';
import { asBought, type PrintStyle } from './print-style.js';

/** What a list calls pieces whose material could not be found out. */
const unknownMaterial = 'Material not known';

/** A material by its name and what is known of it: `WalnutPly: plywood, BlackWalnut, 3/4in, actual 0.72in`. */
export function materialInWords(casework: Casework, id: string | undefined, print: PrintStyle): string {
    if (id === undefined) return unknownMaterial;
    const details = materialDetails(casework.things.get(id), print);
    return details === '' ? thingName(casework, id) : `${thingName(casework, id)}: ${details}`;
}

/** What is known of a material besides its name: `plywood, BlackWalnut, 3/4in, actual 0.72in`. */
export function materialDetails(material: Thing | undefined, print: PrintStyle): string {
    if (!material) return '';
    const called = measureProperty(material, 'thickness', dimension.length);
    const actual = measureProperty(material, 'actual', dimension.length);
    const planed = measureProperty(material, 'planed', dimension.length);
    const rough = wordOf(material.properties.get('rough'));
    return [
        material.family,
        wordOf(material.properties.get('species')),
        called && asBought(called, print),
        actual && `actual ${caliperReading(actual.quantity, print)}`,
        rough,
        planed && `planed to ${asBought(planed, print)}`,
    ]
        .filter((detail) => detail !== undefined)
        .join(', ');
}

/** An actual thickness is read from a caliper, in decimals. */
function caliperReading(thickness: Parameters<typeof formatLength>[0], { system }: PrintStyle): string {
    return formatLength(thickness, { system, decimals: system === 'inch' ? 3 : 1, zeros: 'dropped' }).text;
}

/** Sheets before solid wood, as they are cut in a shop, each by name; what has no material comes last. */
export function materialOrder(casework: Casework): (a: string | undefined, b: string | undefined) => number {
    const rank = (id: string | undefined) => {
        const material = id === undefined ? undefined : casework.things.get(id);
        return material === undefined ? 2 : isSolidWood(material) ? 1 : 0;
    };
    return (a, b) => {
        if (a === b) return 0;
        const byKind = rank(a) - rank(b);
        if (byKind !== 0 || a === undefined || b === undefined) return byKind;
        return compareText(thingName(casework, a), thingName(casework, b)) || compareText(a, b);
    };
}

/** By code units: the same on every machine, in whatever locale. */
function compareText(a: string, b: string): number {
    return a < b ? -1 : a > b ? 1 : 0;
}
