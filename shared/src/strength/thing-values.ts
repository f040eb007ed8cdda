/** Looks into the properties of materials, species and other evaluated things. */
import type { Casework, Measure, Thing, ThingValue } from '../casework/index.js';
import { type Dimension, dimension, type Quantity, quantity, Rational, unitNamed } from '../quantity/index.js';

const quarterInch = quantity.of(Rational.of(1, 4), unitNamed('in'));

/** What a thing is called in the text. */
export function thingName(casework: Casework, id: string): string {
    return casework.things.get(id)?.name ?? id.slice(id.lastIndexOf('#') + 1);
}

/** A property that is one measure of a dimension. */
export function measureProperty(thing: Thing | undefined, name: string, of: Dimension): Measure | undefined {
    const value = thing?.properties.get(name);
    return value?.is === 'measure' && value.measure.quantity.dimension === of ? value.measure : undefined;
}

/** The thing that a property names: the species of a material. */
export function thingProperty(casework: Casework, thing: Thing | undefined, name: string): Thing | undefined {
    const value = thing?.properties.get(name);
    return value?.is === 'thing' ? casework.things.get(value.id) : undefined;
}

/** A value as words: a word, a text, or the name of a thing. */
export function wordOf(value: ThingValue | undefined): string | undefined {
    if (value?.is === 'word') return value.word;
    if (value?.is === 'text') return value.text;
    return value?.is === 'thing' ? value.name : undefined;
}

/** Solid wood is bought by volume in boards; everything else comes as a sheet, and is bought by area. */
export function isSolidWood(material: Thing): boolean {
    return material.family === 'lumber' || material.family === 'solid' || material.family === 'moulding';
}

/** The sheets a panel is stocked in, each width by length. */
export function sheetSizes(material: Thing | undefined): readonly (readonly [Measure, Measure])[] {
    const value = material?.properties.get('sheet');
    if (value?.is !== 'sizes') return [];
    return value.sizes.flatMap(([width, length]) => (width && length ? [[width, length] as const] : []));
}

/**
 * The rough thickness at which a board is bought: `rough 4/4` is in quarters of an inch, the hardwood trade's way
 * (National Hardwood Lumber Association rules, from memory); `rough 27mm` is a length.
 */
export function roughThickness(material: Thing | undefined): Quantity | undefined {
    const length = measureProperty(material, 'rough', dimension.length);
    if (length) return length.quantity;
    const quarters = /^([0-9]+)\/4$/.exec(wordOf(material?.properties.get('rough')) ?? '')?.[1];
    return quarters === undefined ? undefined : quantity.scale(quarterInch, Rational.of(Number(quarters)));
}
