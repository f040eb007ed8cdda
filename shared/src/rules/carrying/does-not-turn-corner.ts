import { attitudesOf, carriedPieces, longestRoundCorner, roundCorner, wayOf } from '../../strength/index.js';
import { defineRule } from '../define-rule.js';
import { carriedInWords } from '../inspection/carried-words.js';
import { speakerFor } from '../inspection/speaker.js';

export const doesNotTurnCorner = defineRule({
    code: 'HND-003',
    name: 'does-not-turn-corner',
    severity: 'warning',
    phase: 'project',
    title: 'A case does not go round a corner on its way in',
    what: 'What is carried in one piece, upright, on its back or on its side, is longer than the longest rectangle of its width that is carried level round a `corner` of the route. Tilting it on the turn, which gains something under a high ceiling, is not counted on.',
    why: 'It goes through every door, and sticks in the hall.',
    mend: 'Divide it into cases that are joined `on site`, make it shorter, or find another way in.',
    source: { kind: 'physics', citation: 'Longest rectangle round a square corner: the least of a / sin + b / cos - w / (sin cos)' },
    fix: 'none',
    examples: {
        bad: [
            {
                text: `use casewright.panels
material Mdf like FibreboardThreeQuarter
project "Hall" {
    »build 1 Press«
    route { doorway 32in x 80in   corner 36in x 36in   ceiling 8ft }
}

case Press of Mdf {
    width 72in   height 90in   depth 20in
    anchor 90in high
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
    route { doorway 32in x 80in   corner 48in x 48in   ceiling 9ft }
}

case Press of Mdf {
    width 60in   height 84in   depth 16in
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
        const { corners, ceiling } = wayOf(casework);
        for (const piece of carriedPieces(casework)) {
            const corner = corners.find((one) => !roundCorner(piece, one, ceiling));
            if (!corner) continue;
            const [a, b] = corner;
            const narrowest = Math.min(...attitudesOf(piece).map(({ width }) => width));
            const longest = Math.max(0, longestRoundCorner(a, b, narrowest));
            report({
                span: piece.assembly.span,
                message: `\`${piece.assembly.name}\` does not go round the corner of ${speaker.millimetres(a)} and ${speaker.millimetres(b)}`,
                found: carriedInWords(piece, speaker),
                needed: `${speaker.millimetres(narrowest)} wide, at most ${speaker.millimetres(Math.floor(longest * 10) / 10)} long`,
                hint: 'divide it into cases that are joined `on site`, or make it shorter',
                ...(casework.project?.route ? { related: [{ span: casework.project.route.span, message: 'the way in' }] } : {}),
            });
        }
    },
});
