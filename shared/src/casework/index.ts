export { type ConstructOptions, construct } from './construct/construct.js';
export * from './design/design.js';
export { type LookUp, lookUp, type NamedSize, sizesAt } from './explain/look-up.js';
export { sayBoth, sayQuantity, sayTolerance, type WhyOptions, whyText } from './explain/why.js';
export * from './model/casework.js';
export * from './model/edge-words.js';
export * from './model/measure.js';
export { closestWords } from './vocabulary/closest-words.js';
export * as vocabulary from './vocabulary/index.js';
