/** Layouts of what is cut from stock. Knows rectangles, kerf and grain: no cases. */
export { type LayOutOptions, layOutSheets } from './lay-out-sheets.js';
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
