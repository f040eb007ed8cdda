import { defineRule } from '../define-rule.js';
import { requirementWords } from '../inspection/requirement-words.js';
import { speakerFor } from '../inspection/speaker.js';

export const requirementFails = defineRule({
    code: 'DES-001',
    name: 'requirement-fails',
    severity: 'error',
    phase: 'sizes',
    title: 'What the design requires of itself does not hold',
    what: 'The condition of a `require` does not hold with the sizes as they come out.',
    why: 'Whoever wrote the line gave the reason with it: it is printed with the finding.',
    mend: 'Change the sizes until it holds. `casewright why` shows how each came about. If the requirement itself is out of date, change that, and its reason.',
    source: { kind: 'language', citation: "The design's own checks" },
    fix: 'none',
    examples: {
        bad: [
            {
                text: `material Ply : plywood { thickness 3/4in   sheet 48in x 96in   grain length }

case Bookcase of Ply {
    width 30in   height 36in   depth 11in
    side Left, Right
    shelf Tier[3] clear equal
    join every shelf to every side with { glue }
    »require Tier[2].clear >= 11in because "the atlas stands upright"«
}
`,
            },
        ],
        good: [
            {
                text: `material Ply : plywood { thickness 3/4in   sheet 48in x 96in   grain length }

case Bookcase of Ply {
    width 30in   height 36in   depth 11in
    side Left, Right
    shelf Tier[2] clear equal
    join every shelf to every side with { glue }
    require Tier[2].clear >= 11in because "the atlas stands upright"
}
`,
            },
        ],
    },
    check(casework, report) {
        const speaker = speakerFor(casework);
        for (const requirement of casework.requirements) {
            if (requirement.answer !== 'fails') continue;
            const words = requirementWords(requirement, speaker);
            const reason = requirement.because ? `: ${requirement.because}` : '';
            report({
                span: requirement.span,
                message: words
                    ? `required is ${words.needed}, and it is ${words.found}${reason}`
                    : `what is required here does not hold${reason}`,
                ...words,
            });
        }
    },
});
