import { expect, test } from 'vitest';
import { edgesInWords } from '../../src/documents/edge-words.js';
import { printStyle } from '../../src/documents/print-style.js';
import { edge } from './casework-builder.js';
import { bookcase } from './sample-casework.js';

const inches = printStyle(bookcase, { units: 'in' });
const millimetres = printStyle(bookcase, { units: 'mm' });
const band = { does: 'band', amount: '1/8in', width: '1.44in', of: 'Walnut' } as const;
const round = { does: 'round', amount: '1/8in' } as const;

test('edges stand in the order of work, each treatment in the order of its steps', () => {
    const edges = [edge('front', band, round), edge('back', { does: 'rabbet', amount: '1/2in', for: 'Bookcase.back' })];
    expect(edgesInWords(edges, bookcase, inches)).toBe('front: band 1/8in of Walnut, round 1/8in; back: rabbet 1/2in deep for back');
});

test('neighbours with the same treatment are named together, and only neighbours: the order is that of the work', () => {
    expect(edgesInWords([edge('top', band), edge('front', band)], bookcase, inches)).toBe('top, front: band 1/8in of Walnut');
    expect(edgesInWords([edge('top', band), edge('left', round), edge('front', band)], bookcase, inches)).toBe(
        'top: band 1/8in of Walnut; left: round 1/8in; front: band 1/8in of Walnut',
    );
});

test('what follows on the same edge is said with it', () => {
    expect(edgesInWords([edge('front', band), edge('front', round)], bookcase, inches)).toBe('front: band 1/8in of Walnut, round 1/8in');
});

test('every size has the word for what it measures', () => {
    const nosing = edge('front', { does: 'nosing', amount: '3/4in', width: '1in', proud: '1/64in', of: 'Walnut' });
    expect(edgesInWords([nosing], bookcase, inches)).toBe('front: nosing 3/4in of Walnut 1in high 1/64in proud');
    const groove = edge('back', { does: 'groove', amount: '1/4in', width: '0.205in', for: 'Bookcase.back' });
    expect(edgesInWords([groove], bookcase, inches)).toBe('back: groove 1/4in deep 7/32in shy wide for back');
    expect(edgesInWords([edge('front', { does: 'bevel', amount: '15deg' })], bookcase, inches)).toBe('front: bevel 15°');
});

test('in millimetres to a tenth', () => {
    expect(edgesInWords([edge('front', band, { does: 'chamfer', amount: '2mm' })], bookcase, millimetres)).toBe(
        'front: band 3.2mm of Walnut, chamfer 2mm',
    );
});
