/** How much solid wood moves across its grain between the driest and the dampest month, and what holds it back. */
import type { Axis, Casework, Joint, Part, Thing } from '../casework/index.js';
import { dimension, real } from '../quantity/index.js';
import { isSolidWood, measureProperty, thingProperty, wordOf } from './thing-values.js';

/** Relative humidity of a room as shares of one, and what moisture wood takes on in it, in percent. */
export interface Climate {
    readonly dry: number;
    readonly damp: number;
    readonly driest: number;
    readonly wettest: number;
    /** Whether the project says it. */
    readonly stated: boolean;
}

/** A heated room where nothing is said. Common practice, no source. */
const usualClimate = { dry: 0.3, damp: 0.6 } as const;
/** The humidities for which the moisture of wood is published (Wood Handbook FPL-GTR-282, Table 4-2). */
const published = { dry: 0.05, damp: 0.95 } as const;
/** Rooms are taken at 70 °F. */
const roomTemperature = 70;

/**
 * The moisture in percent that wood takes on in air of a relative humidity, 0 to 1, at a temperature in °F
 * (Wood Handbook FPL-GTR-282, Equation 4-5, with its constants for °F).
 */
export function equilibriumMoisture(humidity: number, fahrenheit: number = roomTemperature): number {
    const t = fahrenheit;
    const w = 330 + 0.452 * t + 0.00415 * t ** 2;
    const k = 0.791 + 0.000463 * t - 0.000000844 * t ** 2;
    const k1 = 6.34 + 0.000775 * t - 0.0000935 * t ** 2;
    const k2 = 1.09 + 0.0284 * t - 0.0000904 * t ** 2;
    const kh = k * humidity;
    return (1800 / w) * (kh / (1 - kh) + (k1 * kh + 2 * k1 * k2 * kh ** 2) / (1 + k1 * kh + k1 * k2 * kh ** 2));
}

/** The humidities that the project states, as far as they are published, or those of a usual room. */
export function climateOf({ project }: Casework): Climate {
    const said = project?.climate;
    const [first, last] = said ? said.map(({ quantity }) => real.toNumber(quantity.value)) : [];
    const stated = first !== undefined && last !== undefined;
    const inTable = (humidity: number) => Math.min(published.damp, Math.max(published.dry, humidity));
    const [dry, damp] = stated ? [inTable(Math.min(first, last)), inTable(Math.max(first, last))] : [usualClimate.dry, usualClimate.damp];
    return { dry, damp, driest: equilibriumMoisture(dry), wettest: equilibriumMoisture(damp), stated };
}

/** How a wood moves across its grain, flat-sawn: the way in which it moves most. */
export interface WoodMovement {
    readonly species: string;
    /** Part in one for each 1 % of moisture between 6 and 14 %. */
    readonly change: number;
    /** Green to ovendry, part in one; for moistures outside those. */
    readonly shrinkage: number | undefined;
    readonly source: string | undefined;
}

/** Undefined for what is no solid wood, and where nothing says how much its species moves. */
function movementOf(casework: Casework, material: Thing | undefined): WoodMovement | undefined {
    if (!material || !isSolidWood(material)) return undefined;
    const species = thingProperty(casework, material, 'species');
    const share = (name: string) => {
        const measure = measureProperty(species, name, dimension.none);
        return measure && real.toNumber(measure.quantity.value);
    };
    const [change, shrinkage] = [share('tangentialChange'), share('tangentialShrinkage')];
    if (!species || change === undefined) return undefined;
    return { species: species.name, change, shrinkage, source: wordOf(species.properties.get('changeSource')) };
}

/** Moistures, in percent, for which the change by each percent is given. */
const range = { from: 6, to: 14 } as const;

/** Whether both moistures are among those for which the change by each percent is given. */
export function isTabulated(...moistures: readonly number[]): boolean {
    return moistures.every((moisture) => moisture >= range.from && moisture <= range.to);
}

