/** What a shelf carries, as forces along it: goods side by side as many as fit, or the load that the text states; the worse of both. */
import type { CarriedLoad, Casework, Part, Span, Thing } from '../casework/index.js';
import { dimension, type Quantity, real } from '../quantity/index.js';
import { grouped } from './grouped.js';
import { measureProperty } from './thing-values.js';

/** Standard gravity in m/s² (3rd General Conference on Weights and Measures, 1901). */
export const standardGravity = 9.80665;

/** A load on a part. Newtons and millimetres. */
export interface PartLoad {
    /** `24 Teapot`, `25 lb/ft2`: in the words of the text where it states a load. */
    readonly says: string;
    readonly span: Span;
    /** Spread evenly over the depth at each place along it, evenly along it, or all at its middle. */
    readonly way: 'by area' | 'along' | 'at the middle';
    /** N/mm², N/mm or N, as its way says. */
    readonly intensity: number;
    /** How many goods it is, and the mass of one in kilograms. */
    readonly goods?: { readonly count: number; readonly mass: number };
}

/** Goods on a part: how many there is room for. */
export interface GoodsFit {
    readonly goods: Thing;
    readonly count: number;
    readonly across: number;
    readonly deep: number;
    readonly high: number;
    /** Mass of one, in kilograms; undefined where it is not said. */
    readonly mass: number | undefined;
}

/** The room for things on a part, in millimetres: between what stands at its ends, front to back, and up to what is over it. */
export interface RoomOnPart {
    readonly wide: number;
    readonly deep: number;
    readonly high: number;
}

export function roomOn(part: Part): RoomOnPart {
    const number = (quantity: Quantity | undefined, otherwise: number) => (quantity ? real.toNumber(quantity.value) : otherwise);
    return {
        wide: number(part.sizes.opening.length?.quantity, 0),
        deep: number(part.sizes.finished.width?.quantity, 0),
        high: number(part.clear?.quantity, Number.POSITIVE_INFINITY),
    };
}

/** Width, depth and height of one of the goods, in millimetres. */
export function sizeOfGoods(goods: Thing): readonly [wide: number, deep: number, high: number] | undefined {
    const value = goods.properties.get('size');
    const measures = value?.is === 'sizes' ? value.sizes[0] : value?.is === 'measures' ? value.measures : undefined;
    if (measures?.length !== 3) return undefined;
    const [wide, deep, high] = measures.map((measure) => real.toNumber(measure.quantity.value));
    return [wide!, deep!, high!];
}

/** How many of the goods stand on a part; as many as the text says, where it says so. Undefined where their size is not known. */
export function fitOf(goods: Thing, count: number | undefined, room: RoomOnPart): GoodsFit | undefined {
    const size = sizeOfGoods(goods);
    if (!size) return undefined;
    const [wide, deep, high] = size;
    const stack = goods.properties.get('stack');
    const most = stack?.is === 'measure' ? real.toNumber(stack.measure.quantity.value) : 1;
    const times = (whole: number, one: number) => (one > 0 ? Math.floor(whole / one + 1e-9) : 0);
    const fits = { across: times(room.wide, wide), deep: times(room.deep, deep), high: Math.min(most, times(room.high, high)) };
    const mass = measureProperty(goods, 'mass', dimension.mass);
    return {
        goods,
        count: count ?? fits.across * fits.deep * fits.high,
        ...fits,
        mass: mass && real.toNumber(mass.quantity.value),
    };
}

/** The loads of a part, each by itself, in the order of the text. Those that cannot be known are left out, and goods of which not one fits. */
export function loadsOn(casework: Casework, part: Part): readonly PartLoad[] {
    return (carriedByPart(casework).get(part.path) ?? []).flatMap((load) => loadOf(casework, part, load) ?? []);
}

const loadsByPart = new WeakMap<readonly CarriedLoad[], ReadonlyMap<string, readonly CarriedLoad[]>>();

function carriedByPart({ loads }: Casework): ReadonlyMap<string, readonly CarriedLoad[]> {
    let byPart = loadsByPart.get(loads);
    if (!byPart) {
        byPart = grouped(loads, ({ parts }) => [...new Set(parts)]);
        loadsByPart.set(loads, byPart);
    }
    return byPart;
}

function loadOf(casework: Casework, part: Part, load: CarriedLoad): PartLoad | undefined {
    const { span } = load;
    if (load.is === 'load') return load.amount && statedLoad(load.amount.quantity, load.amount.why.about[0] ?? 'load', span);
    const goods = casework.things.get(load.goods);
    const room = roomOn(part);
    const fit = goods && fitOf(goods, load.count, room);
    if (!fit || fit.count <= 0 || fit.mass === undefined || room.wide <= 0) return undefined;
    const intensity = (fit.count * fit.mass * standardGravity) / room.wide;
    return { says: `${fit.count} ${goods.name}`, span, way: 'along', intensity, goods: { count: fit.count, mass: fit.mass } };
}

/** Base units are millimetres, kilograms and seconds: a force of one is a thousandth of a newton. */
const newton = 1 / 1000;

function statedLoad(amount: Quantity, says: string, span: Span): PartLoad | undefined {
    const value = real.toNumber(amount.value);
    const ways: readonly (readonly [of: Quantity['dimension'], way: PartLoad['way'], factor: number])[] = [
        [dimension.areaLoad, 'by area', standardGravity],
        [dimension.pressure, 'by area', newton],
        [dimension.lineLoad, 'along', standardGravity],
        [dimension.force.dividedBy(dimension.length), 'along', newton],
        [dimension.mass, 'at the middle', standardGravity],
        [dimension.force, 'at the middle', newton],
    ];
    const found = ways.find(([of]) => of === amount.dimension);
    return found && { says, span, way: found[1], intensity: value * found[2] };
}
