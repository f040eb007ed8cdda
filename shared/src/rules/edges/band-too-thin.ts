import { tolerance } from '../../geometry/index.js';
import { defineRule } from '../define-rule.js';
import { amountOf, covers, edgeStepsIn } from '../inspection/edge-steps.js';
import { materialOf } from '../inspection/material.js';
import { speakerFor } from '../inspection/speaker.js';

/** In mm: 1/32in for a strip of solid wood, 1/64in for veneer. */
const thinnest = { strip: 25.4 / 32, veneer: 25.4 / 64 } as const;

export const bandTooThin = defineRule({
    code: 'EDG-002',
    name: 'band-too-thin',
    severity: 'warning',
    phase: 'sizes',
    title: 'The band will not live through trimming and sanding',
    what: 'A band or nosing is thinner than 1/32in (0.8mm) of wood, or 1/64in (0.4mm) of veneer.',
    why: 'It is trimmed flush with both faces and sanded. At the arris the paper goes through so thin a strip, and the core shows as a line.',
    mend: 'Take a thicker strip: 1/8in trims well and still follows a gentle curve.',
    source: {
        kind: 'shop practice',
        citation: 'common practice, no source',
        value: '1/32in (0.8mm) of solid wood, 1/64in (0.4mm) of veneer',
    },
    fix: 'none',
    examples: {
        bad: [
            {
                text: `material Ply    : plywood { thickness 3/4in   sheet 48in x 96in   grain length }
material Walnut : lumber  { rough 4/4   planed 3/4in }
edging Lipped { »band 1/64in of Walnut« }

case Bookcase of Ply {
    width 30in   height 36in   depth 11in
    side Left, Right { edge front Lipped }
}
`,
            },
        ],
        good: [
            {
                text: `material Ply    : plywood { thickness 3/4in   sheet 48in x 96in   grain length }
material Walnut : lumber  { rough 4/4   planed 3/4in }
edging Lipped { band 1/8in of Walnut }

case Bookcase of Ply {
    width 30in   height 36in   depth 11in
    side Left, Right { edge front Lipped }
}
`,
            },
        ],
    },
    check(casework, report) {
        const speaker = speakerFor(casework);
        for (const { part, step } of edgeStepsIn(casework)) {
            const thickness = amountOf(step);
            if (!covers(step) || !step.amount || thickness === undefined) continue;
            const kind = materialOf(casework, step.material)?.family === 'veneer' ? 'veneer' : 'strip';
            if (thickness >= thinnest[kind] - tolerance.geometry) continue;
            const found = speaker.measure(step.amount);
            const needed = speaker.millimetres(thinnest[kind]);
            report({
                span: step.span,
                part: part.path,
                message: `a ${step.does} of ${found} will not live through trimming and sanding`,
                hint: `take at least ${needed} of ${kind === 'veneer' ? 'veneer' : 'solid wood'}`,
                found,
                needed: `at least ${needed}`,
            });
        }
    },
});
