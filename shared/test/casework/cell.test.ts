import { describe, expect, it } from 'vitest';
import { Cell } from '../../src/casework/construct/cell.js';
import { Construction } from '../../src/casework/construct/construction.js';
import { designOf, span } from './design-by-hand.js';

function construction(): Construction {
    return new Construction(designOf([]), false);
}

describe('a cell', () => {
    it('is computed when it is first asked for, and once', () => {
        let times = 0;
        const cell = new Cell(construction(), 'a', span(), () => ++times);
        expect(times).toBe(0);
        expect([cell.value, cell.value]).toEqual([1, 1]);
    });

    it('is computed again when parts have come in since', () => {
        const shared = construction();
        let times = 0;
        const cell = new Cell(shared, 'a', span(), () => ++times);
        expect(cell.value).toBe(1);
        shared.generation += 1;
        expect([cell.value, cell.value]).toEqual([2, 2]);
    });

    it('that leads back to itself is unknown, and reported once with the way round', () => {
        const shared = construction();
        const cells: Cell<number>[] = ['a', 'b', 'c'].map(
            (name, index) => new Cell(shared, name, span(), () => cells[(index + 1) % 3]?.value),
        );
        expect(cells.map((cell) => cell.value)).toEqual([undefined, undefined, undefined]);
        expect(shared.problems.map(({ code, message }) => [code, message])).toEqual([
            ['PLC-007', 'this size depends on itself: a needs b needs c needs a'],
        ]);
        expect(shared.problems[0]?.related.map(({ message }) => message)).toEqual(['b is needed here', 'c is needed here']);
    });

    it('says a thing once where several steps of the way are about it', () => {
        const shared = construction();
        const cells: Cell<number>[] = [];
        const asking = (index: number): Cell<number> => new Cell(shared, 'Shelf', span(), () => cells[index]?.value);
        cells.push(asking(1), asking(0));
        expect(cells[0]?.value).toBeUndefined();
        expect(shared.problems.map(({ message }) => message)).toEqual(['`Shelf` depends on itself']);
    });

    it('leaves what is beside the circle alone', () => {
        const shared = construction();
        const circle: Cell<number> = new Cell(shared, 'a', span(), () => circle.value);
        const sound = new Cell(shared, 'b', span(), () => (circle.value === undefined ? 1 : 2));
        expect(sound.value).toBe(1);
    });

    it('at the end of a chain of thousands is unknown, which is reported once', () => {
        const shared = construction();
        const chain: Cell<number>[] = Array.from(
            { length: 4000 },
            (_, index) => new Cell(shared, `a${index}`, span(), () => chain[index + 1]?.value ?? 0),
        );
        for (const cell of chain) expect(() => cell.value).not.toThrow();
        expect(shared.problems.map(({ message }) => message)).toEqual(['`a0` hangs on more than 500 other sizes, one behind the other']);
        expect(shared.running).toEqual([]);
    });

    it('that throws is not left running', () => {
        const shared = construction();
        const cell = new Cell(shared, 'a', span(), () => {
            throw new Error('broken');
        });
        expect(() => cell.value).toThrow('broken');
        expect(shared.running).toEqual([]);
    });
});
