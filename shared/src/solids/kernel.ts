/**
 * The kernel that cuts and joins solids: Manifold, a library for closed triangle meshes whose cuts stay closed whatever meets whatever.
 *
 * It is large and is seldom needed, so whoever runs the program loads it and hands it in. What it makes lies in memory of its own and is
 * given back by hand: a workbench keeps a list.
 */
import type { Manifold, ManifoldToplevel } from 'manifold-3d/manifold.js';
import type { SpaceAxis, SpacePoint } from '../geometry/index.js';

/** The kernel, loaded and set up. */
export type SolidKernel = ManifoldToplevel;

/** A closed solid of the kernel, in millimetres. */
export type Solid = Manifold;

export const axes: readonly SpaceAxis[] = ['x', 'y', 'z'];

/** How far what cuts reaches past the surface it starts from, so that rounding leaves no film there: as much as the fit tolerance. */
export const cutsPast = 0.01;

/** Everything that is made at it is cleared away together. */
export class Workbench {
    private readonly made: Solid[] = [];

    constructor(readonly kernel: SolidKernel) {}

    keep(solid: Solid): Solid {
        this.made.push(solid);
        return solid;
    }

    keepAll<Many extends readonly Solid[]>(solids: Many): Many {
        this.made.push(...solids);
        return solids;
    }

    /** A solid moved and turned: where the origin goes, and where a step along each axis goes. */
    placed(solid: Solid, at: SpacePoint, x: SpacePoint, y: SpacePoint, z: SpacePoint): Solid {
        return this.keep(this.keep(solid).transform([x.x, x.y, x.z, 0, y.x, y.y, y.z, 0, z.x, z.y, z.z, 0, at.x, at.y, at.z, 1]));
    }

    /** What lies beyond a plane square to an axis, towards greater places or lesser ones. */
    beyond(solid: Solid, axis: SpaceAxis, place: number, side: 'greater' | 'lesser'): Solid {
        const sign = side === 'greater' ? 1 : -1;
        return this.keep(solid.trimByPlane([axis === 'x' ? sign : 0, axis === 'y' ? sign : 0, axis === 'z' ? sign : 0], sign * place));
    }

    /** What lies between two places along an axis. */
    between(solid: Solid, axis: SpaceAxis, from: number, to: number): Solid {
        return this.beyond(this.beyond(solid, axis, from, 'greater'), axis, to, 'lesser');
    }

    /** A solid without what cuts it. */
    without(solid: Solid, cutters: readonly Solid[]): Solid {
        return cutters.length === 0 ? solid : this.keep(this.kernel.Manifold.difference([solid, ...cutters]));
    }

    clear(): void {
        for (const solid of this.made) solid.delete();
        this.made.length = 0;
    }
}
