// Where a declared name stands: where it is declared, and everywhere it is used, in all files. Knows references and tables of names.
import { type AstNode, AstUtils, CstUtils, GrammarUtils, type LangiumDocument, type LangiumDocuments, type Reference } from 'langium';
import type { Location, Range } from 'vscode-languageserver';
import type * as Ast from '../generated/ast.js';
import { DeclaredName } from '../scoping/declared-name.js';
import type { VisibleNames } from '../scoping/visible-names.js';
import type { WordAt } from './word-at.js';

/** One place where a name is written. */
export interface Occurrence {
    readonly document: LangiumDocument;
    readonly range: Range;
    /** The node that the name is written in. */
    readonly node: AstNode;
    readonly isDeclaration: boolean;
}

export class Occurrences {
    constructor(
        private readonly names: VisibleNames,
        private readonly documents: LangiumDocuments,
    ) {}

    /** The declared thing that a word names, where it is declared or where it is used. */
    declaredAt({ node, feature, leaf, text }: WordAt): DeclaredName | undefined {
        const reference = feature === undefined ? undefined : (node as unknown as Record<string, unknown>)[feature];
        if (isReference(reference)) {
            const name = nameOf(reference);
            const isAlias = name !== undefined && reference.$refText.startsWith(`${text}.`) && leaf.offset === reference.$refNode?.offset;
            return isAlias ? this.aliasAt(text, node) : name;
        }
        if (node.$type === 'Argument' && feature === 'name') {
            return this.parameterOf(node as Ast.Argument);
        }
        const name = this.names.of(AstUtils.getDocument(node)).nameOf(node);
        const segment = name?.nameSegment;
        return segment && segment.offset <= leaf.offset && leaf.end <= segment.end ? name : undefined;
    }

    /** Everywhere that a thing is named: first where it is declared, then file by file and line by line. */
    of(name: DeclaredName): readonly Occurrence[] {
        const declarations = this.declarationsOf(name);
        const nodes = new Set(declarations.map(({ node }) => node));
        const found: Occurrence[] = declarations.flatMap((one) => {
            const range = one.nameSegment?.range;
            return range ? [{ document: one.document, range, node: one.node, isDeclaration: true }] : [];
        });
        for (const document of this.documents.all) {
            const uses = [
                ...this.referencesIn(document, name, nodes),
                ...(name.sort === 'parameter' ? this.argumentsFor(name, document) : []),
            ];
            found.push(
                ...uses.sort((a, b) => a.range.start.line - b.range.start.line || a.range.start.character - b.range.start.character),
            );
        }
        return found;
    }

    private *referencesIn(document: LangiumDocument, name: DeclaredName, nodes: ReadonlySet<AstNode>): Iterable<Occurrence> {
        for (const reference of document.references as Reference[]) {
            const range = this.rangeIn(reference, name, nodes);
            if (range && reference.$refNode) {
                yield { document, range, node: reference.$refNode.astNode, isDeclaration: false };
            }
        }
    }

    /** Both branches of an `if` may declare a thing of one name: they are one thing. */
    private declarationsOf(name: DeclaredName): readonly DeclaredName[] {
        return this.names.of(name.document).all.filter((one) => one.declarationPath === name.declarationPath && one.name === name.name);
    }

    /** Where in a reference the name itself stands: `Lipped` of `shop.Lipped`, or `shop` if the name of the file is meant. */
    private rangeIn(reference: Reference, name: DeclaredName, nodes: ReadonlySet<AstNode>): Range | undefined {
        const { $refNode: node, $refText: text } = reference;
        const target = node && nameOf(reference);
        if (!target) {
            return undefined;
        }
        const leaves = CstUtils.flattenCst(node)
            .filter((leaf) => !leaf.hidden)
            .toArray();
        if (nodes.has(target.node)) {
            return leaves.at(-1)?.range;
        }
        const isThroughAlias = name.sort === 'use' && text.startsWith(`${name.name}.`) && this.aliasAt(name.name, node.astNode) === name;
        return isThroughAlias ? leaves[0]?.range : undefined;
    }

    private aliasAt(text: string, node: AstNode): DeclaredName | undefined {
        const found = this.names.lookup(text, node);
        return found instanceof DeclaredName && found.sort === 'use' ? found : undefined;
    }

    /** `face` of `Dovetailed(face = Walnut)`: arguments name parameters without referring to them. */
    private *argumentsFor(parameter: DeclaredName, document: LangiumDocument): Iterable<Occurrence> {
        for (const node of AstUtils.streamAst(document.parseResult.value)) {
            if (
                node.$type === 'Argument' &&
                (node as Ast.Argument).name === parameter.name &&
                this.parameterOf(node as Ast.Argument) === parameter
            ) {
                const range = GrammarUtils.findNodeForProperty(node.$cstNode, 'name')?.range;
                if (range) {
                    yield { document, range, node, isDeclaration: false };
                }
            }
        }
    }

    private parameterOf({ name, $container: call }: Ast.Argument): DeclaredName | undefined {
        const reference = call.$type === 'Build' ? call.design : call.receiver?.$type === 'Reference' ? call.receiver.target : undefined;
        const design = reference && nameOf(reference);
        if (design?.sort !== 'design') {
            return undefined;
        }
        const parameter = (design.node as Ast.DesignDeclaration).parameters?.find((one) => one.name === name);
        return parameter && this.names.of(design.document).nameOf(parameter);
    }
}

export function locationOfOccurrence({ document, range }: Occurrence): Location {
    return { uri: document.uri.toString(), range };
}

function nameOf(reference: Pick<Reference, '$nodeDescription'>): DeclaredName | undefined {
    return reference.$nodeDescription instanceof DeclaredName ? reference.$nodeDescription : undefined;
}

function isReference(value: unknown): value is Reference {
    return typeof value === 'object' && value !== null && '$refText' in value;
}
