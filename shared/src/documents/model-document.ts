/**
 * The model: the whole evaluated casework for programs, as the published schema says (`schema/model.schema.json`).
 *
 * Lengths are millimetres, masses kilograms, densities kilograms per cubic metre, angles degrees, line and column from 1. `null` stands
 * for what is not known or not there, never 0. Names change only with `schemaVersion`.
 */
import type { Assembly, Casework, Opening, Part, Piece, Size } from '../casework/index.js';
import type { CaseworkSolids, SolidWeight } from '../solids/index.js';
import { densityOf, massOfPart } from '../strength/index.js';
import type { DocumentOptions, Locate, SourcePlace } from './document-options.js';
import { findingRecord } from './finding-record.js';
import type { JsonObject } from './json-value.js';
import { materialNamer, modelMaterials } from './model-materials.js';
import { kilograms, millimetres } from './model-values.js';
import { edgesOf, featuresOf, jointsOf } from './model-work.js';
import { onlyBuilt } from './only-built.js';

/** The version of the schema that the model keeps to. */
const schemaVersion = 1;

/** What one model is made with. */
interface Context {
    readonly casework: Casework;
    readonly locate: Locate;
    readonly materialName: (id: string) => string;
    readonly solids: CaseworkSolids | undefined;
}

/** The model of all that is built, with the findings that were passed in. */
export function modelDocument(evaluated: Casework, options: DocumentOptions): JsonObject {
    const casework = onlyBuilt(evaluated);
    const context: Context = {
        casework,
        locate: options.locate,
        materialName: materialNamer(casework),
        solids: options.solids,
    };
    const parts = [...casework.parts.values()];
    return {
        schemaVersion,
        units: { length: 'mm', volume: 'mm3', mass: 'kg', density: 'kg/m3', angle: 'deg' },
        project: projectOf(casework),
        cases: casework.assemblies.map((assembly) => caseOf(assembly, context)),
        openings: [...casework.openings.values()].map((opening) => openingOf(opening, context)),
        parts: parts.map((part) => partOf(part, context)),
        pieces: casework.pieces.map((piece) => pieceOf(piece, context)),
        materials: modelMaterials(casework, options.locate),
        findings: options.findings.map((finding) => ({ ...findingRecord(finding, options.locate) })),
        notes: [massNote, ...withoutDensity(context)],
    };
}

const massNote =
    'The mass of a part is density times volume of its pieces, before rabbets, grooves, rounds and joints are cut; under a curve its mean ' +
    'depth counts. It is null where the density of a material or a size is not known. The weight of its solid is that of what is left when all ' +
    'is cut, without screws and glue.';

/** Which materials keep masses from being known. */
function withoutDensity({ casework, materialName }: Context): readonly string[] {
    const used = new Set(casework.pieces.map((piece) => piece.material).filter((id) => id !== undefined));
    const unknown = [...used].filter((id) => !densityOf(casework, casework.things.get(id))).map(materialName);
    return unknown.length === 0 ? [] : [`Of these materials no density is stated, so parts of them have no mass: ${unknown.join(', ')}.`];
}

function projectOf({ project }: Casework): JsonObject | null {
    if (!project) return null;
    const { title, client, revision, units, notes } = project;
    return { title, client: client ?? null, revision: revision ?? null, units, notes: [...notes] };
}

function caseOf(assembly: Assembly, { locate, solids }: Context): JsonObject {
    return {
        id: assembly.path,
        name: assembly.name,
        kind: assembly.kind,
        quantity: assembly.count,
        mirrored: assembly.mirrored,
        inside: assembly.inside ?? null,
        ...widthHeightDepth(assembly),
        overall: widthHeightDepth(assembly.overall),
        weight: weightValue(solids?.caseWeights.get(assembly.path)),
        source: sourceAt(locate(assembly.span)),
    };
}

function openingOf(opening: Opening, { locate }: Context): JsonObject {
    return { id: opening.path, name: opening.name, ...widthHeightDepth(opening), source: sourceAt(locate(opening.span)) };
}

function partOf(part: Part, { casework, locate, materialName, solids }: Context): JsonObject {
    return {
        id: part.path,
        name: part.name,
        case: part.assembly,
        kind: part.kind,
        quantity: part.quantity,
        hand: part.hand ?? null,
        finished: sizeOf(part.sizes.finished),
        core: sizeOf(part.sizes.core),
        rough: sizeOf(part.sizes.rough),
        edges: edgesOf(part, materialName),
        features: featuresOf(part),
        joints: jointsOf(part, casework),
        pieces: [...part.pieces],
        mass: kilograms(massOfPart(casework, part)),
        solid: solidOf(part, solids),
        source: sourceAt(locate(part.nameSpan)),
    };
}

/** As it is when all is cut. */
function solidOf({ path }: Part, solids: CaseworkSolids | undefined): JsonObject | null {
    const solid = solids?.parts.get(path);
    return solid ? { volume: rounded(solid.volume, 3), weight: weightValue(solids?.weights.get(path)) } : null;
}

/** Grams and thousandths of a millimetre: the triangles of a curve are no truer. */
function weightValue(weight: SolidWeight | undefined): JsonObject | null {
    if (!weight) return null;
    const { x, y, z } = weight.centre;
    return { mass: rounded(weight.mass, 6), centre: { x: rounded(x, 3), y: rounded(y, 3), z: rounded(z, 3) } };
}

function rounded(value: number, decimals: number): number {
    return Number(value.toFixed(decimals)) + 0;
}

function pieceOf(piece: Piece, { materialName }: Context): JsonObject {
    return {
        id: piece.id,
        part: piece.part,
        name: piece.name,
        role: piece.role,
        material: piece.material === undefined ? null : materialName(piece.material),
        quantity: piece.quantity,
        cut: sizeOf(piece.rough),
        grain: piece.grain,
        hand: piece.hand ?? null,
    };
}

function sizeOf({ length, width, thickness }: Size): JsonObject {
    return { length: millimetres(length), width: millimetres(width), thickness: millimetres(thickness) };
}

function widthHeightDepth({ width, height, depth }: Pick<Opening, 'width' | 'height' | 'depth'>): JsonObject {
    return { width: millimetres(width), height: millimetres(height), depth: millimetres(depth) };
}

function sourceAt({ file, line, column }: SourcePlace): JsonObject {
    return { file, line, column };
}
