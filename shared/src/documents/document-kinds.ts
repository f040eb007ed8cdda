/** Every document that can be asked for: what it is called, in which formats it comes, and how it is made. */
import type { Casework } from '../casework/index.js';
import { boardLayouts } from './boards/board-layouts.js';
import { caulSheet } from './cauls/caul-sheet.js';
import { curveSheet } from './curves/curve-sheet.js';
import { fairnessPages } from './curves/fairness-pages.js';
import { cutList } from './cut-list.js';
import type { DocumentOptions } from './document-options.js';
import { joinerySheet } from './joinery/joinery-sheet.js';
import { materialList } from './material-list.js';
import { modelDocument } from './model-document.js';
import { modelScene } from './model-scene.js';
import { offsetTable } from './offset-table.js';
import { onlyBuilt } from './only-built.js';
import { purchaseList } from './purchase/purchase-list.js';
import { costingSheet } from './quote/costing-sheet.js';
import { quoteSheet } from './quote/quote-sheet.js';
import { sheetLayouts } from './sheets/sheet-layouts.js';
import type { ShopDocument } from './shop-document.js';
import { strengthSheet } from './strength/strength-sheet.js';
import { templates } from './templates.js';

/** The formats a document may come in, by the end of their file names. */
export type FormatName = 'csv' | 'md' | 'json' | 'dxf' | 'svg' | 'pdf' | 'glb';

export interface DocumentKind {
    /** What `build --only` calls it. */
    readonly kind:
        | 'cut-list'
        | 'materials'
        | 'sheets'
        | 'joinery'
        | 'curves'
        | 'fairness'
        | 'offsets'
        | 'templates'
        | 'cauls'
        | 'strength'
        | 'boards'
        | 'purchase'
        | 'costing'
        | 'quote'
        | 'model';
    readonly title: string;
    /** One sentence: what it is for. */
    readonly description: string;
    /** In the order in which they are written; the first is the one to look at. */
    readonly formats: readonly FormatName[];
    /** Without the end that says the format. */
    readonly fileName: string;
    /** Why a design may have none of it, as the end of a sentence; undefined for what every design has. */
    readonly missing?: string;
    /** Made of the parts as solids, which are in the options where it can have them. */
    readonly wantsSolids?: true;
    /** Undefined where the design has nothing of it. */
    make(casework: Casework, options: DocumentOptions): ShopDocument | undefined;
}

const nothingCurved = 'no flat part of it follows a curve';
const withoutPrices = 'neither its shop nor its project says a `labor`, an `overhead`, a `margin` or a `tax`';
const withoutCurve = 'nothing of it follows a curve';

