import { knownShelves } from '../../strength/index.js';
import { defineRule } from '../define-rule.js';
import { forceInWords } from '../inspection/force-words.js';
import { worstFirst } from '../inspection/shelf-groups.js';

export const shelfMayBreak = defineRule({
    code: 'STR-003',
    name: 'shelf-may-break',
    severity: 'error',
    phase: 'sizes',
    title: 'A shelf may break under what it carries',
    what: 'The greatest bending stress in a shelf, or in its nosing, is more than its material may carry for years: its average breaking stress, less its spread, less what long loading takes, over a partial factor.',
    why: 'It comes down with all that stands on it, and on whoever stands before it.',
    mend: 'Make the span shorter or the board thicker, or let it carry less. These are figures for a maker at work: where people can be hurt, local codes and a licensed engineer decide.',
    source: {
        kind: 'handbook',
        citation:
            'Average strengths by Wood Handbook FPL-GTR-282; spread by its Table 5-6 (from memory); duration and partial factor by Eurocode 5, Tables 3.1 and 2.3 (from memory)',
        value: '0.34 of the average breaking stress for wood and plywood, 0.17 for particleboard, 0.11 for fibreboard',
    },
    fix: 'none',
    examples: {
        bad: [
            {
                text: `use casewright.panels
material Mdf like FibreboardThreeQuarter

case Stand of Mdf {
    width 50in   height 36in   depth 12in
    side Left, Right
    shelf »Low« at 12in
    join Low to every side with { glue }
    load 200 lb on Low
}
`,
            },
        ],
        good: [
            {
                text: `use casewright.panels
material Mdf like FibreboardThreeQuarter

case Stand of Mdf {
    width 20in   height 36in   depth 12in
    side Left, Right
    shelf Low at 12in
    join Low to every side with { glue }
    load 15 lb on Low
}
`,
            },
        ],
    },
    check(casework, report) {
        const breaking = knownShelves(casework).flatMap((shelf) =>
            shelf.stress && shelf.stress.stress > shelf.stress.allowable ? [{ ...shelf, stress: shelf.stress }] : [],
        );
        const ranked = worstFirst(
            breaking,
            ({ stress }) => stress.stress / stress.allowable,
            ({ loadForce, stress }, others: number = Number.POSITIVE_INFINITY) =>
                Math.min(others, (loadForce * stress.allowable) / stress.stress),
        );
        for (const { shelf, mend: holds, saidOnce } of ranked) {
            const { strip, stress, allowable } = shelf.stress;
            report({
                span: shelf.part.nameSpan,
                part: shelf.part.path,
                message: `\`${shelf.part.name}\` may break under ${shelf.load.says}: its ${strip.name} is bent ${(stress / allowable).toFixed(1)} times as hard as it may be for years`,
                found: `${forceInWords(shelf.loadForce, casework)} on it`,
                needed: `at most about ${forceInWords(holds, casework)}`,
                hint: 'make the span shorter, the board thicker, or the load less',
                related: [{ span: shelf.load.span, message: 'what it carries' }],
                saidOnce,
            });
        }
    },
});
