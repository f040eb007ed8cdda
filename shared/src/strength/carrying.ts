/** Whether what is carried in one piece goes in by the declared way, and what it weighs. Millimetres and kilograms. */
import type { Assembly, Casework, Part } from '../casework/index.js';
import { boxAround } from '../geometry/index.js';
import { dimension, real } from '../quantity/index.js';
import { grouped } from './grouped.js';
import { massOfPart } from './mass.js';
import { measureProperty } from './thing-values.js';

/** Cases that are joined before they leave the shop: what goes through the door in one piece. */
export interface Carried {
    /** The outermost of them. */
    readonly assembly: Assembly;
    readonly assemblies: readonly Assembly[];
    readonly width: number;
    readonly depth: number;
    readonly height: number;
    /** Undefined where the mass of one of its parts is not known. */
    readonly mass: number | undefined;
}

const carried = new WeakMap<Casework, readonly Carried[]>();

/** What is carried of all that is built: joints that are made `on site` come apart. Found once for each casework, since several rules ask. */
export function carriedPieces(casework: Casework): readonly Carried[] {
    let pieces = carried.get(casework);
    if (!pieces) {
        pieces = findCarried(casework);
        carried.set(casework, pieces);
    }
    return pieces;
}

function findCarried(casework: Casework): readonly Carried[] {
    const built = casework.assemblies.filter(({ count }) => count > 0);
    const groups = new Map(built.map(({ path }) => [path, path]));
    const groupOf = (path: string): string => {
        const next = groups.get(path);
        return next === undefined || next === path ? path : groupOf(next);
    };
    const together = (a: string, b: string) => groups.set(groupOf(b), groupOf(a));
    for (const { enters, receives, onSite, touching } of casework.joints) {
        // a joint of two cases names the cases, one of two parts is in the cases of these
        const [a, b] = [enters, receives].map((path) => casework.parts.get(path)?.assembly ?? path);
        if (touching && !onSite && a !== undefined && b !== undefined && groups.has(a) && groups.has(b)) together(a, b);
    }
    const members = new Map<string, Assembly[]>();
    for (const assembly of built) members.set(groupOf(assembly.path), [...(members.get(groupOf(assembly.path)) ?? []), assembly]);
    const parts = grouped([...casework.parts.values()], ({ assembly }) => [assembly]);
    return [...members.values()].flatMap((assemblies) => {
        const within = assemblies.flatMap(({ path }) => parts.get(path) ?? []);
        return carriedOf(casework, assemblies, within) ?? [];
    });
}

function carriedOf(casework: Casework, assemblies: readonly Assembly[], parts: readonly Part[]): Carried | undefined {
    const [assembly] = [...assemblies].sort((a, b) => a.path.length - b.path.length);
    const around = boxAround(parts.map(({ box }) => box));
    if (!assembly || !around) return undefined;
    const { least, most } = around;
    return {
        assembly,
        assemblies,
        width: most.x - least.x,
        depth: most.y - least.y,
        height: most.z - least.z,
        get mass() {
            return massOf(casework, parts);
        },
    };
}

function massOf(casework: Casework, parts: readonly Part[]): number | undefined {
    let sum = 0;
    for (const part of parts) {
        const mass = massOfPart(casework, part);
        if (!mass) return undefined;
        sum += real.toNumber(mass.value);
    }
    return sum;
}

export interface Doorway {
    readonly width: number;
    readonly height: number;
}

/** The way from the street, as the project declares it. */
export interface Way {
    readonly doorways: readonly Doorway[];
    /** Two halls that meet square: how wide the one and the other is. */
    readonly corners: readonly (readonly [number, number])[];
    readonly ceiling: number | undefined;
}

export function wayOf({ project }: Casework): Way {
    const pairs = (sizes: readonly (readonly { readonly quantity: { readonly value: Parameters<typeof real.toNumber>[0] } }[])[] = []) =>
        sizes.flatMap(([a, b]) => (a && b ? [[real.toNumber(a.quantity.value), real.toNumber(b.quantity.value)] as const] : []));
    const route = project?.route;
    return {
        doorways: pairs(route?.doorways).map(([width, height]) => ({ width, height })),
        corners: pairs(route?.corners),
        ceiling: route?.ceiling && real.toNumber(route.ceiling.quantity.value),
    };
}

/** A way to carry a box: how long, wide and high it is then. */
export interface Attitude {
    readonly how: 'upright' | 'on its back' | 'on its side';
    readonly length: number;
    readonly width: number;
    readonly height: number;
}

