import type { Casework, Requirement } from '../../casework/index.js';
import { quantity, real, worstCase } from '../../quantity/index.js';
import { defineRule } from '../define-rule.js';
import { requirementWords } from '../inspection/requirement-words.js';
import { type Speaker, speakerFor } from '../inspection/speaker.js';

export const requirementAtWorst = defineRule({
    code: 'DES-002',
    name: 'requirement-at-worst',
    severity: 'warning',
    phase: 'sizes',
    title: 'What the design requires holds as drawn, but not when everything is at its worst',
    what: 'With the sizes as written the condition of a `require` holds. With every tolerance at its limit, each the way that hurts, it does not.',
    why: 'Sheets are thicker one month and thinner the next. Somewhere in the range that was stated, the design misses what it asks of itself.',
    mend: 'Leave more room, measure the boards that are really there and state what the caliper says, or accept it: `allow requirement-at-worst because "..."`.',
    source: { kind: 'physics', citation: 'Worst-case sum of first-order effects, one for each stated tolerance' },
    fix: 'none',
    examples: {
        bad: [
            {
                text: `material Ply : plywood { thickness 3/4in   actual 0.720in ± 0.010in   sheet 48in x 96in   grain length }

case Bookcase of Ply {
    width 30in   height 36in   depth 11in
    side Left, Right
    shelf Low at 12in
    join Low to every side with { glue }
    »require Low.length >= 28.55in because "the archive boxes are 28 1/2in long"«
}
`,
            },
        ],
        good: [
            {
                text: `material Ply : plywood { thickness 3/4in   actual 0.720in ± 0.010in   sheet 48in x 96in   grain length }

case Bookcase of Ply {
    width 30in   height 36in   depth 11in
    side Left, Right
    shelf Low at 12in
    join Low to every side with { glue }
    require Low.length >= 28.52in because "the archive boxes are 28 1/2in long"
}
`,
            },
        ],
    },
    check(casework, report) {
        const speaker = speakerFor(casework);
        for (const requirement of casework.requirements) {
            if (requirement.answer !== 'depends') continue;
            const words = requirementWords(requirement, speaker);
            const reason = requirement.because ? `: ${requirement.because}` : '';
            const range = rangeOf(requirement, casework, speaker);
            report({
                span: requirement.span,
                message: words
                    ? `this holds as drawn (${words.found}, required is ${words.needed}), but not when everything is at its worst${reason}`
                    : `this holds as drawn, but not when everything is at its worst${reason}`,
                ...(range ? { hint: range } : {}),
                ...words,
            });
        }
    },
});

/** Between what the margin lies when every tolerance is at its limit. */
function rangeOf({ left, right }: Requirement, casework: Casework, speaker: Speaker): string | undefined {
    const margin = left && right && quantity.subtract(left.quantity, right.quantity);
    if (!margin) return undefined;
    const { minus, plus } = worstCase(margin, casework.deviations);
    const say = (value: typeof minus) => speaker.measure({ quantity: { ...margin, value, deviations: undefined }, why: left.why });
    return `the margin is ${say(margin.value)}; at worst it is ${say(real.subtract(margin.value, minus))} or ${say(real.add(margin.value, plus))}`;
}
