import { expect, it } from 'vitest';
import { findingAsText, findingsAsText } from '../../src/findings/as-text.js';
import { paintFor, withoutColours } from '../../src/terminal.js';
import { allowed, missingUnit, thinBand } from './sample.js';

it('shows the place, the words in their line, what was found and needed, what mends it, and related places', () => {
    expect(findingsAsText([missingUnit, thinBand, allowed], 2, withoutColours)).toBe(
        [
            'hall/bookcase.case:9:11  error UNI-001  `40` has no unit: a length is needed here',
            '     9  width 40   height 36in   depth 11in',
            '              ~~',
            '        found   a plain number',
            '        needed  a length',
            '        hint    write `40in` or `40mm`',
            '',
            'hall/shop racks.case:3:1  warning EDG-002  the band is thinner than the edge is wide',
            '     3  edging Lipped { band 1/8in of Walnut }',
            '        ~~~~~~~',
            '        see     hall/bookcase.case:12:5  used here',
            '',
            '1 error, 1 warning in 2 files; 1 allowed',
            '',
        ].join('\n'),
    );
});

it('says so when nothing was found', () => {
    expect(findingsAsText([], 1, withoutColours)).toBe('nothing found in 1 file\n');
});

it('shows a few hundred findings and counts the rest', () => {
    const text = findingsAsText(Array(1000).fill(missingUnit), 1, withoutColours);
    expect(text.match(/UNI-001/g)).toHaveLength(200);
    expect(text).toMatch(/\n1000 errors in 1 file; 800 of them not shown: `--format json` shows all\n$/);
});

it('marks words that go on in the next line to the end of the first', () => {
    const range = { start: { line: 9, column: 16 }, end: { line: 11, column: 2 } };
    const [, line, marks] = findingAsText({ ...missingUnit, record: { ...missingUnit.record, range } }, withoutColours).split('\n');
    expect(line).toBe('     9  width 40   height 36in   depth 11in');
    expect(marks).toBe('                   ~~~~~~~~~~~~~~~~~~~~~~~~');
});

it('leaves no character to the terminal that would move its cursor or change its colours', () => {
    const told = findingAsText(
        {
            ...missingUnit,
            record: { ...missingUnit.record, message: 'there is \u001b[2J no `\u202e`', hint: 'a\u0007b' },
            line: 'a\u001b]0;x',
        },
        withoutColours,
    );
    expect(told).toContain('there is \ufffd[2J no `\ufffd`');
    // biome-ignore lint/suspicious/noControlCharactersInRegex: it is they that are looked for
    expect(told).not.toMatch(/[\u0000-\u0009\u000b-\u001f\u202e]/);
});

const screen = (hasColors: boolean, isTTY = true) => ({ isTTY, hasColors: () => hasColors });

it('paints on a screen with colours, and nowhere else', () => {
    const painted = findingAsText(missingUnit, paintFor(screen(true), {}));
    expect(painted).toContain('\u001b[');
    const plain = findingAsText(missingUnit, withoutColours);
    // biome-ignore lint/suspicious/noControlCharactersInRegex: sequences that set colours (ECMA-48, SGR)
    expect(painted.replace(/\u001b\[[\d;]*m/g, '')).toBe(plain);
    expect(findingAsText(missingUnit, paintFor(screen(false), {}))).toBe(plain);
    expect(findingAsText(missingUnit, paintFor(screen(true, false), {}))).toBe(plain);
});
