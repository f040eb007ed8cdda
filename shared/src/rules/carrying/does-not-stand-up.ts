import { carriedPieces, mustBeLaid, tiltDiagonal, wayOf } from '../../strength/index.js';
import { defineRule } from '../define-rule.js';
import { carriedInWords } from '../inspection/carried-words.js';
import { speakerFor } from '../inspection/speaker.js';

export const doesNotStandUp = defineRule({
    code: 'HND-002',
    name: 'does-not-stand-up',
    severity: 'warning',
    phase: 'project',
    title: 'A case that is carried in lying cannot be tilted up under the ceiling',
    what: 'What is carried in one piece is higher than a doorway of the route, so it comes in lying; and tilted up from its back, its diagonal from heel to top, the root of height squared plus depth squared, is more than the `ceiling`.',
    why: 'It goes in, and then it does not stand up: everybody has done it once.',
    mend: 'Make it lower or shallower, build it in two heights that are joined `on site`, give it a plinth of its own, or check whether it can come in upright.',
    source: {
        kind: 'physics',
        citation: 'Diagonal of height and depth against the ceiling; nothing is taken off for wrapping or for a lamp',
    },
    fix: 'none',
    examples: {
        bad: [
            {
                text: `use casewright.panels
material Mdf like FibreboardThreeQuarter
project "Hall" {
    »build 1 Press«
    route { doorway 32in x 80in   ceiling 8ft }
}

case Press of Mdf {
    width 36in   height 95in   depth 24in
    anchor 95in high
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
    route { doorway 32in x 80in   ceiling 8ft }
}

case Press of Mdf {
    width 36in   height 90in   depth 24in
    anchor 90in high
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
        const way = wayOf(casework);
        const { ceiling } = way;
        if (ceiling === undefined) return;
        for (const piece of carriedPieces(casework)) {
            const diagonal = tiltDiagonal(piece);
            if (!mustBeLaid(piece, way) || diagonal <= ceiling) continue;
            const highest = Math.sqrt(Math.max(0, ceiling ** 2 - piece.depth ** 2));
            report({
                span: piece.assembly.span,
                message: `\`${piece.assembly.name}\` has to come in lying, and does not stand up under ${speaker.millimetres(ceiling)}: tilted up it reaches ${speaker.millimetres(Math.ceil(diagonal * 10) / 10)}`,
                found: carriedInWords(piece, speaker),
                needed: `at this depth at most ${speaker.millimetres(Math.floor(highest * 10) / 10)} high`,
                hint: 'make it lower or shallower, or build it in two heights that are joined `on site`',
                ...(casework.project?.route ? { related: [{ span: casework.project.route.span, message: 'the way in' }] } : {}),
            });
        }
    },
});
