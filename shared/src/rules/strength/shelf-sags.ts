import { knownShelves, sagLimitOf } from '../../strength/index.js';
import { defineRule } from '../define-rule.js';
import { shareOfSpan } from '../inspection/force-words.js';
import { worstFirst } from '../inspection/shelf-groups.js';
import { speakerFor } from '../inspection/speaker.js';
import { type Stiffening, stiffeningInWords, stiffeningOf } from '../inspection/stiffening-words.js';

export const shelfSags = defineRule({
    code: 'STR-001',
    name: 'shelf-sags',
    severity: 'warning',
    phase: 'sizes',
    title: 'A shelf sags more than it may under what it carries',
    what: 'Under the load that the design states, or the goods that fit on it, a shelf sags at once by more than the limit: 1/144 of its span, or what the project says with `sag`. Its section is computed with its nosing and bands, each by its own stiffness; its ends are taken as simply supported.',
    why: 'A sag that is a hair on paper is seen along a straight front, grows for years, and makes doors under it bind.',
    mend: 'Give it a higher nosing or a thicker board, turn the grain along it, put a divider under it, or let it carry less. `casewright build --only strength` shows the figures.',
    source: {
        kind: 'standard',
        citation: 'Architectural Woodwork Standards, 2nd edition (2014), section 10; deflection by Wood Handbook FPL-GTR-282, Table 9-1',
        value: 'L/144 at once',
    },
    fix: 'none',
    follows: ['STR-003'],
    examples: {
        bad: [
            {
                text: `use casewright.panels
material Mdf like FibreboardThreeQuarter

case Bookcase of Mdf {
    width 38in   height 36in   depth 12in
    side Left, Right
    shelf »Low« at 12in
    join Low to every side with { glue }
    load 40 lb/ft2 on Low
}
`,
            },
        ],
        good: [
            {
                note: 'A nosing on edge carries most of it.',
                text: `use casewright.species
use casewright.panels
material Mdf like FibreboardThreeQuarter
material Oak : lumber { species RedOak   rough 4/4   planed 3/4in }

case Bookcase of Mdf {
    width 38in   height 36in   depth 12in
    side Left, Right
    shelf Low at 12in { edge front nosing 3/4in of Oak { high 1 1/2in } }
    join Low to every side with { glue }
    load 40 lb/ft2 on Low
}
`,
            },
        ],
    },
    check(casework, report) {
        const speaker = speakerFor(casework);
        const { share } = sagLimitOf(casework);
        const sagging = knownShelves(casework).filter(({ sagAtOnce, span }) => sagAtOnce > span * share);
        const ranked = worstFirst(
            sagging,
            ({ sagAtOnce, span }) => sagAtOnce / span,
            (shelf, others: Stiffening | undefined) => stiffeningOf(casework, shelf, { when: 'sagAtOnce', share }, others),
        );
        for (const { shelf, mend, saidOnce } of ranked) {
            const limit = shelf.span * share;
            report({
                span: shelf.part.nameSpan,
                part: shelf.part.path,
                message: `\`${shelf.part.name}\` sags ${speaker.millimetres(shelf.sagAtOnce)} under ${shelf.load.says}, and ${speaker.millimetres(shelf.sagInYears)} in years`,
                found: `${speaker.millimetres(shelf.sagAtOnce)}, ${shareOfSpan(shelf.sagAtOnce, shelf.span)}`,
                needed: `at most ${speaker.millimetres(limit)}, ${shareOfSpan(limit, shelf.span)}`,
                hint: stiffeningInWords(mend, casework, speaker),
                related: [{ span: shelf.load.span, message: 'what it carries' }],
                saidOnce,
            });
        }
    },
});
