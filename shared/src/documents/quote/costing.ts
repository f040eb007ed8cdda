/** What a project costs and what is asked for it, as far as the text says enough: nothing is guessed, and what is missing is named. */
import type { Casework } from '../../casework/index.js';
import { isShare, limitOfShare, type PriceBuildUp, priceBuildUp, type Shares } from '../../cost/index.js';
import { currencyOf, formatNumber, type Quantity, quantity, Rational, real } from '../../quantity/index.js';
import { printStyle } from '../print-style.js';
import type { Lines } from '../purchase/line.js';
import { costOf, type Price, rateIn, sumsOf } from '../purchase/price.js';
import { purchasedGroups } from '../purchase/purchase-list.js';
import { type LaborLine, laborLines } from './labor.js';

export interface Costing {
    readonly purchases: readonly Lines[];
    readonly labor: readonly (LaborLine & { readonly cost: Quantity | undefined })[];
    /** What an hour costs, where the shop says it. */
    readonly rate: Price | undefined;
    readonly hours: Rational;
    /** What has a price, one sum for each currency. */
    readonly materials: readonly Quantity[];
    readonly shares: Shares;
    /** Why there is no price, each as the end of a sentence; there is one where it is empty. */
    readonly missing: readonly string[];
    readonly price: Priced | undefined;
}

export interface Priced {
    readonly currency: string;
    readonly built: PriceBuildUp;
}

/** Whether a text says anything by which its work could be priced. */
export function saysHowToPrice({ shop, project }: Casework): boolean {
    return ['labor', 'overhead', 'margin', 'tax'].some((name) => shop.thing?.properties.has(name) || project?.thing?.properties.has(name));
}

export function costingOf(evaluated: Casework): Costing {
    // amounts are those of the project's own units, so that a document costs the same in whatever units it is printed
    const purchases = purchasedGroups(evaluated, printStyle(evaluated, {}));
    const lines = purchases.flatMap((group) => group.lines);
    const materials = sumsOf(lines.flatMap(({ cost }) => cost ?? []));
    const rate = rateIn(evaluated.shop.thing, 'labor');
    const labor = laborLines(evaluated).map((line) => ({ ...line, cost: rate && costOf(line.hours, rate) }));
    const hours = labor.reduce((sum, line) => sum.plus(line.hours), Rational.zero);
    const { shares, wrong } = sharesOf(evaluated);
    const unpriced = [...new Set(lines.flatMap(({ unpriced: name }) => name ?? []))];
    const left = purchases.flatMap(({ unknown }) => unknown ?? []);
    const money = sumsOf([...materials, ...labor.flatMap(({ cost }) => cost ?? [])]);
    const missing = [
        ...(unpriced.length > 0 ? [`no price is stated of ${unpriced.join(', ')}`] : []),
        ...left,
        ...(rate || labor.length === 0 ? [] : ['the shop does not say what its `labor` costs']),
        ...(money.length > 1 ? [`amounts in ${money.map((sum) => currencyOf(sum.dimension)).join(' and in ')} do not add up`] : []),
        ...wrong,
    ];
    const currency = money[0] && currencyOf(money[0].dimension);
    const [sumOfMaterials, sumOfLabor] = [materials, sumsOf(labor.flatMap(({ cost }) => cost ?? []))].map(([sum]) => exactSum(sum));
    const isPriced = missing.length === 0 && currency !== undefined;
    const price = isPriced ? { currency, built: priceBuildUp(sumOfMaterials!, sumOfLabor!, shares) } : undefined;
    return { purchases, labor, rate, hours, materials, shares, missing, price };
}

/** Sums are of whole cents, and exact. */
function exactSum(sum: Quantity | undefined): Rational {
    if (!sum) return Rational.zero;
    const { value } = quantity.nominal(sum);
    return typeof value === 'number' ? Rational.of(Math.round(value * 100), 100) : value;
}

/** Of the project, or else of the shop. A share that cannot be meant is named. */
function sharesOf({ shop, project }: Casework): { readonly shares: Shares; readonly wrong: readonly string[] } {
    const wrong: string[] = [];
    const shareOf = (name: keyof Shares): Rational | undefined => {
        const value = project?.thing?.properties.get(name) ?? shop.thing?.properties.get(name);
        if (value?.is !== 'measure') return undefined;
        const said = value.measure.quantity.value;
        const exact = typeof said === 'number' ? Rational.of(Math.round(said * 1e6), 1_000_000) : said;
        if (isShare(name, exact)) return exact;
        wrong.push(`\`${name} ${percent(exact)}\` cannot be: it is from 0 % to less than ${percent(limitOfShare(name))}`);
        return undefined;
    };
    const [overhead, margin, tax] = [shareOf('overhead'), shareOf('margin'), shareOf('tax')];
    return { shares: { ...(overhead ? { overhead } : {}), ...(margin ? { margin } : {}), ...(tax ? { tax } : {}) }, wrong };
}

/** `18 %` */
export function percent(share: Rational): string {
    return `${formatNumber(real.multiply(share, Rational.of(100)), { decimals: 2, zeros: 'dropped' })} %`;
}
