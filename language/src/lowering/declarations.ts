// Declarations: facts, recipes, values, designs. Knows what each kind may say; how a value is read is told elsewhere.
import {
    type BuildStatement,
    type DesignDeclaration,
    type FactDeclaration,
    type LetDeclaration,
    type ParameterDeclaration,
    type RecipeDeclaration,
    type Span,
    vocabulary,
} from 'casewright-shared/casework';
import type * as Ast from '../generated/ast.js';
import { checkArguments } from './arguments.js';
import { lowerArguments, lowerExpression } from './expressions.js';
import type { FileLowering } from './file-lowering.js';
import { isBuilt, isBuiltKind, reportNotBuilt } from './not-built.js';
import { lowerLike, PhraseCollector } from './phrases.js';
import { type Owner, PropertyCollector, reportStray } from './properties.js';
import { lowerWorkBlock } from './recipes.js';
import { nextWord } from './source-text.js';
import { lowerBody, lowerCount, wordAfterVisibility, wordsOfBodies } from './statements.js';
import { declarationSpan, describeName, reportUnknownName } from './unknown-names.js';
import { listWords, nearestWord } from './words.js';

interface Head {
    readonly span: Span;
    readonly kindSpan: Span;
    readonly nameSpan: Span;
    readonly doc: { readonly doc?: string };
    readonly private: { readonly private?: true };
}

/** Where the words of a head stand: `private material Walnut`. */
function headOf(file: FileLowering, node: { readonly visibility?: string; readonly name?: string } & Ast.Statement, kind: string): Head {
    const span = file.span(node);
    const kindStart = wordAfterVisibility(file, span.start, node.visibility);
    const kindSpan = file.word(kindStart, kind);
    const nameSpan = node.name === undefined ? kindSpan : file.word(nextWord(file.text, kindSpan.end), node.name);
    return { span, kindSpan, nameSpan, doc: file.doc(span.start), private: node.visibility === 'private' ? { private: true } : {} };
}

// ---------------------------------------------------------------- values and recipes

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

