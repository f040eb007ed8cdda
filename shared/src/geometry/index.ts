export * from './box.js';
export { type ArcCurve, arcCurve, arcCurveOfRadius, arcCurveThrough } from './curves/arc.js';
export { type BowCurve, type BowStrip, bowCurve } from './curves/bow.js';
export { type CircularSegment, circularSegment } from './curves/circular-segment.js';
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
export { type BowShape, bowShapeOfEndAngle, bowShapeOfRise } from './curves/elastica.js';
export { lineCurve } from './curves/line.js';
export * from './tolerance.js';
export * from './vector.js';
