/**
 * A sheet: a table that a shop uses, with its heading, its groups and its notes, before any file format.
 *
 * Knows quantities, no casework and no format. Every amount keeps its exact value beside its printed text, so that a writer can give
 * the one to a program and the other to a person.
 */
import type { PrintedMeasure, Quantity, Unit } from '../quantity/index.js';
import type { JsonObject } from './json-value.js';

export interface Sheet {
    /** `cut-list`: what the document is called where a program reads it. */
    readonly kind: string;
    readonly title: string;
    /** What stands above the table: client, revision, units. */
    readonly facts: readonly Fact[];
    readonly columns: readonly Column[];
    readonly groups: readonly Group[];
    /** What holds for the whole sheet, each a sentence. */
    readonly notes: readonly string[];
    /** Figures that stand only where a program reads it: every cut of the joinery, by the schema of sheets. */
    readonly features?: readonly JsonObject[];
}

export interface Fact {
    readonly label: string;
    readonly text: string;
}

export interface Column {
    /** `roughSize`: the name of its cells where a program reads them. */
    readonly key: string;
    readonly heading: string;
    /** The unit of its amounts and sizes, whose printed texts leave it out. */
    readonly unit?: Unit;
    readonly align: 'left' | 'right';
    /** Whether the heading of each group already says what stands in it. */
    readonly saidByGroup?: boolean;
}

export interface Group {
    readonly heading: string;
    readonly rows: readonly Row[];
    /** What holds for this group only, each a sentence. */
    readonly notes: readonly string[];
}

/** Cells by the key of their column; a column that is missing is empty. */
export type Row = Readonly<Record<string, Cell>>;

export type Cell =
    | { readonly is: 'text'; readonly text: string }
    | { readonly is: 'count'; readonly count: number }
    /** A plain number whose unit stands in another cell of its row, with its printed text. */
    | { readonly is: 'number'; readonly number: number; readonly text: string }
    | { readonly is: 'amount'; readonly amount: Amount }
    | {
          readonly is: 'size';
          readonly length: Amount | undefined;
          readonly width: Amount | undefined;
          readonly thickness: Amount | undefined;
      }
    /** There is a value, but it could not be computed. Not the same as an empty cell. */
    | { readonly is: 'unknown' };

/** An exact quantity, and its text in the unit of its column. */
export interface Amount {
    readonly quantity: Quantity;
    readonly printed: PrintedMeasure;
}

/** The three directions of a size, in the order in which a shop says them. */
export const sizeDirections = ['length', 'width', 'thickness'] as const;

/** Whether no row of a group has anything to say in a column. */
export function isEmptyColumn(column: Column, group: Group): boolean {
    return group.rows.every((row) => {
        const cell = row[column.key];
        return cell === undefined || (cell.is === 'text' && cell.text === '');
    });
}

/** A cell of words; empty ones leave it empty. */
export function textCell(text: string): Cell {
    return { is: 'text', text };
}
