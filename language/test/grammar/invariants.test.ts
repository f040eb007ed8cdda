import { measurePattern } from 'casewright-shared/quantity';
import fc from 'fast-check';
import { AstUtils, GrammarAST, type LangiumCoreServices } from 'langium';
import { describe, expect, test, vi } from 'vitest';
import { CasewrightAstReflection, CasewrightTerminals } from '../../src/generated/ast.js';
import { reservedWords, wordsOfRule } from '../../src/parser/grammar-words.js';
import { STATEMENT_WORDS } from '../../src/parser/statement-lines.js';
import { corpus, examples } from './corpus-texts.js';
import { createParserServices, parseWith } from './services.js';
import { tokenNeighbours } from './token-neighbours.js';
import { treeText } from './tree-text.js';

const services = createParserServices();
const { Grammar: grammar } = services;
const texts = [...corpus, ...examples];

const problemsOf = (text: string): string[] => parseWith(services, text).problems.map(({ line, message }) => `${line + 1}: ${message}`);
const treeOf = (text: string): string => treeText(parseWith(services, text).file);

describe('the corpus', () => {
    test.each(texts)('$name has no syntax errors', ({ text }) => {
        expect(problemsOf(text)).toEqual([]);
    });

    test('uses every type of node but the one for broken text', () => {
        const used = new Set(
            texts.flatMap(({ text }) => AstUtils.streamAst(parseWith(services, text).file).toArray()).map(({ $type }) => $type),
        );
        const reflection = new CasewrightAstReflection();
        const concrete = reflection.getAllTypes().filter((type) => reflection.getAllSubTypes(type).every((subtype) => subtype === type));
        expect(concrete.filter((type) => !used.has(type))).toEqual(['StrayBlock']);
    });

    test('uses every word of the grammar', () => {
        const words = new Set(texts.flatMap(({ text }) => text.match(/[\p{L}]+/gu) ?? []));
        expect(keywords(grammar).filter((word) => !words.has(word))).toEqual([]);
    });

    test('the parser reports no ambiguity', () => {
        const log = vi.spyOn(console, 'log').mockImplementation(() => {});
        try {
            // A parser reports each ambiguity once, and only in development mode.
            const fresh: LangiumCoreServices = createParserServices();
            expect(fresh.LanguageMetaData.mode).toBe('development');
            for (const { text } of texts) {
                fresh.parser.LangiumParser.parse(text);
            }
            expect(log.mock.calls).toEqual([]);
        } finally {
            log.mockRestore();
        }
    });
});

describe('numbers', () => {
    test('no rule lets two numbers stand side by side', () => {
        const pairs = tokenNeighbours(grammar);
        expect(pairs).toContain('at QUANTITY');
        const numbers = ['QUANTITY', 'TRADE_SIZE'];
        expect(numbers.flatMap((first) => numbers.map((second) => `${first} ${second}`)).filter((pair) => pairs.has(pair))).toEqual([]);
    });

    test('a second number after any number of the corpus is an error', () => {
        for (const { text } of corpus) {
            for (const token of services.parser.Lexer.tokenize(text).tokens.filter(({ tokenType }) => tokenType.name === 'QUANTITY')) {
                const at = token.endOffset! + 1;
                const changed = `${text.slice(0, at)} 7mm${text.slice(at)}`;
                expect(problemsOf(changed), `${token.startLine}: ${token.image} 7mm`).not.toEqual([]);
            }
        }
    });

    test('the lexer cuts out what the reader of measures reads', () => {
        const cut = (pattern: string | RegExp, text: string): string | undefined => new RegExp(pattern, 'y').exec(text)?.[0];
        const pieces = fc.constantFrom(
            ...'1 0 27 / - . " \' ′ ″ ½ ⅞ ° % in ft mm m lb lb/ft2 ft2 kPa USD hour hours inch x ( , +'.split(' '),
            ' ',
        );
        fc.assert(
            fc.property(fc.nat(99), fc.array(pieces, { maxLength: 8 }), (number, rest) => {
                const text = `${number}${rest.join('')}`;
                expect(cut(CasewrightTerminals.QUANTITY, text)).toBe(cut(measurePattern, text));
            }),
            { numRuns: 5000 },
        );
    });
});

