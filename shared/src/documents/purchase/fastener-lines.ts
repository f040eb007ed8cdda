/** Screws, biscuits and the like: by number, or by the pack where the text says how many come in one. */
import type { Casework, Thing } from '../../casework/index.js';
import { Rational, type Real, real } from '../../quantity/index.js';
import { countFasteners, type FastenerTotal } from '../fastener-count.js';
import type { PrintStyle } from '../print-style.js';
import { type Row, textCell } from '../sheet.js';
import { type Line, type Lines, priced } from './line.js';
import { type Price, priceOf } from './price.js';

export function fastenerLines(casework: Casework, print: PrintStyle): Lines {
    const heading = 'Fasteners';
    const lines = countFasteners(casework, print).map((total) => lineOf(casework, total, heading));
    const isUnknown = lines.some(({ row }) => row.count?.is === 'unknown');
    return {
        heading,
        lines,
        notes: isUnknown ? ['How many are taken is not known where a joint says neither a count nor a spacing.'] : [],
    };
}

function lineOf(casework: Casework, { name, count, joints, thing: id }: FastenerTotal, heading: string): Line {
    const thing = id === undefined ? undefined : casework.things.get(id);
    const row: Row = {
        group: textCell(heading),
        item: textCell(name),
        ...(thing ? { details: textCell(thing.name) } : {}),
        count: count === undefined ? { is: 'unknown' } : { is: 'count', count },
        use: textCell(joints.join(', ')),
    };
    const price = id === undefined ? undefined : priceOf(casework, id);
    if (count === undefined) return { row, unpriced: `${name} (how many is not known)` };
    const pack = packOf(thing);
    if (pack === undefined) return priced(row, name, price, price && ofPrice(count, price));
    const packs = Math.ceil(count / pack);
    const buy = textCell(packs === 1 ? `1 pack of ${pack}` : `${packs} packs of ${pack}`);
    return priced({ ...row, buy }, name, price, price?.per === 'pack' ? Rational.of(packs) : price && ofPrice(packs * pack, price));
}

/** How many of what a price is for. */
function ofPrice(count: number, { per }: Price): Real | undefined {
    if (per === 'each') return Rational.of(count);
    return per === 'pair' ? Rational.of(Math.ceil(count / 2)) : undefined;
}

function packOf(thing: Thing | undefined): number | undefined {
    const pack = thing?.properties.get('pack');
    const count = pack?.is === 'measure' ? real.toNumber(pack.measure.quantity.value) : Number.NaN;
    return Number.isInteger(count) && count > 0 ? count : undefined;
}
