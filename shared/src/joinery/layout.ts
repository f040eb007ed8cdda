/** Where along a joint its fasteners stand. */
import type { JointStep, Measure } from '../casework/index.js';
import { type Interval, tolerance } from '../geometry/index.js';
import { real } from '../quantity/index.js';
import { lengthOf, middleOf } from './axes.js';

/** A measure that is a length, in millimetres. */
export function millimetres(measure: Measure | undefined): number | undefined {
    return measure && real.toNumber(measure.quantity.value);
}

/**
 * How many fasteners stand along a joint, in mm: no two farther apart than the spacing, the first and the last at the inset, or half a
 * space from the ends where none is stated; never fewer than two, because one lets the part turn. Common practice, no source.
 */
export function countBySpacing(length: number, spacing: number, inset: number | undefined): number {
    const spaces = inset === undefined ? length / spacing - 1 : (length - 2 * inset) / spacing;
    return Math.max(2, Math.ceil(spaces - tolerance.fit / spacing) + 1);
}

/** Places along a stretch, or why there are none, as what the step does: `says neither ...`. */
export type Layout = { readonly ok: true; readonly places: readonly number[] } | { readonly ok: false; readonly because: string };

/**
 * The places of a step's fasteners along a stretch, from its low end to its high one. They are the same from either end, so that a left
 * and a right part that mirror one another are laid out alike.
 */
export function layoutOf(step: JointStep, reach: Interval): Layout {
    const length = lengthOf(reach);
    const [inset, spacing, pitch] = [step.inset, step.spacing, step.lengths?.pitch].map(millimetres);
    const places = pitch === undefined ? even(step.count, spacing, inset, length) : atPitch(step.count, pitch, inset ?? 0, length);
    if (places === undefined) return { ok: false, because: 'says neither `count` nor `spacing`' };
    if (places.some((place) => place < -tolerance.fit || place > length + tolerance.fit) || isTurnedRound(places)) {
        return { ok: false, because: 'does not fit in the length of the joint with its `inset`' };
    }
    return { ok: true, places: places.map((place) => reach.from + place) };
}

/** At even spaces between the insets; without them the first and the last stand half a space from the ends. */
function even(count: number | undefined, spacing: number | undefined, inset: number | undefined, length: number) {
    const number = count ?? (spacing !== undefined && spacing > 0 ? countBySpacing(length, spacing, inset) : undefined);
    if (number === undefined) return undefined;
    const end = inset ?? length / (2 * number);
    if (number === 1) return [length / 2];
    const space = (length - 2 * end) / (number - 1);
    return Array.from({ length: number }, (_, index) => end + index * space);
}

/** Exactly so far apart, the same to both sides of the middle: as many as there are, or as fit between the insets. */
function atPitch(count: number | undefined, pitch: number, inset: number, length: number): readonly number[] | undefined {
    if (!(pitch > 0)) return undefined;
    const number = count ?? Math.max(1, Math.floor((length - 2 * inset) / pitch + tolerance.fit / pitch) + 1);
    const middle = middleOf({ from: 0, to: length });
    return Array.from({ length: number }, (_, index) => middle + (index - (number - 1) / 2) * pitch);
}

function isTurnedRound(places: readonly number[]): boolean {
    const [first, second] = places;
    return first !== undefined && second !== undefined && second < first - tolerance.fit;
}
