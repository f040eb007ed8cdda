/** The section of a shelf at a place along it: its layers, and the nosings and bands on its front and back edges. */
import type { Casework, Edge, Layer, Part, Thing } from '../casework/index.js';
import { type Quantity, real } from '../quantity/index.js';
import { type Section, type Strip, transformedSection } from './section.js';
import { type Bearer, bearersOf } from './shelf-supports.js';
import { creepOf, modulusOf, type WayOfGrain } from './stiffness.js';

/** A strip of a section and the wood it is of. */
export interface ShelfStrip extends Strip {
    readonly material: Thing;
    /** The core is as wide as the shelf is deep at a place; a bearer stands under it. */
    readonly role: 'core' | 'edge' | 'bearer';
}

/** Every strip of a shelf; undefined with the name of what is not known. */
export type StripsOfShelf =
    | { readonly ok: true; readonly strips: readonly ShelfStrip[] }
    | { readonly ok: false; readonly unknown: Thing | undefined };

const lengthOf = (quantity: Quantity | undefined): number => (quantity ? real.toNumber(quantity.value) : Number.NaN);

export function stripsOfShelf(casework: Casework, part: Part): StripsOfShelf {
    const strips: ShelfStrip[] = [];
    let below = 0;
    const width = lengthOf(part.sizes.core.width?.quantity);
    // from the top down: layers are listed from the bottom up
    for (const layer of part.layers.toReversed()) {
        const material = thingOf(casework, layer.material);
        const modulus = material && modulusOf(casework, material, wayOf(layer));
        const height = lengthOf(layer.thickness?.quantity);
        if (!material || modulus === undefined || Number.isNaN(height) || Number.isNaN(width)) return { ok: false, unknown: material };
        strips.push({ name: material.name, width, height, below, modulus, material, role: 'core' });
        below += height;
    }
    for (const edge of part.edges.filter(({ name }) => name === 'front' || name === 'back')) {
        const found = edgeStrips(casework, edge);
        if (!found.ok) return found;
        strips.push(...found.strips);
    }
    return { ok: true, strips: [...strips, ...bearersOf(casework, part).flatMap((bearer) => bearerStrips(casework, bearer, below))] };
}

/** A board on edge under the shelf; one of which nothing is known is not counted on. */
function bearerStrips(casework: Casework, { part, glued }: Bearer, below: number): readonly ShelfStrip[] {
    const height = part.box.most.z - part.box.least.z;
    return part.layers.flatMap((layer): readonly ShelfStrip[] => {
        const material = thingOf(casework, layer.material);
        const modulus = material && modulusOf(casework, material, wayOf(layer));
        const width = lengthOf(layer.thickness?.quantity);
        if (!material || modulus === undefined || Number.isNaN(width)) return [];
        return [{ name: part.name, width, height, below, modulus, material, role: 'bearer', loose: !glued }];
    });
}

/** Nosings and bands lie flush with the upper face, with their grain along the edge. */
function edgeStrips(casework: Casework, edge: Edge): StripsOfShelf {
    const strips: ShelfStrip[] = [];
    for (const { does, amount, width, material: id } of edge.steps) {
        if (does !== 'band' && does !== 'nosing') continue;
        const material = thingOf(casework, id);
        const modulus = material && modulusOf(casework, material, 'along');
        const [thick, high] = [lengthOf(amount?.quantity), lengthOf(width?.quantity)];
        // a band of which nothing is known is thin enough to be left out; a nosing carries
        if (!material || modulus === undefined || Number.isNaN(thick) || Number.isNaN(high)) {
            if (does === 'band') continue;
            return { ok: false, unknown: material };
        }
        strips.push({ name: `${material.name} ${does}`, width: thick, height: high, below: 0, modulus, material, role: 'edge' });
    }
    return { ok: true, strips };
}

function thingOf(casework: Casework, id: string | undefined): Thing | undefined {
    return id === undefined ? undefined : casework.things.get(id);
}

function wayOf({ grain }: Layer): WayOfGrain {
    return grain === 'length' ? 'along' : grain === 'width' ? 'across' : 'none';
}

/** The section where the core is so deep, front to back; in years each strip counts by what creep leaves of its modulus. */
export function sectionOf(strips: readonly ShelfStrip[], depth: number, when: 'at once' | 'in years'): Section {
    return transformedSection(
        strips.map((strip) => ({
            ...strip,
            width: strip.role === 'core' ? depth : strip.width,
            modulus: when === 'in years' ? strip.modulus / creepOf(strip.material).factor : strip.modulus,
        })),
    );
}
