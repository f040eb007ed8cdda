import { knownShelves, sagLimitOf, visibleSag } from '../../strength/index.js';
import { defineRule } from '../define-rule.js';
import { shareOfSpan } from '../inspection/force-words.js';
import { worstFirst } from '../inspection/shelf-groups.js';
import { speakerFor } from '../inspection/speaker.js';
import { type Stiffening, stiffeningInWords, stiffeningOf } from '../inspection/stiffening-words.js';

export const shelfSagsVisibly = defineRule({
    code: 'STR-002',
    name: 'shelf-sags-visibly',
    severity: 'note',
    phase: 'sizes',
    title: 'A shelf holds, and its sag will be seen in years',
    what: 'A shelf keeps the limit under what it carries, and in years it will sag by more than the eye passes over along a straight front: 1/32in in a foot, 1/384 of its span. What the years add depends on the material: half as much again in solid wood and as much again in plywood (NDS-2018, 3.5.2), more than twice as much again in fibreboard and particleboard (Eurocode 5, Table 3.2).',
    why: 'Nothing breaks. But a case is bought for how it looks, and a shelf that smiles looks cheap.',
    mend: 'Stiffen it as a sagging shelf is stiffened, or accept it: `allow shelf-sags-visibly on Low because "folded linen, behind doors"`.',
    source: {
        kind: 'shop practice',
        citation: 'common practice, no source',
        value: 'L/384 in years',
    },
    fix: 'none',
    follows: ['STR-001', 'STR-003'],
    examples: {
        bad: [
            {
                text: `use casewright.panels
material Mdf like FibreboardThreeQuarter

case Bookcase of Mdf {
    width 30in   height 36in   depth 12in
    side Left, Right
    shelf »Low« at 12in
    join Low to every side with { glue }
    load 25 lb/ft2 on Low
}
`,
            },
        ],
        good: [
            {
                text: `use casewright.panels
material Mdf like FibreboardThreeQuarter

case Bookcase of Mdf {
    width 20in   height 36in   depth 12in
    side Left, Right
    shelf Low at 12in
    join Low to every side with { glue }
    load 15 lb/ft2 on Low
}
`,
            },
        ],
    },
    check(casework, report) {
        const speaker = speakerFor(casework);
        const { share } = sagLimitOf(casework);
        const seen = knownShelves(casework).filter(
            ({ sagAtOnce, sagInYears, span }) => sagAtOnce <= span * share && sagInYears > span * visibleSag,
        );
        const ranked = worstFirst(
            seen,
            ({ sagInYears, span }) => sagInYears / span,
            (shelf, others: Stiffening | undefined) => stiffeningOf(casework, shelf, { when: 'sagInYears', share: visibleSag }, others),
        );
        for (const { shelf, mend, saidOnce } of ranked) {
            report({
                span: shelf.part.nameSpan,
                part: shelf.part.path,
                message: `\`${shelf.part.name}\` holds ${shelf.load.says}, and in years its sag of ${speaker.millimetres(shelf.sagInYears)} will be seen`,
                found: `${speaker.millimetres(shelf.sagInYears)}, ${shareOfSpan(shelf.sagInYears, shelf.span)}`,
                needed: `at most ${speaker.millimetres(shelf.span * visibleSag)}, ${shareOfSpan(shelf.span * visibleSag, shelf.span)}, to look straight`,
                hint: stiffeningInWords(mend, casework, speaker),
                related: [{ span: shelf.load.span, message: 'what it carries' }],
                saidOnce,
            });
        }
    },
});
