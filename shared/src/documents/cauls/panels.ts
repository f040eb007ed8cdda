/** Panels that are glued up face to face of several layers, which cauls press. */
import type { Casework, Part } from '../../casework/index.js';
import { real } from '../../quantity/index.js';
import { thingProperty, type Wood, woodStrength } from '../../strength/index.js';
import { namesInWords, partNamer } from '../part-names.js';

/** Panels of one size, once for all. */
export interface GluedPanel {
    /** `Left, Right` */
    readonly names: string;
    readonly quantity: number;
    readonly layers: number;
    /** Along the cauls, as it is glued up, in millimetres. */
    readonly width: number;
    /** Across them. */
    readonly length: number;
    /** The wood of its faces; undefined where that is none, or not known. */
    readonly wood: Wood | undefined;
}

export function gluedPanels(casework: Casework): readonly GluedPanel[] {
    const nameOf = partNamer(casework);
    const found = new Map<string, { readonly panel: GluedPanel; readonly names: string[]; quantity: number }>();
    for (const part of casework.parts.values()) {
        const panel = panelOf(part, casework);
        if (!panel) continue;
        const key = [panel.layers, panel.width.toFixed(3), panel.length.toFixed(3), panel.wood].join(' ');
        const known = found.get(key) ?? { panel, names: [], quantity: 0 };
        known.names.push(nameOf(part.path));
        known.quantity += part.quantity;
        found.set(key, known);
    }
    return [...found.values()].map(({ panel, names, quantity }) => ({ ...panel, names: namesInWords(names), quantity }));
}

function panelOf(part: Part, casework: Casework): GluedPanel | undefined {
    const { length, width } = part.sizes.rough;
    if (part.layers.length < 2 || !length || !width) return undefined;
    const sizes = [length, width].map(({ quantity }) => real.toNumber(quantity.value));
    const [least, most] = [Math.min(...sizes), Math.max(...sizes)];
    return {
        names: part.name,
        quantity: part.quantity,
        layers: part.layers.length,
        width: least,
        length: most,
        wood: woodOf(part, casework),
    };
}

function woodOf({ layers }: Part, casework: Casework): Wood | undefined {
    const woods = layers.map(({ material }) => {
        const thing = material === undefined ? undefined : casework.things.get(material);
        const species = thingProperty(casework, thing, 'species');
        return species && woodStrength(species).wood;
    });
    return woods.find((wood) => wood === 'hardwood') ?? woods.find((wood) => wood !== undefined);
}