/** The documents in the order in which they are written. */
export const documentKinds: readonly DocumentKind[] = [
    {
        kind: 'cut-list',
        title: 'Cut list',
        description: 'What to cut from which material, with finished, core and rough sizes.',
        formats: ['md', 'csv', 'json'],
        fileName: 'cut-list',
        make: (casework, options) => ({ is: 'sheet', sheet: cutList(casework, options) }),
    },
    {
        kind: 'materials',
        title: 'List of materials',
        description: 'What to have in stock: sheets by area, solid wood by length and volume, fasteners by count.',
        formats: ['md', 'csv', 'json'],
        fileName: 'materials',
        make: (casework, options) => ({ is: 'sheet', sheet: materialList(casework, options) }),
    },
    {
        kind: 'sheets',
        title: 'Sheet layouts',
        description: 'How many sheets to take, what is cut from each, and in which order at the saw, with the fence for every cut.',
        formats: ['pdf', 'md', 'csv', 'json', 'svg'],
        fileName: 'sheets',
        missing: 'nothing of it is cut from a material that states its `sheet`',
        make: sheetLayouts,
    },
    {
        kind: 'joinery',
        title: 'Marking out',
        description:
            'Where every part meets the others: the lines of each slot and joint from one edge, where fasteners stand, and the cuts by machine set-up.',
        formats: ['md', 'csv', 'json'],
        fileName: 'joinery',
        missing: 'nothing of it is joined',
        make: (casework, options) => {
            const sheet = joinerySheet(casework, options);
            return sheet && { is: 'sheet', sheet };
        },
    },
    {
        kind: 'curves',
        title: 'Curves',
        description: 'How to draw each curve, by string, trammel or batten, whether the strip stands it, and how fair it is.',
        formats: ['md', 'csv', 'json'],
        fileName: 'curves',
        missing: withoutCurve,
        make: (casework, options) => {
            const sheet = curveSheet(casework, options);
            return sheet && { is: 'sheet', sheet };
        },
    },
    {
        kind: 'fairness',
        title: 'Fairness',
        description: 'Each curve with its curvature comb, in which bumps and flat spots show, a page for each.',
        formats: ['pdf', 'svg'],
        fileName: 'fairness',
        missing: withoutCurve,
        make: fairnessPages,
    },
    {
        kind: 'offsets',
        title: 'Offsets',
        description: 'How deep each curved part is at even steps from both ends, finished and without its bands.',
        formats: ['md', 'csv', 'json'],
        fileName: 'offsets',
        missing: nothingCurved,
        make: (casework, options) => {
            const sheet = offsetTable(casework, options);
            return sheet && { is: 'sheet', sheet };
        },
    },
    {
        kind: 'templates',
        title: 'Templates',
        description: 'The curved parts at full size: the line to cut, the finished line, where others meet them, and forms to bend round.',
        formats: ['pdf', 'svg', 'dxf'],
        fileName: 'templates',
        missing: withoutCurve,
        make: templates,
    },
    {
        kind: 'cauls',
        title: 'Cauls',
        description: 'The crown to plane into cauls so that they press a panel evenly, and what pressure they give the glue.',
        formats: ['md', 'csv', 'json'],
        fileName: 'cauls',
        missing: 'its shop says no `caul`, or nothing in it is glued up of layers',
        make: (casework, options) => {
            const sheet = caulSheet(casework, options);
            return sheet && { is: 'sheet', sheet };
        },
    },
    {
        kind: 'strength',
        title: 'Strength',
        description:
            'How far each shelf sags and how near it is to breaking, what tips each case, how solid wood moves, and what is carried, to be followed with a pencil.',
        formats: ['md', 'csv', 'json'],
        fileName: 'strength',
        missing: 'nothing in it is said to `hold` or `load` anything, and no density says what it weighs',
        make: (casework, options) => {
            const sheet = strengthSheet(casework, options);
            return sheet && { is: 'sheet', sheet };
        },
    },
    {
        kind: 'boards',
        title: 'Boards',
        description:
            'What hardwood to take, in board feet, and which strips, bands and boards are ripped, resawn and crosscut from each board.',
        formats: ['md', 'csv', 'json', 'svg'],
        fileName: 'boards',
        missing: 'nothing of it is cut from solid wood that states its `rough` thickness and its `boards`',
        make: boardLayouts,
    },
    {
        kind: 'purchase',
        title: 'Purchase list',
        description:
            'What to order of sheets and boards by their layouts, of fasteners and glue, and what it costs where there are prices.',
        formats: ['md', 'csv', 'json'],
        fileName: 'purchase',
        missing: 'nothing of it is bought by sheets, boards or number',
        make: (casework, options) => {
            const sheet = purchaseList(casework, options);
            return sheet && { is: 'sheet', sheet };
        },
    },
    {
        kind: 'costing',
        title: 'Costing',
        description:
            'What the project costs, line by line, with hours, overhead and margin, and how its price is made: for the shop alone.',
        formats: ['md', 'csv', 'json'],
        fileName: 'costing',
        missing: withoutPrices,
        make: (casework, options) => {
            const sheet = costingSheet(casework, options);
            return sheet && { is: 'sheet', sheet };
        },
    },
    {
        kind: 'quote',
        title: 'Quote',
        description: 'What is made and what it costs, for the client: without the hours, costs and shares of the shop.',
        formats: ['md', 'csv', 'json'],
        fileName: 'quote',
        missing: withoutPrices,
        make: (casework, options) => {
            const sheet = quoteSheet(casework, options);
            return sheet && { is: 'sheet', sheet };
        },
    },
    {
        kind: 'model',
        title: 'Model',
        description: 'The whole evaluated design for programs, with a published schema, and as a scene to look at from all sides.',
        formats: ['json', 'glb'],
        fileName: 'model',
        wantsSolids: true,
        make: (casework, options) => ({
            is: 'data',
            data: modelDocument(casework, options),
            ...(options.solids ? { scene: modelScene(onlyBuilt(casework), options.solids) } : {}),
        }),
    },
];
