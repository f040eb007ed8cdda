import { Rational } from 'casewright-shared/quantity';
import { describe, expect, test } from 'vitest';
import { openWorkspace, type PlacedFinding } from '../../src/index.js';
import { FilesInMemory } from '../files-in-memory.js';
import { design, shop } from '../lsp/sample.js';

/** The least case that has sizes. */
const top = 'use "middle.case"\ncase Top { width reach   height 20in   depth 10in; side Left, Right of Ply }\n';
const middle = 'public use "base.case"\nmaterial Ply : plywood { thickness 3/4in   sheet 48in x 96in   grain length }\n';
const chain = { 'top.case': top, 'middle.case': middle, 'base.case': 'let reach = 30in\n' };

async function analyse(files: FilesInMemory, name: string) {
    return files.services.casewright.analysis.Analyses.of(await files.open(name));
}

describe('an analysis is as new as the files it is made of', () => {
    test('a change two files away is seen', async () => {
        const files = new FilesInMemory(chain);
        const before = await analyse(files, 'top.case');
        expect(before.casework.assemblies[0]?.width?.quantity.value).toEqual(inches(30));
        await files.change('base.case', 'let reach = 31in\n');
        const after = await analyse(files, 'top.case');
        expect(after.casework.assemblies[0]?.width?.quantity.value).toEqual(inches(31));
    });

    test('what has not changed is not made again', async () => {
        const files = new FilesInMemory({ ...chain, 'other.case': 'let a = 1in\n' });
        const before = await analyse(files, 'top.case');
        await files.open('other.case');
        await files.change('other.case', 'let a = 2in\n');
        expect(await analyse(files, 'top.case')).toBe(before);
        await files.change('top.case', `${top}\n`);
        expect(await analyse(files, 'top.case')).not.toBe(before);
    });

    test('a used file that is deleted is missed, and found again', async () => {
        const files = new FilesInMemory(chain);
        expect(codes(await analyse(files, 'top.case'))).toEqual([]);
        await files.delete('base.case');
        expect(codes(await analyse(files, 'top.case'))).toContain('NAM-003');
        await files.change('base.case', 'let reach = 30in\n');
        await files.change('middle.case', `${middle}\n`);
        expect(codes(await analyse(files, 'top.case'))).toEqual([]);
    });

    test('files that use each other are analysed, and told of once each', async () => {
        const files = new FilesInMemory({ 'a.case': 'use "b.case"\nlet a = 1in\n', 'b.case': 'use "a.case"\nlet b = 2in\n' });
        expect(codes(await analyse(files, 'a.case'))).toEqual(['NAM-004']);
        expect(codes(await analyse(files, 'b.case'))).toEqual(['NAM-004']);
    });

    test('sizes and the words at a span are found by place', async () => {
        const files = new FilesInMemory(chain);
        const analysis = await analyse(files, 'top.case');
        const start = top.indexOf('reach');
        const span = { file: 'top.case', start, end: start + 5 };
        expect(analysis.valueAt(span)?.quantity.value).toEqual(inches(30));
        expect(analysis.textAt(span)).toBe('reach');
        expect(analysis.locate(span)).toEqual({
            file: 'top.case',
            uri: 'file:///designs/top.case',
            line: 2,
            column: 18,
            endLine: 2,
            endColumn: 23,
        });
    });
});

describe('a workspace without an editor', () => {
    const open = (texts: Readonly<Record<string, string>>) =>
        openWorkspace({
            readFile: async (uri) => {
                const text = texts[uri.slice('file:///work/'.length)];
                if (text === undefined) throw new Error(`there is no ${uri}`);
                return text;
            },
        });
    const said = ({ code, place }: PlacedFinding): string => `${place.file}:${place.line}:${place.column} ${code}`;

    test('checks files, and says what is wrong in a file that two of them use once', async () => {
        const broken = shop.replace('thickness 3/4in ', 'thickness 3/4 ');
        const workspace = open({ 'a.case': design, 'b.case': design.replace('above Floor', 'above Flor'), 'shop.case': broken });
        const found = await workspace.check(['file:///work/a.case', 'file:///work/b.case']);
        expect(found.map(said)).toEqual(['shop.case:6:66 UNI-001', 'b.case:26:29 NAM-001']);
    });

    test('a used file that is not there is a finding', async () => {
        const found = await open({ 'a.case': 'use "gone.case"\n' }).check(['file:///work/a.case']);
        expect(found.map(said)).toEqual(['a.case:1:5 NAM-003']);
    });

    test('a file that is asked for and not there fails with the reason of the reader', async () => {
        await expect(open({}).analyse('file:///work/a.case')).rejects.toThrow('there is no file:///work/a.case');
    });

    test('several mistakes in one line of syntax are one finding', async () => {
        const found = await open({ 'a.case': 'case A { width = = 3in }\nshelf ) (\n\n' }).check(['file:///work/a.case']);
        const lines = found.filter(({ code }) => code === 'TXT-001').map(({ place }) => place.line);
        expect(lines).toEqual([1, 2]);
    });

    test('a case with a curve ends also where no material, and so no place along the curve, is known', async () => {
        const curved = design
            .replace('depth  12in', 'depth  Sweep')
            .replace(
                '    let gap',
                '    curve Sweep of depth over height {\n        from 17in at bottom\n        to 12in at top\n        bow out 1in\n    }\n    let gap',
            );
        const found = await open({ 'a.case': curved }).check(['file:///work/a.case']);
        expect(found.map(said)).toContain('a.case:2:5 NAM-003');
    });

    test('every beginning of a design is analysed without a throw', async () => {
        const texts = Object.fromEntries(
            Array.from({ length: Math.ceil(design.length / 7) }, (_, index) => [`${index}.case`, design.slice(0, index * 7)]),
        );
        const workspace = open({ ...texts, 'shop.case': shop });
        for (const name of Object.keys(texts)) {
            expect((await workspace.analyse(`file:///work/${name}`)).findings).toBeInstanceOf(Array);
        }
    });
});

describe('what only follows from another mistake is left out', () => {
    const findings = async (text: string): Promise<readonly string[]> => {
        const files = new FilesInMemory({ 'design.case': text, 'shop.case': shop });
        return (await analyse(files, 'design.case')).findings.map(({ code, span }) => `${code} ${text.slice(span.start, span.end)}`);
    };

    test('while a line cannot be read: names it may declare, and sizes it may state', async () => {
        expect(await findings(design.replace('shelf Floor at 4in', 'she'))).toEqual(['TXT-001 she']);
        expect(await findings(design.replace('width  36in', 'width  )'))).toEqual(['TXT-001 )']);
    });

    test('while a name is not known: that its part is not built', async () => {
        expect(await findings(design.replace('above Floor', 'above Flor'))).toEqual(['NAM-001 Flor']);
        expect(await findings(design.replace('every shelf { of Ply ', 'every shelf { of Plyy '))).toEqual(['NAM-001 Plyy']);
    });

    test('two mistakes that have nothing to do with each other are both told', async () => {
        const two = design.replace('of Ply4', 'of Plyy4').replace('height 60in', 'height 60');
        expect(await findings(two)).toEqual(['UNI-001 60', 'NAM-001 Plyy4']);
    });
});

function codes({ findings }: Awaited<ReturnType<typeof analyse>>): readonly string[] {
    return findings.map(({ code }) => code);
}

/** A length in inches as a value in millimetres: 1 in = 25.4 mm, by definition (international yard and pound agreement of 1959). */
function inches(count: number) {
    return Rational.of(count * 127, 5);
}
