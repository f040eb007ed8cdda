export type { Analysis } from './analysis/analysis.js';
export { type Explanation, explainSag, explainSize, type SagExplanation } from './analysis/explanation.js';
export type { PlaceInText } from './analysis/place.js';
export {
    chooseDocuments,
    type DocumentStyle,
    type MadeDocument,
    makeDocuments,
    NotMade,
    type WantedDocument,
} from './analysis/shop-documents.js';
export type { ReadFile } from './analysis/texts.js';
export { type CasewrightServices, createCasewrightServices } from './casewright-module.js';
export { createTextFormatter } from './formatting/text-formatter.js';
export { openWorkspace, type PlacedFinding, type Workspace, type WorkspaceOptions } from './open-workspace.js';
