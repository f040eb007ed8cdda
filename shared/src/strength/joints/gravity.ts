/** Specific gravities of woods on the basis that an equation was made for. The three bases differ by a tenth and more and are never mixed. */
import type { Casework, Thing } from '../../casework/index.js';
import { dimension, real } from '../../quantity/index.js';
import { isSolidWood, measureProperty, thingProperty, wordOf } from '../thing-values.js';

/** The volume under a specific gravity: at 12 % moisture, before drying, or ovendry. */
export type GravityBasis = 'airdry' | 'green' | 'ovendry';

const moistures: Readonly<Record<GravityBasis, number>> = { green: 30, airdry: 12, ovendry: 0 };

/**
 * A specific gravity on another basis: `G_M = G_b / (1 - 0.265 a G_b)`, `a = (30 - M) / 30`, with `G_b` on green volume
 * (Wood Handbook FPL-GTR-190, chapter 4, from memory).
 */
export function onBasis(gravity: number, from: GravityBasis, to: GravityBasis): number {
    const dried = (basis: GravityBasis) => 0.265 * ((30 - moistures[basis]) / 30);
    const green = gravity / (1 + dried(from) * gravity);
    return green / (1 - dried(to) * green);
}

export interface FastenerGravity {
    /** Ovendry mass over ovendry volume. */
    readonly value: number;
    readonly source: string;
}

/**
 * The specific gravity of a material for the fasteners of NDS-2018, ovendry: as the text or the library tabulates it, or else that of its
 * species converted. Of panels only what is stated. Undefined where nothing says it.
 */
export function fastenerGravity(casework: Casework, material: Thing | undefined): FastenerGravity | undefined {
    const species = material && isSolidWood(material) ? thingProperty(casework, material, 'species') : undefined;
    for (const thing of [material, species]) {
        const stated = measureProperty(thing, 'fastenerGravity', dimension.none);
        if (!stated) continue;
        const source = wordOf(thing?.properties.get('fastenerGravitySource') ?? thing?.properties.get('source'));
        return { value: real.toNumber(stated.quantity.value), source: source ?? `${thing?.name ?? 'the material'}, as stated` };
    }
    const own = gravityOf(species);
    if (!own || !species) return undefined;
    return {
        value: onBasis(own.value, own.basis, 'ovendry'),
        source: `of ${species.name}, ${own.value} on its ${own.basis} volume, brought to the ovendry one by Wood Handbook FPL-GTR-190, chapter 4 (from memory)`,
    };
}

/** That at 12 % of the species of solid wood, on which the tests of the Wood Handbook are based. */
export function testedGravity(
    casework: Casework,
    material: Thing | undefined,
): { readonly family: 'softwood' | 'hardwood'; readonly gravity: number } | undefined {
    const species = material && isSolidWood(material) ? thingProperty(casework, material, 'species') : undefined;
    const own = gravityOf(species);
    const family = species?.family;
    if (!own || (family !== 'softwood' && family !== 'hardwood')) return undefined;
    return { family, gravity: onBasis(own.value, own.basis, 'airdry') };
}

function gravityOf(species: Thing | undefined): { readonly value: number; readonly basis: GravityBasis } | undefined {
    const measure = measureProperty(species, 'specificGravity', dimension.none);
    const basis = wordOf(species?.properties.get('basis'));
    if (!measure || (basis !== 'airdry' && basis !== 'green' && basis !== 'ovendry')) return undefined;
    return { value: real.toNumber(measure.quantity.value), basis };
}
