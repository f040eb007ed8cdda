import type { Part } from '../../casework/index.js';
import { tolerance } from '../../geometry/index.js';
import { defineRule } from '../define-rule.js';
import { type PublicCase, publicCases, standingOut } from '../inspection/public-access.js';
import { speakerFor } from '../inspection/speaker.js';

export const standsOut = defineRule({
    code: 'ACC-002',
    name: 'stands-out',
    severity: 'note',
    phase: 'project',
    title: 'A part stands out where a cane does not find it',
    what: 'In a project that says `accessible yes`, a part whose underside is between 27in and 80in over the floor stands out more than 4in, to the front or to a side, past everything of its case that reaches down to 27in.',
    why: 'Who cannot see feels with a cane along the floor, and walks into what juts out at the height of the body.',
    mend: 'Let something under it come as far forward, such as a lower shelf, or draw it back to 4in.',
    source: {
        kind: 'standard',
        citation: '2010 ADA Standards for Accessible Design, 307.2 (from memory); local codes decide',
        value: 'over 27in and up to 80in above the floor, at most 4in',
    },
    fix: 'none',
    examples: {
        bad: [
            {
                text: `use casewright.panels
material Mdf like FibreboardThreeQuarter
project "Library" { accessible yes; build 1 Desk }

case Desk of Mdf {
    width 36in   height 34in   depth 16in
    anchor 30in high
    »top« { edge front at 6in past case }
    side Left, Right
    shelf Low at 20in
    join every shelf to every side with { glue }
    join top to every side with { glue }
}
`,
            },
        ],
        good: [
            {
                text: `use casewright.panels
material Mdf like FibreboardThreeQuarter
project "Library" { accessible yes; build 1 Desk }

case Desk of Mdf {
    width 36in   height 34in   depth 16in
    anchor 30in high
    top { edge front at 3in past case }
    side Left, Right
    shelf Low at 20in
    join every shelf to every side with { glue }
    join top to every side with { glue }
}
`,
            },
        ],
    },
    check(casework, report) {
        const speaker = speakerFor(casework);
        for (const found of publicCases(casework)) {
            const low = found.parts.filter(({ box }) => box.least.z - found.floor <= standingOut.above + tolerance.fit);
            if (low.length === 0) continue;
            for (const part of found.parts) {
                const out = outOf(part, low, found);
                if (out <= standingOut.most + tolerance.fit) continue;
                report({
                    span: part.nameSpan,
                    part: part.path,
                    message: `\`${part.name}\` stands out ${speaker.millimetres(out)}, ${speaker.millimetres(part.box.least.z - found.floor)} over the floor: a cane does not find it`,
                    found: speaker.millimetres(out),
                    needed: `at most ${speaker.millimetres(standingOut.most)} past what reaches down to ${speaker.millimetres(standingOut.above)}`,
                    hint: 'let something under it come as far forward, or draw it back',
                });
            }
        }
    },
});

/** How far a part stands out past those that a cane finds; 0 for one that is among them, or over the heads. */
function outOf({ box }: Part, low: readonly Part[], { floor }: PublicCase): number {
    const under = box.least.z - floor;
    if (under <= standingOut.above + tolerance.fit || under > standingOut.upTo + tolerance.fit) return 0;
    const front = box.most.y - Math.max(...low.map((part) => part.box.most.y));
    const left = Math.min(...low.map((part) => part.box.least.x)) - box.least.x;
    const right = box.most.x - Math.max(...low.map((part) => part.box.most.x));
    return Math.max(0, front, left, right);
}
