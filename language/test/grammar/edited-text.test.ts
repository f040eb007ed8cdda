/** A text that is parsed by its edits is the same tree, with the same errors, as the text parsed as a whole. */
import { readdirSync, readFileSync } from 'node:fs';
import * as path from 'node:path';
import * as fc from 'fast-check';
import type { AstNode, CstNode, ParseResult } from 'langium';
import { describe, expect, test } from 'vitest';
import type * as Ast from '../../src/generated/ast.js';
import type { CasewrightLexer } from '../../src/parser/casewright-lexer.js';
import type { CasewrightParser } from '../../src/parser/casewright-parser.js';
import { parseEdited } from '../../src/parser/edited-text.js';
import { FilesInMemory } from '../files-in-memory.js';

const { LangiumParser, Lexer } = new FilesInMemory({}).services.casewright.parser;
const services = { parser: LangiumParser as CasewrightParser, lexer: Lexer as CasewrightLexer };
const parse = (text: string) => services.parser.parse<Ast.File>(text);

/** A tree as data: places of all nodes and tokens, which node is whose, and where references stand. */
function shownTree(result: ParseResult<AstNode>) {
    return { ast: shownNode(result.value), cst: shownCst(result.value.$cstNode!), errors: shownErrors(result) };
}

function shownNode(node: AstNode): unknown {
    const { $cstNode, $container, $containerProperty, $containerIndex } = node;
    const place = $cstNode && [$cstNode.offset, $cstNode.end, $cstNode.range];
    const entries = Object.entries(node).filter(([key]) => !key.startsWith('$'));
    const shown = (value: unknown): unknown => {
        if (Array.isArray(value)) return value.map(shown);
        if (typeof value !== 'object' || value === null) return value;
        if ('$refText' in value) {
            const { $refText, $refNode } = value as { $refText: string; $refNode?: CstNode };
            return [$refText, $refNode?.offset];
        }
        return '$type' in value ? shownNode(value as AstNode) : value;
    };
    const isInPlace = !$container || Object.values($container).some((one) => one === node || (Array.isArray(one) && one.includes(node)));
    return {
        $type: node.$type,
        place,
        within: [$container?.$type, $containerProperty, $containerIndex, isInPlace],
        backed: $cstNode?.astNode === node,
        ...Object.fromEntries(entries.map(([key, value]) => [key, shown(value)])),
    };
}

function shownCst(node: CstNode): unknown {
    const own = [node.offset, node.end, node.hidden, node.text, node.range, node.container?.offset];
    return 'content' in node ? [...own, (node.content as CstNode[]).map(shownCst)] : own;
}

function shownErrors({ lexerErrors, parserErrors, lexerReport }: ParseResult) {
    return {
        lexer: [...lexerErrors]
            .sort((a, b) => a.offset - b.offset)
            .map(({ offset, length, line, message }) => [offset, length, line, message]),
        parser: parserErrors.map(({ token, message, name }) => [
            token.startOffset,
            token.endOffset,
            token.startLine,
            token.image,
            message,
            name,
        ]),
        braces: lexerReport?.diagnostics ?? [],
    };
}

const examples = path.resolve(import.meta.dirname, '../../../examples');
const texts = readdirSync(examples, { recursive: true, encoding: 'utf8' })
    .filter((name) => name.endsWith('.case'))
    .map((name) => readFileSync(path.join(examples, name), 'utf8'));

/** Follows a text through its edits; how often the tree was made of the one before. */
function follow(first: string, edits: readonly string[]): number {
    let result = parse(first);
    let kept = 0;
    for (const text of edits) {
        const edited = parseEdited(services, result, text);
        const whole = parse(text);
        if (edited) {
            expect(shownTree(edited)).toEqual(shownTree(whole));
            kept += 1;
        }
        result = edited ?? whole;
    }
    return kept;
}

const windows = texts.map((text) => text.replaceAll('\n', '\r\n'));
const scraps = [
    '',
    ' ',
    '\n',
    '}',
    '{',
    '"',
    '/',
    '///',
    '// no\n',
    ';',
    ',',
    '(',
    '1/2',
    ' 3',
    'in',
    'case ',
    'let a = 1in\n',
    'x',
    '.',
    'to ',
];
const mixed = [
    'case K of Ply {\n    width 3in\n}\n',
    'edition 1\n',
    'shelf A at 3in',
    'because',
    ' 3/4 ',
    'with',
    'of',
    'every shelf {',
    '\r\n',
    'µ',
];

describe('edits anywhere', () => {
    test('of the examples: each is read as the whole text', () => {
        let kept = 0;
        let all = 0;
        const edit = fc.record({ at: fc.nat(9999), drop: fc.nat(12), put: fc.constantFrom(...scraps, ...mixed) });
        fc.assert(
            fc.property(fc.constantFrom(...texts, ...windows), fc.array(edit, { minLength: 1, maxLength: 6 }), (first, steps) => {
                const edits: string[] = [];
                for (const { at, drop, put } of steps) {
                    const before = edits.at(-1) ?? first;
                    const place = Math.floor((at / 10_000) * before.length);
                    edits.push(before.slice(0, place) + put + before.slice(place + drop));
                }
                // and taken back, one after the other
                edits.push(...edits.slice(0, -1).reverse(), first);
                kept += follow(first, edits);
                all += edits.length;
            }),
            { numRuns: 60, seed: 7 },
        );
        expect(kept).toBeGreaterThan(all / 2);
    });
});
