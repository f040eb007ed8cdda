// Statements in the body of a case or part. Knows each kind of sentence: how its words are read is told elsewhere.
import {
    type AllowStatement,
    type EveryStatement,
    type JoinStatement,
    type PartDeclaration,
    type PartStatement,
    type Statement,
    vocabulary,
} from 'casewright-shared/casework';
import { readMeasure } from 'casewright-shared/quantity';
import type * as Ast from '../generated/ast.js';
import { lowerFact, lowerLet, lowerRecipe } from './declarations.js';
import { lowerExpression, lowerSelectors } from './expressions.js';
import type { FileLowering } from './file-lowering.js';
import { isBuilt, isBuiltKind, reportNotBuilt } from './not-built.js';
import { PhraseCollector } from './phrases.js';
import type { Owner } from './properties.js';
import { reportStray } from './properties.js';
import { lowerTreatment } from './recipes.js';
import { nextWord } from './source-text.js';
import { declarationSpan, describeName, reportUnknownName } from './unknown-names.js';

/** Words that begin a line of a body, besides properties. */
export const wordsOfBodies: readonly string[] = [
    ...Object.keys(vocabulary.partKinds),
    ...['edge', 'every', 'join', 'hold', 'load', 'require', 'allow', 'leave', 'let', 'if', 'repeat', 'curve'],
];

/** What stands in the braces of a case or part: what describes it goes to the collector, the rest are statements. */
export function lowerBody(
    file: FileLowering,
    owner: Owner,
    members: readonly Ast.Member[] | undefined,
    collector: PhraseCollector,
): Statement[] {
    const statements: Statement[] = [];
    let phrases: Ast.Phrase[] = [];
    for (const member of members ?? []) {
        if (isPhrase(member)) {
            phrases.push(member);
        } else if (member.$type === 'InStatement' && !member.body) {
            collector.addInside(member.selectors?.[0], file.span(member));
        } else if (member.$type === 'Leave') {
            collector.addLeave(member);
        } else {
            const statement = lowerStatement(file, owner, member);
            if (statement) {
                statements.push(statement);
            }
        }
    }
    collector.addAll(phrases);
    phrases = [];
    return statements;
}

function isPhrase(member: Ast.Member): member is Ast.Phrase {
    return member.$type === 'Property' || member.$type === 'EdgeStatement' || member.$type.endsWith('Clause');
}

