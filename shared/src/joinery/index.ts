export { datums, lengthOf, spanOf } from './axes.js';
export { boundsOf } from './bounds.js';
export { centreOf } from './centres.js';
export * from './feature.js';
export { type FrontLines, frontLinesOf, frontWithin } from './front-limit.js';
export { joineryOf } from './joinery.js';
export { countBySpacing } from './layout.js';
export { binned, type FencePlace, type PartCuts, type SetUp, setUpsOf, type Tooling } from './set-ups.js';
