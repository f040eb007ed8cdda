/** What work and materials come to: coatings by area, times of operations, and the build-up of a price. Knows no cases and no documents. */
export { coverage, dryFilm, liquidFor, wetFilm } from './coverage.js';
export { defaultTimeWords, hoursFor, type Operation, type OperationName, operations } from './operations.js';
export { type PriceBuildUp, priceBuildUp, type Shares } from './price-build-up.js';
export { isShare, limitOfShare } from './shares.js';
