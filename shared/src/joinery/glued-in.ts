/** What is glued half into one part and half into the other: biscuits, dowels and loose tenons. */
import type { FaceName, Part } from '../casework/index.js';
import type { SpacePoint } from '../geometry/index.js';
import { along, displaced, origin, withSpan } from './axes.js';
import { atEachPlace, type Bench, hole, inwards, type StepMaker } from './bench.js';
import type { Cause, Feature } from './feature.js';
import { millimetres } from './layout.js';
import { passagesOf } from './passages.js';
import { biscuitCutterRadius, biscuitSizes } from './trade-sizes.js';

/** A part, the side that it turns to the other, and the way into it. */
interface Half {
    readonly part: Part;
    readonly side: FaceName;
    readonly into: SpacePoint;
}

function halvesOf({ enters, receives, contact }: Bench): readonly [Half, Half] {
    const into = inwards(contact);
    return [
        { part: enters, side: contact.sideOfEntering, into: displaced(origin, into, -1) },
        { part: receives, side: contact.sideOfReceiving, into },
    ];
}

export const makeBiscuits: StepMaker = (bench, step, cause) => {
    const sizes = step.size === undefined ? undefined : biscuitSizes(step.size, bench.fasteners);
    if (!sizes) return 'is of no size that is known: `#0`, `#10`, `#20`, or that of a `fastener` of your own';
    const { depth, thickness, width } = sizes;
    return atEachPlace(bench, step, (on) => {
        const direction = inwards(bench.contact);
        const head = displaced(on, direction, -width / 2);
        const fastener = bench.place({
            kind: 'biscuit',
            cause,
            ...(sizes.thing === undefined ? {} : { thing: sizes.thing }),
            ...(step.size === undefined ? {} : { size: step.size }),
            head,
            direction,
            length: width,
            passes: passagesOf({ head, direction }, width, bench.enters, bench.receives),
        });
        for (const { part, side, into } of halvesOf(bench)) {
            const solid: Feature['solid'] = {
                is: 'segment',
                middle: on,
                along: along(bench.contact.along),
                into,
                radius: biscuitCutterRadius,
                depth,
                thickness,
            };
            bench.cut({ does: 'biscuit slot', part: part.path, side, cause, solid, depth, fastener });
        }
    });
};

/** How much deeper a hole is than its dowel goes in, for glue: 1 mm to 2 mm, common practice, no source. */
const glueRoom = 1;

export const makeDowels: StepMaker = (bench, step, cause) => {
    const [diameter, length] = [millimetres(step.diameter), millimetres(step.amount)];
    if (diameter === undefined || length === undefined) return 'does not say how long the dowels are: `dowel 8mm x 40mm`';
    const into = millimetres(step.lengths?.into) ?? length / 2;
    if (into >= length) return 'goes into the part that receives with its whole length';
    return atEachPlace(bench, step, (on) => {
        const direction = inwards(bench.contact);
        const head = displaced(on, direction, into - length);
        const fastener = bench.place({
            kind: 'dowel',
            cause,
            ...(step.size === undefined ? {} : { size: step.size }),
            head,
            direction,
            length,
            shank: diameter,
            passes: passagesOf({ head, direction }, length, bench.enters, bench.receives),
        });
        const deep = [length - into, into];
        for (const [index, { part, side, into: way }] of halvesOf(bench).entries()) {
            const bore = { start: on, direction: way, diameter, length: (deep[index] ?? 0) + glueRoom };
            bench.cut(hole('dowel hole', part, side, cause, bore, fastener));
        }
    });
};

export const makeLooseTenons: StepMaker = (bench, step, cause) => {
    const [thick, wide, long] = (['thick', 'wide', 'long'] as const).map((word) => millimetres(step.lengths?.[word]));
    if (thick === undefined || wide === undefined || long === undefined)
        return 'does not say how `thick`, `wide` and `long` the tenons are';
    return atEachPlace(bench, step, (on) => {
        const direction = inwards(bench.contact);
        const head = displaced(on, direction, -long / 2);
        const passes = passagesOf({ head, direction }, long, bench.enters, bench.receives);
        const fastener = bench.place({ kind: 'loose tenon', cause, head, direction, length: long, passes });
        for (const half of halvesOf(bench)) bench.cut(mortise(bench, half, on, { thick, wide, long }, cause, fastener));
    });
};

function mortise(
    { contact }: Bench,
    { part, side, into }: Half,
    on: SpacePoint,
    { thick, wide, long }: { readonly thick: number; readonly wide: number; readonly long: number },
    cause: Cause,
    fastener: number,
): Feature {
    const bottom = displaced(on, into, long / 2);
    const [one, other] = [on[contact.axis], bottom[contact.axis]];
    const around = (middle: number, length: number) => ({ from: middle - length / 2, to: middle + length / 2 });
    const flat = withSpan({ least: on, most: on }, contact.axis, { from: Math.min(one, other), to: Math.max(one, other) });
    const across = withSpan(flat, contact.across, around(on[contact.across], thick));
    const box = withSpan(across, contact.along, around(on[contact.along], wide));
    return { does: 'mortise', part: part.path, side, cause, solid: { is: 'box', box }, depth: long / 2, fastener };
}
