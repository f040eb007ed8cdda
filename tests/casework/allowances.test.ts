/** What may be allowed where: parts, whole cases, the whole file; and that its reason is printed with what is made from. */
import { documentKinds } from 'casewright-shared/documents';
import { describe, expect, it } from 'vitest';
import { analyseText } from './analysed.js';

/** A case that a light push tips over. */
const pillar = (inCase: string, { top = '', build = 'build 1 Pillar' } = {}): string => `use casewright.panels
material Mdf like FibreboardThreeQuarter
material Thin like FibreboardQuarter
project "Hall" { ${build} }
${top}
case Pillar of Mdf {
    width 36in   height 60in   depth 9in
    back of Thin
    side Left, Right
    shelf Row[4] clear equal
    join every shelf to every side with { glue }
    join back to every side, every shelf with { nail 1in spacing 4in }
    ${inCase}
}
`;
const stone = 'because "it stands on stone"';

async function warningsOf(text: string) {
    const { findings } = await analyseText(text);
    return findings.filter(({ severity, allowed }) => severity !== 'note' && allowed === undefined);
}
const codesOf = async (text: string) => (await warningsOf(text)).map(({ code }) => code);

describe('what is found of a case as a whole', () => {
    it('is found, and allowed on the case: in its braces and at the top of the file', async () => {
        expect(await codesOf(pillar(''))).toEqual(['STB-001']);
        expect(await codesOf(pillar(`allow tips-easily on Pillar ${stone}`))).toEqual([]);
        expect(await codesOf(pillar('', { top: `allow tips-easily on Pillar ${stone}` }))).toEqual([]);
        expect(await codesOf(pillar(`allow tips-easily ${stone}`))).toEqual([]);
    });

    it('is allowed however the case is called where it is built', async () =>
        expect(await codesOf(pillar(`allow tips-easily on Pillar ${stone}`, { build: 'build 1 Pillar as North' }))).toEqual([]));

    it('is not allowed on a part of it: the line says where it comes', async () => {
        const found = await warningsOf(pillar(`allow tips-easily on Left ${stone}`));
        expect(found.map(({ code }) => code)).toEqual(['STB-001', 'DES-004']);
        expect(found[1]?.hint).toBe('it comes at `Pillar`: write `on Pillar`');
        expect(found[1]?.fix).toBeUndefined();
    });

    it('an allowance in the project is told where to go', async () => {
        const found = await warningsOf(pillar('', { build: `build 1 Pillar\n allow tips-easily on Pillar ${stone}` }));
        expect(found.find(({ code }) => code === 'NAM-013')?.hint).toContain('at the top of the file with the name of the case after `on`');
    });
});

const deep = (allow: string, more = '') => `material Ply : plywood { thickness 3/4in   sheet 48in x 96in   grain length }
case Bookcase of Ply {
    width 30in   height 36in   depth 11in ${more}
    side Left, Right
    shelf Low at 12in
    join Low to every side with { dado 3/8in deep   glue }
    ${allow}
}
`;

describe('an allowance that allows nothing', () => {
    it('on another part is told where the warning comes', async () => {
        const found = await warningsOf(deep('allow dado-too-deep on Low because "painted"'));
        expect(found.map(({ code, hint }) => [code, hint]).at(-1)).toEqual([
            'DES-004',
            'it comes at `Left, Right`: write `on Left, Right`',
        ]);
    });

    it('on the whole case covers its parts', async () =>
        expect(await codesOf(deep('allow dado-too-deep on Bookcase because "painted"'))).toEqual([]));

    it('is not found while an error keeps the rules from being asked', async () => {
        const text = deep('allow dado-too-deep on Low because "painted"').replace('depth 11in', '');
        expect(await codesOf(text)).not.toContain('DES-004');
        const wide = deep('allow shelf-sags because "painted"').replace('30in', '120in');
        expect(await codesOf(wide)).not.toContain('DES-004');
        expect(await codesOf(deep('allow shelf-sags because "painted"'))).toContain('DES-004');
    });
});

describe('the reason', () => {
    const options = { locate: () => ({ file: '', line: 1, column: 1 }), findings: [] };
    async function allowedIn(text: string, document = 'cut-list'): Promise<readonly string[]> {
        const { casework } = await analyseText(text);
        const made = documentKinds.find(({ kind }) => kind === document)?.make(casework, options);
        if (made?.is !== 'sheet') throw new Error(`there is no ${document}`);
        return made.sheet.facts.flatMap(({ label, text: fact }) => (label === 'Allowed' ? [fact] : []));
    }

    it('stands at the head of the cut list and of the strength sheet, once for each sentence', async () => {
        expect(await allowedIn(pillar(`allow tips-easily on Pillar ${stone}`))).toEqual(['tips-easily on Pillar: it stands on stone']);
        expect(await allowedIn(pillar(`allow tips-easily on Pillar ${stone}`), 'strength')).toEqual([
            'tips-easily on Pillar: it stands on stone',
        ]);
        expect(await allowedIn(deep('allow dado-too-deep on Left, Right because "painted"'))).toEqual([
            'dado-too-deep on Left, Right: painted',
        ]);
        expect(await allowedIn(deep('allow dado-too-deep because "painted"'))).toEqual(['dado-too-deep: painted']);
    });

    it('of a case that is not built stays out', async () => {
        const text = `${deep('')}project "Hall" { build 1 Bookcase }\n${deep('allow dado-too-deep because "painted"')
            .replace(/material .*\n/, '')
            .replace('case Bookcase', 'case Other')}`;
        expect(await allowedIn(text)).toEqual([]);
    });
});
