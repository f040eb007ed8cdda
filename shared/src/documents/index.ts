/** Documents that a shop uses, before any file format. Knows casework and its findings; no formats, no disk. */

export { massOfPart } from '../strength/index.js';
export { boardLayouts } from './boards/board-layouts.js';
export { type DocumentKind, documentKinds, type FormatName } from './document-kinds.js';
export type { DocumentOptions, Locate, SourcePlace } from './document-options.js';
export { edgesInWords } from './edge-words.js';
export { type FindingRecord, findingRecord } from './finding-record.js';
export type { JsonObject, JsonValue } from './json-value.js';
export { namesInWords } from './part-names.js';
export { printStyle } from './print-style.js';
export type { Scene, SceneGroup, SceneMaterial, SceneSurface, SceneThing } from './scene.js';
export {
    type Amount,
    type Cell,
    type Column,
    type Fact,
    type Group,
    isEmptyColumn,
    type Row,
    type Sheet,
    sizeDirections,
} from './sheet.js';
export { sheetLayouts } from './sheets/sheet-layouts.js';
export type { ShopDocument } from './shop-document.js';
export { type SagInWords, whySag } from './strength/why-sag.js';
