import { readFileSync } from 'node:fs';
import * as path from 'node:path';
import { describe, expect, it, test } from 'vitest';
import { folderCycles } from './folder-cycles.js';
import { importFrom, ROOT, readImports } from './imports.js';
import { boundaryRules } from './rules.js';

const imports = readImports(['shared/src', 'language/src', 'cli/src', 'extension/src']);

describe.each(boundaryRules)('$title', ({ advice, forbids, caught, allowed }) => {
    it('is kept', () => {
        const broken = imports.filter((found) => forbids(found)).map(({ from, line, specifier }) => `${from}:${line} imports ${specifier}`);
        expect(broken, advice).toEqual([]);
    });

    it.each(caught)('would catch %s importing %s', (from, specifier) => {
        expect(forbids(importFrom(from, specifier))).toBe(true);
    });

    it.each(allowed)('lets %s import %s', (from, specifier) => {
        expect(forbids(importFrom(from, specifier))).toBe(false);
    });
});

describe('a folder and what stands beside it do not import one another in a circle', () => {
    const advice = 'move what both need into a third place that imports neither, or into the one that the other may use';

    it('is kept', () => {
        expect(folderCycles(imports), advice).toEqual([]);
    });

    it('would catch a circle, once and with each of its steps', () => {
        const circle = [
            importFrom('shared/src/casework/model/part.ts', '../size/rough.js', 3),
            importFrom('shared/src/casework/size/rough.ts', '../edge/band.js', 4),
            importFrom('shared/src/casework/edge/band.ts', '../model/part.js', 5),
            importFrom('shared/src/casework/index.ts', './model/part.js', 1),
        ];
        expect(folderCycles(circle)).toEqual([
            'shared/src/casework/edge/band.ts:5 imports ../model/part.js, ' +
                'then shared/src/casework/model/part.ts:3 imports ../size/rough.js, ' +
                'then shared/src/casework/size/rough.ts:4 imports ../edge/band.js',
        ]);
    });

    it('would catch a folder that imports a file which imports the folder', () => {
        const circle = [
            importFrom('language/src/services.ts', './analysis/analyses.js', 7),
            importFrom('language/src/analysis/workspace.ts', '../services.js', 8),
        ];
        expect(folderCycles(circle)).toEqual([
            'language/src/analysis/workspace.ts:8 imports ../services.js, then language/src/services.ts:7 imports ./analysis/analyses.js',
        ]);
    });

    it('lets a folder use files that stand beside it, and files of one folder know one another', () => {
        const allowed = [
            importFrom('cli/src/main.ts', './commands/check.js'),
            importFrom('cli/src/commands/check.ts', '../paths.js'),
            importFrom('cli/src/commands/check.ts', './build.js'),
            importFrom('cli/src/commands/build.ts', './check.js'),
        ];
        expect(folderCycles(allowed)).toEqual([]);
    });
});

test.each(['shared/tsconfig.json', 'language/tsconfig.json'])('%s lets the compiler refuse the DOM and Node', (file) => {
    const advice =
        'shared/ and language/ run in any JavaScript host: keep `lib` and `types` as they are and pass in what the host provides';
    const inherited = JSON.parse(readFileSync(path.join(ROOT, 'tsconfig.json'), 'utf8')).compilerOptions;
    const own = JSON.parse(readFileSync(path.join(ROOT, file), 'utf8')).compilerOptions;
    const { lib, types } = { ...inherited, ...own };
    expect({ lib, types }, advice).toEqual({ lib: ['ES2023'], types: [] });
});
