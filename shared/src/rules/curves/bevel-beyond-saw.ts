import type { Casework } from '../../casework/index.js';
import { real } from '../../quantity/index.js';
import { defineRule } from '../define-rule.js';
import { isSound } from '../inspection/sound-parts.js';

/** What a table saw tilts where the shop does not say. Common practice, no source. */
const usualTilt = 45;

export const bevelBeyondSaw = defineRule({
    code: 'CRV-012',
    name: 'bevel-beyond-saw',
    severity: 'warning',
    phase: 'sizes',
    title: 'The bevel of a front is steeper than the saw tilts',
    what: 'A front edge that is bevelled to its line is further off square to the faces than the blade of the table saw tilts: what the shop says with `tilt`, or 45 degrees.',
    why: 'The cut cannot be made with the board flat on the table, and the feather edge that such a bevel leaves breaks off.',
    mend: 'Let the front stay `square`, or let the curve be less steep there. A bevel that is planed by hand or cut on a jig is allowed with that reason.',
    source: {
        kind: 'shop practice',
        citation: 'common practice, no source',
        value: 'most table saws tilt to 45 degrees',
    },
    fix: 'none',
    examples: {
        bad: [
            {
                text: `material Ply : plywood { thickness 3/4in   sheet 48in x 96in   grain length }

case Stand of Ply {
    width  30in
    height 12in
    depth  Sweep
    curve Sweep of depth over height {
        from 20in at bottom
        to   4in at top
    }
    side Left, Right
    shelf »Low« at 6in { edge front bevelled }
    allow touching-without-joint on Low because "this example is about its front"
}
`,
            },
        ],
        good: [
            {
                text: `material Ply : plywood { thickness 3/4in   sheet 48in x 96in   grain length }

case Stand of Ply {
    width  30in
    height 12in
    depth  Sweep
    curve Sweep of depth over height {
        from 20in at bottom
        to   14in at top
    }
    side Left, Right
    shelf Low at 6in { edge front bevelled }
    allow touching-without-joint on Low because "this example is about its front"
}
`,
            },
        ],
    },
    check(casework, report) {
        const { angle, isSaid } = tiltOf(casework);
        for (const part of casework.parts.values()) {
            if (part.front?.form !== 'bevelled' || !isSound(part)) continue;
            const bevel = Math.abs(real.toNumber(part.front.bevel.quantity.value));
            if (bevel <= angle + 0.01) continue;
            const found = `${bevel.toFixed(1)} degrees`;
            report({
                span: part.nameSpan,
                part: part.path,
                message: `the front of \`${part.name}\` is bevelled by ${found}, and ${isSaid ? 'the saw' : 'a table saw'} tilts by ${degrees(angle)}`,
                hint: 'let its front stay square, `edge front square`, or let the curve be less steep there',
                found,
                needed: `at most ${degrees(angle)}`,
            });
        }
    },
});

function degrees(angle: number): string {
    return `${Number(angle.toFixed(1))} degrees`;
}

function tiltOf({ shop }: Casework): { readonly angle: number; readonly isSaid: boolean } {
    const said = shop.thing?.properties.get('tilt');
    if (said?.is !== 'measure') return { angle: usualTilt, isSaid: false };
    return { angle: real.toNumber(said.measure.quantity.value), isSaid: true };
}
