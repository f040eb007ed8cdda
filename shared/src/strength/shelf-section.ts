/** The section of a shelf at a place along it: its layers, and the nosings and bands on its front and back edges. */
import type { Casework, Edge, Layer, Part, Span, Thing } from '../casework/index.js';
import { type Quantity, real } from '../quantity/index.js';
import { type Section, type Strip, transformedSection } from './section.js';
import { type Bearer, bearersOf } from './shelf-supports.js';
import { creepOf, type Modulus, modulusOf, type WayOfGrain } from './stiffness.js';

/** A strip of a section and the wood it is of. */
export interface ShelfStrip extends Strip {
    readonly material: Thing;
    /** The core is as wide as the shelf is deep at a place; a bearer stands under it. */
    readonly role: 'core' | 'edge' | 'bearer';
    /** Where the text says its modulus. */
    readonly modulusSpan: Span;
}

/** A board on edge under a shelf that is not counted on, because its stiffness is not known. */
export interface UncountedBearer {
    readonly part: Part;
    /** Undefined where its thickness is what is not known, or it says no material. */
    readonly material: Thing | undefined;
}

/** Every strip of a shelf; undefined with the name of what is not known. */
export type StripsOfShelf =
    | { readonly ok: true; readonly strips: readonly ShelfStrip[]; readonly uncounted: readonly UncountedBearer[] }
    | { readonly ok: false; readonly unknown: Thing | undefined };

type StripsOf = { readonly ok: true; readonly strips: readonly ShelfStrip[] } | { readonly ok: false; readonly unknown: Thing | undefined };

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
        strips.push({ name: material.name, width, height, below, ...valueAndPlace(modulus), material, role: 'core' });
        below += height;
    }
    for (const edge of part.edges.filter(({ name }) => name === 'front' || name === 'back')) {
        const found = edgeStrips(casework, edge);
        if (!found.ok) return found;
        strips.push(...found.strips);
    }
    const uncounted: UncountedBearer[] = [];
    for (const bearer of bearersOf(casework, part)) {
        const found = bearerStrips(casework, bearer, below);
        if (found.ok) strips.push(...found.strips);
        else uncounted.push({ part: bearer.part, material: found.unknown });
    }
    return { ok: true, strips, uncounted };
}

function valueAndPlace({ megapascals, span }: Modulus): Pick<ShelfStrip, 'modulus' | 'modulusSpan'> {
    return { modulus: megapascals, modulusSpan: span };
}

/** A board on edge under the shelf, straight or bent: bending down, only its thickness and height count. */
function bearerStrips(casework: Casework, { part, glued }: Bearer, below: number): StripsOf {
    const height = part.box.most.z - part.box.least.z;
    const strips: ShelfStrip[] = [];
    for (const layer of part.layers) {
        const material = thingOf(casework, layer.material);
        const modulus = material && modulusOf(casework, material, wayOf(layer));
        const width = lengthOf(layer.thickness?.quantity);
        if (!material || modulus === undefined || Number.isNaN(width)) return { ok: false, unknown: material };
        strips.push({ name: part.name, width, height, below, ...valueAndPlace(modulus), material, role: 'bearer', loose: !glued });
    }
    return { ok: true, strips };
}

/** Nosings and bands lie flush with the upper face, with their grain along the edge. */
function edgeStrips(casework: Casework, edge: Edge): StripsOf {
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
        strips.push({
            name: `${material.name} ${does}`,
            width: thick,
            height: high,
            below: 0,
            ...valueAndPlace(modulus),
            material,
            role: 'edge',
        });
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
