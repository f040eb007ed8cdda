// Statements in the braces of a case or part, and the parts and blocks in them. Knows which statement is read by whom.
import { type EveryStatement, type PartStatement, type Statement, vocabulary } from 'casewright-shared/casework';
import type * as Ast from '../generated/ast.js';
import { lowerLet, lowerRecipe } from './declarations.js';
import { declaredParts } from './declared-parts.js';
import { lowerExpression, lowerSelectors } from './expressions.js';
import { lowerFact } from './facts.js';
import type { FileLowering } from './file-lowering.js';
import { wordAfterVisibility } from './heads.js';
import { reportMisplaced, reportStray } from './misplaced.js';
import { isBuiltKind, reportNotBuilt } from './not-built.js';
import { PhraseCollector } from './phrases.js';
import type { Owner } from './properties.js';
import { lowerAllow, lowerHold, lowerJoin, lowerLoad, lowerRequire } from './sentences.js';

/** Words that begin a line of a body, besides properties. */
export const wordsOfBodies: readonly string[] = [
    ...Object.keys(vocabulary.partKinds),
    ...['edge', 'every', 'join', 'hold', 'load', 'require', 'allow', 'leave', 'let', 'if', 'repeat', 'curve'],
];

/** What stands in the braces of a case or part: what describes it goes to the collector, the rest are statements. */
export function lowerBody(file: FileLowering, members: readonly Ast.Member[] | undefined, collector: PhraseCollector): Statement[] {
    const statements: Statement[] = [];
    const phrases: Ast.Phrase[] = [];
    for (const member of members ?? []) {
        if (isPhrase(member)) {
            phrases.push(member);
        } else if (member.$type === 'InStatement' && !member.body) {
            collector.addInside(member.selectors?.[0], file.span(member));
        } else if (member.$type === 'Leave') {
            collector.addLeave(member);
        } else {
            const statement = lowerStatement(file, member);
            if (statement) {
                statements.push(statement);
            }
        }
    }
    collector.addAll(phrases);
    return statements;
}

function isPhrase(member: Ast.Member): member is Ast.Phrase {
    return member.$type === 'Property' || member.$type === 'EdgeStatement' || member.$type.endsWith('Clause');
}

/** One statement; undefined where it is broken or not built, which has been reported. */
function lowerStatement(file: FileLowering, node: Exclude<Ast.Member, Ast.Phrase>): Statement | undefined {
    const span = file.span(node);
    switch (node.$type) {
        case 'Let': {
            const declaration = lowerLet(file, node);
            return declaration && { is: 'let', declaration };
        }
        case 'Fact': {
            const declaration = lowerFact(file, node);
            return declaration && { is: 'declare', declaration };
        }
        case 'Recipe': {
            const declaration = lowerRecipe(file, node);
            return declaration && { is: 'declare', declaration };
        }
        case 'PartDeclaration':
            return lowerPart(file, node);
        case 'EveryStatement':
            return lowerEveryStatement(file, node);
        case 'InStatement': {
            const selectors = lowerSelectors(file, node.selectors, span);
            const statements = lowerInner(file, node.body);
            return selectors.length > 0 ? { is: 'in', selectors, statements, span } : undefined;
        }
        case 'Join':
            return lowerJoin(file, node);
        case 'Hold':
            return lowerHold(file, node);
        case 'Load':
            return lowerLoad(file, node);
        case 'Require':
            return lowerRequire(file, node);
        case 'Allow':
            return lowerAllow(file, node);
        case 'If':
            return lowerIf(file, node);
        case 'Repeat': {
            const index = file.names.nameOf(node.index);
            const nameSpan = file.span(node.index);
            const range = lowerExpression(file, node.range, span);
            const statements = lowerInner(file, node.body);
            return (
                index && {
                    is: 'repeat',
                    index: { is: 'index', id: file.id(index), name: index.name, span: nameSpan, nameSpan },
                    range,
                    statements,
                    span,
                }
            );
        }
        case 'Build':
            reportMisplaced(file, node, 'build', 'cases are built by a project', 'put it in a `project` at the top of the file');
            return undefined;
        default:
            return undefined;
    }
}

