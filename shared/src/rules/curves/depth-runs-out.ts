import type { Casework, CurveModel, Part } from '../../casework/index.js';
import { type Curve, tolerance } from '../../geometry/index.js';
import { defineRule } from '../define-rule.js';
import { curvedFrontsIn } from '../inspection/curved-fronts.js';
import { roundedPlace } from '../inspection/rounding.js';
import { speakerFor } from '../inspection/speaker.js';

export const depthRunsOut = defineRule({
    code: 'CRV-007',
    name: 'depth-runs-out',
    severity: 'warning',
    phase: 'sizes',
    title: 'The depth of a curved part falls to nothing',
    what: 'Somewhere along its front a part that follows a curve has no depth left between its back edge and the core line, once its bands are taken off.',
    why: 'It ends there in a feather edge that breaks off, or is cut in two, and its joints and edges have nothing to hold to.',
    mend: 'Let the curve keep more depth there, or bring the back of the part forward, or end the part before it. A quadrant that is meant to run out to a point is allowed with that reason.',
    source: { kind: 'physics', citation: 'What is left between the back of the part and its line' },
    fix: 'none',
    examples: {
        bad: [
            {
                text: `material Ply : plywood { thickness 3/4in   sheet 48in x 96in   grain length }

case Stand of Ply {
    width  30in
    height 36in
    depth  Sweep
    curve Sweep of depth over height {
        from 14in at bottom
        to   0in at top
        arc  out 3in
    }
    side »Left«, Right
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
        from 14in at bottom
        to   6in at top
        arc  out 3in
    }
    side Left, Right
}
`,
            },
        ],
    },
    check(casework, report) {
        const speaker = speakerFor(casework);
        const told = new Set<string>();
        for (const { part, line, curve, takesOff } of curvedFrontsIn(casework)) {
            const { least, at } = shallowest(part, line, curve, casework);
            const key = `${part.span.file} ${part.span.start}`;
            if (least - takesOff > tolerance.fit || told.has(key)) continue;
            told.add(key);
            const place = `at ${speaker.millimetres(roundedPlace(at))} of the ${line.over}`;
            report({
                span: part.nameSpan,
                part: part.path,
                message: `\`${part.name}\` has no depth left ${place}: ${least <= tolerance.fit ? `\`${line.name}\` comes back to its back edge there` : `\`${line.name}\` leaves ${speaker.millimetres(least)}, and its bands take ${speaker.millimetres(takesOff)}`}`,
                hint: `let \`${line.name}\` keep more depth there, or end \`${part.name}\` before it`,
                found: 'no depth',
                needed: 'depth all along its front',
                related: [{ span: line.nameSpan, message: `\`${line.name}\`` }],
            });
        }
    },
});

/** Places along a part at which its depth is looked at, besides where its line turns. */
const places = 64;

/** The least depth of a part from its back edge to its line, in mm, and where along the line that is. */
function shallowest(part: Part, { over, assembly }: CurveModel, curve: Curve, { assemblies }: Casework) {
    const axis = over === 'height' ? 'z' : 'x';
    const corner = assemblies.find(({ path }) => path === assembly)?.room?.least;
    const [origin, back] = [corner?.[axis] ?? 0, part.box.least.y - (corner?.y ?? 0)];
    const [from, to] = [part.box.least[axis] - origin, part.box.most[axis] - origin];
    let [least, at] = [Number.POSITIVE_INFINITY, from];
    for (let place = 0; place <= places; place++) {
        const along = from + ((to - from) * place) / places;
        const depth = curve.valueAt(along).value - back;
        if (depth < least) [least, at] = [depth, along];
    }
    return { least, at };
}
