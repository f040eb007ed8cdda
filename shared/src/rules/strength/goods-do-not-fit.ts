import type { Part } from '../../casework/index.js';
import { fitOf, type GoodsFit, roomOn, sizeOfGoods } from '../../strength/index.js';
import { defineRule } from '../define-rule.js';
import { type Speaker, speakerFor } from '../inspection/speaker.js';

export const goodsDoNotFit = defineRule({
    code: 'LOA-001',
    name: 'goods-do-not-fit',
    severity: 'warning',
    phase: 'sizes',
    title: 'What a part is to hold does not fit on it',
    what: 'A `hold` puts goods on a part where not one of them fits, or not as many as it says: side by side, behind one another, and stacked as high as the goods allow.',
    why: 'The case is made for what it shows. That it is an inch too low is seen on the day of delivery.',
    mend: 'Make the opening larger, hold fewer, or put them where they fit.',
    source: { kind: 'physics', citation: 'Whole things side by side: width, depth and height of the opening over those of one' },
    fix: 'none',
    examples: {
        bad: [
            {
                text: `use casewright.panels
material Mdf like FibreboardThreeQuarter
goods Vase { size 6in wide 6in deep 18in high   mass 3lb }

case Stand of Mdf {
    width 24in   height 36in   depth 12in
    side Left, Right
    top
    shelf Low at 20in
    join Low, top to every side with { glue }
    »hold Vase on Low«
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
        const speaker = speakerFor(casework);
        for (const load of casework.loads) {
            const goods = load.is === 'goods' ? casework.things.get(load.goods) : undefined;
            if (load.is !== 'goods' || !goods) continue;
            const lacking = load.parts.flatMap((path) => {
                const part = casework.parts.get(path);
                const fit = part && fitOf(goods, load.count, roomOn(part));
                return fit && lacks(fit) ? [{ part, fit }] : [];
            });
            const [first] = lacking;
            if (!first) continue;
            const names = lacking.map(({ part }) => `\`${part.name}\``).join(', nor on ');
            report({
                span: load.span,
                part: first.part.path,
                ...wordsOf(first.part, first.fit, names, speaker),
                // shelves of an array are written once
                related: [...new Map(lacking.map(({ part }) => [part.nameSpan.start, part])).values()].map(({ name, nameSpan }) => ({
                    span: nameSpan,
                    message: `\`${name}\``,
                })),
            });
        }
    },
});

type Words = { readonly message: string; readonly found: string; readonly needed: string };

function lacks({ across, deep, high, count }: GoodsFit): boolean {
    const fits = across * deep * high;
    return fits === 0 || count > fits;
}

/** @param names of all parts on which they do not fit; the numbers are those of the first */
function wordsOf(part: Part, fit: GoodsFit, names: string, speaker: Speaker): Words {
    const fits = fit.across * fit.deep * fit.high;
    if (fits > 0) {
        return {
            message: `${fit.count} \`${fit.goods.name}\` do not fit on ${names}`,
            found: `room for ${fits}: ${fit.across} side by side, ${fit.deep} deep, ${fit.high} high`,
            needed: `room for ${fit.count}`,
        };
    }
    const room = roomOn(part);
    const [wide = 0, deep = 0, high = 0] = sizeOfGoods(fit.goods) ?? [];
    const lacking =
        fit.across === 0
            ? ([room.wide, wide, 'wide'] as const)
            : fit.deep === 0
              ? ([room.deep, deep, 'deep'] as const)
              : ([room.high, high, 'high'] as const);
    const [has, wants, way] = lacking;
    return {
        message: `\`${fit.goods.name}\` does not fit on ${names}: it is ${speaker.millimetres(wants)} ${way}`,
        found: `${speaker.millimetres(has)} ${way === 'high' ? 'clear' : way}`,
        needed: `more than ${speaker.millimetres(wants)}`,
    };
}
