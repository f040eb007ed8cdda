/** Exact numbers, dimensions, units and quantities with tolerance; reading and printing of measures. Knows no materials and no parts. */
export { type Contribution, type DeviationSource, type Limits, largestContributor, likelyCase, worstCase } from './deviation.js';
export {
    type BaseDimension,
    baseUnitSymbol,
    currencyOf,
    type Dimension,
    describeDimension,
    dimension,
    dimensionRoot2,
    divideDimensions,
    multiplyDimensions,
} from './dimension.js';
export {
    type DecimalStyle,
    formatLength,
    type InchFractionStyle,
    type InchStyle,
    type LengthStyle,
    type MillimetreStyle,
    nearestTradeFraction,
    type Off,
    type PrintedMeasure,
    printingStep,
    sayMeasure,
    type TradeFraction,
    type UnitMark,
} from './format-length.js';
export { formatNumber, type NumberStyle } from './format-number.js';
export { formatQuantity, type QuantityStyle, usualStyle } from './format-quantity.js';
export { measurePattern } from './measure-token.js';
export { type Deviations, type Quantity, quantity, type SourceId } from './quantity.js';
export { Rational } from './rational.js';
export { type MeasureProblem, type MeasureProblemCode, type MeasureReading, readMeasure, type WrittenMeasure } from './read-measure.js';
export { type Real, real } from './real.js';
export { roundTogether } from './round-together.js';
export { guessUnit, readUnit, type Unit, unitNamed, units, unitWords, usualUnit } from './unit.js';
