import { validateBytes } from 'gltf-validator';
import { describe, expect, test } from 'vitest';
import type { Scene } from '../../src/documents/index.js';
import { writeGlb } from '../../src/writers/glb.js';

/** The box from the origin to the corner (2, 1, 3), in the axes of a case: x to the right, y forward, z up. */
const box = {
    places: Float32Array.from([0, 0, 0, 2, 0, 0, 2, 1, 0, 0, 1, 0, 0, 0, 3, 2, 0, 3, 2, 1, 3, 0, 1, 3].map((one) => one * 1000)),
    triangles: Uint32Array.from(
        [
            [0, 2, 1, 0, 3, 2], // below
            [4, 5, 6, 4, 6, 7], // above
            [0, 1, 5, 0, 5, 4], // behind
            [3, 7, 6, 3, 6, 2], // in front
            [0, 4, 7, 0, 7, 3], // left
            [1, 2, 6, 1, 6, 5], // right
        ].flat(),
    ),
};

const scene: Scene = {
    title: 'Hüttenwerk “Ost”',
    groups: [
        { name: 'One', right: 0, things: [{ name: 'One.Left', surfaces: [{ material: 0, ...box }] }] },
        { name: 'Two', right: 2500, things: [{ name: 'Two.Left', surfaces: [{ material: 1, ...box }] }] },
    ],
    materials: [
        { name: 'Oak', colour: [0.5, 0.3, 0.1], roughness: 0.75, metal: 0 },
        { name: 'Brass', colour: [0.4, 0.3, 0.1], roughness: 0.4, metal: 1 },
    ],
};

/** The words of a file, and its numbers. */
function read(file: Uint8Array) {
    const view = new DataView(file.buffer);
    const length = view.getUint32(12, true);
    return { words: JSON.parse(Buffer.from(file.slice(20, 20 + length)).toString('utf8')), numbers: file.slice(28 + length) };
}

describe('a scene as binary glTF', () => {
    test('is valid by the validator of the Khronos Group, without errors, warnings or hints', async () => {
        const { issues, info } = await validateBytes(writeGlb(scene));
        expect(issues.messages).toEqual([]);
        expect(info.totalTriangleCount).toBe(24);
        expect(info.materialCount).toBe(2);
    });

    test('is the same bytes each time', () => {
        expect(Buffer.compare(writeGlb(scene), writeGlb(scene))).toBe(0);
    });

    test('has each thing by its name, in its case, which stands where it stands', () => {
        const { words } = read(writeGlb(scene));
        expect(words.scenes[0].name).toBe('Hüttenwerk “Ost”');
        const cases = words.scenes[0].nodes.map((index: number) => words.nodes[index]);
        expect(cases.map(({ name, translation }: { name: string; translation?: number[] }) => [name, translation])).toEqual([
            ['One', undefined],
            ['Two', [2.5, 0, 0]],
        ]);
        expect(words.nodes[cases[1].children[0]].name).toBe('Two.Left');
        expect(words.meshes.map(({ name }: { name: string }) => name)).toEqual(['One.Left', 'Two.Left']);
    });

    test('is in metres, y up and z to who looks at it', () => {
        const { words } = read(writeGlb(scene));
        const [place] = words.accessors;
        expect([place.min, place.max]).toEqual([
            [0, 0, 0],
            [2, 3, 1],
        ]);
    });

    test('its surfaces face outward: the tetrahedra over their triangles make up its volume, and each corner faces as its triangle does', () => {
        const { words, numbers } = read(writeGlb(scene));
        const floats = (index: number) =>
            new Float32Array(
                numbers.buffer,
                numbers.byteOffset + words.bufferViews[index].byteOffset,
                words.bufferViews[index].byteLength / 4,
            );
        const [places, normals] = [floats(0), floats(1)];
        const triangles = new Uint32Array(numbers.buffer, numbers.byteOffset + words.bufferViews[2].byteOffset, 36);
        const at = (of: Float32Array, corner: number) => [0, 1, 2].map((axis) => of[corner * 3 + axis]!) as [number, number, number];
        let volume = 0;
        for (let index = 0; index < 36; index += 3) {
            const [a = [], b = [], c = []] = [0, 1, 2].map((step) => at(places, triangles[index + step]!)) as [number, number, number][];
            const square = [0, 1, 2].map((axis) => {
                const [i, j] = [(axis + 1) % 3, (axis + 2) % 3];
                return (b[i]! - a[i]!) * (c[j]! - a[j]!) - (b[j]! - a[j]!) * (c[i]! - a[i]!);
            });
            volume += square.reduce((sum, one, axis) => sum + one * a[axis]!, 0) / 6;
            const normal = at(normals, triangles[index]!);
            expect(square.reduce((sum, one, axis) => sum + one * normal[axis]!, 0)).toBeGreaterThan(0);
        }
        expect(volume).toBeCloseTo(6, 5);
    });
});
