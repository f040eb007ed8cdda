/** Every document that can be asked for: what it is called, in which formats it comes, and how it is made. */
import type { Casework } from '../casework/index.js';
import { cutList } from './cut-list.js';
import type { DocumentOptions } from './document-options.js';
import { materialList } from './material-list.js';
import { modelDocument } from './model-document.js';
import type { ShopDocument } from './shop-document.js';

/** The formats a document may come in, by the end of their file names. */
export type FormatName = 'csv' | 'md' | 'json';

export interface DocumentKind {
    /** What `build --only` calls it. */
    readonly kind: 'cut-list' | 'materials' | 'model';
    readonly title: string;
    /** One sentence: what it is for. */
    readonly description: string;
    /** In the order in which they are written; the first is the one to look at. */
    readonly formats: readonly FormatName[];
    /** Without the end that says the format. */
    readonly fileName: string;
    make(casework: Casework, options: DocumentOptions): ShopDocument;
}

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
        kind: 'model',
        title: 'Model',
        description: 'The whole evaluated design for programs, with a published schema.',
        formats: ['json'],
        fileName: 'model',
        make: (casework, options) => ({ is: 'data', data: modelDocument(casework, options) }),
    },
];
