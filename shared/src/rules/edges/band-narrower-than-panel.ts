import { type Measure, type TextEdit, wordsAt } from '../../casework/index.js';
import { tolerance } from '../../geometry/index.js';
import { defineRule } from '../define-rule.js';
import { covers, edgeStepsIn } from '../inspection/edge-steps.js';
import { millimetresOf } from '../inspection/sound-parts.js';
import { speakerFor } from '../inspection/speaker.js';

export const bandNarrowerThanPanel = defineRule({
    code: 'EDG-001',
    name: 'band-narrower-than-panel',
    severity: 'error',
    phase: 'sizes',
    title: 'The band or nosing does not cover the edge',
    what: 'A band or a nosing is less high than the board is thick. What counts is the actual thickness of the board, all its layers together.',
    why: 'A strip of the core stays bare along the edge.',
    mend: 'Make it as high as the board is thick, with something over for trimming flush; or leave `high` out of the nosing: it is then made as high as its edge.',
    source: { kind: 'physics', citation: 'A strip covers what it is as wide as' },
    fix: 'unsafe',
    examples: {
        bad: [
            {
                note: 'A nosing for a 3/4in shelf on a top of two layers.',
                text: `material Ply    : plywood { thickness 3/4in   actual 0.720in   sheet 48in x 96in   grain length }
material Walnut : lumber  { rough 4/4   planed 3/4in }
edging Nosed { nosing 3/4in of Walnut { high 3/4in } }

case Stand of Ply {
    width 30in   height 36in   depth 11in
    top of Ply layers 2 { »edge front Nosed« }
    side Left, Right
    join top to every side with { glue }
}
`,
            },
        ],
        good: [
            {
                text: `material Ply    : plywood { thickness 3/4in   actual 0.720in   sheet 48in x 96in   grain length }
material Walnut : lumber  { rough 4/4   planed 3/4in }
edging Nosed { nosing 3/4in of Walnut { high 1.44in } }

case Stand of Ply {
    width 30in   height 36in   depth 11in
    top of Ply layers 2 { edge front Nosed }
    side Left, Right
    join top to every side with { glue }
}
`,
            },
        ],
    },
    check(casework, report) {
        const speaker = speakerFor(casework);
        for (const { part, edge, step } of edgeStepsIn(casework)) {
            const { thickness } = part.sizes.finished;
            if (!covers(step) || !step.width || !thickness) continue;
            const bare = millimetresOf(thickness) - millimetresOf(step.width);
            if (bare <= tolerance.fit) continue;
            const found = speaker.measure(step.width);
            const needed = speaker.measure(thickness);
            const fix = writtenAnew(step.width, needed);
            report({
                span: wordsAt(edge, step),
                part: part.path,
                message: `the ${step.does} on the ${edge.name} edge of \`${part.name}\` is ${found} high and the board is ${needed} thick: ${speaker.millimetres(bare)} stays bare`,
                hint: `make it at least ${needed} high`,
                found,
                needed: `at least ${needed}`,
                ...(fix ? { fix } : {}),
            });
        }
    },
});

/** Writes another number where the height was written out; it may be wrong for other edges that use the same edging. */
function writtenAnew({ why: { kind, span } }: Measure, text: string): TextEdit | undefined {
    return kind === 'literal' && span ? { title: `write \`${text}\``, span, text, safe: false } : undefined;
}
