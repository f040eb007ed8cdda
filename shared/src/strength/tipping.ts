/** How easily a freestanding case tips forward: rigid-body statics about the line in front that it stands on. */
import type { Assembly, Casework, Measure, Part, ProjectModel } from '../casework/index.js';
import { type SpacePoint, tolerance } from '../geometry/index.js';
import { real } from '../quantity/index.js';
import { partsIn } from './cases.js';
import { loadsOn, standardGravity } from './loads.js';
import { curvedFront, massOfPart, middleOfMass } from './mass.js';

/** A mass in kilograms with its middle, in millimetres from the floor under the corner of the case. */
export interface Weight {
    readonly mass: number;
    readonly at: SpacePoint;
}

/** How a case stands, in millimetres, kilograms and radians. */
export interface Standing {
    readonly mass: number;
    readonly middle: SpacePoint;
    /** From the middle of its weight forward to the line it tips about. */
    readonly behindLine: number;
    /** That it may lean forward before it goes over: `atan(d / h)`. */
    readonly angle: number;
}

/**
 * The published tests of stability that are borrowed here: ASTM F2057-23, as 16 CFR 1261 makes it the rule for clothing storage. Bookcases,
 * shelving and built-in work are outside that rule. Lengths in millimetres, masses in kilograms, forces in newtons.
 */
export const stabilityTests = {
    /** Scope of the rule: what is lower or lighter is not tested (16 CFR 1261). */
    scope: { height: 27 * 25.4, mass: 30 * 0.45359237 },
    /** 10 lbf, level, at a hand-hold no higher than 56in, on a level floor (9.2.2). */
    push: { force: 10 * 4.4482216152605, height: 56 * 25.4 },
    /** A child of 60 lb on the front edge of a shelf, the back raised on a block of 0.43in as by a carpet (9.2.3, 8.2.3). */
    climb: { mass: 60 * 0.45359237, block: 0.43 * 25.4 },
} as const;

/** Someone on the front edge of a shelf while the back of the case is raised. Newton millimetres about the front line. */
export interface Climb {
    readonly shelf: Part;
    /** From the edge forward to the front line, and its height over the floor. */
    readonly behindLine: number;
    readonly height: number;
    readonly overturning: number;
    readonly holding: number;
}

export interface CaseStability {
    readonly assembly: Assembly;
    /** The foremost line on which it stands on both sides of its weight, from the back of the case forward. */
    readonly frontLine: number;
    /** From the line it stands on at its back to that in front. */
    readonly footing: number;
    readonly height: number;
    readonly empty: Standing;
    /** With what its shelves carry only where that makes it tip more easily: the upper shelves alone. */
    readonly loadedWorst: Standing;
    /** Which shelves those are; none where every load makes it stand better. */
    readonly worstLoads: readonly Part[];
    readonly pushHeight: number;
    /** The level push, at that height, that tips it on the stated floor; the lesser of empty and loaded. */
    readonly push: number;
    /** How far it leans forward on the floor that the project states: 0 on a level one. */
    readonly floorLean: number;
    /** How far it leans when its back is raised by the block; no less than on the stated floor. */
    readonly tilt: number;
    /** On the shelf where it turns the case most; undefined where it has none. */
    readonly climb: Climb | undefined;
    /** Whether it is so low or so light that the published tests leave it out. */
    readonly outOfScope: boolean;
}

/** What stands of weights about a line: `push = W d / h`, `angle = atan(d / h of the middle)`. */
export function standingOf(weights: readonly Weight[], frontLine: number): Standing {
    const mass = weights.reduce((sum, one) => sum + one.mass, 0);
    const along = (axis: 'x' | 'y' | 'z') => weights.reduce((sum, one) => sum + one.mass * one.at[axis], 0) / mass;
    const middle = { x: along('x'), y: along('y'), z: along('z') };
    const behindLine = frontLine - middle.y;
    return { mass, middle, behindLine, angle: Math.atan2(behindLine, middle.z) };
}

/** The level push at a height that tips what stands so, on a floor that leans forward by an angle. */
export function tippingPush({ mass, behindLine, middle }: Standing, height: number, lean = 0): number {
    return (mass * standardGravity * (behindLine * Math.cos(lean) - middle.z * Math.sin(lean))) / height;
}

/** The pull on an anchor at a height that keeps what stands so from going over under a push at another height. */
export function anchorPull(standing: Standing, push: { readonly force: number; readonly height: number }, anchorHeight: number): number {
    const overturning = push.force * push.height - standing.mass * standardGravity * standing.behindLine;
    return Math.max(0, overturning / anchorHeight);
}

const found = new WeakMap<Casework, readonly CaseStability[]>();

/** Each outermost case whose masses are all known and that stands on the floor; in the order of building. */
export function caseStabilities(casework: Casework): readonly CaseStability[] {
    let cases = found.get(casework);
    if (!cases) {
        cases = casework.assemblies
            .filter(({ inside }) => inside === undefined)
            .flatMap((assembly) => stabilityOf(casework, assembly) ?? []);
        found.set(casework, cases);
    }
    return cases;
}

