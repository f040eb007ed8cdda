import { execFileSync } from 'node:child_process';
import { mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { readFile } from 'node:fs/promises';
import { createRequire } from 'node:module';
import { tmpdir } from 'node:os';
import * as path from 'node:path';
import { afterAll, describe, expect, test, vi } from 'vitest';
import type { Drawing } from '../../src/drawing/index.js';
import { point, polylineRuns } from '../../src/geometry/index.js';
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

describe('a PDF with letters that no reader has of itself', () => {
    const said = ['Łukasz Żółć, Ștefan Țîțeica', 'Ο πίνακας του Γιώργου', 'Полка для Ксении, ґанок', '1⁄8, ⅛, 3″ 4′, Ø 5 ± 0.1 − 2 × 3'];
    const drawing: Drawing = {
        title: 'Полка',
        lines: [{ role: 'core', runs: polylineRuns([point(0, 0), point(150, 100)]), closed: false }],
        texts: said.map((text, index) => ({ text, at: { x: 5, y: 80 - 15 * index }, height: 4, anchor: 'start', turned: false })),
    };
    const noto = createRequire(import.meta.url).resolve('@expo-google-fonts/noto-sans/400Regular/NotoSans_400Regular.ttf');
    const typeface = vi.fn(() => readFile(noto));

    test.each([
        ['at full size', (read: typeof typeface) => writePdf([drawing], 'a4', 'mm', read)],
        ['on a page', (read: typeof typeface) => writePages([drawing], 'a4', read)],
    ])('%s: poppler finds them as they are written, in a typeface of which only these letters are in the file', async (_, write) => {
        const file = path.join(folder, 'b.pdf');
        const bytes = await write(typeface);
        expect(await write(typeface)).toEqual(bytes);
        writeFileSync(file, bytes);
        const text = execFileSync('pdftotext', ['-layout', file, '-']).toString('utf8');
        for (const line of [...said, drawing.title]) expect(text).toContain(line);
        expect(text).not.toContain('some letters stand without');
        expect(execFileSync('pdffonts', [file]).toString('utf8')).toMatch(/NotoSans\S* +CID TrueType +Identity-H +yes/);
        expect(bytes.length).toBeLessThan(100_000);
    });

    test('is not read where the letters of every reader do', async () => {
        typeface.mockClear();
        await writePages([{ ...drawing, title: 'Büffet', texts: [] }], 'a4', typeface);
        expect(typeface).not.toHaveBeenCalled();
    });
});
