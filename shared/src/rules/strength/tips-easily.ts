import type { Casework } from '../../casework/index.js';
import { type CaseStability, caseStabilities, stabilityTests } from '../../strength/index.js';
import { defineRule } from '../define-rule.js';
import { forceInWords, massInWords } from '../inspection/force-words.js';
import { type Speaker, speakerFor, systemOf } from '../inspection/speaker.js';

export const tipsEasily = defineRule({
    code: 'STB-001',
    name: 'tips-easily',
    severity: 'warning',
    phase: 'project',
    title: 'A case that stands by itself is tipped by a light push, or by a child that climbs it',
    what: 'A case that a project builds, and that is not anchored to the wall, goes over under a level push of less than 10 lbf at its top or at 56in, whichever is lower; or with 60 lb on the front edge of a shelf while its back is raised 0.43in, as by a carpet. On the `slope` and the `carpet` of the floor where the project states them, else on a level one. Computed as a rigid body from the masses of its parts, empty, and with what only its upper shelves carry where that is worse. Cases under 27in high or under 30 lb are left out, as in the published tests.',
    why: 'Someone leans on it, a child climbs on it, and it comes down with all that stands in it.',
    mend: 'Anchor it to the wall and say how high: `anchor 64in high`. Or make it deeper or lower, bring its feet forward, put weight low and far back. `casewright build --only strength` shows the figures. A case that stands these tests is not certified by them: local codes, a licensed professional and the maker of the anchor decide.',
    source: {
        kind: 'standard',
        citation:
            'ASTM F2057-23, 9.2.2 and 9.2.3, and the scope of 16 CFR 1261, which makes it the rule for clothing storage; bookcases, shelving and built-in work are outside that rule, and its levels are borrowed here',
        value: '10 lbf at a hand-hold no higher than 56in; 60 lb on a front edge, the back raised 0.43in',
    },
    fix: 'none',
    examples: {
        bad: [
            {
                text: `use casewright.panels
material Mdf like FibreboardThreeQuarter
material Thin like FibreboardQuarter
project "Hall" { »build 1 Pillar« }

case Pillar of Mdf {
    width 36in   height 60in   depth 9in
    back of Thin
    side Left, Right
    shelf Row[4] clear equal
    join every shelf to every side with { glue }
    join back to every side, every shelf with { nail 1in spacing 4in }
}
`,
            },
        ],
        good: [
            {
                note: 'It is screwed to the studs.',
                text: `use casewright.panels
material Mdf like FibreboardThreeQuarter
material Thin like FibreboardQuarter
project "Hall" { build 1 Pillar }

case Pillar of Mdf {
    width 36in   height 60in   depth 9in
    anchor 58in high
    back of Thin
    side Left, Right
    shelf Row[4] clear equal
    join every shelf to every side with { glue }
    join back to every side, every shelf with { nail 1in spacing 4in }
}
`,
            },
            {
                text: `use casewright.panels
material Mdf like FibreboardThreeQuarter
material Thin like FibreboardQuarter
project "Hall" { build 1 Chest }

case Chest of Mdf {
    width 36in   height 30in   depth 18in
    back of Thin
    side Left, Right
    shelf Low at 4in
    shelf High at top
    join every shelf to every side with { glue }
    join back to every side, every shelf with { nail 1in spacing 4in }
}
`,
            },
        ],
    },
    check(casework, report) {
        if (!casework.project) return;
        const speaker = speakerFor(casework);
        const step = steps[systemOf(casework)];
        for (const found of caseStabilities(casework)) {
            const { assembly } = found;
            if (assembly.count === 0 || assembly.anchor || found.outOfScope) continue;
            const words = pushed(found, casework, speaker) ?? climbed(found, casework, speaker);
            if (!words) continue;
            const hint = `anchor it to the wall and say how high, \`anchor ${speaker.millimetres(step * Math.floor((0.95 * found.height) / step))} high\`; or make it deeper, or heavier low down`;
            report({ span: assembly.span, hint, ...words });
        }
    },
});

/** An anchor is set out to whole steps of a tape. */
const steps = { inch: 25.4, mm: 10 } as const;

interface Words {
    readonly message: string;
    readonly found: string;
    readonly needed: string;
}

function pushed({ assembly, push, pushHeight, empty, floorLean }: CaseStability, casework: Casework, speaker: Speaker): Words | undefined {
    if (push >= stabilityTests.push.force) return undefined;
    const floor = floorLean === 0 ? '' : ', on the floor that the project states';
    const goesOver =
        push <= 0
            ? 'goes over without a push'
            : `goes over under a push of ${forceInWords(push, casework)} at ${speaker.millimetres(pushHeight)}`;
    return {
        message: `\`${assembly.name}\` stands by itself, and ${goesOver}${floor}`,
        found: `${massInWords(empty.mass, casework)}, its middle ${speaker.millimetres(rounded(empty.behindLine))} behind the front line that it stands on`,
        needed: `${forceInWords(stabilityTests.push.force, casework)} or more`,
    };
}

function climbed({ assembly, climb }: CaseStability, casework: Casework, speaker: Speaker): Words | undefined {
    if (!climb || climb.overturning < climb.holding) return undefined;
    const { mass, block } = stabilityTests.climb;
    return {
        message: `\`${assembly.name}\` stands by itself, and goes over with ${massInWords(mass, casework)} on the front edge of \`${climb.shelf.name}\`, its back raised ${speaker.millimetres(block)}`,
        found: `an edge that stands ${speaker.millimetres(rounded(-climb.behindLine))} past the front line that it stands on`,
        needed: `an edge that is no further out, or a heavier case`,
    };
}

/** To a tenth of a millimetre: the middle of a weight is no size that is cut. */
function rounded(millimetres: number): number {
    return Math.round(millimetres * 10) / 10;
}
