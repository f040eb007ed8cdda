import * as path from 'node:path';
import { describe, expect, it } from 'vitest';
import { pathFrom, shownPath, shownUri, uriOf } from '../src/paths.js';

const { posix, win32 } = path;

describe('a path is shown', () => {
    it.each([
        ['as seen from the folder', posix, '/shop', '/shop/hall/bookcase.case', 'hall/bookcase.case'],
        ['as seen from the folder', win32, 'C:\\shop', 'C:\\shop\\hall\\bookcase.case', 'hall/bookcase.case'],
        ['in full if it is not in the folder', posix, '/shop/hall', '/racks/shop.case', '/racks/shop.case'],
        ['in full if it is not in the folder', win32, 'C:\\shop', 'C:\\racks\\shop.case', 'C:/racks/shop.case'],
        ['in full if it is on another drive', win32, 'C:\\shop', 'D:\\shop\\a.case', 'D:/shop/a.case'],
        ['also if its name begins with dots', posix, '/shop', '/shop/..old/a.case', '..old/a.case'],
        ['also if it is the folder itself', posix, '/shop', '/shop', '.'],
        ['with a backslash that is part of a name', posix, '/shop', '/shop/a\\b.case', 'a\\b.case'],
    ])('%s', (_, style, folder, file, shown) => {
        expect(shownPath(folder, file, style)).toBe(shown);
    });

    it('by the URI of a module of the library', () => {
        expect(shownUri('/shop', 'casewright:/library/panels.case')).toBe('casewright:/library/panels.case');
    });

    it('by the name of a file whatever is in the name', () => {
        const name = 'a b#c%20?ü.case';
        expect(shownUri(process.cwd(), uriOf(process.cwd(), name))).toBe(name);
    });
});

it.each([
    [posix, '/shop/out/hall', '/shop/hall.case', '../../hall.case'],
    [win32, 'C:\\shop\\out\\hall', 'C:\\shop\\hall.case', '../../hall.case'],
])('a design as seen from its documents is the same everywhere', (style, folder, file, found) => {
    expect(pathFrom(folder, file, style)).toBe(found);
});
