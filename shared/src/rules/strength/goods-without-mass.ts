import { defineRule } from '../define-rule.js';

export const goodsWithoutMass = defineRule({
    code: 'LOA-002',
    name: 'goods-without-mass',
    severity: 'warning',
    phase: 'sizes',
    title: 'Nothing says what the goods weigh',
    what: 'A `hold` puts goods on a part, and the goods have no `mass`. Room is looked for, but nothing is counted for their weight: not in the sag of a shelf, nor in whether the case stands.',
    why: 'A shelf that carries nothing never sags. Without the mass it looks sound, whatever is put on it.',
    mend: 'Give the goods a mass.',
    source: { kind: 'language', citation: 'What carries is computed from what is said' },
    fix: 'none',
    fromAbsence: true,
    examples: {
        bad: [
            {
                text: `use casewright.panels
material Mdf like FibreboardThreeQuarter
goods »Vase« { size 6in wide 6in deep 14in high }

case Stand of Mdf {
    width 24in   height 36in   depth 12in
    side Left, Right
    top
    shelf Low at 20in
    join Low, top to every side with { glue }
    hold Vase on Low
}
`,
            },
        ],
        good: [
            {
                text: `use casewright.panels
material Mdf like FibreboardThreeQuarter
goods Vase { size 6in wide 6in deep 14in high   mass 3lb }

case Stand of Mdf {
    width 24in   height 36in   depth 12in
    side Left, Right
    top
    shelf Low at 20in
    join Low, top to every side with { glue }
    hold Vase on Low
}
`,
            },
        ],
    },
    check(casework, report) {
        const said = new Set<string>();
        for (const load of casework.loads) {
            const goods = load.is === 'goods' ? casework.things.get(load.goods) : undefined;
            if (!goods || goods.properties.has('mass') || load.parts.length === 0 || said.has(goods.id)) continue;
            said.add(goods.id);
            report({
                span: goods.nameSpan,
                message: `\`${goods.name}\` has no mass: its weight is not counted on what holds it`,
                hint: 'say what one weighs, such as `mass 2lb`',
                found: `\`${goods.name}\` without \`mass\``,
                needed: '`mass`',
                related: [{ span: load.span, message: 'what holds it' }],
            });
        }
    },
});