export function attitudesOf({ width, depth, height }: Pick<Carried, 'width' | 'depth' | 'height'>): readonly Attitude[] {
    const lying = (how: Attitude['how'], a: number, b: number, up: number): Attitude => ({
        how,
        length: Math.max(a, b),
        width: Math.min(a, b),
        height: up,
    });
    return [lying('upright', width, depth, height), lying('on its back', height, width, depth), lying('on its side', height, depth, width)];
}

/** The attitude in which it goes through a doorway, end first; undefined if in none. Square to the door: what turning it aslant gains is not counted on. */
export function throughDoorway(piece: Pick<Carried, 'width' | 'depth' | 'height'>, door: Doorway): Attitude | undefined {
    return attitudesOf(piece).find(({ width, height }) => width <= door.width && height <= door.height);
}

/** `√(h² + d²)`: what stands up when something is tilted up from its back or its front. */
export function tiltDiagonal({ height, depth }: Pick<Carried, 'depth' | 'height'>): number {
    return Math.hypot(height, depth);
}

/** Whether it has to be laid down for one of the doorways, and so to be tilted up again inside. */
export function mustBeLaid({ height }: Pick<Carried, 'height'>, { doorways, ceiling }: Way): boolean {
    return doorways.some((door) => door.height < height) || (ceiling !== undefined && ceiling < height);
}

/** How finely the angles of a turn are searched before the least is found between two neighbours. */
const searchSteps = 64;

/**
 * The longest rectangle of a width that is carried flat round a square corner of two halls: the least over the angle of
 * `a / sin + b / cos - w / (sin cos)`; for no width `(a^(2/3) + b^(2/3))^(3/2)`. Not above zero where it is wider than a hall.
 */
export function longestRoundCorner(a: number, b: number, width: number): number {
    if (width > Math.min(a, b)) return 0;
    const length = (angle: number) => a / Math.sin(angle) + b / Math.cos(angle) - width / (Math.sin(angle) * Math.cos(angle));
    const step = Math.PI / 2 / searchSteps;
    let best = step;
    for (let index = 1; index < searchSteps; index++) if (length(index * step) < length(best)) best = index * step;
    let [low, high] = [Math.max(best - step, 1e-6), Math.min(best + step, Math.PI / 2 - 1e-6)];
    for (let turn = 0; turn < 100; turn++) {
        const [first, second] = [low + (high - low) / 3, high - (high - low) / 3];
        if (length(first) < length(second)) high = second;
        else low = first;
    }
    return length((low + high) / 2);
}

/** The attitude in which it turns a corner under the ceiling; undefined if in none. */
export function roundCorner(piece: Carried, [a, b]: readonly [number, number], ceiling: number | undefined): Attitude | undefined {
    return attitudesOf(piece).find(
        ({ length, width, height }) => (ceiling === undefined || height <= ceiling) && length <= longestRoundCorner(a, b, width),
    );
}

/** So many people find a hold on a case. Common practice, no source. */
export const mostPeople = 4;

/** What one person of the shop lifts, in kilograms, where the shop says it. */
export function liftOf({ shop }: Casework): number | undefined {
    const lift = measureProperty(shop.thing, 'lift', dimension.mass);
    return lift && real.toNumber(lift.quantity.value);
}

/** A lift: centimetres, degrees, and the multipliers for how often and by what hold. */
export interface Lift {
    /** From the ankles forward to the hands. */
    readonly horizontal: number;
    /** From the floor to the hands, at the start. */
    readonly vertical: number;
    readonly distance: number;
    readonly asymmetry: number;
    readonly frequency: number;
    readonly coupling: number;
}

/**
 * The weight in kilograms that one person may lift so for years, by the revised NIOSH lifting equation:
 * RWL = 23 kg · HM · VM · DM · AM · FM · CM (DHHS (NIOSH) publication 94-110).
 */
export function recommendedWeight({ horizontal, vertical, distance, asymmetry, frequency, coupling }: Lift): number {
    const forward = horizontal > 63 ? 0 : 25 / Math.max(25, horizontal);
    const up = vertical > 175 ? 0 : 1 - 0.003 * Math.abs(vertical - 75);
    const far = distance > 175 ? 0 : Math.min(1, 0.82 + 4.5 / Math.max(25, distance));
    const turned = asymmetry > 135 ? 0 : 1 - 0.0032 * asymmetry;
    return 23 * forward * up * far * turned * frequency * coupling;
}

/** A case is lifted from the floor to the hips, hands under its bottom and well in front, by a poor hold. */
export const liftOfCase: Lift = { horizontal: 45, vertical: 0, distance: 75, asymmetry: 0, frequency: 1, coupling: 0.95 };
