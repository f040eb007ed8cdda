/** Layouts of sheets: cut again by an independent check, and held against published instances. */
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { layOutSheets, type SheetJob } from '../../src/stock/index.js';
import { publishedInstances } from './published-instances.js';
import { faultsOf } from './replay.js';

const someJob: fc.Arbitrary<SheetJob> = fc
    .record({
        kerf: fc.integer({ min: 0, max: 4 }),
        blanks: fc.array(
            fc.record({
                width: fc.integer({ min: 1, max: 130 }),
                height: fc.integer({ min: 1, max: 130 }),
                count: fc.integer({ min: 1, max: 6 }),
                mayTurn: fc.boolean(),
            }),
            { minLength: 1, maxLength: 12 },
        ),
        stock: fc.array(
            fc.record({
                width: fc.integer({ min: 40, max: 120 }),
                height: fc.integer({ min: 40, max: 120 }),
                cost: fc.integer({ min: 0, max: 50 }),
                count: fc.option(fc.integer({ min: 0, max: 3 }), { nil: undefined }),
            }),
            { minLength: 1, maxLength: 3 },
        ),
        stages: fc.option(fc.integer({ min: 2, max: 4 }), { nil: undefined }),
    })
    .map(({ kerf, blanks, stock, stages }) => ({
        kerf,
        blanks: blanks.map((blank, index) => ({ id: `blank ${index}`, ...blank })),
        stock: stock.map(({ count, ...size }, index) => ({ id: `stock ${index}`, ...size, ...(count === undefined ? {} : { count }) })),
        ...(stages === undefined ? {} : { stages }),
    }));

describe('layouts of sheets', () => {
    test('can be cut from edge to edge, with the kerf kept, the grain kept and every blank once', () => {
        fc.assert(
            fc.property(someJob, (job) => {
                expect(faultsOf(job, layOutSheets(job, { steps: 300 }))).toEqual([]);
            }),
            { numRuns: 300, seed: 4711 },
        );
    });

    test('leave over only what fits no sheet while there is stock without end', () => {
        fc.assert(
            fc.property(someJob, ({ stock, ...job }) => {
                const endless = { ...job, stock: stock.map(({ count: _, ...size }) => size) };
                const { unplaced } = layOutSheets(endless, { steps: 64 });
                const fits = ({ width, height, mayTurn }: { width: number; height: number; mayTurn: boolean }) =>
                    stock.some(
                        (size) =>
                            (width <= size.width && height <= size.height) || (mayTurn && height <= size.width && width <= size.height),
                    );
                expect(unplaced).toEqual(job.blanks.map((blank) => (fits(blank) ? 0 : blank.count)));
            }),
            { numRuns: 200, seed: 4711 },
        );
    });

    test('are the same for the same number of steps, and cost no more after more steps', () => {
        for (const { job } of publishedInstances('bwmv').slice(100, 104)) {
            const few = layOutSheets(job, { steps: 640 });
            expect(layOutSheets(job, { steps: 640 })).toEqual(few);
            expect(layOutSheets(job, { steps: 6400 }).cost).toBeLessThanOrEqual(few.cost);
        }
    });

    test('stop when they are told to, with a whole layout in hand', () => {
        const { job } = publishedInstances('shop2d')[0]!;
        let asked = 0;
        const layout = layOutSheets(job, { steps: 1e9, goesOn: () => asked++ < 2 });
        expect(faultsOf(job, layout)).toEqual([]);
        expect(layout.unplaced.every((count) => count === 0)).toBe(true);
    });

    // Best known and proven values: fontanf/packingsolver (MIT), data/rectangle; the papers are named beside the instances.
    test('of every fifth published instance of Berkey and Wang, Martello and Vigo: at most 3 % over the best known in all, never below a bound', () => {
        let [sheets, best] = [0, 0];
        for (const { name, job, best: known } of publishedInstances('bwmv').filter((_, index) => index % 5 === 0)) {
            const layout = layOutSheets(job, { steps: 2000 });
            expect({ name, faults: faultsOf(job, layout) }).toEqual({ name, faults: [] });
            expect({ name, isBound: layout.leastCost <= known! }).toEqual({ name, isBound: true });
            sheets += layout.cost;
            best += known!;
        }
        expect(sheets / best).toBeLessThan(1.03);
    });

    test('of jobs of a shop, with kerf, grain and offcuts on hand', () => {
        for (const { name, job } of publishedInstances('shop2d')) {
            expect({ name, faults: faultsOf(job, layOutSheets(job, { steps: 320 })) }).toEqual({ name, faults: [] });
        }
    });
});

describe('the least cost', () => {
    test('is never above the best known number of sheets, with and without turning', () => {
        for (const mayTurn of [true, false]) {
            const instances = [...publishedInstances('bwmv', mayTurn), ...publishedInstances('cutstock2d', mayTurn)];
            for (const { name, job, best } of instances.filter((_, index) => index % 6 === 0)) {
                if (best === undefined) continue;
                const { leastCost } = layOutSheets(job, { steps: 0 });
                expect({ name, mayTurn, isBound: leastCost <= best }).toEqual({ name, mayTurn, isBound: true });
            }
        }
    });

    test('sees that four pieces over half as wide and as high need four sheets', () => {
        const job = {
            kerf: 0,
            blanks: [{ id: 'a', width: 6, height: 6, count: 4, mayTurn: true }],
            stock: [{ id: 's', width: 10, height: 10, cost: 7 }],
        };
        expect(layOutSheets(job, { steps: 0 })).toMatchObject({ cost: 28, leastCost: 28 });
    });

    test('of sheets of several sizes is that of whole sheets whose area is enough', () => {
        const job = {
            kerf: 0,
            blanks: [{ id: 'a', width: 4, height: 5, count: 8, mayTurn: false }],
            stock: [
                { id: 'large', width: 10, height: 10, cost: 50 },
                { id: 'small', width: 8, height: 5, cost: 25 },
            ],
        };
        // 160 of area: one large and two small ones, 100; two large ones cost 100 too, one and a half of a large 80
        expect(layOutSheets(job, { steps: 200 })).toMatchObject({ cost: 100, leastCost: 100 });
    });
});
