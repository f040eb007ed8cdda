// Facts: materials, species, goods, curves, the shop, the project. Knows what each kind may say: how a value is read is told elsewhere.
import { type BuildStatement, type FactDeclaration, type Span, vocabulary } from 'casewright-shared/casework';
import type * as Ast from '../generated/ast.js';
import { lowerBuild } from './builds.js';
import { checkPieces } from './curve-points.js';
import type { FileLowering } from './file-lowering.js';
import { headOf } from './heads.js';
import { reportStray } from './misplaced.js';
import { reportNotBuilt } from './not-built.js';
import { lowerLike } from './phrases.js';
import { type Owner, PropertyCollector } from './properties.js';
import { nextWord } from './source-text.js';
import { listWords, nearestWord } from './words.js';

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
    if (node.kind === 'curve') {
        checkPieces(file, properties.properties);
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
