import { tolerance } from '../../geometry/index.js';
import { defineRule } from '../define-rule.js';
import { speakerFor } from '../inspection/speaker.js';

export const curveTooShort = defineRule({
    code: 'CRV-001',
    name: 'curve-too-short',
    severity: 'warning',
    phase: 'sizes',
    title: 'The curve ends before what follows it',
    what: 'Parts follow a curve further up, down or to the side than it runs. Past its ends it keeps its last value, so the line goes on straight from there.',
    why: 'Where the curve ends and the straight begins, the front has a bend that nobody drew, and it shows as a shadow.',
    mend: 'Let the curve run over the whole height, `from 17in at bottom`, `to 12in at top`; or, where the straight piece is wanted, say so: `allow curve-too-short on Left because "straight above the last shelf"`.',
    source: { kind: 'language', citation: 'Past its ends a curve holds its last value' },
    fix: 'none',
    examples: {
        bad: [
            {
                text: `material Ply : plywood { thickness 3/4in   sheet 48in x 96in   grain length }

case Stand of Ply {
    width  30in
    height 36in
    depth  Sweep
    curve »Sweep« of depth over height {
        from 16in at bottom
        to   12in at 30in
        arc  out 1in
    }
    side Left, Right
}
`,
            },
        ],
        good: [
            {
                text: `material Ply : plywood { thickness 3/4in   sheet 48in x 96in   grain length }

case Stand of Ply {
    width  30in
    height 36in
    depth  Sweep
    curve Sweep of depth over height {
        from 16in at bottom
        to   12in at top
        arc  out 1in
    }
    side Left, Right
}
`,
            },
        ],
    },
    check(casework, report) {
        const speaker = speakerFor(casework);
        const reported = new Set<string>();
        for (const { path, follows, name, curve, used, over, parts, nameSpan } of casework.curves) {
            if (!curve || !used || reported.has(follows?.path ?? path)) continue;
            const before = curve.span.from - used.from;
            const after = used.to - curve.span.to;
            if (Math.max(before, after) <= tolerance.fit) continue;
            const [found, needed] = after >= before ? [curve.span.to, used.to] : [curve.span.from, used.from];
            const verb = after >= before ? 'ends' : 'begins';
            reported.add(follows?.path ?? path);
            const [part] = parts;
            report({
                span: nameSpan,
                ...(part === undefined ? {} : { part }),
                message: `\`${name}\` ${verb} at ${speaker.millimetres(found)}, and is followed ${after >= before ? 'up to' : 'from'} ${speaker.millimetres(needed)} of the ${over}: past its end it keeps its last depth`,
                hint: `let it ${after >= before ? 'run to' : 'begin at'} ${speaker.millimetres(needed)}`,
                found: speaker.millimetres(found),
                needed: speaker.millimetres(needed),
            });
        }
    },
});
