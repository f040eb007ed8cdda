import { vocabulary } from 'casewright-shared/casework';
import { describe, expect, it } from 'vitest';
import { libraryTexts } from '../../src/workspace/library-texts.js';
import { amountOf, type LibraryFact, pairOf, readLibrary, textOf, wordOf } from './library-reader.js';

const unitOf: Readonly<Record<string, string>> = { none: '', length: 'mm', pressure: 'MPa', density: 'kg/m3', force: 'N' };

/** Fails where the value of a property is not what its row asks for. */
function expectShape(fact: LibraryFact, name: string, shape: vocabulary.Shape): void {
    const where = `${fact.name}.${name}`;
    switch (shape.is) {
        case 'text':
            expect(textOf(fact, name), where).toBeTruthy();
            return;
        case 'choice':
            expect(shape.of, where).toContain(wordOf(fact, name));
            return;
        case 'tradeSize':
            expect(wordOf(fact, name), where).toMatch(/^#\d+$/);
            return;
        case 'quantity': {
            const unit = unitOf[shape.dimension];
            const amount = shape.tolerance ? pairOf(fact, name, unit ?? '')?.[0] : undefined;
            expect(amount ?? amountOf(fact, name, unit), where).toBeGreaterThan(0);
            return;
        }
        case 'list':
            expectShape(fact, name, shape.of);
            return;
        case 'sizes':
            expect(pairOf(fact, name, unitOf[shape.dimension] ?? ''), where).toHaveLength(shape.count);
            return;
        default:
            throw new Error(`${where} asks for ${shape.is}, which the library does not use yet: say here how it is checked`);
    }
}

describe.each([...libraryTexts.keys()])('%s', (module) => {
    it('says only what the vocabulary knows', () => {
        for (const fact of readLibrary(module).values()) {
            const kind = vocabulary.factKinds[fact.kind];
            expect(Object.keys(kind?.families ?? {}), fact.name).toContain(fact.family);
            for (const name of fact.properties.keys()) {
                const row = kind?.properties[name];
                expect(row, `${fact.kind} ${fact.name} has a ${name}`).toBeDefined();
                expectShape(fact, name, row!.shape);
            }
        }
    });
});
