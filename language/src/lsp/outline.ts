// The outline of a file: its things, the parts of its cases, openings and curves. Knows the shapes of statements.
import type { AstNode, LangiumDocument } from 'langium';
import type { DocumentSymbolProvider, NodeKindProvider } from 'langium/lsp';
import { CompletionItemKind, type DocumentSymbol, SymbolKind } from 'vscode-languageserver';
import type * as Ast from '../generated/ast.js';
import { DeclaredName, type Sort } from '../scoping/declared-name.js';
import type { VisibleNames } from '../scoping/visible-names.js';

const kinds: Readonly<Record<Sort, SymbolKind>> = {
    fact: SymbolKind.Object,
    recipe: SymbolKind.Method,
    design: SymbolKind.Class,
    let: SymbolKind.Constant,
    parameter: SymbolKind.Variable,
    part: SymbolKind.Struct,
    index: SymbolKind.Variable,
    opening: SymbolKind.Field,
    build: SymbolKind.Struct,
    use: SymbolKind.Module,
};

export class CasewrightOutline implements DocumentSymbolProvider {
    constructor(private readonly names: VisibleNames) {}

    getSymbols(document: LangiumDocument): DocumentSymbol[] {
        const file = document.parseResult.value as Ast.File;
        const names = this.names.of(document);
        return (file.statements ?? []).flatMap((statement) => this.symbolsOf(statement, (node) => names.nameOf(node)));
    }

    private symbolsOf(node: AstNode | undefined, nameOf: (node: AstNode) => DeclaredName | undefined): DocumentSymbol[] {
        const inside = (nodes: readonly (AstNode | undefined)[] | undefined): DocumentSymbol[] =>
            (nodes ?? []).flatMap((one) => this.symbolsOf(one, nameOf));
        const name = node && nameOf(node);
        switch (node?.$type) {
            case 'Fact': {
                const fact = node as Ast.Fact;
                const children = inside(fact.body?.members);
                return name
                    ? [symbol(name, fact, children, fact.family)]
                    : untitled(fact, fact.title?.text ?? fact.kind, fact.kind, children);
            }
            case 'DesignDeclaration': {
                const design = node as Ast.DesignDeclaration;
                return name
                    ? [symbol(name, design, [...inside(design.parameters), ...inside(design.body?.members)])]
                    : inside(design.body?.members);
            }
            case 'PartDeclaration': {
                const statement = node as Ast.PartDeclaration;
                const openings = inside(statement.phrases);
                const children = inside(statement.body?.members);
                const parts = statement.parts ?? [];
                if (parts.length === 0) {
                    return name ? [symbol(name, statement, children), ...openings] : children;
                }
                // Of several parts in one statement each has its own few words; what is in the braces belongs to all of them.
                const own = parts.flatMap((part) => {
                    const partName = nameOf(part);
                    return partName ? [symbol(partName, parts.length === 1 ? statement : part, parts.length === 1 ? children : [])] : [];
                });
                return [...own, ...(parts.length === 1 ? [] : children), ...openings];
            }
            case 'AsClause':
                return inside((node as Ast.AsClause).names);
            case 'Let':
            case 'Parameter':
            case 'Recipe':
            case 'OpeningName':
                return name ? [symbol(name, node, [])] : [];
            case 'Build':
                return name ? [symbol(name, node, [])] : [];
            case 'InStatement':
            case 'Repeat':
            case 'StrayBlock':
                return inside((node as Ast.InStatement).body?.members);
            case 'If': {
                const { then, otherwise, otherwiseIf } = node as Ast.If;
                return [...inside(then?.members), ...inside(otherwise?.members), ...inside([otherwiseIf])];
            }
            default:
                return [];
        }
    }
}

function symbol(name: DeclaredName, node: AstNode, children: DocumentSymbol[], more?: string): DocumentSymbol {
    const selectionRange = name.nameSegment?.range ?? node.$cstNode!.range;
    const detail = name.isUnnamed ? '' : [name.kind, more].filter((word) => word !== undefined).join(' : ');
    return { name: name.name, detail, kind: kinds[name.sort], range: node.$cstNode?.range ?? selectionRange, selectionRange, children };
}

function untitled(node: AstNode, name: string, detail: string, children: DocumentSymbol[]): DocumentSymbol[] {
    const range = node.$cstNode?.range;
    return range ? [{ name, detail, kind: SymbolKind.Object, range, selectionRange: range, children }] : children;
}

/** Kinds of symbols for the search over all files. */
export class CasewrightNodeKinds implements NodeKindProvider {
    getSymbolKind(node: Parameters<NodeKindProvider['getSymbolKind']>[0]): SymbolKind {
        return node instanceof DeclaredName ? kinds[node.sort] : SymbolKind.Object;
    }

    getCompletionItemKind(): CompletionItemKind {
        return CompletionItemKind.Reference;
    }
}
