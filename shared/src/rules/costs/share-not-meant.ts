import type { Casework, Thing } from '../../casework/index.js';
import { isShare, limitOfShare, type Shares } from '../../cost/index.js';
import { formatNumber, Rational, type Real, real } from '../../quantity/index.js';
import { defineRule } from '../define-rule.js';

export const shareNotMeant = defineRule({
    code: 'COS-001',
    name: 'share-not-meant',
    severity: 'error',
    phase: 'project',
    title: 'An overhead, a margin or a tax is a share that cannot be meant',
    what: 'A margin and a tax are from 0 % to less than 100 %, an overhead is from 0 % to less than 1000 %. A number without a percent sign is a part of one: `tax 8` is 800 %.',
    why: 'The price that comes of it goes to the client.',
    mend: 'Write the percent sign: `tax 8%`.',
    source: { kind: 'language', citation: 'A margin is a share of the price, so that no price is high enough for one of 100 %' },
    fix: 'none',
    examples: {
        bad: [
            {
                text: `use casewright.panels
material Mdf like FibreboardThreeQuarter
project "Two shelves" { build 1 Stand; »tax 8« }

case Stand of Mdf {
    width 36in   height 40in   depth 12in
    side Left, Right
    shelf Low at 20in
}
`,
            },
        ],
        good: [
            {
                text: `use casewright.panels
material Mdf like FibreboardThreeQuarter
project "Two shelves" { build 1 Stand; tax 8% }

case Stand of Mdf {
    width 36in   height 40in   depth 12in
    side Left, Right
    shelf Low at 20in
}
`,
            },
        ],
    },
    check(casework, report) {
        for (const { name, thing, share } of sharesIn(casework)) {
            if (isShare(name, share)) continue;
            const span = thing.properties.get(name)!.span;
            report({
                span,
                message: `\`${name}\` is ${percent(share)} here`,
                hint: share.sign() < 0 ? 'a share is not below nothing' : `with a percent sign: \`${name} ${formatNumber(share, plain)}%\``,
                found: percent(share),
                needed: `from 0 % to less than ${percent(limitOfShare(name))}`,
            });
        }
    },
});

const names: readonly (keyof Shares)[] = ['overhead', 'margin', 'tax'];
const plain = { decimals: 2, zeros: 'dropped' } as const;

function* sharesIn({ shop, project }: Casework): Generator<{ name: keyof Shares; thing: Thing; share: Rational }> {
    for (const thing of [shop.thing, project?.thing]) {
        for (const name of names) {
            const value = thing?.properties.get(name);
            if (thing && value?.is === 'measure') yield { name, thing, share: exactly(value.measure.quantity.value) };
        }
    }
}

function exactly(value: Real): Rational {
    return typeof value === 'number' ? Rational.of(Math.round(value * 1e6), 1_000_000) : value;
}

function percent(share: Rational): string {
    return `${formatNumber(real.multiply(share, Rational.of(100)), plain)} %`;
}
