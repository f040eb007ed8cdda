/** Layouts of what is cut from stock. Knows rectangles, kerf and grain: no cases. */
export { type LayOutOptions, layOutSheets } from './lay-out-sheets.js';
export { type LayOutLengthsOptions, layOutLengths } from './lengths/lay-out-lengths.js';
export type { CutBoard, LengthJob, LengthLayout, LengthPiece, LengthStock } from './lengths/length-job.js';
export { layOutStrips } from './lengths/strip-boards.js';
export type {
    Blank,
    BlankPiece,
    CutPiece,
    LaidOutSheet,
    OffcutPiece,
    Piece,
    Region,
    SheetJob,
    SheetLayout,
    StockSize,
} from './sheet-job.js';
