/** The size at a path such as `PotteryCase.Tier[2].depth`, or what there is instead. */
import type { Assembly, Axis, Casework, FaceName, Opening, Part, Size, Stage } from '../model/casework.js';
import type { Measure } from '../model/measure.js';
import type { Thing } from '../model/things.js';

export type LookUp =
    | { readonly ok: true; readonly measure: Measure; readonly path: string }
    /** Nothing there: how far the path leads, and what goes on from there. */
    | { readonly ok: false; readonly reached: string; readonly missing: string; readonly known: readonly string[] }
    /** The thing is there, but its size is not known: a finding says why. */
    | { readonly ok: false; readonly reached: string; readonly unknown: true };

type Owner =
    | { readonly is: 'part'; readonly part: Part }
    | { readonly is: 'assembly'; readonly assembly: Assembly }
    | { readonly is: 'opening'; readonly opening: Opening }
    | { readonly is: 'thing'; readonly thing: Thing };

/** Finds a size by its path. Case matters; a path may leave out the case where there is only one. */
export function lookUp(casework: Casework, path: string): LookUp {
    const owners = ownersOf(casework);
    const [only, ...others] = casework.assemblies.filter((assembly) => assembly.inside === undefined);
    const candidates = only && others.length === 0 ? [path, `${only.path}.${path}`] : [path];
    for (const candidate of candidates) {
        const found = longestPrefix(owners, candidate);
        const lost = longestPath(casework.unplaced, candidate);
        if (lost !== undefined && lost.length > (found?.path.length ?? 0)) return { ok: false, reached: candidate, unknown: true };
        if (found) return follow(found.owner, found.path, candidate.slice(found.path.length + 1), casework);
    }
    const known = [...owners.keys()].filter((one) => !one.includes('.')).sort();
    return { ok: false, reached: '', missing: path.split('.')[0] ?? path, known };
}

/** A size that can be asked for by its path. */
export interface NamedSize {
    readonly path: string;
    readonly measure: Measure;
}

/**
 * All known sizes of the part, case, opening or thing at a path, in the order in which they are asked for most; of a part the finished
 * sizes by their short names alone.
 */
export function sizesAt(casework: Casework, path: string): readonly NamedSize[] {
    const owner = ownersOf(casework).get(path);
    const sizes = owner ? [...sizesOf(owner)].filter(([name]) => !name.startsWith('finished.')) : [];
    return sizes.flatMap(([name, measure]) => (measure ? [{ path: `${path}.${name}`, measure }] : []));
}

function ownersOf(casework: Casework): ReadonlyMap<string, Owner> {
    const owners = new Map<string, Owner>();
    for (const thing of casework.things.values()) owners.set(thing.name, { is: 'thing', thing });
    for (const assembly of casework.assemblies) owners.set(assembly.path, { is: 'assembly', assembly });
    for (const opening of casework.openings.values()) owners.set(opening.path, { is: 'opening', opening });
    for (const part of casework.parts.values()) owners.set(part.path, { is: 'part', part });
    return owners;
}

/** The part without a place that a path leads to or into. */
function longestPath(unplaced: Casework['unplaced'], path: string): string | undefined {
    for (let end = path.length; end > 0; end = path.lastIndexOf('.', end - 1))
        if (unplaced?.has(path.slice(0, end))) return path.slice(0, end);
    return undefined;
}

function longestPrefix(owners: ReadonlyMap<string, Owner>, path: string): { readonly owner: Owner; readonly path: string } | undefined {
    for (let end = path.length; end > 0; end = path.lastIndexOf('.', end - 1)) {
        const prefix = path.slice(0, end);
        const owner = owners.get(prefix);
        if (owner) return { owner, path: prefix };
    }
    return undefined;
}

function follow(owner: Owner, reached: string, rest: string, casework: Casework): LookUp {
    const sizes = sizesOf(owner);
    if (rest === '' || !sizes.has(rest)) {
        const inside = owner.is === 'assembly' ? childrenOf(casework, owner.assembly.path) : [];
        return { ok: false, reached, missing: rest, known: [...sizes.keys(), ...inside] };
    }
    const measure = sizes.get(rest);
    return measure ? { ok: true, measure, path: `${reached}.${rest}` } : { ok: false, reached: `${reached}.${rest}`, unknown: true };
}

function childrenOf(casework: Casework, path: string): readonly string[] {
    const all = [...casework.parts.keys(), ...casework.openings.keys(), ...casework.assemblies.map((one) => one.path)];
    const names = all.filter((one) => one.startsWith(`${path}.`)).map((one) => one.slice(path.length + 1).split('.')[0] ?? '');
    return [...new Set(names)];
}

/** Every size that can be asked of a thing, by what comes after its path. */
function sizesOf(owner: Owner): ReadonlyMap<string, Measure | undefined> {
    switch (owner.is) {
        case 'assembly': {
            const { width, height, depth, overall } = owner.assembly;
            return new Map([
                ['width', width],
                ['height', height],
                ['depth', depth],
                ['overall.width', overall.width],
                ['overall.height', overall.height],
                ['overall.depth', overall.depth],
            ]);
        }
        case 'opening': {
            const { width, height, depth } = owner.opening;
            return new Map([
                ['width', width],
                ['height', height],
                ['depth', depth],
            ]);
        }
        case 'thing': {
            const found = new Map<string, Measure>();
            for (const [name, value] of owner.thing.properties) if (value.is === 'measure') found.set(name, value.measure);
            return found;
        }
        case 'part':
            return sizesOfPart(owner.part);
    }
}

function sizesOfPart(part: Part): ReadonlyMap<string, Measure | undefined> {
    const sizes = new Map<string, Measure | undefined>();
    const { finished } = part.sizes;
    for (const [name, measure] of entriesOf(finished)) sizes.set(name, measure);
    for (const [name, axis] of [
        ['depth', 'y'],
        ['height', 'z'],
    ] as const) {
        sizes.set(name, alongAxis(part, axis, 'finished'));
    }
    if (part.clear) sizes.set('clear', part.clear);
    for (const stage of ['opening', 'finished', 'core', 'rough'] as const) {
        for (const [name, measure] of entriesOf(part.sizes[stage])) sizes.set(`${stage}.${name}`, measure);
    }
    if (part.front) {
        const { low, high, bevel } = part.front;
        const { thickness } = part.directions;
        sizes.set(`front.${thickness === 'z' ? 'lower' : 'left'}`, low);
        sizes.set(`front.${thickness === 'z' ? 'upper' : 'right'}`, high);
        sizes.set('front.bevel', bevel);
    }
    for (const [face, measure] of Object.entries(part.faces)) sizes.set(nameOfFace(part, face as FaceName), measure);
    return sizes;
}

function entriesOf(size: Size): readonly (readonly [keyof Size, Measure | undefined])[] {
    return [
        ['length', size.length],
        ['width', size.width],
        ['thickness', size.thickness],
    ];
}

function alongAxis(part: Part, axis: Axis, stage: Stage): Measure | undefined {
    const { directions, sizes } = part;
    const size = sizes[stage];
    if (directions.length === axis) return size.length;
    return directions.width === axis ? size.width : size.thickness;
}

function nameOfFace(part: Part, face: FaceName): string {
    if (part.directions.thickness === 'z') return face === 'top' ? 'upper' : face === 'bottom' ? 'lower' : face;
    return face;
}