describe('words', () => {
    const reserved = reservedWords(grammar);
    const steps = wordsOfRule(grammar, 'StepWord');
    const free = keywords(grammar).filter((word) => !reserved.includes(word));

    test('few words are reserved, all of them words that join', () => {
        expect(reserved.join(' ')).toBe(
            'above and as at because before behind below build else every except false for from if in let like mirrored no not of on or over per private public then to true use with yes',
        );
    });

    test.each(free)('`%s` may name a material, a parameter, a part, an opening and a value', (word) => {
        expect(problemsOf(`material ${word} { grain ${word} price 1 USD }`)).toEqual([]);
        expect(
            problemsOf(`case ${word}(${word}: Length = 1in) {
                let ${word} = ${word} + 1
                shelf ${word} at ${word} + 1in of ${word} as ${word}, ${word}
                every ${word} except ${word} { of ${word} }
                in ${word} { filler ${word} }
                require ${word}.${word} > ${word} because "x"
                hold ${word} on ${word}, ${word}[1]
                join ${word} to every shelf with J
                leave ${word} for ${word}
                build 2 ${word}(${word} = 1in) as ${word} in ${word}
            }`),
        ).toEqual([]);
    });

    test.each(corpus)('$name with every name turned into a word of the language is the same tree', ({ text }) => {
        // A recipe's name may not be the word of a step, and `x` stands between sizes.
        const words = [
            ...free.filter((word) => !steps.has(word) && word !== 'x'),
            'grain',
            'width',
            'height',
            'count',
            'species',
            'thickness',
        ];
        const names = services.parser.Lexer.tokenize(text).tokens.filter(
            ({ image, tokenType }) => tokenType.name === 'ID' && /^[A-Z]/.test(image),
        );
        const replaced = new Map(
            [...new Set(names.map(({ image }) => image))].map((name, index) => [name, `${words[index % words.length]}`]),
        );
        let changed = text;
        for (const { startOffset, image } of [...names].reverse()) {
            changed = changed.slice(0, startOffset) + replaced.get(image) + changed.slice(startOffset + image.length);
        }
        expect(problemsOf(changed)).toEqual([]);
        const rename = (tree: string): string =>
            tree.replace(/(→|\.|name: ")([A-Z]\w*)/g, (whole, before, name) => (replaced.has(name) ? before + replaced.get(name) : whole));
        expect(treeOf(changed)).toBe(
            rename(treeOf(text)).replace(/(names?|type|family|kind|site|edges): (\[?)"([A-Z]\w*)"/g, (whole, key, open, name) =>
                replaced.has(name) ? `${key}: ${open}"${replaced.get(name)}"` : whole,
            ),
        );
    });
});

describe('the reader of lines', () => {
    test('knows every word of the grammar that begins a statement', () => {
        const rules = ['FactKind', 'RecipeKind', 'PartKind', 'Visibility'];
        const kinds = rules.flatMap((rule) => [...wordsOfRule(grammar, rule)]);
        const verbs = [...grammar.rules]
            .filter(GrammarAST.isParserRule)
            .filter(({ name }) =>
                ['Use', 'Let', 'EdgeStatement', 'Join', 'Hold', 'Load', 'Require', 'Allow', 'Build', 'Leave', 'RepeatHead'].includes(name),
            )
            .map((rule) => AstUtils.streamAllContents(rule).filter(GrammarAST.isKeyword).head()?.value);
        expect(kinds.length + verbs.length).toBeGreaterThan(30);
        expect([...kinds, ...verbs].filter((word) => !STATEMENT_WORDS.has(`${word}`))).toEqual([]);
    });
});

describe('layout that means nothing', () => {
    test.each(texts)('$name with CRLF is the same tree', ({ text }) => {
        expect(treeOf(text.replaceAll('\n', '\r\n'))).toBe(treeOf(text));
    });

    test.each(texts)('$name with a comment at the end of every line and between the lines is the same tree', ({ text }) => {
        const commented = text
            .split('\n')
            .map((line) => `${line} // a comment with { ( " in it\n/// and a doc comment`)
            .join('\n');
        expect(problemsOf(commented)).toEqual([]);
        expect(treeOf(commented)).toBe(treeOf(text));
    });

    test.each(texts)('$name without blank lines and with tabs for its indentation is the same tree', ({ text }) => {
        const dense = text.replace(/\n\s*\n/g, '\n').replace(/^( {4})+/gm, (indent) => '\t'.repeat(indent.length / 4));
        expect(treeOf(dense)).toBe(treeOf(text));
    });
});

function keywords(of: GrammarAST.Grammar): string[] {
    const words = AstUtils.streamAllContents(of)
        .filter(GrammarAST.isKeyword)
        .map(({ value }) => value)
        .filter((word) => /^\p{L}+$/u.test(word));
    return [...new Set(words)].sort();
}