/** One statement; undefined where it is broken or not built, which has been reported. */
function lowerStatement(file: FileLowering, owner: Owner, node: Exclude<Ast.Member, Ast.Phrase>): Statement | undefined {
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
            const statements = lowerInner(file, owner, node.body);
            return selectors.length > 0 ? { is: 'in', selectors, statements, span } : undefined;
        }
        case 'Join':
            return lowerJoin(file, node);
        case 'Hold':
            return lowerHold(file, node);
        case 'Load':
            return { is: 'load', amount: lowerExpression(file, node.amount, span), on: lowerSelectors(file, node.on, span), span };
        case 'Require':
            return lowerRequire(file, node);
        case 'Allow':
            return lowerAllow(file, node);
        case 'If':
            return lowerIf(file, owner, node);
        case 'Repeat': {
            const index = file.names.nameOf(node.index);
            const nameSpan = file.span(node.index);
            const range = lowerExpression(file, node.range, span);
            const statements = lowerInner(file, owner, node.body);
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
function lowerInner(file: FileLowering, owner: Owner, body: Ast.Body | undefined): Statement[] {
    const statements: Statement[] = [];
    for (const member of body?.members ?? []) {
        if (isPhrase(member) || member.$type === 'Leave' || (member.$type === 'InStatement' && !member.body)) {
            reportStrayPhrase(file, member);
        } else {
            const statement = lowerStatement(file, owner, member);
            if (statement) {
                statements.push(statement);
            }
        }
    }
    return statements;
}

function reportStrayPhrase(file: FileLowering, member: Ast.Member): void {
    reportStray(file, member, 'parts in a block of their own');
}

function lowerIf(file: FileLowering, owner: Owner, node: Ast.If): Statement {
    const span = file.span(node);
    const then = lowerInner(file, owner, node.then);
    const otherwise = node.otherwiseIf ? [lowerIf(file, owner, node.otherwiseIf)] : lowerInner(file, owner, node.otherwise);
    return { is: 'if', condition: lowerExpression(file, node.condition, span), then, otherwise, span };
}

/** Reports a statement that cannot stand where it stands. */
export function reportMisplaced(file: FileLowering, node: Ast.Member | Ast.Statement, word: string, message: string, hint: string): void {
    const { start } = file.span(node);
    file.report('NAM-013', file.word(nextWord(file.text, start), word), { message, hint, found: `\`${word}\` here` });
}

// ---------------------------------------------------------------- parts

function lowerPart(file: FileLowering, node: Ast.PartDeclaration): PartStatement | undefined {
    const span = file.span(node);
    const kindSpan = file.word(wordAfterVisibility(file, span.start, node.visibility), node.kind);
    const kind = vocabulary.partKinds[node.kind];
    if (!kind || !isBuiltKind(node.kind)) {
        reportNotBuilt(file, node, node.kind, kindSpan);
        return undefined;
    }
    const owner: Owner = { called: kind.called, table: kind.properties, otherWords: wordsOfBodies, kinds: likeable(node.kind) };
    const collector = new PhraseCollector(file, owner, true);
    collector.addAll(node.phrases ?? []);
    const statements = lowerBody(file, owner, node.body?.members, collector);
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

function likeable(kind: string): readonly string[] {
    return [kind];
}

function declaredParts(
    file: FileLowering,
    node: Ast.PartDeclaration,
    span: PartStatement['span'],
    kindSpan: PartStatement['span'],
): PartDeclaration[] {
    const isPrivate = node.visibility === 'private' ? { private: true as const } : {};
    const doc = file.doc(span.start);
    if (!node.parts?.length) {
        const name = file.names.nameOf(node);
        return name
            ? [
                  {
                      is: 'part',
                      id: file.id(name),
                      name: name.name,
                      kind: node.kind,
                      unnamed: true,
                      span,
                      nameSpan: kindSpan,
                      ...doc,
                      ...isPrivate,
                  },
              ]
            : [];
    }
    return node.parts.flatMap((part) => {
        const name = file.names.nameOf(part);
        if (!name) {
            return [];
        }
        const whole = file.span(part);
        const nameSpan = file.word(whole.start, name.name);
        const index = part.index && file.names.nameOf(part.index);
        const indexSpan = file.span(part.index ?? part);
        const declaration: PartDeclaration = {
            is: 'part',
            id: file.id(name),
            name: name.name,
            kind: node.kind,
            unnamed: false,
            span: whole,
            nameSpan,
            ...(part.count === undefined ? {} : { count: lowerExpression(file, part.count, whole) }),
            ...(index ? { index: { is: 'index', id: file.id(index), name: index.name, span: indexSpan, nameSpan: indexSpan } } : {}),
            ...doc,
            ...isPrivate,
        };
        return [declaration];
    });
}

export function wordAfterVisibility(file: FileLowering, start: number, visibility: string | undefined): number {
    return visibility === undefined ? start : nextWord(file.text, start + visibility.length);
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
    const statements = lowerBody(file, owner, node.body?.members, collector);
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

// ---------------------------------------------------------------- sentences

function lowerJoin(file: FileLowering, node: Ast.Join): JoinStatement | undefined {
    const span = file.span(node);
    const left = lowerSelectors(file, node.left, span);
    const right = lowerSelectors(file, node.right, span);
    const joint = lowerTreatment(file, node.joint, 'joint');
    if (node.site !== undefined && node.site !== 'site') {
        file.report('TXT-001', span, {
            message: `a joint is made \`on site\`, not \`on ${node.site}\``,
            hint: 'write `on site`',
            found: `\`on ${node.site}\``,
            needed: '`on site`',
        });
    }
    return left.length > 0 && right.length > 0
        ? { is: 'join', left, right, ...(joint ? { joint } : {}), onSite: node.site === 'site', span }
        : undefined;
}

function lowerHold(file: FileLowering, node: Ast.Hold): Statement | undefined {
    const span = file.span(node);
    const on = lowerSelectors(file, node.on, span);
    const text = node.goods?.$refText;
    if (!text) {
        return undefined;
    }
    const goods = file.target(node.goods);
    const at = file.spanOfCst(node.goods.$refNode);
    if (!goods) {
        reportUnknownName(file, text, node, at, ['goods']);
        return undefined;
    }
    if (!isBuilt(file, goods)) {
        return undefined;
    }
    if (goods.kind !== 'goods') {
        file.report('NAM-007', at, {
            message: `\`${text}\` is ${describeName(goods)}; a case holds goods`,
            hint: 'declare what it holds: `goods Teapot { size 9in wide 6in deep 7in high }`',
            found: describeName(goods),
            needed: 'goods',
            related: [{ span: declarationSpan(file, goods), message: `\`${text}\` is declared here` }],
        });
        return undefined;
    }
    return { is: 'hold', count: lowerCount(file, node.count), goods: file.id(goods), on, span };
}

/** The number before what is held or built; 1 where there is none. */
export function lowerCount(file: FileLowering, node: Ast.Literal | undefined): number {
    if (!node?.text) {
        return 1;
    }
    const reading = readMeasure(node.text);
    const count = reading.ok && reading.written.form === 'whole' && !reading.written.unit ? Number(reading.written.canonical) : Number.NaN;
    if (Number.isSafeInteger(count) && count > 0) {
        return count;
    }
    file.report('UNI-006', file.span(node), {
        message: `\`${node.text}\` is no count`,
        hint: 'write a whole number, such as `2`',
        found: `\`${node.text}\``,
        needed: 'a whole number from 1 up',
    });
    return 1;
}

export function lowerRequire(file: FileLowering, node: Ast.Require): Extract<Statement, { is: 'require' }> {
    const span = file.span(node);
    return {
        is: 'require',
        condition: lowerExpression(file, node.condition, span),
        ...(node.reason?.text === undefined ? {} : { because: node.reason.text }),
        span,
    };
}

export function lowerAllow(file: FileLowering, node: Ast.Allow): AllowStatement | undefined {
    const span = file.span(node);
    if (!node.rule) {
        return undefined;
    }
    const ruleSpan = file.word(nextWord(file.text, span.start + 'allow'.length), node.rule);
    const on = lowerSelectors(file, node.on, span);
    if ((node.on?.length ?? 0) > 0 && on.length === 0 && node.on.every((selector) => !isKnown(file, selector))) {
        return undefined;
    }
    return { is: 'allow', rule: node.rule, ruleSpan, on, ...(node.reason?.text === undefined ? {} : { because: node.reason.text }), span };
}

/** Whether a selector names something, be it built or not. */
function isKnown(file: FileLowering, selector: Ast.Expression): boolean {
    const name = file.visible.declaredBy(selector);
    return name !== undefined && isBuilt(file, name);
}
