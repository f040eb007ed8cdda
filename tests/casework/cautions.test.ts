/** Documents carry the cautions of what is done with them; those with figures of strength, pressure or bending say who decides. */
import { readdirSync } from 'node:fs';
import * as path from 'node:path';
import { documentKinds } from 'casewright-shared/documents';
import { describe, expect, it } from 'vitest';
import { analyseFile } from './analysed.js';

const examples = path.resolve(import.meta.dirname, '../../examples');
const designs = await Promise.all(readdirSync(examples).map((name) => analyseFile(path.join(examples, name, `${name}.case`))));

const wanted: Record<string, RegExp> = {
    strength: /local codes and a licensed professional decide/,
    curves: /local codes and a licensed professional decide/,
    cauls: /local codes and a licensed professional decide/,
    sheets: /^Dust of wood/,
    boards: /^Dust of wood/,
    joinery: /climbs and pulls/,
};

describe.each(Object.entries(wanted))('%s', (kind, words) => {
    const { make } = documentKinds.find((one) => one.kind === kind)!;
    const notes = designs.flatMap(({ casework }) => {
        const made = make(casework, { locate: () => undefined as never, findings: [] });
        return made?.is === 'sheet' ? [[...made.sheet.notes, ...made.sheet.facts.map(({ text }) => text)]] : [];
    });

    it('is there for some example, with its caution', () => {
        expect(notes.length).toBeGreaterThan(0);
        for (const one of notes) expect(one.filter((note) => words.test(note))).toHaveLength(1);
    });
});
