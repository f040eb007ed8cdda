/** What bounds a room in front where that is no plane: a curve over the height, one over the width, or both in one. */
import type { Axis } from '../model/casework.js';
import type { Measure } from '../model/measure.js';
import type { CurveLaw } from './curve-law.js';
import { plus } from './measures.js';
import type { Spot } from './room.js';
import type { Ends } from './run.js';

export type FrontLine = CurveLaw | DoubleCurve;

/** How far forward a line lies somewhere, in millimetres. */
export interface DepthRange {
    readonly least: number;
    readonly most: number;
}

/** Where something begins and ends. */
export type FrontExtents = Readonly<Record<Axis, { readonly lo: Spot; readonly hi: Spot }>>;

/** A front that is curved both ways: at every height and every place of the width as deep as its two curves together. */
export class DoubleCurve {
    readonly name: string;
    readonly over = 'both';

    constructor(
        readonly height: CurveLaw,
        readonly width: CurveLaw,
    ) {
        this.name = `${height.name} + ${width.name}`;
    }

    /** How far forward it lies over a stretch of the width and of the height; undefined where that is not known. */
    rangeOver(x: Ends, z: Ends): DepthRange | undefined {
        const [up, across] = [this.height.rangeOver(x, z), this.width.rangeOver(x, z)];
        return up && across && { least: up.least + across.least, most: up.most + across.most };
    }

    greatestOver(extents: FrontExtents, where: string): Measure | undefined {
        const [up, across] = [this.height.greatestOver(extents, where), this.width.greatestOver(extents, where)];
        return plus(up, across, { kind: 'operation', about: ['both curves together'] });
    }
}

/** The curves of a line, by what they are over. */
export function curvesOf(line: FrontLine): { readonly height: CurveLaw | undefined; readonly width: CurveLaw | undefined } {
    if (line.over === 'both') return line;
    return line.over === 'height' ? { height: line, width: undefined } : { height: undefined, width: line };
}
