export * from './arc-run.js';
export * from './box.js';
export { type CircularSegment, circularSegment } from './circular-segment.js';
export { type ArcCurve, arcCurve, arcCurveOfRadius, arcCurveThrough, isArc } from './curves/arc.js';
export { type ArcReduction, reduceToArcs } from './curves/arc-reduction.js';
export { type BattenPins, battenPins } from './curves/batten-pins.js';
export { type BowCurve, type BowStrip, bowCurve, isBow } from './curves/bow.js';
export type { CurveJoint } from './curves/composite.js';
export { continuedCurve } from './curves/continued.js';
export type {
    Curve,
    CurveKind,
    CurveOutcome,
    CurvePlace,
    CurveRefusal,
    CurveValue,
    Interval,
    LeastRadius,
} from './curves/curve.js';
export { type BowShape, bowShapeOfEndAngle, bowShapeOfRise, bowShapeOfRiseInStrip } from './curves/elastica.js';
export { type FairCurve, fairThrough, isFair } from './curves/fair.js';
export { type CurvatureLaw, type Fairness, fairnessOf } from './curves/fairness.js';
export { innerCorners, leftInCorner, tightestHollow } from './curves/hollow.js';
export { isJoined, type JoinedCurve, joined } from './curves/joined.js';
export { lineCurve } from './curves/line.js';
export { type OrdinateRange, ordinateRange } from './curves/ordinate-range.js';
export { type ParallelCurve, parallelCurve } from './curves/parallel.js';
export { type CurveFeature, surveyOf } from './curves/survey.js';
export * from './outline.js';
export { integral } from './quadrature.js';
export * from './tolerance.js';
export * from './vector.js';
