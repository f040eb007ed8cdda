/** The workshop's figures, or the defaults for them. */
import { quantity, Rational, unitNamed } from '../../quantity/index.js';
import type { Measure } from '../model/measure.js';
import type { Caul, Shop, ThingValue } from '../model/things.js';
import { measureIn, speciesIn } from './batten.js';
import type { Construction } from './construction.js';
import { evaluateCount } from './evaluate.js';
import { assumed } from './measures.js';
import { Scope } from './scope.js';

/** Common practice, no source: what a shop that says nothing is taken to do. It can be changed in the shop file. */
const defaults = {
    in: { oversize: inches(1, 4), bandLong: inches(1, 2), bandOver: inches(1, 16), bentLong: inches(1, 1), kerf: inches(1, 8) },
    mm: {
        oversize: millimetres(6),
        bandLong: millimetres(12),
        bandOver: millimetres(1.5),
        bentLong: millimetres(25),
        kerf: millimetres(3.2),
    },
} as const;

function inches(above: number, below: number) {
    return quantity.of(Rational.of(above, below), unitNamed('in'));
}

function millimetres(value: number) {
    return quantity.of(Rational.of(Math.round(value * 10), 10), unitNamed('mm'));
}

/** Of the project; read from its words, since what it computes may rest on the shop. */
function unitsOf({ design: { project } }: Construction): 'in' | 'mm' {
    const units = project?.properties.find((one) => one.name === 'units')?.value;
    return units?.is === 'word' && units.word === 'mm' ? 'mm' : 'in';
}

export function shopOf(construction: Construction): Shop {
    const usual = defaults[unitsOf(construction)];
    const declaration = construction.design.shop;
    const thing = declaration && construction.things.thing(declaration.id);
    const stated = (name: string): Measure | undefined => {
        const value = thing?.properties.get(name);
        if (value?.is === 'measures') return value.measures[0];
        return value?.is === 'measure' ? value.measure : undefined;
    };
    const figure = (name: keyof typeof usual): Measure => stated(name) ?? assumed(usual[name], name, 'common practice, no source');
    const shop = {
        oversize: figure('oversize'),
        bandLong: figure('bandLong'),
        bandOver: figure('bandOver'),
        bentLong: figure('bentLong'),
        kerf: figure('kerf'),
        trim: stated('trim'),
    };
    const caul = caulOf(construction, thing?.properties.get('caul'));
    const clamps = clampsOf(construction);
    return { ...shop, ...(caul ? { caul } : {}), ...(clamps === undefined ? {} : { clamps }), ...(thing ? { thing } : {}) };
}

/** Of all sorts that say how many there are. */
function clampsOf(construction: Construction): number | undefined {
    const sorts = construction.design.shop?.properties.filter(({ name }) => name === 'clamp') ?? [];
    const counts = sorts.flatMap(({ properties }) => properties.filter(({ name }) => name === 'count'));
    const said = counts.map(({ value }) => value && evaluateCount(construction, value, new Scope(undefined), 0));
    const known = said.filter((count) => count !== undefined);
    return known.length === 0 ? undefined : known.reduce((sum, count) => sum + count, 0);
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
