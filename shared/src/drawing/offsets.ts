/** Offsets: how deep a curved part is at even steps along it, the way a line is carried from paper to wood. */
import { tolerance } from '../geometry/index.js';
import type { TemplateShape } from './template-shape.js';

export interface Offset {
    /** From the low end of the part, in millimetres. */
    readonly along: number;
    readonly finished: number;
    /** Undefined where nothing is left of the core there, or it has no line. */
    readonly core: number | undefined;
}

/** Offsets at every step from one end; the other end is there too, at whatever distance. */
export function offsetsFrom(end: 'low' | 'high', shape: TemplateShape, spacing: number): readonly Offset[] {
    const { length } = shape;
    const steps = Math.floor((length - tolerance.fit) / spacing) + 1;
    const places = [...Array.from({ length: steps }, (_, step) => step * spacing), length];
    return places.map((place) => offsetAt(shape, end === 'low' ? place : length - place));
}

function offsetAt(shape: TemplateShape, along: number): Offset {
    const { start, back, finished, core, takesOff, length } = shape;
    const isCut = along >= takesOff.low - tolerance.geometry && along <= length - takesOff.high + tolerance.geometry;
    return {
        along,
        finished: finished.valueAt(start + along).value - back,
        core: core && isCut ? core.valueAt(start + along).value - back : undefined,
    };
}
