/** The workshop's figures, or the defaults for them. */
import { quantity, Rational, unitNamed } from '../../quantity/index.js';
import type { Caul, Shop, ThingValue } from '../model/casework.js';
import type { Measure } from '../model/measure.js';
import { measureIn, speciesIn } from './batten.js';
import type { Construction } from './construction.js';
import { assumed } from './measures.js';

/** Common practice, no source: what a shop that says nothing is taken to do. It can be changed in the shop file. */
const defaults = {
    oversize: inches(1, 4),
    bandLong: inches(1, 2),
    bandOver: inches(1, 16),
    bentLong: inches(1, 1),
    kerf: inches(1, 8),
} as const;

function inches(above: number, below: number) {
    return quantity.of(Rational.of(above, below), unitNamed('in'));
}

export function shopOf(construction: Construction): Shop {
    const declaration = construction.design.shop;
    const thing = declaration && construction.things.thing(declaration.id);
    const stated = (name: string): Measure | undefined => {
        const value = thing?.properties.get(name);
        if (value?.is === 'measures') return value.measures[0];
        return value?.is === 'measure' ? value.measure : undefined;
    };
    const figure = (name: keyof typeof defaults): Measure => stated(name) ?? assumed(defaults[name], name, 'common practice, no source');
    const shop = {
        oversize: figure('oversize'),
        bandLong: figure('bandLong'),
        bandOver: figure('bandOver'),
        bentLong: figure('bentLong'),
        kerf: figure('kerf'),
        trim: stated('trim'),
    };
    const caul = caulOf(construction, thing?.properties.get('caul'));
    return { ...shop, ...(caul ? { caul } : {}), ...(thing ? { thing } : {}) };
}

function caulOf(construction: Construction, said: ThingValue | undefined): Caul | undefined {
    if (said?.is !== 'block') return undefined;
    return {
        height: measureIn(said, 'height'),
        width: measureIn(said, 'width'),
        species: speciesIn(construction, said),
        spacing: measureIn(said, 'spacing'),
        force: measureIn(said, 'force'),
        span: said.span,
    };
}
