// Makes documents of texts. Knows that an edit leaves most of a text alone: not how a text is read.
import { type AstNode, type Cancellation, DefaultLangiumDocumentFactory, type LangiumDocument, type ParseResult } from 'langium';
import type * as Ast from '../generated/ast.js';
import type { CasewrightLexer } from '../parser/casewright-lexer.js';
import type { CasewrightParser } from '../parser/casewright-parser.js';
import { parseEdited } from '../parser/edited-text.js';

export class CasewrightDocumentFactory extends DefaultLangiumDocumentFactory {
    override async update<Node extends AstNode = AstNode>(
        document: LangiumDocument<Node>,
        cancelToken: Cancellation.CancellationToken,
    ): Promise<LangiumDocument<Node>> {
        const text = await this.getUpdatedText(document, this.textDocuments?.get(document.uri.toString()), cancelToken);
        const { LangiumParser, Lexer } = this.serviceRegistry.getServices(document.uri).parser;
        const before = document.parseResult as unknown as ParseResult<Ast.File>;
        const isEdited = before.value.$cstNode && before.value.$cstNode.root.fullText !== text;
        const result =
            isEdited && parseEdited({ parser: LangiumParser as CasewrightParser, lexer: Lexer as CasewrightLexer }, before, text);
        if (result) {
            (document as { parseResult: ParseResult }).parseResult = result;
            (result.value as { $document?: LangiumDocument }).$document = document;
        }
        // parses the whole text where the tree is not of that text by now
        return super.update(document, cancelToken);
    }
}
