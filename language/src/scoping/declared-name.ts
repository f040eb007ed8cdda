// One declared name: what it is called, what it is, where it stands. Knows syntax nodes: not who may see the name.
import {
    type AstNode,
    type AstNodeDescription,
    type AstNodeLocator,
    CstUtils,
    type DocumentSegment,
    GrammarUtils,
    type LangiumDocument,
    type URI,
} from 'langium';
import type { Block } from './block.js';

/** What was declared. */
export type Sort = 'fact' | 'recipe' | 'design' | 'let' | 'parameter' | 'part' | 'index' | 'opening' | 'build' | 'use';

const start = { line: 0, character: 0 };
/** Of a node without text, such as one that the parser made up. */
const nowhere: DocumentSegment = { range: { start, end: start }, offset: 0, length: 0, end: 0 };

export class DeclaredName implements AstNodeDescription {
    constructor(
        readonly node: AstNode,
        readonly name: string,
        readonly sort: Sort,
        /** `material`, `shelf`, `case`; of the others their sort. */
        readonly kind: string,
        /** Names from the top of the file: `PotteryCase.Tier`. */
        readonly declarationPath: string,
        readonly document: LangiumDocument,
        private readonly locator: AstNodeLocator,
        readonly isPrivate: boolean,
        /** A part that is called by its kind. */
        readonly isUnnamed: boolean,
        /** Where it is declared. */
        readonly block: Block,
    ) {}

    /** Parts of the same kind in the same block that have no name either: their common name says nothing. */
    readonly namesakes: DeclaredName[] = [];

    get type(): string {
        return this.node.$type;
    }

    get documentUri(): URI {
        return this.document.uri;
    }

    /** Where the node is in the syntax tree. */
    get path(): string {
        return this.locator.getAstNodePath(this.node);
    }

    /** The name itself; of a part without one the word that is its kind. */
    get nameSegment(): DocumentSegment {
        const node = GrammarUtils.findNodeForProperty(this.node.$cstNode, this.isUnnamed ? 'kind' : 'name') ?? this.node.$cstNode;
        return CstUtils.toDocumentSegment(node) ?? nowhere;
    }

    get selectionSegment(): DocumentSegment {
        return CstUtils.toDocumentSegment(this.node.$cstNode) ?? nowhere;
    }
}