function stabilityOf(casework: Casework, assembly: Assembly): CaseStability | undefined {
    const parts = partsIn(casework, assembly);
    const floor = assembly.extent.least.z;
    const own: Weight[] = [];
    for (const part of parts) {
        const mass = massOfPart(casework, part);
        if (!mass) return undefined;
        const at = middleOfMass(casework, part);
        own.push({ mass: real.toNumber(mass.value), at: { ...at, z: at.z - floor } });
    }
    const feet = parts.filter(({ box }) => Math.abs(box.least.z - floor) <= tolerance.fit).map((part) => footOf(casework, part));
    const lines = own.length > 0 ? footingOf(feet, standingOf(own, 0).middle.x) : undefined;
    if (!lines) return undefined;
    const { front: frontLine, back } = lines;
    const height = assembly.extent.most.z - floor;
    const pushHeight = Math.min(height, stabilityTests.push.height);
    const empty = standingOf(own, frontLine);
    const { standing: loadedWorst, loads } = loadedToTip(own, carriedBy(casework, parts, floor), frontLine);
    const footing = frontLine - back;
    const floorLean = leanOn(casework.project, footing);
    const tilt = Math.max(floorLean, Math.asin(Math.min(1, stabilityTests.climb.block / footing)));
    return {
        assembly,
        frontLine,
        footing,
        height,
        empty,
        loadedWorst,
        worstLoads: loads,
        pushHeight,
        push: Math.min(tippingPush(empty, pushHeight, floorLean), tippingPush(loadedWorst, pushHeight, floorLean)),
        floorLean,
        tilt,
        climb: worstClimb(parts, empty, { frontLine, floor, tilt }),
        outOfScope: height < stabilityTests.scope.height || empty.mass < stabilityTests.scope.mass,
    };
}

/** How far a case with such a footing leans forward on a stated floor, in radians: by its slope, and by a carpet strip under its back. */
function leanOn(project: Pick<ProjectModel, 'slope' | 'carpet'> | undefined, footing: number): number {
    const value = (measure: Measure | undefined) => (measure ? real.toNumber(measure.quantity.value) : 0);
    return Math.atan(value(project?.slope)) + Math.asin(Math.min(1, value(project?.carpet) / footing));
}

/** What a part touches the floor with: a stretch from left to right, and from back to front where it does so over all of that stretch. */
interface Foot {
    readonly left: number;
    readonly right: number;
    readonly back: number;
    readonly front: number;
}

function footOf(casework: Casework, part: Part): Foot {
    const { least, most } = part.box;
    const line = curvedFront(casework, part);
    const front = !line
        ? most.y
        : least.y + (line.axis === 'z' ? line.depthAt(least.z) : Math.min(line.depthAt(line.from), line.depthAt(line.to)));
    return { left: least.x, right: most.x, back: least.y, front };
}

/**
 * The lines in front and at the back on which a case stands: the foremost, and the hindmost, with feet both to the left and to the right of
 * its weight. Further out on one side only it would turn about a line askew, which is nearer to the weight.
 */
function footingOf(feet: readonly Foot[], middle: number): { readonly front: number; readonly back: number } | undefined {
    const bears = (these: readonly Foot[]) => these.some(({ left }) => left < middle) && these.some(({ right }) => right > middle);
    const front = feet
        .map((foot) => foot.front)
        .sort((a, b) => b - a)
        .find((line) => bears(feet.filter((foot) => foot.front >= line)));
    const back = feet
        .map((foot) => foot.back)
        .sort((a, b) => a - b)
        .find((line) => bears(feet.filter((foot) => foot.back <= line)));
    return front === undefined || back === undefined || front <= back ? undefined : { front, back };
}

interface Carried extends Weight {
    readonly part: Part;
}

/** What the parts carry, each where it stands: on the middle of the part, as high as its upper face. */
function carriedBy(casework: Casework, parts: readonly Part[], floor: number): readonly Carried[] {
    return parts.flatMap((part) =>
        loadsOn(casework, part).map(({ way, intensity }) => {
            const { least, most } = part.box;
            const [long, deep] = [most.x - least.x, most.y - least.y];
            const force = way === 'by area' ? intensity * long * deep : way === 'along' ? intensity * long : intensity;
            return { part, mass: force / standardGravity, at: { ...middleOfMass(casework, part), z: most.z - floor } };
        }),
    );
}

/**
 * Adds loads from the one that helps least to stand for as long as each lowers the angle at which the case goes over. (Against a level push
 * every load behind the front line helps.)
 */
function loadedToTip(
    own: readonly Weight[],
    carried: readonly Carried[],
    frontLine: number,
): { readonly standing: Standing; readonly loads: readonly Part[] } {
    const steadying = ({ at }: Weight) => (frontLine - at.y) / at.z;
    const order = [...carried].sort((a, b) => steadying(a) - steadying(b));
    const taken: Carried[] = [];
    let standing = standingOf(own, frontLine);
    for (const load of order) {
        const next = standingOf([...own, ...taken, load], frontLine);
        if (next.angle >= standing.angle) break;
        taken.push(load);
        standing = next;
    }
    return { standing, loads: [...new Set(taken.map(({ part }) => part))] };
}

/** The shelf on whose front edge someone turns the case most. */
function worstClimb(
    parts: readonly Part[],
    empty: Standing,
    { frontLine, floor, tilt }: { readonly frontLine: number; readonly floor: number; readonly tilt: number },
): Climb | undefined {
    const weight = stabilityTests.climb.mass * standardGravity;
    const holding = tippingPush(empty, 1, tilt);
    let worst: Climb | undefined;
    for (const shelf of parts) {
        if (shelf.directions.thickness !== 'z') continue;
        const [behindLine, height] = [frontLine - shelf.box.most.y, shelf.box.most.z - floor];
        const overturning = weight * (height * Math.sin(tilt) - behindLine * Math.cos(tilt));
        if (!worst || overturning > worst.overturning) worst = { shelf, behindLine, height, overturning, holding };
    }
    return worst;
}
