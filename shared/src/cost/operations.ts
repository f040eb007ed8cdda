/**
 * What is done in the shop, operation by operation, and how long each takes.
 *
 * The times are defaults of this tool. They have no source: how fast a shop works is its own, and only a clock in it tells. A shop states
 * its own under the same names, `times { cut 2 minutes }`.
 */
import { Rational } from '../quantity/index.js';

export type OperationName =
    | 'sheet'
    | 'cut'
    | 'board'
    | 'lamination'
    | 'template'
    | 'band'
    | 'slot'
    | 'biscuit'
    | 'pocket'
    | 'hole'
    | 'screw'
    | 'part'
    | 'sand'
    | 'coat';

export interface Operation {
    readonly name: OperationName;
    /** What was counted, as a heading of its line. */
    readonly heading: string;
    /** What a time is for: one of them, a foot or metre of them, or a square foot or metre. */
    readonly per: 'each' | 'length' | 'area';
    /** A default without a source, in minutes: for one, for a foot, or for a square foot. */
    readonly minutes: Rational;
}

/** Said wherever one of the default times is used. */
export const defaultTimeWords = 'default of this tool, no source: measure your own';

const of = (name: OperationName, heading: string, per: Operation['per'], minutes: Rational): Operation => ({ name, heading, per, minutes });

/** In the order of work. */
export const operations: readonly Operation[] = [
    of('sheet', 'Sheets brought to the saw', 'each', Rational.of(10)),
    of('cut', 'Cuts at the saw', 'each', Rational.of(3, 2)),
    of('board', 'Boards jointed and planed', 'each', Rational.of(20)),
    of('lamination', 'Boards glued up of layers', 'each', Rational.of(30)),
    of('template', 'Edges cut to a curve', 'each', Rational.of(25)),
    of('band', 'Bands and nosings glued on and trimmed', 'length', Rational.of(4)),
    of('slot', 'Dados, grooves, rabbets, mortises', 'each', Rational.of(5)),
    of('biscuit', 'Biscuit slots', 'each', Rational.of(1)),
    of('pocket', 'Pockets', 'each', Rational.of(1, 2)),
    of('hole', 'Holes for dowels and pins', 'each', Rational.of(1, 2)),
    of('screw', 'Screws, nails and bolts driven', 'each', Rational.of(1, 2)),
    of('part', 'Parts fitted and put together', 'each', Rational.of(10)),
    of('sand', 'Surface sanded', 'area', Rational.of(1)),
    of('coat', 'Surface coated', 'area', Rational.of(1, 2)),
];

/** Hours to the hundredth, as they are printed and paid; a half goes up. */
export function hoursFor(amount: Rational, minutesForOne: Rational): Rational {
    const exact = amount.times(minutesForOne).dividedBy(Rational.of(60));
    return exact.roundedTo(Rational.of(1, 100));
}
