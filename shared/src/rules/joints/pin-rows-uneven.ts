import type { Joint, Part } from '../../casework/index.js';
import { type SpacePoint, tolerance } from '../../geometry/index.js';
import { defineRule } from '../define-rule.js';
import { type JointWork, jointWorkIn } from '../inspection/joint-work.js';
import { speakerFor } from '../inspection/speaker.js';

/** From the middle of a hole to that of the next, in diameters: as much wood stays as is bored away. */
const diameters = 2;

export const pinRowsUneven = defineRule({
    code: 'JNT-015',
    name: 'pin-rows-uneven',
    severity: 'warning',
    phase: 'sizes',
    title: 'Rows of shelf pins do not line up',
    what: 'The holes for the pins of a shelf are not at the same heights and depths on its left and on its right; or the holes of two shelves in one side stand so near to one another that they run together, because their rows do not keep one pitch.',
    why: 'A shelf on holes that do not line up rocks on three pins, and cannot be moved up a hole on one side only. Holes that run together hold no pin.',
    mend: 'Bore both sides by one joint, `join every shelf to every side with OnPins`. Let shelves whose rows overlap stand a whole number of pitches apart, or bore fewer holes `up` and `down`.',
    source: { kind: 'shop practice', citation: 'common practice, no source', value: 'two diameters from hole to hole' },
    fix: 'none',
    follows: ['PLC-003', 'PLC-008'],
    examples: {
        bad: [
            {
                note: 'On the right the pins stand farther back than on the left.',
                text: `material Ply : plywood { thickness 3/4in   actual 0.720in   sheet 48in x 96in   grain length }
bought Peg { hole 1/4in wide 3/8in deep }

case Bookcase of Ply {
    width 30in   height 36in   depth 11in
    side Left, Right
    shelf Low at 12in
    join Low to Left with { rest on Peg count 2 inset 1 1/2in }
    »join Low to Right with { rest on Peg count 2 inset 2in }«
}
`,
            },
        ],
        good: [
            {
                text: `material Ply : plywood { thickness 3/4in   actual 0.720in   sheet 48in x 96in   grain length }
bought Peg { hole 1/4in wide 3/8in deep }

case Bookcase of Ply {
    width 30in   height 36in   depth 11in
    side Left, Right
    shelf Low at 12in
    join Low to every side with { rest on Peg count 2 inset 1 1/2in pitch 32mm up 3 down 3 }
}
`,
            },
        ],
    },
    check(casework, report) {
        const rows = jointWorkIn(casework).filter(({ cuts }) => cuts.some(({ feature }) => feature.does === 'pin hole'));
        if (rows.length === 0) return;
        const speaker = speakerFor(casework);
        for (const [one, other] of opposite(rows)) {
            const miss = missedHole(holesOf(one), holesOf(other));
            if (!miss) continue;
            report({
                span: other.joint.span,
                part: other.enters.path,
                message: `the pins of \`${one.enters.name}\` do not line up: \`${miss.has === 'one' ? one.receives.name : other.receives.name}\` has a hole ${speaker.millimetres(miss.hole.y - one.enters.box.least.y)} from the back of the shelf and ${speaker.millimetres(miss.hole.z)} up, and \`${miss.has === 'one' ? other.receives.name : one.receives.name}\` has none there`,
                hint: 'bore both sides by one joint',
                ...(one.joint.span === other.joint.span ? {} : { related: [{ span: one.joint.span, message: 'the other side' }] }),
            });
        }
        for (const { one, other, apart, least, side } of crowdedHoles(rows)) {
            report({
                span: other.joint.span,
                part: side.path,
                message:
                    one === other
                        ? `the holes for the pins of \`${other.enters.name}\` in \`${side.name}\` stand ${speaker.millimetres(apart)} apart: there is less wood between them than they are wide`
                        : `the holes for the pins of \`${one.enters.name}\` and of \`${other.enters.name}\` come within ${speaker.millimetres(apart)} of each other in \`${side.name}\``,
                hint:
                    one === other
                        ? 'take a larger `pitch`'
                        : 'let the two stand a whole number of pitches apart, or bore fewer holes `up` and `down`',
                found: `${speaker.millimetres(apart)} apart`,
                needed: `at least ${speaker.millimetres(least)}, or the same hole`,
            });
        }
    },
});

/** The joints of a shelf with what is on its left and what is on its right. */
function* opposite(rows: readonly JointWork[]): Generator<readonly [JointWork, JointWork]> {
    const known = new Map<Part, JointWork>();
    for (const row of rows) {
        const first = known.get(row.enters);
        if (!first) known.set(row.enters, row);
        else if (first.contact.sideOfEntering === row.contact.sideOfReceiving) yield [first, row];
    }
}

type Hole = SpacePoint & { readonly diameter: number };

function holesOf({ cuts }: JointWork): readonly Hole[] {
    return cuts.flatMap(({ feature: { does, solid } }) =>
        does === 'pin hole' && solid.is === 'cylinder' ? [{ ...solid.start, diameter: solid.diameter }] : [],
    );
}

function near(a: number, b: number): boolean {
    return Math.abs(a - b) <= tolerance.fit;
}

/** A hole on one side that has none over against it on the other. */
function missedHole(one: readonly Hole[], other: readonly Hole[]) {
    const missing = (from: readonly Hole[], among: readonly Hole[]) =>
        from.find(({ y, z }) => !among.some((hole) => near(hole.y, y) && near(hole.z, z)));
    const left = missing(one, other);
    if (left) return { has: 'one', hole: left } as const;
    const right = missing(other, one);
    return right && ({ has: 'other', hole: right } as const);
}

interface Crowded {
    readonly one: JointWork;
    readonly other: JointWork;
    readonly side: Part;
    readonly apart: number;
    readonly least: number;
}

/** Holes one over the other in one face that are neither one hole nor far enough apart; of each pair of joints the first. */
function* crowdedHoles(rows: readonly JointWork[]): Generator<Crowded> {
    const columns = new Map<string, { readonly row: JointWork; readonly hole: Hole }[]>();
    for (const row of rows) {
        const face = `${row.contact.receives} ${row.contact.sideOfReceiving}`;
        for (const hole of holesOf(row)) {
            const key = `${face} ${Math.round(hole.y / tolerance.fit)}`;
            const column = columns.get(key);
            if (column) column.push({ row, hole });
            else columns.set(key, [{ row, hole }]);
        }
    }
    const said = new Set<Joint>();
    for (const column of columns.values()) {
        column.sort((a, b) => a.hole.z - b.hole.z);
        for (const [index, { row, hole }] of column.entries()) {
            const next = column[index + 1];
            const apart = next && next.hole.z - hole.z;
            if (apart === undefined || apart <= tolerance.fit || said.has(next!.row.joint)) continue;
            const least = diameters * Math.max(hole.diameter, next!.hole.diameter);
            if (apart >= least - tolerance.fit) continue;
            said.add(next!.row.joint);
            yield { one: row, other: next!.row, side: row.receives, apart, least };
        }
    }
}