function lowerParameter(file: FileLowering, node: Ast.Parameter): ParameterDeclaration[] {
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

// ---------------------------------------------------------------- facts

export function lowerFact(file: FileLowering, node: Ast.Fact): FactDeclaration | undefined {
    const head = headOf(file, node, node.kind ?? '');
    const kind = Object.hasOwn(vocabulary.factKinds, node.kind) ? vocabulary.factKinds[node.kind] : undefined;
    if (!kind) {
        reportUnknownKind(file, node, head.kindSpan);
        return undefined;
    }
    if (kind.built === false) {
        reportNotBuilt(file, node, node.kind, head.kindSpan);
        return undefined;
    }
    if (!node.name && !kind.single) {
        file.report('PRP-002', head.kindSpan, {
            message: `${kind.called} needs a name`,
            hint: `write it so: \`${kind.example}\``,
            found: `\`${node.kind}\` alone`,
            needed: 'a name',
        });
        return undefined;
    }
    for (const parameter of node.parameters ?? []) {
        file.report('NAM-013', file.span(parameter), {
            message: `${kind.called} takes no parameters; a case does`,
            hint: 'take the parameters out',
            found: `\`${parameter.name}\``,
        });
    }
    const owner: Owner = { called: kind.called, table: kind.properties, kinds: [node.kind] };
    const properties = new PropertyCollector(file, owner);
    const builds: BuildStatement[] = [];
    const clauses: Ast.Clause[] = [...((node.phrases ?? []) as Ast.Clause[])];
    for (const member of node.body?.members ?? []) {
        if (member.$type === 'Property') {
            clauses.push(...properties.add(member));
        } else if (member.$type === 'Build' && kind.builds) {
            builds.push(...lowerBuild(file, member));
        } else if (member.$type.endsWith('Clause')) {
            clauses.push(member as Ast.Clause);
        } else {
            reportStray(file, member, kind.called);
        }
    }
    const read = lowerFactClauses(file, node, kind, owner, clauses);
    if (!read.like && !file.isBroken(head.span)) {
        properties.checkRequired(head.nameSpan, node.name === undefined ? kind.called : `\`${node.name}\``);
    }
    const name = file.names.nameOf(node);
    return {
        is: 'fact',
        id: name ? file.id(name) : `${file.label}#${node.kind}`,
        name: name?.name ?? node.kind,
        kind: node.kind,
        ...(node.title?.text === undefined ? {} : { title: node.title.text }),
        ...familyOf(file, node, kind),
        ...read,
        properties: properties.properties,
        builds,
        span: head.span,
        nameSpan: head.nameSpan,
        ...head.doc,
        ...head.private,
    };
}

function lowerFactClauses(
    file: FileLowering,
    node: Ast.Fact,
    kind: vocabulary.FactKind,
    owner: Owner,
    clauses: readonly Ast.Clause[],
): Pick<FactDeclaration, 'like' | 'of' | 'over'> {
    const read: { like?: string; of?: NonNullable<FactDeclaration['of']>; over?: string } = {};
    for (const clause of clauses) {
        const span = file.span(clause);
        if (clause.$type === 'LikeClause') {
            const like = lowerLike(file, clause, span, owner.kinds ?? []);
            if (like) {
                read.like = like.id;
            }
        } else if (clause.$type === 'OfClause' && kind.head && clause.target) {
            read.of = lowerHeadWord(file, clause.target, span, kind.head.of, node.kind);
        } else if (clause.$type === 'OverClause' && kind.head && clause.axis) {
            if (kind.head.over.includes(clause.axis)) {
                read.over = clause.axis;
            } else {
                const at = file.word(nextWord(file.text, span.start + 'over'.length), clause.axis);
                reportNoHeadWord(file, at, clause.axis, kind.head.over, node.kind);
            }
        } else {
            reportStray(file, clause, owner.called);
        }
    }
    return read;
}

function lowerHeadWord(
    file: FileLowering,
    target: Ast.Expression,
    span: Span,
    words: readonly string[],
    kind: string,
): NonNullable<FactDeclaration['of']> {
    const word = target.$type === 'Reference' ? target.target?.$refText : undefined;
    const at = file.span(target);
    if (word !== undefined && words.includes(word)) {
        return { is: 'word', word, span: at };
    }
    reportNoHeadWord(file, at, word ?? file.text.slice(at.start, at.end), words, kind);
    return { is: 'broken', span };
}

function reportNoHeadWord(file: FileLowering, at: Span, word: string, words: readonly string[], kind: string): void {
    const near = nearestWord(word, words);
    file.report('PRP-005', at, {
        message: `a ${kind} is of depth over height, or of depth over width, not of \`${word}\`${near ? `; did you mean \`${near}\`?` : ''}`,
        hint: `write it so: \`${vocabulary.factKinds[kind]?.example ?? ''}\``,
        found: `\`${word}\``,
        needed: listWords(words),
    });
}

function familyOf(file: FileLowering, node: Ast.Fact, kind: vocabulary.FactKind): { readonly family?: string } {
    const { family } = node;
    if (family === undefined) {
        return {};
    }
    const families = Object.keys(kind.families ?? {});
    if (families.includes(family)) {
        return { family };
    }
    const { start } = file.span(node);
    const at = file.word(nextWord(file.text, file.text.indexOf(':', start) + 1), family);
    const declared = file.visible.atTop(family, file.names);
    const near = nearestWord(family, families);
    const asLike =
        declared?.kind === node.kind ? `to copy from \`${family}\`, write \`like ${family}\` instead of \`: ${family}\`` : undefined;
    file.report('PRP-005', at, {
        message:
            families.length > 0
                ? `\`${family}\` is no sort of ${node.kind}${near ? `; did you mean \`${near}\`?` : ''}`
                : `${kind.called} has no sorts: nothing stands after \`:\``,
        found: `\`${family}\``,
        needed: families.length > 0 ? listWords(families, 'or', 20) : 'nothing',
        ...(asLike
            ? { hint: asLike }
            : near
              ? { fix: { title: `write \`${near}\``, span: at, text: near, safe: false } }
              : families.length > 0
                ? { hint: `there is ${listWords(families, 'and', 20)}` }
                : {}),
    });
    return {};
}

