/** Coatings, by the area that they go on, how thick each coat is, and how much of it lands there. */
import type { Casework, Thing } from '../../casework/index.js';
import { coverage, liquidFor, wetFilm } from '../../cost/index.js';
import { dimension, formatNumber, type Quantity, quantity, Rational, real, type Unit, unitNamed } from '../../quantity/index.js';
import { measureProperty, thingName } from '../../strength/index.js';
import { cautions } from '../cautions.js';
import { areaInWords, asBought, type PrintStyle } from '../print-style.js';
import { type Row, textCell } from '../sheet.js';
import { countedSurface, finishedAreas } from './finished-area.js';
import { type Line, type Lines, priced } from './line.js';
import { type Price, priceOf, unitOfPrice } from './price.js';

/** A coating with all that it goes on. */
interface Coated {
    /** Area times coats, in square millimetres. */
    area: number;
    readonly uses: string[];
}

export function finishLines(evaluated: Casework, print: PrintStyle): Lines {
    const heading = 'Finish';
    const areas = finishedAreas(evaluated);
    const coatings = new Map<string, Coated>();
    for (const { finish, area } of areas) {
        const { name, steps } = evaluated.finishes?.get(finish) ?? { name: '', steps: [] };
        for (const step of steps) {
            if (step.does !== 'coat') continue;
            const known = coatings.get(step.coating) ?? { area: 0, uses: [] };
            coatings.set(step.coating, known);
            known.area += area * step.count;
            known.uses.push(`${name}: ${step.count === 1 ? '1 coat' : `${step.count} coats`} on ${areaInWords(area, print)}`);
        }
    }
    const unknown = areas.flatMap((one) => one.unknown);
    const lines = [...coatings].map(([id, coated]) => coatingLine(evaluated, id, coated, print));
    const notes = lines.length === 0 ? [] : [countedSurface, ...lossNotes(evaluated, [...coatings.keys()]), cautions.finishing];
    return {
        heading,
        lines,
        unknown: unknown.length === 0 ? [] : [`the finished surface of ${unknown.join(', ')} is not known`],
        notes: unknown.length === 0 ? notes : [...notes, `Not counted, since their sizes are not known: ${unknown.join(', ')}.`],
    };
}

function lossNotes(casework: Casework, coatings: readonly string[]): readonly string[] {
    const without = coatings.filter((id) => measureProperty(casework.things.get(id), 'transfer', dimension.none) === undefined);
    if (without.length === 0) return [];
    return [
        `Counted as if none of it were lost: ${without.map((id) => thingName(casework, id)).join(', ')}. A gun wants more, by its \`transfer\`.`,
    ];
}

function coatingLine(casework: Casework, id: string, { area, uses }: Coated, print: PrintStyle): Line {
    const thing = casework.things.get(id);
    const name = thingName(casework, id);
    const row: Row = { group: textCell('Finish'), item: textCell(name), use: textCell(uses.join(', ')) };
    const film = filmOf(thing);
    if (film === undefined) {
        return { row: { ...row, buy: { is: 'unknown' } }, unpriced: `${name} (it does not say how thick a coat is, \`wet\` or \`dry\`)` };
    }
    const transfer = ratio(thing, 'transfer') ?? 1;
    const price = priceOf(casework, id);
    const unit = unitOfLiquid(price, thing, print);
    const volume = liquidFor(area, 1, film, transfer) / real.toNumber(unit.factor);
    const stated = { ...row, details: textCell(detailsOf(thing, film, transfer, unit, print)) };
    const can = measureProperty(thing, 'can', dimension.volume);
    if (!can) {
        const bought = upTo(volume, 100);
        const buy = textCell(`${formatNumber(bought, { decimals: 2, zeros: 'kept' })} ${unit.symbol}`);
        return priced({ ...stated, buy }, name, price, price && inUnitsOfPrice(bought, unit, price));
    }
    const size = quantity.valueIn(can.quantity, unit);
    const cans = Math.ceil(volume / real.toNumber(size) - 1e-9);
    const bought: Row = {
        ...stated,
        size: textCell(asBought(can, print)),
        count: { is: 'count', count: cans },
        buy: textCell(cans === 1 ? '1 can' : `${cans} cans`),
        use: textCell(`${uses.join(', ')}: ${formatNumber(upTo(volume, 100), { decimals: 2, zeros: 'kept' })} ${unit.symbol}`),
    };
    const all = real.multiply(size, Rational.of(cans));
    return priced(bought, name, price, price?.per === 'can' ? Rational.of(cans) : price && inUnitsOfPrice(all, unit, price));
}

/** How thick one coat is while wet, in millimetres. */
function filmOf(thing: Thing | undefined): number | undefined {
    const length = (name: string) => {
        const measure = measureProperty(thing, name, dimension.length);
        return measure && real.toNumber(quantity.valueIn(measure.quantity, unitNamed('mm')));
    };
    const [wet, dry, solids] = [length('wet'), length('dry'), ratio(thing, 'solids')];
    const film = wetFilm({
        ...(wet === undefined ? {} : { wet }),
        ...(dry === undefined ? {} : { dry }),
        ...(solids === undefined ? {} : { solids }),
    });
    return film !== undefined && film > 0 ? film : undefined;
}

/** A share above nothing, and at most the whole. */
function ratio(thing: Thing | undefined, name: string): number | undefined {
    const measure = measureProperty(thing, name, dimension.none);
    const value = measure && real.toNumber(measure.quantity.value);
    return value !== undefined && value > 0 && value <= 1 ? value : undefined;
}

/** It is bought in what its price is for, or in what its can holds. */
function unitOfLiquid(price: Price | undefined, thing: Thing | undefined, { system }: PrintStyle): Unit {
    const can = measureProperty(thing, 'can', dimension.volume)?.quantity.unit;
    const priceUnit = price && unitOfPrice(price);
    return [priceUnit, can].find((unit) => unit?.dimension === dimension.volume) ?? unitNamed(system === 'inch' ? 'gal' : 'litre');
}

function inUnitsOfPrice(amount: Quantity['value'], unit: Unit, price: Price): Quantity['value'] | undefined {
    return unitOfPrice(price) === unit ? amount : undefined;
}

function detailsOf(thing: Thing | undefined, film: number, transfer: number, unit: Unit, print: PrintStyle): string {
    const solids = ratio(thing, 'solids');
    const [thin, symbol, square, area] = print.system === 'inch' ? [0.0254, 'mil', 304.8 ** 2, 'ft2'] : [0.001, 'um', 1e6, 'm2'];
    const covers = (coverage(film, transfer) * real.toNumber(unit.factor)) / square;
    return [
        solids === undefined ? undefined : `${formatNumber(solids * 100, { decimals: 1, zeros: 'dropped' })} % solids`,
        `${formatNumber(film / thin, { decimals: 1, zeros: 'dropped' })} ${symbol} wet`,
        transfer < 1 ? `${formatNumber(transfer * 100, { decimals: 0, zeros: 'dropped' })} % transferred` : undefined,
        `${formatNumber(covers, { decimals: 1, zeros: 'kept' })} ${area} per ${unit.symbol}`,
    ]
        .filter((text) => text !== undefined)
        .join(', ');
}

function upTo(value: number, parts: number): Rational {
    return Rational.of(Math.ceil(value * parts - 1e-6), parts);
}
