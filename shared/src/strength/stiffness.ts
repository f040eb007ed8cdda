/** How stiff and how strong materials are in bending, and how much more they give over the years. Megapascals. */
import type { Casework, Span, Thing } from '../casework/index.js';
import { dimension, real } from '../quantity/index.js';
import { isSolidWood, measureProperty, thingProperty, wordOf } from './thing-values.js';

export type WayOfGrain = 'along' | 'across' | 'none';

/** Base units of a pressure are kilopascals. */
const kilopascalsInMegapascal = 1000;

function pressureOf(thing: Thing | undefined, name: string): number | undefined {
    const measure = measureProperty(thing, name, dimension.pressure);
    return measure && real.toNumber(measure.quantity.value) / kilopascalsInMegapascal;
}

/** What the strengths of a material are those of: solid wood has them from its species. */
function bearerOf(casework: Casework, material: Thing): Thing | undefined {
    return isSolidWood(material) && !material.properties.has('modulusOfElasticity')
        ? thingProperty(casework, material, 'species')
        : material;
}

/**
 * The modulus of elasticity in bending, with its grain along the span or across it. Of solid wood only along the grain; of plywood that of
 * its face grain. Undefined where nothing says it.
 */
export function modulusOf(casework: Casework, material: Thing, way: WayOfGrain): Modulus | undefined {
    const bearer = bearerOf(casework, material);
    if (isSolidWood(material)) return way === 'across' ? undefined : modulusNamed(bearer, 'modulusOfElasticity');
    const byGrain = way === 'none' ? undefined : modulusNamed(bearer, way === 'along' ? 'modulusAlong' : 'modulusAcross');
    return byGrain ?? modulusNamed(bearer, 'modulusOfElasticity');
}

/** A modulus of elasticity, and where the text says it. */
export interface Modulus {
    readonly megapascals: number;
    readonly span: Span;
}

function modulusNamed(thing: Thing | undefined, name: string): Modulus | undefined {
    const megapascals = pressureOf(thing, name);
    const value = thing?.properties.get(name);
    return megapascals === undefined || !value ? undefined : { megapascals, span: value.span };
}

/** Stress across the faces or the grain at which a material begins to give, and what it may carry for years. */
export interface CompressionAcross {
    readonly stated: number;
    /** What the stated one is divided by. */
    readonly divisor: number;
    readonly allowable: number;
    readonly source: string | undefined;
}

/** From the average stress at the proportional limit to a design value (ASTM D245, from memory). */
const compressionDivisor = 1.67;

/** Undefined where nothing says it: of panels nothing is published. */
export function compressionAcross(casework: Casework, material: Thing): CompressionAcross | undefined {
    const bearer = bearerOf(casework, material);
    const stated = pressureOf(bearer, 'compressionPerpendicular');
    if (stated === undefined) return undefined;
    const divisor = wordOf(bearer?.properties.get('statistic')) === 'design' ? 1 : compressionDivisor;
    const source = wordOf(bearer?.properties.get('strengthSource') ?? bearer?.properties.get('source'));
    return { stated, divisor, allowable: stated / divisor, source };
}

export interface Creep {
    /** Times the sag at once, after years in a dry room. */
    readonly factor: number;
    readonly source: string;
}

const solidCreep: Creep = { factor: 1.5, source: 'NDS-2018, 3.5.2: K_cr 1.5 for seasoned lumber used dry' };
const plywoodCreep: Creep = { factor: 2, source: 'NDS-2018, 3.5.2: K_cr 2.0 for wood structural panels used dry' };
const boardCreep: Creep = {
    factor: 3.25,
    source: 'Eurocode 5, Table 3.2: 1 + k_def, 2.25 for MDF.LA and particleboard P4 in service class 1, the nearest to furniture boards',
};

const noCreep: Creep = { factor: 1, source: 'glass and metal do not creep in a room: common practice, no source' };

/** Glass and metal: what is known of the years and of the spread of wood is not true of them. */
function isMineral({ family }: Thing): boolean {
    return family === 'glass' || family === 'metal';
}

/** What the years add, by the kind of material. */
export function creepOf(material: Thing): Creep {
    if (isMineral(material)) return noCreep;
    if (isSolidWood(material)) return solidCreep;
    return material.family === 'fibreboard' || material.family === 'particleboard' || material.family === 'hardboard'
        ? boardCreep
        : plywoodCreep;
}

/** Average stress in bending at which wood or a panel of it breaks; undefined where nothing says it, and of glass and metal. */
export function ruptureOf(casework: Casework, material: Thing): number | undefined {
    if (isMineral(material)) return undefined;
    return pressureOf(bearerOf(casework, material), 'modulusOfRupture');
}

/**
 * Where a modulus of a material comes from, in the words that stand with it: those of the library for one that is inherited from there.
 * @param modulus where the text says it
 * @returns undefined where the words of its `source` speak of something else, or there are none: then its place is all that is known
 */
export function modulusSourceOf(casework: Casework, material: Thing, modulus: Span): string | undefined {
    const declared = [...casework.design.declarations.values()].find(({ span }) => isIn(span, modulus));
    const stating = (declared && casework.things.get(declared.id)) ?? bearerOf(casework, material);
    const ofStrength = stating?.properties.get('strengthSource');
    // what one text says of the strengths of a material holds for those that are made like it there, each with its own numbers
    if (ofStrength?.span.file === modulus.file) return wordOf(ofStrength);
    const ofAll = stating?.properties.get('source');
    return ofAll && declared && isIn(declared.span, ofAll.span) ? wordOf(ofAll) : undefined;
}

function isIn(around: Span, { file, start, end }: Span): boolean {
    return around.file === file && around.start <= start && end <= around.end;
}

/** What average breaking stress is multiplied by, and divided by, for what a board may carry for years. */
export interface RuptureFactors {
    /** The weakest board in twenty is weaker than the average by 1.645 times a spread of 16 % (Wood Handbook, Table 5-6, from memory). */
    readonly weakest: number;
    /** What is carried for years over what is carried for minutes (Eurocode 5, Table 3.1, k_mod, permanent, service class 1, from memory). */
    readonly duration: number;
    /** Eurocode 5, Table 2.3, from memory. */
    readonly partial: number;
}

export function ruptureFactors(material: Thing): RuptureFactors {
    const duration =
        material.family === 'particleboard' ? 0.3 : material.family === 'fibreboard' || material.family === 'hardboard' ? 0.2 : 0.6;
    return { weakest: 1 - 1.645 * 0.16, duration, partial: 1.3 };
}

/** The share of its average breaking stress that a board may carry for years. */
export function shareOfRupture(material: Thing): number {
    const { weakest, duration, partial } = ruptureFactors(material);
    return (weakest * duration) / partial;
}
