/** The hours of a job: what is counted, times how long one takes, by the shop's own times or by the defaults of this tool. */
import type { Casework, ThingValue } from '../../casework/index.js';
import { hoursFor, type Operation, operations } from '../../cost/index.js';
import { dimension, formatNumber, quantity, Rational, type Real, readUnit, real, type Unit, unitNamed } from '../../quantity/index.js';
import { countedWork } from './counted-work.js';

export interface LaborLine {
    readonly operation: Operation;
    /** `12`, `64.5 ft`, with its unit where it is not a number of things. */
    readonly amount: string;
    /** How long one takes, in minutes. */
    readonly minutes: Rational;
    /** `4 minutes per ft` */
    readonly each: string;
    readonly isDefault: boolean;
    /** To the hundredth. */
    readonly hours: Rational;
}

/** Operations that are done at all, in the order of work. Amounts are in the units of the project or of the stated time, however a document is printed. */
export function laborLines(evaluated: Casework): readonly LaborLine[] {
    const counted = countedWork(evaluated);
    const times = evaluated.shop.thing?.properties.get('times');
    const isInch = (evaluated.project?.units ?? 'in') === 'in';
    return operations.flatMap((operation) => {
        const amount = counted[operation.name];
        if (amount <= 0) return [];
        const stated = times?.is === 'block' ? statedTime(times.properties.get(operation.name)) : undefined;
        return [lineOf(operation, amount, stated, isInch)];
    });
}

interface StatedTime {
    readonly minutes: Rational;
    readonly unit: Unit | undefined;
}

/** `2 minutes`, `4 minutes per ft`; undefined where it is no time. */
function statedTime(value: ThingValue | undefined): StatedTime | undefined {
    const measure = value?.is === 'rate' ? value.amount : value?.is === 'measure' ? value.measure : undefined;
    if (!measure || measure.quantity.dimension !== dimension.time) return undefined;
    const minutes = exactly(quantity.valueIn(measure.quantity, unitNamed('minute')));
    const one = value?.is === 'rate' ? minutes.dividedBy(Rational.of(value.count ?? 1)) : minutes;
    return one.sign() < 0 ? undefined : { minutes: one, unit: value?.is === 'rate' ? readUnit(value.per) : undefined };
}

function exactly(value: Real): Rational {
    return typeof value === 'number' ? Rational.of(Math.round(value * 1e6), 1_000_000) : value;
}

function lineOf(operation: Operation, amount: number, stated: StatedTime | undefined, isInch: boolean): LaborLine {
    const minutesWords = (minutes: Rational) => {
        const text = formatNumber(minutes, { decimals: 2, zeros: 'dropped' });
        return `${text} ${text === '1' ? 'minute' : 'minutes'}`;
    };
    if (operation.per === 'each') {
        const minutes = stated?.minutes ?? operation.minutes;
        const count = Rational.of(Math.round(amount));
        return {
            operation,
            amount: count.toString(),
            minutes,
            each: minutesWords(minutes),
            isDefault: !stated,
            hours: hoursFor(count, minutes),
        };
    }
    const [inchUnit, metricUnit] = operation.per === 'length' ? (['ft', 'm'] as const) : (['ft2', 'm2'] as const);
    const unit = stated?.unit ?? readUnit(isInch ? inchUnit : metricUnit)!;
    const rounded = Rational.of(Math.round((amount / real.toNumber(unit.factor)) * 10), 10);
    const inUnit = real.toNumber(unit.factor) / real.toNumber(readUnit(inchUnit)!.factor);
    const minutes = stated?.minutes ?? Rational.of(Math.round(real.toNumber(operation.minutes) * inUnit * 100), 100);
    return {
        operation,
        amount: `${formatNumber(rounded, { decimals: 1, zeros: 'kept' })} ${unit.symbol}`,
        minutes,
        each: `${minutesWords(minutes)} per ${unit.symbol}`,
        isDefault: !stated,
        hours: hoursFor(rounded, minutes),
    };
}
