/** The materials of the model: those that a piece is cut from. */
import type { Casework, Thing } from '../casework/index.js';
import { dimension } from '../quantity/index.js';
import { densityOf, measureProperty, sheetSizes, thingName, thingProperty } from '../strength/index.js';
import type { Locate } from './document-options.js';
import type { JsonObject } from './json-value.js';
import { densityValue, millimetres } from './model-values.js';

/** How materials are called in the model: by their names, or where two share one by where they are declared. */
export function materialNamer(casework: Casework): (id: string) => string {
    const used = usedMaterials(casework);
    const shared = (id: string) => used.some((other) => other !== id && thingName(casework, other) === thingName(casework, id));
    const names = new Map(used.map((id) => [id, shared(id) ? id : thingName(casework, id)]));
    return (id) => names.get(id) ?? thingName(casework, id);
}

/** Every material that a piece, a band or a nosing is of, in the order of first use. */
export function modelMaterials(casework: Casework, locate: Locate): readonly JsonObject[] {
    const nameOf = materialNamer(casework);
    return usedMaterials(casework).flatMap((id) => {
        const thing = casework.things.get(id);
        return thing ? [materialOf(thing, nameOf(id), casework, locate)] : [];
    });
}

function usedMaterials(casework: Casework): readonly string[] {
    const ofPieces = casework.pieces.map((piece) => piece.material);
    const ofEdges = [...casework.parts.values()].flatMap((part) => part.edges.flatMap((edge) => edge.steps.map((step) => step.material)));
    return [...new Set([...ofPieces, ...ofEdges])].filter((id) => id !== undefined);
}

function materialOf(thing: Thing, name: string, casework: Casework, locate: Locate): JsonObject {
    const { file, line, column } = locate(thing.nameSpan);
    return {
        name,
        family: thing.family ?? null,
        species: thingProperty(casework, thing, 'species')?.name ?? null,
        thickness: millimetres(measureProperty(thing, 'thickness', dimension.length)),
        actual: millimetres(measureProperty(thing, 'actual', dimension.length)),
        density: densityValue(densityOf(casework, thing)),
        sheets: sheetSizes(thing).map(([width, length]) => ({ width: millimetres(width), length: millimetres(length) })),
        source: { file, line, column },
    };
}
