import { execFileSync } from 'node:child_process';
import { mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import * as path from 'node:path';
import { afterAll, describe, expect, test } from 'vitest';
import type { Drawing } from '../../src/drawing/index.js';
import { polylineRuns } from '../../src/geometry/index.js';
import { writePages, writePdf } from '../../src/writers/pdf.js';
import { lettersOf, noteOnLetters } from '../../src/writers/pdf-letters.js';

/** What Windows code page 1252 has of Latin letters (ISO 32000-1, Annex D, from memory). */
const western = [
    ...Array.from({ length: 95 }, (_, index) => 32 + index),
    ...Array.from({ length: 96 }, (_, index) => 160 + index),
    0x160,
    0x161,
    0x17d,
    0x17e,
    0x152,
    0x153,
    0x178,
];
const letters = lettersOf(western);

describe('letters of a PDF', () => {
    test.each([
        ['Žofie Müller', 'Žofie Müller'],
        ['Łukasz Żółć', 'Lukasz Zólc'],
        ['Đorđe, Işık, Ħal', 'Dorde, Isik, Hal'],
        ['Ștefan Țîțeica', 'Stefan Tîteica'],
        ['Ο πίνακας', '? ???????'],
        ['3/4″ − 1/8″', '3/4" - 1/8"'],
    ])('%s is printed as %s', (written, as) => {
        expect(letters.of(written)).toBe(as);
    });

    test('letters whose marks follow them are those with their marks', () => {
        expect(letters.of('Zo\u0301lc')).toBe('Zólc');
        expect(letters.of('z\u0307')).toBe('z');
    });

    test('says which words are changed, and nothing where none is', () => {
        expect(noteOnLetters(letters.changedIn(['Regał dla Ewy', 'Regał, 2']))).toContain(': Regal, Regal,. The SVG');
        expect(noteOnLetters(letters.changedIn(['Ο πίνακας']))).toContain('question marks');
        expect(noteOnLetters(letters.changedIn(['Büffet']))).toBeUndefined();
    });
});

const folder = mkdtempSync(path.join(tmpdir(), 'casewright-letters-'));
afterAll(() => rmSync(folder, { recursive: true }));

describe('a PDF with a Polish name', () => {
    const drawing: Drawing = {
        title: 'Regał',
        lines: [
            {
                role: 'core',
                runs: polylineRuns([
                    { x: 0, y: 0 },
                    { x: 100, y: 100 },
                ]),
                closed: false,
            },
        ],
        texts: [{ text: 'Łukasz Żółć', at: { x: 10, y: 50 }, height: 5, anchor: 'start', turned: false }],
    };

    test.each([
        ['at full size', () => writePdf([drawing], 'a4', 'mm')],
        ['on a page', () => writePages([drawing], 'a4')],
    ])('%s: poppler reads it without its marks, and the note that says so', async (_, write) => {
        const file = path.join(folder, 'a.pdf');
        writeFileSync(file, await write());
        const text = execFileSync('pdftotext', ['-layout', file, '-']).toString('utf8');
        expect(text).toContain('Lukasz Zólc');
        expect(text).toContain('some letters stand without their marks: Regal, Lukasz, Zólc.');
    });
});
