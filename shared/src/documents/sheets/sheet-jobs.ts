/** What is to be cut from sheets: a job for each panel material, from the rough sizes of its pieces. */
import type { Casework, Measure, Piece, Thing, ThingValue } from '../../casework/index.js';
import { quantity, real, unitNamed } from '../../quantity/index.js';
import type { Blank, SheetJob, StockSize } from '../../stock/index.js';
import { isSolidWood, sheetSizes } from '../../strength/index.js';
import { alikePieces, piecesByMaterial } from '../pieces-by-material.js';

/** Lengths of a job are whole numbers of this part of a millimetre: pieces and kerfs rounded up to it, sheets down. */
export const jobUnitsPerMillimetre = 100;

/** A panel material with what is to be cut from it. */
export interface MaterialJob {
    readonly material: string;
    readonly job: SheetJob;
    /** The pieces that each blank of the job stands for. */
    readonly pieces: readonly (readonly Piece[])[];
    /** Each stock size of the job, width by length: sheets as they are bought, then offcuts on the rack. */
    readonly sizes: readonly (readonly [Measure, Measure])[];
    /** By stock size: the name of an offcut on the rack; undefined for sheets. */
    readonly offcuts: readonly (string | undefined)[];
    /** By stock size: what is taken off each edge beforehand, in millimetres. The edges of an offcut are sawn. */
    readonly trims: readonly number[];
    readonly hasGrain: boolean;
    /** Whether each stock size has a price. */
    readonly isPriced: boolean;
    /** Pieces whose sizes are not known. */
    readonly unknown: readonly Piece[];
}

/** The jobs of all that is built, in the order of the cut list. Materials without a stated sheet have none. */
export function sheetJobs(casework: Casework): readonly MaterialJob[] {
    return piecesByMaterial(casework).flatMap(
        ([material, pieces]) => jobOf(material, casework.things.get(material), pieces, casework) ?? [],
    );
}

function jobOf(material: string, thing: Thing | undefined, pieces: readonly Piece[], casework: Casework): MaterialJob | undefined {
    const sizes = sheetSizes(thing);
    if (!thing || isSolidWood(thing) || sizes.length === 0) return undefined;
    const grain = thing.properties.get('grain');
    const runs = grain?.is === 'word' ? grain.word : 'length';
    const alike = alikePieces(pieces.filter((piece) => piece.rough.length && piece.rough.width));
    const price = pricePerSheet(thing);
    const trim = casework.shop.trim ? inMillimetres(casework.shop.trim) : 0;
    const rack = offcutsOf(material, casework);
    const across = runs === 'width';
    return {
        material,
        job: {
            blanks: alike.map((batch) => blankOf(batch, runs === 'none')),
            stock: [
                ...sizes.map((size, index) => stockOf(size, index, across, trim, price)),
                ...rack.map(({ size, count }, index) => ({ ...rackOf(size, sizes.length + index, across, price), count })),
            ],
            kerf: upwards(inMillimetres(casework.shop.kerf)),
        },
        pieces: alike,
        sizes: [...sizes, ...rack.map(({ size }) => size)],
        offcuts: [...sizes.map(() => undefined), ...rack.map(({ name }) => name)],
        trims: [...sizes.map(() => trim), ...rack.map(() => 0)],
        hasGrain: runs !== 'none' && alike.some(([piece]) => piece?.grain !== 'none'),
        isPriced: price !== undefined,
        unknown: pieces.filter((piece) => !piece.rough.length || !piece.rough.width),
    };
}

function blankOf(batch: readonly Piece[], isWithoutGrain: boolean): Blank {
    const [{ id, grain, rough }] = batch as [Piece];
    const [length, width] = [inMillimetres(rough.length!), inMillimetres(rough.width!)];
    const [along, across] = grain === 'width' ? [width, length] : [length, width];
    return {
        id,
        width: upwards(across),
        height: upwards(along),
        count: batch.reduce((sum, piece) => sum + piece.quantity, 0),
        mayTurn: isWithoutGrain || grain === 'none',
    };
}

/** A sheet without a price costs its area in square metres, so that the smallest area is the cheapest. */
function stockOf(
    [width, length]: readonly [Measure, Measure],
    index: number,
    isGrainAcross: boolean,
    trim: number,
    price: number | undefined,
): StockSize {
    const [across, along] = isGrainAcross ? [length, width] : [width, length];
    const [fullAcross, fullAlong] = [inMillimetres(across), inMillimetres(along)];
    return {
        id: String(index),
        width: downwards(fullAcross - 2 * trim),
        height: downwards(fullAlong - 2 * trim),
        cost: price ?? (fullAcross * fullAlong) / 1e6,
    };
}

/** So small a part of what its area would cost in sheets, that offcuts go before sheets, and are still not taken in vain. */
const costOfOffcut = 1e-3;
/** Square metres of a sheet of 48in x 96in. */
const usualSheet = 2.97;

/** An offcut: without trim, and next to free. */
function rackOf(size: readonly [Measure, Measure], index: number, isGrainAcross: boolean, price: number | undefined): StockSize {
    const found = stockOf(size, index, isGrainAcross, 0, undefined);
    return { ...found, cost: found.cost * costOfOffcut * (price === undefined ? 1 : price / usualSheet) };
}

/** What stands on the rack of a material, in the order of the text. */
function offcutsOf(material: string, { things }: Casework) {
    return [...things.values()].flatMap((thing) => {
        const of = thing.properties.get('material');
        const [size] = sheetSizesIn(thing.properties.get('size'));
        if (thing.kind !== 'offcut' || of?.is !== 'thing' || of.id !== material || !size) return [];
        const said = thing.properties.get('count');
        const count = said?.is === 'measure' ? Math.floor(real.toNumber(said.measure.quantity.value)) : 1;
        return count > 0 ? [{ name: thing.name, size, count }] : [];
    });
}

function sheetSizesIn(value: ThingValue | undefined): readonly (readonly [Measure, Measure])[] {
    if (value?.is !== 'sizes') return [];
    return value.sizes.flatMap(([width, length]) => (width && length ? [[width, length] as const] : []));
}

/** Undefined where none is stated, or where it is nothing: sheets that cost nothing are still counted. */
function pricePerSheet(thing: Thing): number | undefined {
    const price = thing.properties.get('price');
    const amount = price?.is === 'rate' && price.per === 'sheet' ? real.toNumber(price.amount.quantity.value) : 0;
    return amount > 0 ? amount : undefined;
}

/** A length in millimetres. */
export function inMillimetres({ quantity: of }: Measure): number {
    return real.toNumber(quantity.valueIn(of, unitNamed('mm')));
}

/** What a rounding to job units may swallow: far less than a saw can follow. */
const swallowed = 1e-6;

/** A length as units of a job, no smaller than it is. */
export function upwards(millimetres: number): number {
    return Math.ceil(millimetres * jobUnitsPerMillimetre - swallowed);
}

/** A length as units of a job, no larger than it is. */
export function downwards(millimetres: number): number {
    return Math.max(0, Math.floor(millimetres * jobUnitsPerMillimetre + swallowed));
}
