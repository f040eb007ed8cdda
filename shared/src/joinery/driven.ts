/** Screws, nails and bolts that are driven square through one part into the other. */
import type { FaceName, JointStep, Part } from '../casework/index.js';
import type { SpacePoint } from '../geometry/index.js';
import { along, displaced, oppositeSide, placeOfSide, wayOf } from './axes.js';
import { atEachPlace, type Bench, hole, type StepMaker } from './bench.js';
import type { Cause, Fastener, FastenerKind, Feature } from './feature.js';
import { millimetres } from './layout.js';
import { passagesOf, type Ray } from './passages.js';
import { boltHole, type RodSizes, rodSizes } from './trade-sizes.js';

/** What a driven fastener is driven through, from which side of it, and into what. */
interface Drive {
    readonly through: Part;
    readonly into: Part;
    readonly side: FaceName;
}

/** Through the board that meets the joint with its face; where both do, or one lies in a rabbet of the other, through the one that enters. */
function driveOf({ enters, receives, contact }: Bench): Drive | undefined {
    const { axis, sideOfEntering, sideOfReceiving } = contact;
    if (enters.directions.thickness === axis) return { through: enters, into: receives, side: oppositeSide(sideOfEntering) };
    if (receives.directions.thickness === axis) return { through: receives, into: enters, side: oppositeSide(sideOfReceiving) };
    return undefined;
}

const noFace = 'goes through the face of a board, and here two edges meet';

/** The share of the root of a rolled thread that a pilot hole has in soft wood and in panels; hard wood wants the whole root. Trade practice. */
const pilotShare = 0.85;
/** Included angle of the head of a flat-head wood screw, 82 degrees (ASME B18.6.1, from memory): half of it. */
const halfHeadAngle = (41 * Math.PI) / 180;

/** What a step puts in, and the family that its size belongs to. */
export function drivenMaker(kind: FastenerKind, family: 'screw' | 'nail' | 'pin'): StepMaker {
    return (bench, step, cause) => {
        const drive = driveOf(bench);
        if (!drive) return noFace;
        const sizes = rodSizes(step, family, bench.fasteners);
        const length = family === 'screw' && !step.amount ? undefined : millimetres(step.amount);
        return atEachPlace(bench, step, (on) => {
            const ray = rayThrough(drive, on);
            const fastener = placed(bench, { kind, step, cause, sizes, length, ray });
            if (family === 'screw') screwHoles(bench, drive, fastener, sizes, step, cause);
        });
    };
}

function rayThrough({ through, side }: Drive, on: SpacePoint): Ray {
    const { axis, way } = wayOf(side);
    return { head: { ...on, [axis]: placeOfSide(through.box, side) }, direction: along(axis, -way) };
}

interface Placing {
    readonly kind: FastenerKind;
    readonly step: JointStep;
    readonly cause: Cause;
    readonly sizes: RodSizes;
    readonly length: number | undefined;
    readonly ray: Ray;
}

/** Puts a fastener in its place, with what it passes. */
export function placed({ enters, receives, place }: Bench, { kind, step, cause, sizes, length, ray }: Placing) {
    const passes = length === undefined ? [] : passagesOf(ray, length, enters, receives);
    const size = step.size === undefined ? {} : { size: step.size };
    const fastener: Fastener = { kind, cause, ...size, ...ray, length, ...sizes, passes };
    return { fastener, index: place(fastener) };
}

type PlacedFastener = ReturnType<typeof placed>;

/** A clearance hole in the first part, with the seat of the head where that is known, and a pilot hole in the second. */
function screwHoles(
    bench: Bench,
    { through, side, into }: Drive,
    { fastener, index }: PlacedFastener,
    { shank, rolledRoot, cutRoot, headDiameter }: RodSizes,
    step: JointStep,
    cause: Cause,
): void {
    const { head, direction } = fastener;
    const [first, second] = passagesOf(fastener, Number.MAX_VALUE, bench.enters, bench.receives);
    if (!first || shank === undefined) return;
    const cut = (feature: Feature) => bench.cut(feature);
    if (headDiameter !== undefined && headDiameter > shank) {
        const length = (headDiameter - shank) / 2 / Math.tan(halfHeadAngle);
        const bore = { start: head, direction, diameter: headDiameter, endDiameter: shank, length };
        cut(hole('countersink', through, side, cause, bore, index));
    }
    cut(hole('clearance hole', through, side, cause, { start: head, direction, diameter: shank, length: first.leaves }, index));
    const root = rolledRoot ?? cutRoot;
    const diameter = millimetres(step.lengths?.pilot) ?? (root === undefined ? undefined : pilotShare * root);
    const length = fastener.length === undefined || !second ? 0 : Math.min(fastener.length, second.leaves) - second.stretch.from;
    if (diameter === undefined || !second || !(length > 0)) return;
    const start = displaced(head, direction, second.stretch.from);
    const entered = into === bench.receives ? bench.contact.sideOfReceiving : bench.contact.sideOfEntering;
    cut(hole('pilot hole', into, entered, cause, { start, direction, diameter, length }, index));
}

/** A bolt through both parts, in a hole that goes through both. */
export const makeBolt: StepMaker = (bench, step, cause) => {
    const drive = driveOf(bench);
    if (!drive) return noFace;
    const sizes = rodSizes(step, 'bolt', bench.fasteners);
    const diameter = millimetres(step.lengths?.hole) ?? (sizes.shank === undefined ? undefined : (boltHole(sizes.shank) ?? sizes.shank));
    return atEachPlace(bench, step, (on) => {
        const ray = rayThrough(drive, on);
        const { index } = placed(bench, { kind: 'bolt', step, cause, sizes, length: millimetres(step.amount), ray });
        if (diameter === undefined) return;
        for (const { part, stretch } of passagesOf(ray, Number.MAX_VALUE, bench.enters, bench.receives)) {
            const start = displaced(ray.head, ray.direction, stretch.from);
            const bored = part === bench.enters.path ? bench.enters : bench.receives;
            const from =
                bored === drive.through ? drive.side : bench.contact[bored === bench.enters ? 'sideOfEntering' : 'sideOfReceiving'];
            const bore = { start, direction: ray.direction, diameter, length: stretch.to - stretch.from };
            bench.cut(hole('bolt hole', bored, from, cause, bore, index));
        }
    });
};
