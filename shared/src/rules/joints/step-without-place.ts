import { joineryOf } from '../../joinery/index.js';
import { defineRule } from '../define-rule.js';
import { isSound } from '../inspection/sound-parts.js';

export const stepWithoutPlace = defineRule({
    code: 'JNT-019',
    name: 'step-without-place',
    severity: 'warning',
    phase: 'sizes',
    title: 'A step of a joint has no place in the two parts',
    what: 'What a joint bores, cuts or drives cannot be laid out where its two parts meet: the fasteners do not fit between their insets, nothing says how many there are or how long they are, or the step wants another corner than there is.',
    why: 'It is in no drawing, no set-up and no list of holes, so the joint is held by less than the text says.',
    mend: 'Say what is missing, or take a smaller `inset` or `count`. A joint for short edges has smaller ones than that of a shelf.',
    source: { kind: 'language', citation: 'Language of joints, reference: edges and joints' },
    fix: 'none',
    follows: ['PLC-002', 'PLC-003', 'PLC-008', 'JNT-001'],
    examples: {
        bad: [
            {
                note: 'The end of the kick is 3 1/4in long: two insets of 2in do not fit in it.',
                text: `material Ply : plywood { thickness 3/4in   sheet 48in x 96in   grain length }

case Bookcase of Ply {
    width 30in   height 36in   depth 11in
    side Left, Right
    bottom at 4in
    kick at 2in behind bottom.front
    join bottom to every side with { biscuit #20 count 2 inset 2in   glue }
    join kick to bottom with { biscuit #20 count 3 inset 2in   glue }
    »join kick to every side with { biscuit #20 count 2 inset 2in   glue }«
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
    bottom at 4in
    kick at 2in behind bottom.front
    join bottom to every side with { biscuit #20 count 2 inset 2in   glue }
    join kick to bottom with { biscuit #20 count 3 inset 2in   glue }
    join kick to every side with { biscuit #20 count 1   glue }
}
`,
            },
        ],
    },
    check(casework, report) {
        for (const { joint: index, step: place, because } of joineryOf(casework).unplaced) {
            const joint = casework.joints[index];
            const step = joint?.steps[place];
            const [enters, receives] = joint ? [casework.parts.get(joint.enters), casework.parts.get(joint.receives)] : [];
            if (!joint || !step || !enters || !receives || !isSound(enters) || !isSound(receives)) continue;
            // the place of what meets a bent board is taken from its form
            if (enters.bent || receives.bent) continue;
            report({
                span: joint.span,
                part: enters.path,
                message: `\`${step.does}\` between \`${enters.name}\` and \`${receives.name}\` ${because}`,
                hint: 'it has no place, and is in no list of holes: say what is missing, or join the two by another joint',
                related: [{ span: step.span, message: 'the step' }],
            });
        }
    },
});
