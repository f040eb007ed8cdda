/** The strengths of a species as plain numbers. */
import type { Thing } from '../casework/index.js';
import { dimension, quantity, real, unitNamed } from '../quantity/index.js';
import type { Wood } from './bending-limits.js';

export interface WoodStrength {
    readonly name: string;
    readonly wood: Wood | undefined;
    /** Apparent modulus of elasticity of a bending test, shear included, MPa. */
    readonly modulusOfElasticity: number | undefined;
    /** MPa. */
    readonly modulusOfRupture: number | undefined;
    /** Strain at which a dry strip breaks: modulus of rupture over modulus of elasticity. An upper bound, of clear straight wood. */
    readonly ruptureStrain: number | undefined;
    readonly source: string | undefined;
}

export function woodStrength(species: Thing): WoodStrength {
    const modulusOfElasticity = pressureOf(species, 'modulusOfElasticity');
    const modulusOfRupture = pressureOf(species, 'modulusOfRupture');
    const source = species.properties.get('strengthSource') ?? species.properties.get('source');
    const { family } = species;
    return {
        name: species.name,
        wood: family === 'hardwood' || family === 'softwood' ? family : undefined,
        modulusOfElasticity,
        modulusOfRupture,
        ruptureStrain: modulusOfElasticity && modulusOfRupture ? modulusOfRupture / modulusOfElasticity : undefined,
        source: source?.is === 'text' ? source.text : undefined,
    };
}

function pressureOf({ properties }: Thing, name: string): number | undefined {
    const value = properties.get(name);
    if (value?.is !== 'measure' || value.measure.quantity.dimension !== dimension.pressure) return undefined;
    return real.toNumber(quantity.valueIn(value.measure.quantity, unitNamed('MPa')));
}
