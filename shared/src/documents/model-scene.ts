/** All that is built as a scene: the outermost cases side by side, one of each, every part with its own name. */
import type { Assembly, Casework, Path } from '../casework/index.js';
import type { CaseworkSolids } from '../solids/index.js';
import type { Scene, SceneGroup, SceneMaterial, SceneSurface, SceneThing } from './scene.js';
import { lookOf } from './wood-colours.js';

/** Between two cases that are not built together, in millimetres. */
const apart = 400;

export function modelScene(casework: Casework, solids: CaseworkSolids): Scene {
    const materials = new Materials(casework);
    const groups: SceneGroup[] = [];
    let right = 0;
    for (const assembly of casework.assemblies) {
        if (assembly.inside !== undefined) continue;
        const things = partsIn(casework, assembly).flatMap((path) => thingOf(path, solids, materials) ?? []);
        groups.push({ name: assembly.path, right: right - assembly.extent.least.x, things });
        right += assembly.extent.most.x - assembly.extent.least.x + apart;
    }
    return { title: casework.project?.title ?? groups[0]?.name ?? '', groups, materials: materials.list };
}

function partsIn({ assemblies, parts }: Casework, assembly: Assembly): readonly Path[] {
    const inside = new Set([assembly.path]);
    for (const other of assemblies) if (other.inside !== undefined && inside.has(other.inside)) inside.add(other.path);
    return [...parts.values()].filter((part) => inside.has(part.assembly)).map(({ path }) => path);
}

function thingOf(path: Path, { parts }: CaseworkSolids, materials: Materials): SceneThing | undefined {
    const solid = parts.get(path);
    if (!solid) return undefined;
    const surfaces = solid.bodies
        .filter(({ mesh }) => mesh.triangles.length > 0)
        .map(({ material, mesh }): SceneSurface => ({ material: materials.placeOf(material), ...mesh }));
    return surfaces.length === 0 ? undefined : { name: path, surfaces };
}

/** The looks that are used, each once. */
class Materials {
    readonly list: SceneMaterial[] = [];
    private readonly places = new Map<string | undefined, number>();

    constructor(private readonly casework: Casework) {}

    placeOf(material: string | undefined): number {
        let place = this.places.get(material);
        if (place === undefined) {
            place = this.list.push(lookOf(material === undefined ? undefined : this.casework.things.get(material))) - 1;
            this.places.set(material, place);
        }
        return place;
    }
}
