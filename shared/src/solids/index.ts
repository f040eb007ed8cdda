/** Parts as closed solids: what they hold, what they weigh, where they do not fit. Loads nothing itself: the kernel is handed in. */
export { type CaseworkSolids, type SolidOptions, solidsOf } from './casework-solids.js';
export type { SolidKernel } from './kernel.js';
export type { Collision, OpenJoint } from './meetings.js';
export type { PartSolid, SolidBody, TriangleMesh } from './part-solid.js';
export { contentOf, type SolidContent } from './solid-content.js';
export type { SolidWeight } from './weights.js';
