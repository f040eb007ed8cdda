// Langium's services for scopes, over our own tables of names. Knows both sides: decides nothing.
import {
    type AstNode,
    type AstNodeDescription,
    type CstNode,
    DefaultNameProvider,
    GrammarUtils,
    type LangiumDocument,
    type LocalSymbols,
    MapScope,
    type ReferenceInfo,
    type Scope,
    type ScopeComputation,
    type ScopeProvider,
} from 'langium';
import { isPartDeclaration } from '../generated/ast.js';
import type { VisibleNames } from './visible-names.js';

export class CasewrightScopeComputation implements ScopeComputation {
    constructor(private readonly names: VisibleNames) {}

    async collectExportedSymbols(document: LangiumDocument): Promise<AstNodeDescription[]> {
        return [...this.names.of(document).top.names.values()].filter((name) => name.sort !== 'use');
    }

    async collectLocalSymbols(document: LangiumDocument): Promise<LocalSymbols> {
        return this.names.of(document);
    }
}

/** Everything that is visible at a place; linking itself asks for one name and does not come this way. */
export class CasewrightScopeProvider implements ScopeProvider {
    constructor(private readonly names: VisibleNames) {}

    getScope({ container, property }: ReferenceInfo): Scope {
        if (property === 'member' && container.$type === 'MemberAccess') {
            return new MapScope(this.names.membersAt(container as Parameters<VisibleNames['membersAt']>[0]));
        }
        const nearest = new Map<string, AstNodeDescription>();
        for (const name of this.names.allAt(container)) {
            if (!nearest.has(name.name)) {
                nearest.set(name.name, name);
            }
        }
        return new MapScope(nearest.values());
    }
}

/** A part without a name is called by its kind. */
export class CasewrightNameProvider extends DefaultNameProvider {
    override getName(node: AstNode): string | undefined {
        return super.getName(node) ?? (isUnnamedPart(node) ? (node as { kind?: string }).kind : undefined);
    }

    override getNameNode(node: AstNode): CstNode | undefined {
        return super.getNameNode(node) ?? (isUnnamedPart(node) ? GrammarUtils.findNodeForProperty(node.$cstNode, 'kind') : undefined);
    }
}

function isUnnamedPart(node: AstNode): boolean {
    return isPartDeclaration(node) && (node.parts?.length ?? 0) === 0;
}
