/** Parts that are panes of glass. */
import type { Casework, Part, Thing } from '../casework/index.js';
import { real } from '../quantity/index.js';
import { massOfPart } from './mass.js';
import { wordOf } from './thing-values.js';

/** Millimetres and kilograms. */
export interface Pane {
    readonly part: Part;
    readonly material: Thing;
    readonly length: number;
    readonly width: number;
    readonly thickness: number;
    /** Undefined where its density is not known. */
    readonly mass: number | undefined;
    /** As the material says it; undefined where it says nothing. */
    readonly glazing: 'annealed' | 'tempered' | 'laminated' | undefined;
}

const glazings = ['annealed', 'tempered', 'laminated'] as const;

/** All parts with a layer of glass, in the order of building. */
export function panesIn(casework: Casework): readonly Pane[] {
    return [...casework.parts.values()].flatMap((part) => paneOf(casework, part) ?? []);
}

function paneOf(casework: Casework, part: Part): Pane | undefined {
    const materials = part.layers.flatMap(({ material }) => (material === undefined ? [] : (casework.things.get(material) ?? [])));
    const material = materials.find(({ family }) => family === 'glass');
    const { length, width, thickness } = part.sizes.finished;
    if (!material || !length || !width || !thickness) return undefined;
    const mass = massOfPart(casework, part);
    const said = wordOf(material.properties.get('glazing'));
    return {
        part,
        material,
        length: real.toNumber(length.quantity.value),
        width: real.toNumber(width.quantity.value),
        thickness: real.toNumber(thickness.quantity.value),
        mass: mass && real.toNumber(mass.value),
        glazing: glazings.find((one) => one === said),
    };
}
