/** What rules ask of materials: their wood, the sheets they come in, the way of their grain. */
import type { Casework, Measure, Part, Thing } from '../../casework/index.js';
import { millimetresOf } from './sound-parts.js';

export function materialOf(casework: Casework, id: string | undefined): Thing | undefined {
    return id === undefined ? undefined : casework.things.get(id);
}

/** The wood of a board, a band or the faces of a panel, as the material names it. */
export function speciesOf(casework: Casework, material: Thing): Thing | undefined {
    const species = material.properties.get('species');
    return species?.is === 'thing' ? casework.things.get(species.id) : undefined;
}

function wordOf(material: Thing, property: string): string | undefined {
    const value = material.properties.get(property);
    return value?.is === 'word' ? value.word : undefined;
}

const withoutGrain: ReadonlySet<string> = new Set(['fibreboard', 'particleboard', 'hardboard', 'glass', 'metal', 'laminate']);

/** Which way the grain runs on a sheet: along its length unless the material says otherwise. */
export function grainOfSheet(material: Thing): 'length' | 'width' | 'none' {
    const grain = wordOf(material, 'grain');
    if (grain === 'length' || grain === 'width' || grain === 'none') return grain;
    return material.family !== undefined && withoutGrain.has(material.family) ? 'none' : 'length';
}

/** The sheets a material comes in, width by length. */
export function sheetsOf(material: Thing): readonly { readonly width: Measure; readonly length: Measure }[] {
    const sheets = material.properties.get('sheet');
    if (sheets?.is !== 'sizes') return [];
    return sheets.sizes.flatMap(([width, length]) => (width && length ? [{ width, length }] : []));
}

/** What a board is called by the dealer, in mm: the nominal thicknesses of its layers, the actual one where there is no other. */
export function nominalThicknessOf(casework: Casework, part: Part): number | undefined {
    let sum = 0;
    for (const { material, thickness } of part.layers) {
        const nominal = materialOf(casework, material)?.properties.get('thickness');
        const measure = nominal?.is === 'measure' ? nominal.measure : thickness;
        if (!measure) return undefined;
        sum += millimetresOf(measure);
    }
    return sum;
}
