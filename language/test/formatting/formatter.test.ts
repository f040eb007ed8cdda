import { DocumentState, type LangiumDocument, URI } from 'langium';
import { describe, expect, test } from 'vitest';
import { TextDocument } from 'vscode-languageserver-textdocument';
import { CasewrightFormatter } from '../../src/formatting/casewright-formatter.js';
import { formatCase } from '../../src/formatting/format-case.js';
import { createParserServices } from '../grammar/services.js';

const services = createParserServices();
const formatter = new CasewrightFormatter(services);

function documentOf(text: string): LangiumDocument {
    const textDocument = TextDocument.create('file:///design.case', 'casewright', 1, text);
    const parseResult = services.parser.LangiumParser.parse(text);
    return { uri: URI.parse(textDocument.uri), textDocument, parseResult, state: DocumentState.Parsed, references: [] };
}

const text = 'case A {\n  width   40in\n  depth Sweep\n      side   Left\n  }\n';

describe('edits for an editor', () => {
    test('applied to the text they are the formatted text', () => {
        const document = documentOf(text);
        const edits = formatter.formatDocument(document);
        expect(TextDocument.applyEdits(document.textDocument, edits)).toBe(formatCase(text, services));
    });

    test('only what changes is edited', () => {
        expect(formatter.formatDocument(documentOf('case A {\n    width  40in\n    depth  Sweep\n}\n'))).toEqual([
            { range: { start: { line: 1, character: 9 }, end: { line: 1, character: 11 } }, newText: ' ' },
            { range: { start: { line: 2, character: 9 }, end: { line: 2, character: 11 } }, newText: ' ' },
        ]);
        expect(formatter.formatDocument(documentOf(formatCase(text, services)))).toEqual([]);
    });

    test('a range is formatted without the lines around it', () => {
        const document = documentOf(text);
        const edits = formatter.formatDocumentRange(document, {
            range: { start: { line: 2, character: 0 }, end: { line: 2, character: 13 } },
        });
        expect(TextDocument.applyEdits(document.textDocument, edits)).toBe(
            'case A {\n  width   40in\n    depth Sweep\n    side   Left\n  }\n',
        );
    });

    test('a closing brace finds its place when it is typed', () => {
        const document = documentOf(text);
        expect(formatter.formatOnTypeOptions.firstTriggerCharacter).toBe('}');
        const edits = formatter.formatDocumentOnType(document, { position: { line: 4, character: 3 } });
        expect(TextDocument.applyEdits(document.textDocument, edits)).toBe(
            'case A {\n  width   40in\n  depth Sweep\n      side   Left\n}\n',
        );
    });
});
