import { carriedPieces, throughDoorway, wayOf } from '../../strength/index.js';
import { defineRule } from '../define-rule.js';
import { carriedInWords } from '../inspection/carried-words.js';
import { speakerFor } from '../inspection/speaker.js';

export const doesNotPassDoorway = defineRule({
    code: 'HND-001',
    name: 'does-not-pass-doorway',
    severity: 'warning',
    phase: 'project',
    title: 'A case does not go through a doorway on its way in',
    what: 'What is carried in one piece, in no attitude that is square to the door, goes through a `doorway` of the route: not upright, not on its back, not on its side. Joints that are made `on site` come apart; what turning it aslant in the opening gains is not counted on.',
    why: 'It stands in the street, finished, with the client at the window.',
    mend: 'Divide it into cases that are joined `on site`, make it smaller, or find another way in. A doorway is what is clear between the stops, with the door open: often 2in less than the door.',
    source: { kind: 'physics', citation: 'Two of its sizes within width and height of the opening' },
    fix: 'none',
    examples: {
        bad: [
            {
                text: `use casewright.panels
material Mdf like FibreboardThreeQuarter
project "Hall" {
    »build 1 Press«
    route { doorway 32in x 80in }
}

case Press of Mdf {
    width 90in   height 84in   depth 34in
    anchor 84in high
    side Left, Right
    shelf Row[3] clear equal
    join every shelf to every side with { glue }
}
`,
            },
        ],
        good: [
            {
                text: `use casewright.panels
material Mdf like FibreboardThreeQuarter
project "Hall" {
    build 1 Press
    route { doorway 32in x 80in   ceiling 9ft }
}

case Press of Mdf {
    width 60in   height 84in   depth 24in
    anchor 84in high
    side Left, Right
    shelf Row[3] clear equal
    join every shelf to every side with { glue }
}
`,
            },
        ],
    },
    check(casework, report) {
        const speaker = speakerFor(casework);
        const { doorways } = wayOf(casework);
        for (const piece of carriedPieces(casework)) {
            const door = doorways.find((one) => !throughDoorway(piece, one));
            if (!door) continue;
            const opening = `${speaker.millimetres(door.width)} x ${speaker.millimetres(door.height)}`;
            report({
                span: piece.assembly.span,
                message: `\`${piece.assembly.name}\` does not go through the doorway of ${opening}, upright, on its back or on its side`,
                found: carriedInWords(piece, speaker),
                needed: `two of its sizes within ${opening}`,
                hint: 'divide it into cases that are joined `on site`, or make it smaller',
                ...(casework.project?.route ? { related: [{ span: casework.project.route.span, message: 'the way in' }] } : {}),
            });
        }
    },
});
