/** The glue of all that is built, by the area on which it is spread. */
import type { Casework } from '../../casework/index.js';
import { formatNumber, Rational, real } from '../../quantity/index.js';
import { areaInWords, type PrintStyle } from '../print-style.js';
import { type Row, textCell } from '../sheet.js';
import { gluedArea } from './glued-area.js';
import { type Lines, priced } from './line.js';
import { rateIn, unitOfPrice } from './price.js';

/** Glue on one of two faces, in grams a square metre: 35 to 50 lb per 1000 ft2, the usual single spread. Common practice, no source. */
const spread = { least: 170, most: 245 };

export function glueLines(evaluated: Casework, print: PrintStyle): Lines {
    const heading = 'Glue';
    const { area, surfaces } = gluedArea(evaluated);
    if (area === 0) return { heading, lines: [], notes: [] };
    const mass = (gramsPerSquareMetre: number) => {
        const grams = (area / 1e6) * gramsPerSquareMetre;
        return print.system === 'inch'
            ? formatNumber(grams / 28.349523125, { decimals: 1, zeros: 'kept' })
            : formatNumber(grams, { decimals: 0, zeros: 'kept' });
    };
    const row: Row = {
        group: textCell(heading),
        item: textCell('wood glue'),
        buy: textCell(`${mass(spread.least)} to ${mass(spread.most)} ${print.system === 'inch' ? 'oz' : 'g'}`),
        use: textCell(surfaces.map(({ what, area: part }) => `${what} ${areaInWords(part, print)}`).join(', ')),
    };
    const note =
        print.system === 'inch'
            ? 'Glue by weight, spread on one of the two faces at 35 to 50 lb per 1000 ft2 (common practice); follow what is printed on the bottle.'
            : 'Glue by weight, spread on one of the two faces at 170 to 245 g/m2 (common practice); follow what is printed on the bottle.';
    const price = rateIn(evaluated.shop.thing, 'glue');
    const unit = price && unitOfPrice(price);
    // a hundredth of a pound or of a kilogram is as finely as anybody weighs it
    const most = unit && Rational.of(Math.ceil(((area / 1e6) * spread.most * 100) / 1000 / real.toNumber(unit.factor) - 1e-6), 100);
    const notes = price ? [note, 'It is priced at the greater of the two weights.'] : [note];
    return { heading, lines: [priced(row, 'wood glue', price, most)], notes };
}
