// What this edition reads and does not build. Knows kinds: a thing that is not built is reported once, where it is declared.
import { type Span, vocabulary } from 'casewright-shared/casework';
import { type AstNode, AstUtils } from 'langium';
import type * as Ast from '../generated/ast.js';
import type { DeclaredName } from '../scoping/declared-name.js';
import type { FileLowering } from './file-lowering.js';

/** Whether a declared thing comes into the design: neither it nor what it stands in is of a kind that is not built. */
export function isBuilt(file: FileLowering, name: DeclaredName): boolean {
    let built = file.built.get(name);
    if (built === undefined) {
        file.built.set(name, true); // for a thing that stands in itself
        built = isBuiltNode(file, name.node);
        file.built.set(name, built);
    }
    return built;
}

function isBuiltNode(file: FileLowering, start: AstNode): boolean {
    for (let node: AstNode | undefined = start; node; node = node.$container) {
        switch (node.$type) {
            case 'PartDeclaration':
            case 'DesignDeclaration':
                if (!isBuiltKind((node as Ast.PartDeclaration).kind)) {
                    return false;
                }
                break;
            case 'Fact':
                if (vocabulary.factKinds[(node as Ast.Fact).kind]?.built === false || !((node as Ast.Fact).kind in vocabulary.factKinds)) {
                    return false;
                }
                break;
            case 'Recipe':
                if (vocabulary.recipeKinds[(node as Ast.Recipe).kind as vocabulary.RecipeKindName]?.built === false) {
                    return false;
                }
                break;
            case 'InStatement':
                if (!hasBuiltSelector(file, (node as Ast.InStatement).selectors)) {
                    return false;
                }
                break;
        }
    }
    return true;
}

/** Reports a word that is not built yet, once for each declaration or part. */
export function reportNotBuilt(file: FileLowering, node: AstNode, word: string, span: Span): void {
    const statement = AstUtils.getContainerOfType(node, isWhole) ?? node;
    if (file.notBuilt.has(statement)) {
        return;
    }
    file.notBuilt.add(statement);
    file.report('PRP-007', span, {
        message: `\`${word}\` is read, but this edition does not build it`,
        hint: 'take it out, or put `//` before it: documents are only made of a design without errors',
        found: `\`${word}\``,
        needed: 'something that this edition builds',
    });
}

function isWhole(node: AstNode): node is AstNode {
    return (
        node.$type === 'PartDeclaration' ||
        node.$type === 'Fact' ||
        node.$type === 'Recipe' ||
        node.$type === 'DesignDeclaration' ||
        node.$type === 'EdgeStatement' ||
        node.$type === 'Join'
    );
}

export function isBuiltKind(kind: string): boolean {
    return vocabulary.partKinds[kind]?.built !== false;
}

/** Whether one of the selectors speaks of something that is built, or of something unknown. */
function hasBuiltSelector(file: FileLowering, selectors: readonly Ast.Expression[] | undefined): boolean {
    return (selectors ?? []).some((selector) => {
        const name = file.visible.declaredBy(selector);
        return name === undefined || isBuilt(file, name);
    });
}
