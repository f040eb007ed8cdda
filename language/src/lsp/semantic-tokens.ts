// Colours by meaning, where letters alone do not say it: names by what they stand for, properties, steps, faces. Knows syntax trees.

import { vocabulary } from 'casewright-shared/casework';
import { type AstNode, CstUtils, GrammarUtils, type LeafCstNode } from 'langium';
import { AbstractSemanticTokenProvider, type SemanticTokenAcceptor } from 'langium/lsp';
import { SemanticTokenModifiers, SemanticTokenTypes } from 'vscode-languageserver';
import { DeclaredName, type Sort } from '../scoping/declared-name.js';
import { libraryModule } from '../workspace/library.js';

const typeOfSort: Readonly<Record<Sort, SemanticTokenTypes>> = {
    fact: SemanticTokenTypes.class,
    recipe: SemanticTokenTypes.function,
    design: SemanticTokenTypes.class,
    let: SemanticTokenTypes.variable,
    parameter: SemanticTokenTypes.parameter,
    part: SemanticTokenTypes.variable,
    index: SemanticTokenTypes.parameter,
    opening: SemanticTokenTypes.variable,
    build: SemanticTokenTypes.variable,
    use: SemanticTokenTypes.namespace,
};

/** By the type of the node and what the word is to it. */
const typeOfWord: Readonly<Record<string, SemanticTokenTypes>> = {
    'Property name': SemanticTokenTypes.property,
    'Option name': SemanticTokenTypes.property,
    'Argument name': SemanticTokenTypes.parameter,
    'Step kind': SemanticTokenTypes.function,
    'Fact kind': SemanticTokenTypes.keyword,
    'Recipe kind': SemanticTokenTypes.keyword,
    'DesignDeclaration kind': SemanticTokenTypes.keyword,
    'PartDeclaration kind': SemanticTokenTypes.keyword,
    'Fact family': SemanticTokenTypes.type,
    'Let type': SemanticTokenTypes.type,
    'Parameter type': SemanticTokenTypes.type,
    'EdgeStatement edges': SemanticTokenTypes.enumMember,
    'Leave faces': SemanticTokenTypes.enumMember,
    'Allow rule': SemanticTokenTypes.enumMember,
};

export class CasewrightSemanticTokens extends AbstractSemanticTokenProvider {
    protected override highlightElement(node: AstNode, accept: SemanticTokenAcceptor): undefined {
        if (node.$container) {
            return;
        }
        for (const leaf of node.$cstNode ? CstUtils.flattenCst(node.$cstNode) : []) {
            const token = leaf.hidden || !/^[A-Za-z_À-ɏ]/.test(leaf.text) ? undefined : tokenOf(leaf);
            if (token) {
                accept({ cst: leaf, ...token });
            }
        }
    }
}

interface Token {
    readonly type: SemanticTokenTypes;
    readonly modifier?: string[];
}

function tokenOf(leaf: LeafCstNode): Token | undefined {
    const { astNode: node } = leaf;
    const feature = GrammarUtils.findAssignment(leaf)?.feature;
    if (feature === undefined) {
        return undefined;
    }
    const value = (node as unknown as Record<string, unknown>)[feature];
    if (typeof value === 'object' && value !== null && '$refText' in value) {
        const { $nodeDescription: name } = value as { readonly $nodeDescription?: unknown };
        return name instanceof DeclaredName ? tokenOfName(name) : tokenOfBuiltIn(leaf.text);
    }
    const type = typeOfWord[`${node.$type} ${feature}`];
    if (type) {
        return { type };
    }
    const sort = feature === 'name' ? sortOfDeclaration[node.$type] : undefined;
    return sort ? { type: typeOfSort[sort], modifier: [SemanticTokenModifiers.declaration] } : undefined;
}

const sortOfDeclaration: Readonly<Record<string, Sort>> = {
    Fact: 'fact',
    Recipe: 'recipe',
    DesignDeclaration: 'design',
    Let: 'let',
    Parameter: 'parameter',
    Part: 'part',
    IndexName: 'index',
    OpeningName: 'opening',
    Build: 'build',
    Use: 'use',
};

function tokenOfName({ sort, documentUri, isUnnamed }: DeclaredName): Token {
    const modifiers = [
        ...(libraryModule(documentUri) === undefined ? [] : [SemanticTokenModifiers.defaultLibrary]),
        ...(sort === 'let' || sort === 'index' ? [SemanticTokenModifiers.readonly] : []),
    ];
    const type = isUnnamed ? SemanticTokenTypes.keyword : typeOfSort[sort];
    return modifiers.length > 0 ? { type, modifier: modifiers } : { type };
}

function tokenOfBuiltIn(text: string): Token | undefined {
    if (Object.hasOwn(vocabulary.functions, text) || Object.hasOwn(vocabulary.functionsOfCurves, text)) {
        return { type: SemanticTokenTypes.function, modifier: [SemanticTokenModifiers.defaultLibrary] };
    }
    if (Object.hasOwn(vocabulary.sizesOfParts, text) || Object.hasOwn(vocabulary.stagesOfParts, text)) {
        return { type: SemanticTokenTypes.property };
    }
    return {
        type:
            Object.hasOwn(vocabulary.partKinds, text) && !Object.hasOwn(vocabulary.roomFaces, text)
                ? SemanticTokenTypes.keyword
                : SemanticTokenTypes.enumMember,
    };
}
