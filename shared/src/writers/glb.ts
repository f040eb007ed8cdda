/**
 * A scene as glTF 2.0 in its binary form (Khronos Group, ISO/IEC 12113:2022): metres, y up, z to who looks at it.
 *
 * One node and one mesh for each thing, by its name, with a primitive for each of its surfaces. Triangles are smoothed over where they
 * meet at a gentle angle, and not over edges.
 */
import type { Scene, SceneMaterial, SceneSurface } from '../documents/index.js';
import { smoothed } from './smoothing.js';

/** In a file: each chunk and each view of the buffer begins at a multiple of it. */
const alignment = 4;

/** What numbers are, and what they are for, by their codes in the standard. */
const float32 = 5126;
const uint32 = 5125;
const forCorners = 34962;
const forTriangles = 34963;

export function writeGlb(scene: Scene): Uint8Array {
    const content = new BinaryContent();
    const meshes: object[] = [];
    const nodes: object[] = [];
    const roots: number[] = [];
    for (const group of scene.groups) {
        const children = group.things.map(({ name, surfaces }) => {
            const mesh = meshes.push({ name, primitives: surfaces.map((surface) => primitiveOf(surface, content)) }) - 1;
            return nodes.push({ name, mesh }) - 1;
        });
        const translation = group.right === 0 ? {} : { translation: [group.right / 1000, 0, 0] };
        if (children.length > 0) roots.push(nodes.push({ name: group.name, children, ...translation }) - 1);
    }
    return packed(
        {
            asset: { version: '2.0', generator: 'Casewright' },
            scene: 0,
            scenes: [{ name: scene.title, nodes: roots }],
            nodes,
            meshes,
            materials: scene.materials.map(materialOf),
            accessors: content.accessors,
            bufferViews: content.views,
            buffers: [{ byteLength: content.length }],
        },
        content,
    );
}

function primitiveOf(surface: SceneSurface, content: BinaryContent): object {
    const { places, normals, triangles } = smoothed(inMetres(surface));
    return {
        attributes: { POSITION: content.addPoints(places, 'with range'), NORMAL: content.addPoints(normals, 'without') },
        indices: content.addIndices(triangles),
        material: surface.material,
    };
}

/** Forward and up change places, which makes left-handed axes right-handed: seen from outside the corners of a triangle must then run the other way round. */
function inMetres({ places, triangles }: SceneSurface): { readonly places: Float32Array; readonly triangles: Uint32Array } {
    const turned = new Float32Array(places.length);
    for (let index = 0; index < places.length; index += 3) {
        turned[index] = places[index]! / 1000;
        turned[index + 1] = places[index + 2]! / 1000;
        turned[index + 2] = places[index + 1]! / 1000;
    }
    const reversed = new Uint32Array(triangles.length);
    for (let index = 0; index < triangles.length; index += 3) {
        reversed[index] = triangles[index]!;
        reversed[index + 1] = triangles[index + 2]!;
        reversed[index + 2] = triangles[index + 1]!;
    }
    return { places: turned, triangles: reversed };
}

function materialOf({ name, colour, roughness, metal }: SceneMaterial): object {
    return {
        name,
        pbrMetallicRoughness: {
            baseColorFactor: [...colour.map((share) => Math.round(share * 1e6) / 1e6), 1],
            metallicFactor: metal,
            roughnessFactor: roughness,
        },
    };
}

/** The numbers of a file, one after the other, with what is said of them. */
class BinaryContent {
    readonly accessors: object[] = [];
    readonly views: object[] = [];
    readonly chunks: Uint8Array[] = [];
    length = 0;

    addPoints(points: Float32Array, range: 'with range' | 'without'): number {
        const bufferView = this.addView(bytesOf(points), forCorners);
        const said = { bufferView, componentType: float32, count: points.length / 3, type: 'VEC3' };
        return this.accessors.push(range === 'with range' ? { ...said, ...rangeOf(points) } : said) - 1;
    }

    addIndices(indices: Uint32Array): number {
        const bufferView = this.addView(bytesOf(indices), forTriangles);
        return this.accessors.push({ bufferView, componentType: uint32, count: indices.length, type: 'SCALAR' }) - 1;
    }

    private addView(bytes: Uint8Array, target: number): number {
        this.chunks.push(bytes);
        const view = { buffer: 0, byteOffset: this.length, byteLength: bytes.length, target };
        this.length += bytes.length;
        return this.views.push(view) - 1;
    }
}

function rangeOf(points: Float32Array): { readonly min: number[]; readonly max: number[] } {
    const [min, max] = [[0, 0, 0].map(() => Number.POSITIVE_INFINITY), [0, 0, 0].map(() => Number.NEGATIVE_INFINITY)];
    points.forEach((value, index) => {
        min[index % 3] = Math.min(min[index % 3]!, value);
        max[index % 3] = Math.max(max[index % 3]!, value);
    });
    return { min, max };
}

/** Least byte first, whatever the machine. */
function bytesOf(numbers: Float32Array | Uint32Array): Uint8Array {
    const bytes = new Uint8Array(numbers.length * 4);
    const view = new DataView(bytes.buffer);
    const isFloat = numbers instanceof Float32Array;
    for (const [index, value] of numbers.entries()) {
        if (isFloat) view.setFloat32(index * 4, value, true);
        else view.setUint32(index * 4, value, true);
    }
    return bytes;
}

/** Header, the words as JSON filled up with blanks, the numbers filled up with zeros (section 4.4 of the standard). */
function packed(words: object, { chunks, length }: BinaryContent): Uint8Array {
    const json = Uint8Array.from(asciiJson(words), (letter) => letter.charCodeAt(0));
    const [jsonLength, binaryLength] = [filledUp(json.length), filledUp(length)];
    const file = new Uint8Array(12 + 8 + jsonLength + 8 + binaryLength);
    const view = new DataView(file.buffer);
    const numbers = [0x46546c67, 2, file.length, jsonLength, 0x4e4f534a];
    for (const [index, number] of numbers.entries()) view.setUint32(index * 4, number, true);
    file.fill(0x20, 20, 20 + jsonLength);
    file.set(json, 20);
    const start = 20 + jsonLength;
    view.setUint32(start, binaryLength, true);
    view.setUint32(start + 4, 0x004e4942, true);
    let at = start + 8;
    for (const chunk of chunks) {
        file.set(chunk, at);
        at += chunk.length;
    }
    return file;
}

/** JSON in the letters of ASCII alone; others as their numbers (RFC 8259, section 7). */
function asciiJson(words: object): string {
    return JSON.stringify(words).replace(/[\u0080-\uffff]/g, (letter) => `\\u${letter.charCodeAt(0).toString(16).padStart(4, '0')}`);
}

function filledUp(length: number): number {
    return Math.ceil(length / alignment) * alignment;
}