/**
 * How much wider a board gets from one moisture to another, in the unit of its width: `D C (M2 - M1)` from 6 to 14 %, and
 * `D (M2 - M1) / (30 · 100 / S - 30 + M1)` outside (Wood Handbook FPL-GTR-190, chapter 13, from memory).
 */
export function changeAcross(
    width: number,
    { change, shrinkage }: Pick<WoodMovement, 'change' | 'shrinkage'>,
    from: number,
    to: number,
): number {
    if (isTabulated(from, to) || shrinkage === undefined) return width * change * (to - from);
    return (width * (to - from)) / (30 / shrinkage - 30 + from);
}

/** A board of solid wood and how far it moves. Millimetres. */
export interface MovingPart {
    readonly part: Part;
    readonly wood: WoodMovement;
    readonly width: number;
    readonly moves: number;
}

/** All parts that are of solid wood throughout, in the order of building. */
export function movingParts(casework: Casework): readonly MovingPart[] {
    const { driest, wettest } = climateOf(casework);
    return [...casework.parts.values()].flatMap((part): readonly MovingPart[] => {
        const across = acrossOf(casework, part);
        if (!across) return [];
        const width = part.box.most[across.axis] - part.box.least[across.axis];
        return [{ part, wood: across.wood, width, moves: changeAcross(width, across.wood, driest, wettest) }];
    });
}

/** The way in which a part of solid wood moves, in the plane of its faces; undefined for one that does not. */
function acrossOf(casework: Casework, { layers, directions }: Part): { readonly axis: Axis; readonly wood: WoodMovement } | undefined {
    const [first] = layers;
    const material = first?.material === undefined ? undefined : casework.things.get(first.material);
    const wood = movementOf(casework, material);
    if (!first || !wood || layers.some(({ material: other, grain }) => other !== first.material || grain !== first.grain)) return undefined;
    if (first.grain === 'none') return undefined;
    return { axis: first.grain === 'length' ? directions.width : directions.length, wood };
}

/** Two parts that are glued where one of them moves and the other does not. Millimetres. */
export interface HeldAcross {
    readonly joint: Joint;
    readonly moving: Part;
    readonly holding: Part;
    readonly wood: WoodMovement;
    /** How wide the glued place is across the grain. */
    readonly width: number;
    /** How far the one would move past the other. */
    readonly moves: number;
}

/** Glued joints across the grain, each once, in the order of the joints. */
export function heldAcross(casework: Casework): readonly HeldAcross[] {
    const climate = climateOf(casework);
    return casework.joints.flatMap((joint) => {
        const does = new Set(joint.steps.map((step) => step.does));
        if (!joint.touching || !does.has('glue') || does.has('free')) return [];
        const [a, b] = [casework.parts.get(joint.enters), casework.parts.get(joint.receives)];
        if (!a || !b) return [];
        const [one, other] = [heldBy(casework, joint, a, b, climate), heldBy(casework, joint, b, a, climate)];
        const worse = one && other ? (other.moves > one.moves ? other : one) : (one ?? other);
        return worse ? [worse] : [];
    });
}

function heldBy(casework: Casework, joint: Joint, moving: Part, holding: Part, { driest, wettest }: Climate): HeldAcross | undefined {
    const across = acrossOf(casework, moving);
    if (!across) return undefined;
    const { axis, wood } = across;
    const width = Math.min(moving.box.most[axis], holding.box.most[axis]) - Math.max(moving.box.least[axis], holding.box.least[axis]);
    // through its thickness the other is too thin to matter, and what moves the same way goes with it
    if (width <= 0 || holding.directions.thickness === axis) return undefined;
    const other = acrossOf(casework, holding);
    const goesAlong = other?.axis === axis ? changeAcross(width, other.wood, driest, wettest) : 0;
    const moves = changeAcross(width, wood, driest, wettest) - goesAlong;
    return moves > 0 ? { joint, moving, holding, wood, width, moves } : undefined;
}

/**
 * What a glued joint across the grain takes, in millimetres: about what a 5in board moves in a year. Common practice, no source.
 */
export const mostHeldAcross = 2.5;
