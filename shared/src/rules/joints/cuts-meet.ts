import type { Joint, Part } from '../../casework/index.js';
import { type Box, tolerance } from '../../geometry/index.js';
import { boundsOf, type Feature, joineryOf, spanOf } from '../../joinery/index.js';
import { defineRule } from '../define-rule.js';
import { speakerFor } from '../inspection/speaker.js';

export const cutsMeet = defineRule({
    code: 'JNT-006',
    name: 'cuts-meet',
    severity: 'warning',
    phase: 'sizes',
    title: 'Cuts from both sides of a board meet inside it',
    what: 'Two joints on opposite sides of a part, such as those of two shelves at one height on either side of a divider, cut into it so deep that their slots or holes run into one another.',
    why: 'The second slot breaks into the first: biscuits push one another out, screws strike each other, and the board between the two is gone.',
    mend: 'Move one of the two along the edge or up by a little, take a smaller biscuit or a shorter dowel, or let one fastener go through and hold both.',
    source: {
        kind: 'physics',
        citation: 'Two cuts whose depths together are more than the thickness, at one place, meet',
        value: 'the thickness of the board less both depths',
    },
    fix: 'none',
    follows: ['PLC-003', 'PLC-008', 'JNT-001'],
    examples: {
        bad: [
            {
                note: 'A slot for a #20 biscuit is 12.3mm deep; two of them are more than 0.72in.',
                text: `material Ply : plywood { thickness 3/4in   actual 0.720in   sheet 48in x 96in   grain length }

case Sideboard of Ply {
    width 60in   height 30in   depth 12in
    side Left, Right
    bottom
    top
    divider Post clear equal as Near, Far
    shelf One in Near at 12in
    shelf Two in Far at 12in
    join bottom, top, One, Two to every side with { biscuit #20 count 2 inset 2in   glue }
    join Post to bottom, top with { biscuit #20 count 2 inset 2in   glue }
    »join One, Two to Post with { biscuit #20 count 2 inset 2in   glue }«
}
`,
            },
        ],
        good: [
            {
                note: 'One shelf stands a little higher than the other.',
                text: `material Ply : plywood { thickness 3/4in   actual 0.720in   sheet 48in x 96in   grain length }

case Sideboard of Ply {
    width 60in   height 30in   depth 12in
    side Left, Right
    bottom
    top
    divider Post clear equal as Near, Far
    shelf One in Near at 12in
    shelf Two in Far at 13in
    join bottom, top, One, Two to every side with { biscuit #20 count 2 inset 2in   glue }
    join Post to bottom, top with { biscuit #20 count 2 inset 2in   glue }
    join One, Two to Post with { biscuit #20 count 2 inset 2in   glue }
}
`,
            },
        ],
    },
    check(casework, report) {
        const speaker = speakerFor(casework);
        const said = new Set<string>();
        for (const [path, { features }] of joineryOf(casework).byPart) {
            const part = casework.parts.get(path);
            if (!part) continue;
            const { thickness } = part.directions;
            for (const [one, other] of pairsIn(part, features.filter(isOfFaces(thickness)))) {
                const [first, second] = [one, other].map(({ cause }) => casework.joints[cause.joint]) as [Joint, Joint];
                const key = `${path} ${second.span.file} ${second.span.start} ${first.span.start}`;
                if (said.has(key)) continue;
                said.add(key);
                const [a, b] = [first, second].map(
                    ({ enters, receives }) => casework.parts.get(enters === path ? receives : enters)?.name ?? '',
                );
                const { from, to } = spanOf(part.box, thickness);
                report({
                    span: second.span,
                    part: path,
                    message: `the ${one.does} for \`${a}\` and the ${other.does} for \`${b}\` meet inside \`${part.name}\`, ${speaker.millimetres(to - from)} thick`,
                    hint: `set one of them off against the other, or cut them less deep: together they go ${speaker.millimetres(one.depth + other.depth)} in`,
                    found: `${speaker.millimetres(one.depth)} and ${speaker.millimetres(other.depth)} deep`,
                    needed: `together less than ${speaker.millimetres(to - from)}, or not at one place`,
                    ...(first.span === second.span ? {} : { related: [{ span: first.span, message: 'the joint on the other side' }] }),
                });
            }
        }
    },
});

type CutOfJoint = Feature & { readonly cause: { readonly is: 'joint'; readonly joint: number } };

const lowSides = { x: 'left', y: 'back', z: 'bottom' } as const;
const highSides = { x: 'right', y: 'front', z: 'top' } as const;

/** Cuts of which none meet: they need not be compared again while they are the same. */
const apart = new WeakMap<Part, readonly CutOfJoint[]>();

function pairsIn(part: Part, cuts: readonly CutOfJoint[]): readonly (readonly [CutOfJoint, CutOfJoint])[] {
    const known = apart.get(part);
    if (known?.length === cuts.length && known.every((cut, index) => cut === cuts[index])) return [];
    const pairs = [...meetingPairs(cuts)];
    if (pairs.length === 0) apart.set(part, cuts);
    return pairs;
}

/** Cuts of joints into the two faces of a board. */
function isOfFaces(thickness: 'x' | 'y' | 'z'): (feature: Feature) => feature is CutOfJoint {
    return (feature): feature is CutOfJoint =>
        feature.cause.is === 'joint' &&
        feature.does !== 'tongue' &&
        (feature.side === lowSides[thickness] || feature.side === highSides[thickness]);
}

/** Those of two joints from opposite sides that have a place in common, the earlier joint first. */
function* meetingPairs(cuts: readonly CutOfJoint[]): Generator<readonly [CutOfJoint, CutOfJoint]> {
    const [low, high] = [cuts.filter(({ side }) => isLow(side)), cuts.filter(({ side }) => !isLow(side))];
    if (low.length === 0 || high.length === 0) return;
    const boxes = high.map(({ solid }) => boundsOf(solid));
    for (const one of low) {
        const box = boundsOf(one.solid);
        for (const [index, other] of high.entries()) {
            if (one.cause.joint === other.cause.joint || !overlap(box, boxes[index]!)) continue;
            yield one.cause.joint < other.cause.joint ? [one, other] : [other, one];
        }
    }
}

function isLow(side: Feature['side']): boolean {
    return side === 'left' || side === 'back' || side === 'bottom';
}

function overlap(one: Box, other: Box): boolean {
    return (['x', 'y', 'z'] as const).every(
        (axis) => Math.min(one.most[axis], other.most[axis]) - Math.max(one.least[axis], other.least[axis]) > tolerance.fit,
    );
}
