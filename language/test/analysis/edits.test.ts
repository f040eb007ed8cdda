/**
 * What an edit leaves alone is not built again, and nothing may tell: after each edit the analysis is the same as one that is made from
 * the text alone.
 */
import { readdirSync, readFileSync } from 'node:fs';
import * as path from 'node:path';
import { describe, expect, test } from 'vitest';
import { FilesInMemory } from '../files-in-memory.js';

const examples = path.resolve(import.meta.dirname, '../../../examples');

function filesOf(example: string): Record<string, string> {
    const folder = path.join(examples, example);
    const names = readdirSync(folder).filter((name) => name.endsWith('.case'));
    return Object.fromEntries(names.map((name) => [name, readFileSync(path.join(folder, name), 'utf8')]));
}

async function analyse(files: FilesInMemory, name: string) {
    return files.services.casewright.analysis.Analyses.of(await files.open(name));
}

/** All that is shown of an analysis, as data. */
async function shown(files: FilesInMemory, name: string) {
    const { casework, findings } = await analyse(files, name);
    return { findings, ...casework };
}

async function expectAsFromTheText(files: FilesInMemory, texts: Record<string, string>, name: string): Promise<void> {
    const [edited, fresh] = [await shown(files, name), await shown(new FilesInMemory(texts), name)];
    for (const key of Object.keys(fresh) as (keyof typeof fresh)[]) expect(edited[key], key).toEqual(fresh[key]);
}

/** Applies edits one after the other, and looks after each. */
async function follow(files: FilesInMemory, texts: Record<string, string>, name: string, edits: readonly string[]): Promise<void> {
    await shown(files, name);
    for (const text of edits) {
        texts[name] = text;
        await files.change(name, text);
        await expectAsFromTheText(files, texts, name);
    }
}

describe.each(readdirSync(examples))('%s', (example) => {
    const name = `${example}.case`;

    test('lines are taken out and put back, and others come before them', async () => {
        const texts = filesOf(example);
        const whole = texts[name] ?? '';
        const lines = whole.split('\n');
        const step = Math.ceil(lines.length / 3);
        const places = [...lines.keys()].filter((index) => lines[index]?.trim() && index % step === 3);
        const edits = places.flatMap((index) => [lines.toSpliced(index, 1).join('\n'), whole]);
        await follow(new FilesInMemory(texts), texts, name, [`// a line more\n${whole}`, ...edits]);
    });
});

const several = `edition 1
use casewright.panels
material Ply like HardwoodPlywood { thickness 3/4in   actual 0.720in ± 0.010in }
material Thin like HardwoodPlywood { thickness 1/4in   density 40 lb/ft3 }
let reach = 30in
joint Shelved { dado 1/4in }

case Low(tall: Length = 20in) of Ply {
    width reach   height tall   depth 12in
    side Left, Right
    shelf Row[2] clear equal
    join every shelf to every side with Shelved
}
case Inner of Ply {
    side Left, Right
    top Crown
    join Crown to every side with Shelved
}
case Tall of Ply {
    width 36in   height 80in   depth 14in ± 1/16in
    side Left, Right
    shelf Row[3] clear equal
    back of Thin
    join every shelf to every side with Shelved
    require Row[1].clear >= 6in because "tall things stand here"
}
case Outer of Ply {
    width 40in   height 40in   depth 15in
    side Left, Right
    Unit of Inner
    allow JNT-001 because "looked at"
}
`;

describe('several cases in a file', () => {
    const edit = (words: string, by: string, text = several) => {
        expect(text).toContain(words);
        return text.replace(words, by);
    };
    const edits: Record<string, readonly string[]> = {
        'a size in one': [edit('height 80in', 'height 81in'), edit('height 80in', 'height 8in'), several],
        'a mistake in one, and mended': [edit('height 80in', 'height 80'), edit('Row[3] clear', 'Row[3] cler'), several],
        'one that stands in another': [edit('top Crown', 'top Crown at 1in below top'), edit('top Crown', 'top'), several],
        'a value of the file': [edit('let reach = 30in', 'let reach = 31in'), edit('let reach = 30in', 'let reach = 30'), several],
        'a material': [edit('actual 0.720in', 'actual 0.71in'), edit('material Thin', 'material Thinner'), several],
        'words before one whose depth has a tolerance': [edit('width reach', 'width reach + 1in'), several],
        'the tolerance': [edit('± 1/16in', '± 1/8in'), edit('± 1/16in', ''), several],
        'one more with a name that is taken': [`${several}case Low of Ply { width 10in   height 10in   depth 5in }\n`, several],
        'one is taken out': [several.replace(/case Low[^}]*}\n/, ''), several],
        'a project, and other counts in it': [
            `${several}project "Both" { build 2 Tall   build Low(tall = 25in) }\n`,
            `${several}project "Both" { build Tall   build mirrored Low(tall = 26in)   build Low }\n`,
            `${several}project "Both" { units mm   build Tall   build Low }\n`,
            several,
        ],
        'words above one': [
            edit('case Tall of', '/// High.\ncase Tall of'),
            edit('case Tall of', '/// Higher.\ncase Tall of'),
            edit('case Tall of', '// Higher.\ncase Tall of'),
            several,
        ],
        'a name that is not there yet': [
            edit('top Crown', 'top Crown at gap below top'),
            `${edit('top Crown', 'top Crown at gap below top')}let gap = 1in\n`,
            `${several}let gap = 1in\n`,
            several,
        ],
        'a name of one that another says': [
            `${several}allow JNT-001 on Outer.Unit.Crown because "seen"\n`,
            `${edit('Crown', 'Lid')}allow JNT-001 on Outer.Unit.Crown because "seen"\n`,
            `${edit('top Crown', 'shelf Crown at 3in')}allow JNT-001 on Outer.Unit.Crown because "seen"\n`,
            several,
        ],
        'a line that is not finished': [edit('side Left, Right', 'side Left,'), edit('let reach = 30in', 'let rea'), several],
        'a default': [`${several}every shelf { edge front round 1/8in }\n`, `${several}allow DES-001 because "later"\n`, several],
    };
    test.each(Object.entries(edits))('%s', async (_, texts) => {
        const files = { 'several.case': several };
        await follow(new FilesInMemory(files), files, 'several.case', texts);
    });

    test('only the case that was edited is built again, the others move', async () => {
        const files = new FilesInMemory({ 'several.case': several });
        const before = (await analyse(files, 'several.case')).casework;
        const place = before.parts.get('Outer.Left')?.span.start ?? 0;
        await files.change('several.case', edit('tall: Length = 20in', 'tall: Length = 20.25in'));
        const after = (await analyse(files, 'several.case')).casework;
        const kept = [...after.parts.keys()].filter((path) => after.parts.get(path) === before.parts.get(path));
        expect(new Set(kept.map((path) => path.split('.')[0]))).toEqual(new Set(['Outer']));
        expect(after.parts.get('Outer.Left')?.span.start).toBe(place + 3);
    });
});
