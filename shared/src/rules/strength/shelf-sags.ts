import type { Casework } from '../../casework/index.js';
import { type ShelfSag, sagLimitOf, shelfStrengths } from '../../strength/index.js';
import { defineRule } from '../define-rule.js';
import { shareOfSpan } from '../inspection/force-words.js';
import { nosingInWords } from '../inspection/nosing-words.js';
import { type Speaker, speakerFor } from '../inspection/speaker.js';

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
        for (const shelf of shelfStrengths(casework)) {
            if (shelf.is !== 'known' || shelf.sagAtOnce <= shelf.span * share) continue;
            const limit = shelf.span * share;
            report({
                span: shelf.part.nameSpan,
                part: shelf.part.path,
                message: `\`${shelf.part.name}\` sags ${speaker.millimetres(shelf.sagAtOnce)} under ${shelf.load.says}, and ${speaker.millimetres(shelf.sagInYears)} in years`,
                found: `${speaker.millimetres(shelf.sagAtOnce)}, ${shareOfSpan(shelf.sagAtOnce, shelf.span)}`,
                needed: `at most ${speaker.millimetres(limit)}, ${shareOfSpan(limit, shelf.span)}`,
                hint: hintFor(casework, shelf, limit, speaker),
                related: [{ span: shelf.load.span, message: 'what it carries' }],
            });
        }
    },
});

function hintFor(casework: Casework, shelf: ShelfSag, limit: number, speaker: Speaker): string {
    const nosing = nosingInWords(casework, shelf, 'sagAtOnce', limit, speaker);
    const span = shelf.span * (limit / shelf.sagAtOnce) ** (1 / 3);
    const shorter = `as it is it may span about ${speaker.millimetres(Math.floor(span / 25.4) * 25.4)}`;
    return `${nosing ?? 'a nosing on edge, a rail or a divider under it, or a thicker board carries more'}; ${shorter}`;
}
