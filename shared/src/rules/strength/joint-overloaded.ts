import type { Casework } from '../../casework/index.js';
import { greatestHold, type HeldEnd, heldEnds, heldVerdict, type KnownHold } from '../../strength/index.js';
import { defineRule } from '../define-rule.js';
import { forceInWords } from '../inspection/force-words.js';
import { type Speaker, speakerFor } from '../inspection/speaker.js';

export const jointOverloaded = defineRule({
    code: 'STR-005',
    name: 'joint-overloaded',
    severity: 'warning',
    phase: 'sizes',
    title: 'What holds the end of a shelf carries more than its published design value',
    what: 'The end of a part that carries something presses on its joint with more than each way of holding there may carry by itself: screws and nails by the yield equations and by withdrawal, a ledge by the strength across the grain, pins and cleats by what their makers state. Silent where glue, dowels, biscuits or anything else holds besides for which no design value is published, and where a board on edge under the part helps.',
    why: 'The joint gives way slowly, and then at once.',
    mend: 'Take more screws, longer or thicker ones; let the end into a dado, or put a cleat under it. Design values hold for sound wood, holes of the right size and nothing split: local codes and a licensed professional decide where people can be hurt.',
    source: {
        kind: 'standard',
        citation:
            'ANSI/AWC NDS-2018, 12.2 and 12.3; for years 0.9, across a screw in end grain 0.67 (both from memory); strength across the grain by Wood Handbook FPL-GTR-282, Table 5-3b, over 1.67 (ASTM D245, from memory)',
        value: 'load over design value of at most 1',
    },
    fix: 'none',
    follows: ['JNT-004', 'JNT-005', 'PLC-003', 'PLC-008'],
    examples: {
        bad: [
            {
                text: `use casewright.species
material Oak : lumber { species RedOak   rough 4/4   planed 3/4in }

case Rack of Oak {
    width 30in   height 36in   depth 11in
    side Left, Right
    shelf Low at 12in
    »join Low to every side with { screw #6 x 2in count 2 inset 2in }«
    load 150 lb/ft2 on Low
}
`,
                note: 'Two thin screws in end grain at each end.',
            },
        ],
        good: [
            {
                text: `use casewright.species
material Oak : lumber { species RedOak   rough 4/4   planed 3/4in }

case Rack of Oak {
    width 30in   height 36in   depth 11in
    side Left, Right
    shelf Low at 12in
    join Low to every side with { dado 1/4in deep   screw #6 x 2in count 2 inset 2in }
    load 150 lb/ft2 on Low
}
`,
                note: 'The ledge of the dado carries it.',
            },
        ],
    },
    check(casework, report) {
        const speaker = speakerFor(casework);
        const failing = heldEnds(casework).flatMap((end) => {
            const greatest = heldVerdict(end) === 'fails' ? greatestHold(end) : undefined;
            return greatest ? [{ end, greatest, ratio: end.force / greatest.capacity }] : [];
        });
        for (const { end, greatest, ratio } of failing.toSorted((a, b) => b.ratio - a.ratio)) {
            const { part, support, joint, force, load } = end;
            report({
                span: joint.span,
                part: part.path,
                message: `\`${part.name}\` presses on \`${support.name}\` with ${forceInWords(force, casework)} under ${load.says}, ${ratio.toFixed(1)} times what ${greatest.what} may carry for years`,
                found: forceInWords(force, casework),
                needed: `at most ${forceInWords(greatest.capacity, casework)}`,
                hint: mendOf(end, greatest, casework, speaker),
                related: [{ span: load.span, message: 'what it carries' }],
                saidOnce: { key: `${joint.span.file} ${joint.span.start}`, others: 'of the same sentence, none worse' },
            });
        }
    },
});

/** What would carry the load, from the figures of what does not. */
function mendOf({ force, way }: HeldEnd, { by, capacity }: KnownHold, casework: Casework, speaker: Speaker): string {
    if (by.is === 'bearing') return 'make the ledge deeper or longer, or take a denser wood';
    if (by.is === 'carries') return `${Math.ceil((by.count * force) / capacity)} of them would do; or stronger ones`;
    const number = `${Math.ceil(force / by.each)} of them would do`;
    const longer =
        by.depth < 10 * by.shank ? `; longer ones that go ${speaker.millimetres(10 * by.shank)} into the second board carry more` : '';
    const otherwise = way === 'under' ? 'a cleat or a ledge under it' : 'a dado or a cleat under its end';
    return `${number}${longer}; so do thicker ones, ${otherwise} (${forceInWords(by.each, casework)} each as they are)`;
}
