export * from './feature.js';
export { joineryOf } from './joinery.js';
export { countBySpacing } from './layout.js';