/** The statements of `in`, `if` and `repeat`; what describes a thing does not stand there. */
function lowerInner(file: FileLowering, body: Ast.Body | undefined): Statement[] {
    const statements: Statement[] = [];
    for (const member of body?.members ?? []) {
        if (isPhrase(member) || member.$type === 'Leave' || (member.$type === 'InStatement' && !member.body)) {
            reportStray(file, member, 'parts in a block of their own');
        } else {
            const statement = lowerStatement(file, member);
            if (statement) {
                statements.push(statement);
            }
        }
    }
    return statements;
}

function lowerIf(file: FileLowering, node: Ast.If): Statement {
    const span = file.span(node);
    const then = lowerInner(file, node.then);
    const otherwise = node.otherwiseIf ? [lowerIf(file, node.otherwiseIf)] : lowerInner(file, node.otherwise);
    return { is: 'if', condition: lowerExpression(file, node.condition, span), then, otherwise, span };
}

function lowerPart(file: FileLowering, node: Ast.PartDeclaration): PartStatement | undefined {
    const span = file.span(node);
    const kindSpan = file.word(wordAfterVisibility(file, span.start, node.visibility), node.kind);
    const kind = vocabulary.partKinds[node.kind];
    if (!kind || !isBuiltKind(node.kind)) {
        reportNotBuilt(file, node, node.kind, kindSpan);
        return undefined;
    }
    const owner: Owner = { called: kind.called, table: kind.properties, otherWords: wordsOfBodies, kinds: [node.kind] };
    const collector = new PhraseCollector(file, owner, true);
    collector.addAll(node.phrases ?? []);
    const statements = lowerBody(file, node.body?.members, collector);
    return {
        is: 'part',
        kind: node.kind,
        parts: declaredParts(file, node, span, kindSpan),
        phrases: collector.phrases,
        statements,
        span,
        kindSpan,
    };
}

/** `every shelf { ... }`: the head chooses, the braces set. */
export function lowerEveryStatement(file: FileLowering, node: Ast.EveryStatement): EveryStatement | undefined {
    const span = file.span(node);
    const selectors = lowerSelectors(file, node.selectors, span);
    const owner: Owner = { called: '`every`', table: everyPart, otherWords: wordsOfBodies };
    const head = new PhraseCollector(file, owner, true);
    head.addAll(node.phrases ?? []);
    const { at, joint, openings, properties } = head.phrases;
    if (at.length > 0 || head.phrases.of || openings.length > 0 || properties.length > 0 || head.phrases.room || head.phrases.like) {
        const first = node.phrases?.find((phrase) => phrase.$type !== 'WithClause');
        if (first) {
            const { start } = file.span(first);
            const word = /^[A-Za-z]+/.exec(file.text.slice(start))?.[0] ?? '';
            file.report('NAM-013', file.word(start, word), {
                message: `the head of \`every\` chooses parts; \`${word}\` sets something`,
                hint: 'put it in braces: `every shelf { of Mdf }`',
                found: `\`${word}\``,
                needed: '`in`, `except`, `with`, or braces',
            });
        }
    }
    const collector = new PhraseCollector(file, owner, true);
    const statements = lowerBody(file, node.body?.members, collector);
    if (statements.length > 0) {
        const other = node.body?.members.find((member) => !isPhrase(member) && member.$type !== 'Leave');
        if (other) {
            reportStray(file, other, '`every`');
        }
    }
    return selectors.length > 0
        ? { is: 'every', selectors, ...(joint ? { joinedWith: joint } : {}), phrases: collector.phrases, span }
        : undefined;
}

/** What `every` may set: anything that some part may say. */
const everyPart: vocabulary.Properties = Object.assign({}, ...Object.values(vocabulary.partKinds).map((kind) => kind.properties));
