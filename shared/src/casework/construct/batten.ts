/** What a curve is drawn with: its own batten, or else the shop's. */
import type { FactDeclaration } from '../design/design.js';
import type { Measure } from '../model/measure.js';
import type { Batten, ThingValue } from '../model/things.js';
import type { Construction } from './construction.js';

type Block = Extract<ThingValue, { is: 'block' }>;

export function battenOf(construction: Construction, curve: FactDeclaration): Batten | undefined {
    const { shop } = construction.design;
    const said = construction.things.stated(curve, 'batten') ?? (shop && construction.things.property(shop.id, 'batten'));
    if (said?.is !== 'block') return undefined;
    return {
        thickness: measureIn(said, 'thickness'),
        width: measureIn(said, 'width'),
        length: measureIn(said, 'length'),
        species: speciesIn(construction, said),
        span: said.span,
    };
}

export function measureIn({ properties }: Block, name: string): Measure | undefined {
    const value = properties.get(name);
    return value?.is === 'measure' ? value.measure : undefined;
}

/** The id of the species that a block names; asked for here, so that it is among the things that were evaluated. */
export function speciesIn(construction: Construction, { properties }: Block): string | undefined {
    const value = properties.get('species');
    return value?.is === 'thing' ? construction.things.thing(value.id)?.id : undefined;
}
