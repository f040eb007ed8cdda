/**
 * How each kind of part lies in its room: which way its thickness points, which way its length runs, and where it starts from when the
 * text does not say. The words themselves (properties, edges, doc) are in the vocabulary.
 */
import type { Axis, EdgeName, FaceName } from '../model/casework.js';

export interface KindOfPart {
    readonly thickness: Axis;
    readonly length: Axis;
    readonly width: Axis;
    /** Where its thickness lies when no place is given; undefined: a place is needed. */
    readonly against?: FaceName;
    /** Which of its faces a bare distance places. */
    readonly placed: FaceName;
    /** From where it runs when something stands in the middle of its way, and which end an explicit size is measured from. */
    readonly from: Partial<Record<Axis, 'lo' | 'hi'>>;
    /** Names of its faces besides those of the axes. */
    readonly faces: Readonly<Record<string, FaceName>>;
}

const flat = { thickness: 'z', length: 'x', width: 'y', placed: 'top', faces: { upper: 'top', lower: 'bottom' } } as const;
const facing = { thickness: 'y', faces: {} } as const;

const kinds: Readonly<Record<string, KindOfPart>> = {
    side: { thickness: 'x', length: 'z', width: 'y', placed: 'left', from: {}, faces: {} },
    divider: { thickness: 'x', length: 'z', width: 'y', placed: 'left', from: {}, faces: {} },
    top: { ...flat, against: 'top', from: {} },
    bottom: { ...flat, against: 'bottom', from: {} },
    shelf: { ...flat, from: {} },
    stretcher: { ...flat, against: 'top', from: { y: 'hi' } },
    back: { ...facing, length: 'z', width: 'x', against: 'back', placed: 'back', from: {} },
    kick: { ...facing, length: 'x', width: 'z', against: 'front', placed: 'back', from: { z: 'lo' } },
    rail: { ...facing, length: 'x', width: 'z', against: 'front', placed: 'back', from: { z: 'hi' } },
    filler: { ...facing, length: 'z', width: 'x', against: 'front', placed: 'back', from: { x: 'lo' } },
    panel: { ...facing, length: 'z', width: 'x', against: 'front', placed: 'back', from: {} },
};

/** A case (or a case inside one) has no thickness of its own. */
export function isAssemblyKind(kind: string): boolean {
    return kind === 'case';
}

export function kindOfPart(kind: string): KindOfPart | undefined {
    return kinds[kind];
}

export const axes: readonly Axis[] = ['x', 'y', 'z'];
export const facesOfAxis: Readonly<Record<Axis, { readonly lo: FaceName; readonly hi: FaceName }>> = {
    x: { lo: 'left', hi: 'right' },
    y: { lo: 'back', hi: 'front' },
    z: { lo: 'bottom', hi: 'top' },
};
export const axisByFace: Readonly<Record<FaceName, { readonly axis: Axis; readonly end: 'lo' | 'hi' }>> = {
    left: { axis: 'x', end: 'lo' },
    right: { axis: 'x', end: 'hi' },
    back: { axis: 'y', end: 'lo' },
    front: { axis: 'y', end: 'hi' },
    bottom: { axis: 'z', end: 'lo' },
    top: { axis: 'z', end: 'hi' },
};

export function isFaceName(word: string): word is FaceName {
    return Object.hasOwn(axisByFace, word);
}
export function axisOfFace(face: FaceName): { readonly axis: Axis; readonly end: 'lo' | 'hi' } {
    return axisByFace[face];
}

/** The face of a part that a word names: `upper`, `inner` (by hand), `front`. */
export function faceOfPart(kind: string, word: string, hand: 'left' | 'right' | undefined): FaceName | undefined {
    const known = kinds[kind];
    if (known?.thickness === 'x' && (word === 'inner' || word === 'outer')) {
        if (!hand) return undefined;
        return (word === 'inner') === (hand === 'left') ? 'right' : 'left';
    }
    return known?.faces[word] ?? (isFaceName(word) ? word : undefined);
}

/** What a maker calls a face of a part of this kind. */
export function nameOfFace(kind: string, face: FaceName, hand: 'left' | 'right' | undefined): string {
    const known = kinds[kind];
    if (!known) return face;
    if (known.thickness === 'x' && hand && (face === 'left' || face === 'right')) return face === hand ? 'outer' : 'inner';
    if (known.thickness === 'z' && face === 'top') return 'upper';
    if (known.thickness === 'z' && face === 'bottom') return 'lower';
    return face;
}

/** The edges a part of this kind has: the faces that are not across its thickness. */
export function edgesOfPart(kind: string): readonly EdgeName[] {
    const known = kinds[kind];
    if (!known) return [];
    return (Object.keys(axisByFace) as FaceName[]).filter((face) => axisByFace[face].axis !== known.thickness);
}
