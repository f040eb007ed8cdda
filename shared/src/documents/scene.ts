/** What a scene in three dimensions is made of, before any file format. */

/** Things in space: x to the right, y forward to who looks at them, z up; millimetres. */
export interface Scene {
    readonly title: string;
    readonly groups: readonly SceneGroup[];
    readonly materials: readonly SceneMaterial[];
}

/** What is moved together: a case. */
export interface SceneGroup {
    readonly name: string;
    /** How far to the right it stands. */
    readonly right: number;
    readonly things: readonly SceneThing[];
}

export interface SceneThing {
    readonly name: string;
    readonly surfaces: readonly SceneSurface[];
}

/** A surface of triangles, of one material. */
export interface SceneSurface {
    /** Its place in `materials`. */
    readonly material: number;
    /** x, y and z of each corner in turn. */
    readonly places: Float32Array;
    /** Three corners for each triangle. Seen from outside they run clockwise, because the axes are left-handed. */
    readonly triangles: Uint32Array;
}

export interface SceneMaterial {
    readonly name: string;
    /** Red, green and blue, from 0 to 1, in proportion to the light (not as a screen is told them). */
    readonly colour: readonly [number, number, number];
    /** From 0 for a mirror to 1 for chalk. */
    readonly roughness: number;
    /** From 0 for wood to 1 for bare metal. */
    readonly metal: number;
}