const kindWords = [
    ...Object.keys(vocabulary.factKinds),
    ...Object.keys(vocabulary.recipeKinds),
    ...Object.keys(vocabulary.partKinds),
    'let',
    'use',
    'every',
    'require',
    'allow',
];

function reportUnknownKind(file: FileLowering, node: Ast.Fact, span: Span): void {
    if (!node.kind) {
        return;
    }
    const near = nearestWord(node.kind, kindWords);
    file.report('PRP-006', span, {
        message: `nothing is called \`${node.kind}\`${near ? `; did you mean \`${near}\`?` : ''}`,
        found: `\`${node.kind}\``,
        needed: 'a word that begins a declaration',
        ...(near
            ? { fix: { title: `write \`${near}\``, span, text: near, safe: false } }
            : {
                  hint: `a file declares ${listWords(['material', 'species', 'goods', 'edging', 'joint', 'case', 'project', 'shop'], 'or')}`,
              }),
    });
}

// ---------------------------------------------------------------- builds

function lowerBuild(file: FileLowering, node: Ast.Build): BuildStatement[] {
    const span = file.span(node);
    const text = node.design?.$refText;
    const count = lowerCount(file, node.count);
    if (!text) {
        return [];
    }
    const at = file.spanOfCst(node.design.$refNode);
    const design = file.target(node.design);
    if (!design) {
        reportUnknownName(
            file,
            text,
            node,
            at,
            Object.keys(vocabulary.partKinds).filter((kind) => vocabulary.partKinds[kind]?.design),
        );
        return [];
    }
    if (!isBuilt(file, design)) {
        return [];
    }
    if (design.sort !== 'design') {
        file.report('NAM-007', at, {
            message: `\`${text}\` is ${describeName(design)}; a case is needed here`,
            hint: 'name a case that is declared by itself',
            found: describeName(design),
            needed: 'a case',
            related: [{ span: declarationSpan(file, design), message: `\`${text}\` is declared here` }],
        });
        return [];
    }
    const given = lowerArguments(file, node.arguments);
    checkArguments(file, design, given);
    return [
        {
            count,
            design: file.id(design),
            arguments: given,
            mirrored: node.mirrored !== undefined,
            ...(node.name === undefined ? {} : { name: node.name }),
            span,
        },
    ];
}

// ---------------------------------------------------------------- designs

export function lowerDesignDeclaration(file: FileLowering, node: Ast.DesignDeclaration): DesignDeclaration | undefined {
    const head = headOf(file, node, node.kind ?? '');
    const kind = vocabulary.partKinds[node.kind];
    if (!kind || !isBuiltKind(node.kind)) {
        reportNotBuilt(file, node, node.kind, head.kindSpan);
        return undefined;
    }
    const name = file.names.nameOf(node);
    const parameters = (node.parameters ?? []).flatMap((parameter) => lowerParameter(file, parameter));
    const owner: Owner = { called: kind.called, table: kind.properties, otherWords: wordsOfBodies, kinds: [node.kind] };
    const collector = new PhraseCollector(file, owner, false);
    collector.addAll(node.phrases ?? []);
    const statements = lowerBody(file, owner, node.body?.members, collector);
    return (
        name && {
            is: 'design',
            id: file.id(name),
            name: name.name,
            kind: node.kind,
            parameters,
            phrases: collector.phrases,
            statements,
            span: head.span,
            nameSpan: head.nameSpan,
            ...head.doc,
            ...head.private,
        }
    );
}
