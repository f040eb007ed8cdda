// Values, parameters and recipes that are given a name. Knows types by name: nothing of what values amount to.
import { type LetDeclaration, type ParameterDeclaration, type RecipeDeclaration, vocabulary } from 'casewright-shared/casework';
import type * as Ast from '../generated/ast.js';
import { lowerExpression } from './expressions.js';
import type { FileLowering } from './file-lowering.js';
import { headOf } from './heads.js';
import { reportNotBuilt } from './not-built.js';
import { lowerWorkBlock } from './recipes.js';
import { nextWord } from './source-text.js';
import { listWords, nearestWord } from './words.js';

export function lowerLet(file: FileLowering, node: Ast.Let): LetDeclaration | undefined {
    const name = file.names.nameOf(node);
    const head = headOf(file, node, 'let');
    const value = lowerExpression(file, node.value, head.span);
    checkType(file, node, node.type);
    return (
        name && {
            is: 'let',
            id: file.id(name),
            name: name.name,
            ...(node.type === undefined ? {} : { type: node.type }),
            value,
            span: head.span,
            nameSpan: head.nameSpan,
            ...head.doc,
            ...head.private,
        }
    );
}

export function lowerParameter(file: FileLowering, node: Ast.Parameter): ParameterDeclaration[] {
    const name = file.names.nameOf(node);
    if (!name) {
        return [];
    }
    const span = file.span(node);
    checkType(file, node, node.type);
    return [
        {
            is: 'parameter',
            id: file.id(name),
            name: name.name,
            ...(node.type === undefined ? {} : { type: node.type }),
            ...(node.value === undefined ? {} : { value: lowerExpression(file, node.value, span) }),
            span,
            nameSpan: file.word(span.start, name.name),
        },
    ];
}

function checkType(file: FileLowering, node: Ast.Let | Ast.Parameter, type: string | undefined): void {
    if (type === undefined || type in vocabulary.types) {
        return;
    }
    const { start } = file.span(node);
    const at = file.word(nextWord(file.text, file.text.indexOf(':', start) + 1), type);
    const near = nearestWord(type, Object.keys(vocabulary.types));
    file.report('PRP-005', at, {
        message: `no type is called \`${type}\`${near ? `; did you mean \`${near}\`?` : ''}`,
        found: `\`${type}\``,
        needed: listWords(Object.keys(vocabulary.types), 'or', 30),
        ...(near
            ? { fix: { title: `write \`${near}\``, span: at, text: near, safe: false } }
            : { hint: `there is ${listWords(Object.keys(vocabulary.types), 'and', 30)}` }),
    });
}

export function lowerRecipe(file: FileLowering, node: Ast.Recipe): RecipeDeclaration | undefined {
    const name = file.names.nameOf(node);
    const kind = node.kind as vocabulary.RecipeKindName;
    const head = headOf(file, node, node.kind ?? '');
    if (vocabulary.recipeKinds[kind]?.built === false) {
        reportNotBuilt(file, node, node.kind, head.kindSpan);
        return undefined;
    }
    const steps = lowerWorkBlock(file, node.body, kind);
    return (
        name && {
            is: 'recipe',
            id: file.id(name),
            name: name.name,
            kind,
            steps,
            span: head.span,
            nameSpan: head.nameSpan,
            ...head.doc,
            ...head.private,
        }
    );
}
