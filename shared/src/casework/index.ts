export * from './design/design.js';
export * from './model/casework.js';
export * from './model/measure.js';
export * as vocabulary from './vocabulary/index.js';
