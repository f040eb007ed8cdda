import { beforeAll, describe, expect, test } from 'vitest';
import { corpus, examples } from './corpus-texts.js';
import { addDamage, type DamageCount, type DamageKind, damageKinds, lostShare, measureDamage, measureTyping } from './damage.js';
import { createParserServices } from './services.js';

const services = createParserServices();
const parse = (text: string) => services.parser.LangiumParser.parse(text);
const PATIENCE = 120_000; // thousands of parses: the machine may be busy

/** The workshop's file stands beside each example that uses it: it is measured once. */
const exampleTexts = examples.filter(({ text }, index) => examples.findIndex((other) => other.text === text) === index);

function measure(texts: readonly { text: string }[], kind: DamageKind): DamageCount {
    return texts.map(({ text }) => measureDamage(text, kind, parse)).reduce(addDamage);
}

describe('a broken line does not blank the rest', () => {
    describe.each(damageKinds)('$name', (kind) => {
        let inExamples: DamageCount;
        let everywhere: DamageCount;
        beforeAll(() => {
            inExamples = measure(exampleTexts, kind);
            everywhere = addDamage(inExamples, measure(corpus, kind));
        }, PATIENCE);

        test('at most 0.2 % of the nodes on other lines are lost', () => {
            expect(everywhere.tries).toBeGreaterThan(20);
            expect(lostShare(everywhere), JSON.stringify(everywhere.worst, undefined, 1)).toBeLessThan(0.002);
        });

        test('a line has one error at most', () => {
            expect(everywhere.crowdedLines).toBe(0);
        });

        test('in the examples the error is on the broken line and nowhere else', () => {
            // A brace that is gone with its line can only be missed beside it.
            expect(inExamples.errorsElsewhere).toBe(kind.name === '} lost' ? inExamples.tries : 0);
        });
    });

    test.each([...corpus, ...exampleTexts])(
        'typing $name in from the top reports nothing on finished lines',
        { timeout: PATIENCE },
        ({ text }) => {
            const { steps, errorsOnFinishedLines } = measureTyping(text, parse);
            expect(steps).toBeGreaterThan(20);
            expect(errorsOnFinishedLines).toEqual([]);
        },
    );
});

describe('the measure itself', () => {
    const lossy = (text: string) => parse(text.includes('blah') ? '' : text);

    test('notices a parser that drops everything after an error', () => {
        const kind = damageKinds.find(({ name }) => name === 'a stray word')!;
        expect(lostShare(measureDamage(corpus[0]!.text, kind, lossy))).toBe(1);
    });
});
