/** The published instances beside the benchmarks, as jobs. */
import { readFileSync } from 'node:fs';
import * as path from 'node:path';
import type { LengthJob, SheetJob } from '../../src/stock/index.js';

interface Row {
    readonly name: string;
    readonly kerf?: number;
    readonly stock: readonly { readonly w: number; readonly h: number; readonly cost?: number; readonly qty?: number }[];
    readonly items: readonly { readonly w: number; readonly h: number; readonly n: number; readonly rot?: boolean }[];
    readonly bounds?: Readonly<Record<string, { readonly best: number; readonly lower?: number }>>;
}

export interface PublishedInstance {
    readonly name: string;
    readonly job: SheetJob;
    /** The least number of sheets known, whatever the cuts and however the pieces lie that may turn. */
    readonly best: number | undefined;
}

/** Where the instances lie. */
const instances = path.resolve('tests/bench/instances');

/** @param mayTurn whether all pieces may turn; without it as the instance says, and where it says nothing none may */
export function publishedInstances(file: string, mayTurn?: boolean): readonly PublishedInstance[] {
    const text = readFileSync(path.join(instances, `${file}.jsonl`), 'utf8');
    return text
        .trim()
        .split('\n')
        .map((line) => asInstance(JSON.parse(line) as Row, mayTurn));
}

function asInstance({ name, kerf = 0, stock, items, bounds = {} }: Row, mayTurn: boolean | undefined): PublishedInstance {
    return {
        name,
        job: {
            kerf,
            stock: stock.map(({ w, h, cost = 1, qty }, index) => ({
                id: `stock ${index}`,
                width: w,
                height: h,
                cost,
                ...(qty === undefined ? {} : { count: qty }),
            })),
            blanks: items.map(({ w, h, n, rot = false }, index) => ({
                id: `blank ${index}`,
                width: w,
                height: h,
                count: n,
                mayTurn: mayTurn ?? rot,
            })),
        },
        best: bounds[mayTurn ? 'free_rotation' : 'free_oriented']?.best,
    };
}

interface LengthRow {
    readonly name: string;
    readonly stock: readonly { readonly l: number }[];
    readonly items: readonly { readonly l: number; readonly n: number }[];
    readonly bounds: { readonly standard: { readonly best: number } };
}

/** The published instances of lengths cut from bars, with the least number of bars, which is proved for each. */
export function publishedLengths(): readonly { readonly name: string; readonly job: LengthJob; readonly best: number }[] {
    const text = readFileSync(path.join(instances, 'binpack1d.jsonl'), 'utf8');
    return text
        .trim()
        .split('\n')
        .map((line) => JSON.parse(line) as LengthRow)
        .map(({ name, stock, items, bounds }) => ({
            name,
            job: {
                kerf: 0,
                stock: stock.map(({ l }, index) => ({ id: `stock ${index}`, length: l, cost: 1 })),
                pieces: items.map(({ l, n }, index) => ({ id: `piece ${index}`, length: l, count: n })),
            },
            best: bounds.standard.best,
        }));
}
