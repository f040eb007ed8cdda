import { expect, test } from 'vitest';
import { namesInWords, partNamer } from '../../src/documents/part-names.js';
import { bookcase } from './sample-casework.js';

test.each([
    [['Left', 'Right'], 'Left, Right'],
    [['Tier[1]', 'Tier[2]', 'Tier[3]'], 'Tier[1..3]'],
    [['Tier[1]', 'Tier[3]', 'Tier[4]', 'Floor'], 'Tier[1], Tier[3..4], Floor'],
    [['Tier[10]', 'Tier[9]'], 'Tier[9..10]'],
    [['Low', 'Low'], 'Low'],
    [['Unit[1].High[1]', 'Unit[1].High[2]', 'Unit[2].High[1]', 'Unit[2].High[2]'], 'Unit[1..2].High[1..2]'],
    [['Unit[1].High[1]', 'Unit[1].High[2]', 'Unit[2].High[1]'], 'Unit[1].High[1..2], Unit[2].High[1]'],
    [['Unit[1].Fixed', 'Unit[2].Fixed', 'Unit[3].Fixed'], 'Unit[1..3].Fixed'],
    [['A[1].x', 'B[2].x'], 'A[1].x, B[2].x'],
    [[], ''],
] as const)('%j are called %s', (names, expected) => {
    expect(namesInWords(names)).toBe(expected);
});

test('the name of the case is left out where only one case is built, and kept where there are more', () => {
    expect(partNamer(bookcase)('Bookcase.Tier[1]')).toBe('Tier[1]');
    const [only] = bookcase.assemblies;
    const two = { ...bookcase, assemblies: [only!, { ...only!, path: 'Bench', name: 'Bench' }] };
    expect(partNamer(two)('Bookcase.Tier[1]')).toBe('Bookcase.Tier[1]');
    const inside = { ...bookcase, assemblies: [only!, { ...only!, path: 'Bookcase.Unit[1]', inside: 'Bookcase' }] };
    expect(partNamer(inside)('Bookcase.Unit[1].Low')).toBe('Unit[1].Low');
});
