// Expressions of the syntax tree as expressions of a design. Knows their shapes and what is wrong with a single one: no properties.
import {
    type Argument,
    type BinaryOperator,
    type Expression as DesignExpression,
    type Place,
    type Relation,
    type Span,
    vocabulary,
} from 'casewright-shared/casework';
import { type MeasureProblem, readMeasure } from 'casewright-shared/quantity';
import type * as Ast from '../generated/ast.js';
import { wordsOfValues } from '../scoping/choices.js';
import { reportDecimalComma } from './decimal-comma.js';
import type { FileLowering } from './file-lowering.js';
import { checkMember } from './members.js';
import { isBuilt } from './not-built.js';
import { reportUnknownName } from './unknown-names.js';

/** What may stand for a value besides declared names. */
export interface Wanted {
    /** Words that are taken without a declaration; by default all that the language knows. */
    readonly words?: ReadonlySet<string>;
    /** Kinds that an unknown name was probably of, for "did you mean". */
    readonly kinds?: readonly string[];
    /** A fraction without a unit is a number: `1 1/4` as a share. */
    readonly plainNumbers?: true;
}
const anything: Wanted = {};

export function lowerExpression(
    file: FileLowering,
    node: Ast.Expression | undefined,
    around: Span,
    wanted: Wanted = anything,
): DesignExpression {
    if (!node) {
        return { is: 'broken', span: around };
    }
    const lower = (part: Ast.Expression | undefined): DesignExpression => lowerExpression(file, part, span, wanted);
    if (node.$type === 'Reference') {
        return lowerReference(file, node, wanted);
    }
    const span = file.span(node);
    switch (node.$type) {
        case 'Literal':
            return lowerLiteral(file, node.text, span, wanted);
        case 'Text':
            return { is: 'text', text: node.text ?? '', span };
        case 'Truth':
            return { is: 'truth', value: node.word === 'true' || node.word === 'yes', span };
        case 'TradeSize':
            return { is: 'tradeSize', text: node.text, span };
        case 'Group':
            return lower(node.inner);
        case 'Binary':
            return lowerBinary(file, node, span, wanted);
        case 'Unary':
            return { is: 'unary', operator: node.operator === 'not' ? 'not' : '-', operand: lower(node.operand), span };
        case 'MemberAccess':
            return lowerMember(file, node, span);
        case 'Index':
            return { is: 'item', receiver: lower(node.receiver), index: lower(node.index), span };
        case 'Call':
            return { is: 'call', receiver: lower(node.receiver), arguments: lowerArguments(file, node.arguments), span };
        case 'Conditional':
            // biome-ignore lint/suspicious/noThenProperty: plain data; nobody awaits an expression
            return { is: 'conditional', condition: lower(node.condition), then: lower(node.then), otherwise: lower(node.otherwise), span };
        case 'Range':
            return { is: 'range', first: lower(node.first), last: lower(node.last), span };
        case 'List':
            if (reportDecimalComma(file, node.items ?? [])) {
                return { is: 'broken', span };
            }
            return { is: 'list', items: (node.items ?? []).map(lower), span };
        case 'By':
            return { is: 'by', parts: (node.parts ?? []).map(lower), span };
        case 'Dimensions': {
            const items = [
                { value: lower(node.first), word: node.word ?? '' },
                ...(node.more ?? []).map((one) => ({ value: lower(one.value), word: one.word ?? '' })),
            ];
            return { is: 'dimensions', items, span };
        }
        case 'Interval':
            return {
                is: 'interval',
                first: lower(node.first),
                last: lower(node.last),
                ...(node.word === undefined ? {} : { word: node.word }),
                ...(node.step === undefined ? {} : { step: lower(node.step) }),
                span,
            };
        case 'UpTo':
            return { is: 'upTo', target: lower(node.target), span };
        case 'Shares':
            return { is: 'shares', origin: lower(node.origin), sizes: lower(node.sizes), span };
        case 'Series':
            return lowerSeries(file, node, span);
        case 'Rate':
            return lowerRate(file, node, span, wanted);
        case 'Every':
            return lowerEvery(file, node, span);
        default:
            return { is: 'broken', span };
    }
}

/** A selector: which parts are meant. */
export function lowerSelectors(file: FileLowering, nodes: readonly Ast.Expression[] | undefined, around: Span): DesignExpression[] {
    return (nodes ?? []).map((node) => lowerExpression(file, node, around, selectable)).filter((selector) => selector.is !== 'broken');
}
const selectable: Wanted = { words: new Set(['case']), kinds: Object.keys(vocabulary.partKinds) };

export function lowerArguments(file: FileLowering, nodes: readonly Ast.Argument[] | undefined): Argument[] {
    return (nodes ?? []).map((node) => {
        const span = file.span(node);
        return { ...(node.name === undefined ? {} : { name: node.name }), value: lowerExpression(file, node.value, span), span };
    });
}

function lowerReference(file: FileLowering, node: Ast.Reference, wanted: Wanted): DesignExpression {
    const span = file.span(node);
    const text = node.target?.$refText;
    if (!text) {
        return { is: 'broken', span };
    }
    const target = file.target(node.target);
    if (target) {
        return isBuilt(file, target) ? { is: 'name', id: file.id(target), name: target.name, span } : { is: 'broken', span };
    }
    if ((wanted.words ?? wordsOfValues).has(text)) {
        return { is: 'word', word: text, span };
    }
    reportUnknownName(file, text, node, span, wanted.kinds);
    return { is: 'broken', span };
}

function lowerLiteral(file: FileLowering, text: string | undefined, span: Span, wanted: Wanted): DesignExpression {
    if (!text) {
        return { is: 'broken', span };
    }
    const reading = readMeasure(text);
    if (reading.ok) {
        return { is: 'measure', quantity: reading.quantity, text, span };
    }
    if (wanted.plainNumbers && reading.problem.plainNumber) {
        return { is: 'measure', quantity: reading.problem.plainNumber, text, span };
    }
    reportMeasure(file, reading.problem, span);
    return { is: 'broken', span };
}

const codeOfMeasure: Readonly<Record<MeasureProblem['code'], string>> = {
    'unknown-unit': 'UNI-002',
    'unit-missing': 'UNI-001',
    'division-by-zero': 'UNI-004',
    'sizes-run-together': 'TXT-001',
    'too-many-digits': 'TXT-001',
    'not-a-measure': 'TXT-001',
};

function reportMeasure(file: FileLowering, problem: MeasureProblem, span: Span): void {
    const { message, hint, found, needed, replacement } = problem;
    const at = file.between(span.start + (problem.start ?? 0), problem.end === undefined ? span.end : span.start + problem.end);
    const fix = replacement === undefined ? {} : { fix: { title: `write \`${replacement}\``, span, text: replacement, safe: false } };
    file.report(codeOfMeasure[problem.code], at, { message, hint, found, needed, ...fix });
}

function lowerBinary(file: FileLowering, node: Ast.Binary, span: Span, wanted: Wanted): DesignExpression {
    const left = lowerExpression(file, node.left, span, wanted);
    const right = lowerExpression(file, node.right, span, wanted);
    const operator = node.operator === '+/-' ? '±' : (node.operator as BinaryOperator);
    if ((operator === '/' || operator === '-') && right.is === 'measure' && left.is !== 'broken') {
        reportTwoReadings(file, operator, left, right);
    }
    return { is: 'binary', operator, left, right, span };
}

/** `a/3/4in` and `5ft-10in`: written so tight, each could be meant in two ways. */
function reportTwoReadings(
    file: FileLowering,
    operator: '/' | '-',
    left: DesignExpression,
    right: Extract<DesignExpression, { is: 'measure' }>,
): void {
    const between = file.text.slice(left.span.end, right.span.start);
    if (between !== operator) {
        return;
    }
    const at = file.between(left.span.start, right.span.end);
    const before = file.text.slice(left.span.start, left.span.end);
    const apart = `${before} ${operator} ${right.text}`;
    const fraction = operator === '/' ? /^([0-9]+)(\/.*)$/.exec(right.text) : undefined;
    if (fraction) {
        file.report('UNI-005', at, {
            message: `\`${before}/${right.text}\` is read as \`${before}\` divided by \`${right.text}\``,
            hint: `put spaces where you divide: \`${apart}\`, or \`${before}/${fraction[1]} ${fraction[2]?.replace('/', '/ ')}\``,
            found: 'two signs of division, and two ways to read them',
            needed: 'spaces around the sign that divides',
            fix: { title: `write \`${apart}\``, span: at, text: apart, safe: true },
        });
        return;
    }
    const together =
        left.is === 'measure' && /^[0-9]+ ?ft$/.test(left.text) && /in$|"$/.test(right.text) ? `${left.text} ${right.text}` : undefined;
    if (operator === '-' && together) {
        file.report('UNI-005', at, {
            message: `\`${before}-${right.text}\` is read as ${before} less ${right.text}`,
            hint: `write \`${apart}\` to subtract, or \`${together}\` for one length`,
            found: 'a subtraction that looks like feet and inches',
            needed: 'spaces around the `-`, or none of it',
            fix: { title: `write \`${together}\``, span: at, text: together, safe: false },
        });
    }
}

function lowerMember(file: FileLowering, node: Ast.MemberAccess, span: Span): DesignExpression {
    const receiver = lowerExpression(file, node.receiver, span);
    const member = node.member?.$refText;
    if (!member || receiver.is === 'broken') {
        return { is: 'broken', span };
    }
    const memberSpan = file.spanOfCst(node.member.$refNode);
    const target = file.target(node.member);
    if (target && !isBuilt(file, target)) {
        return { is: 'broken', span };
    }
    if (target && file.visible.declaredBy(node.receiver)?.sort === 'use') {
        return { is: 'name', id: file.id(target), name: target.name, span };
    }
    if (!target && !checkMember(file, node, receiver, member, memberSpan)) {
        return { is: 'broken', span };
    }
    return { is: 'member', receiver, member, ...(target ? { id: file.id(target) } : {}), span, memberSpan };
}

function lowerRate(file: FileLowering, node: Ast.Rate, span: Span, wanted: Wanted): DesignExpression {
    const count = node.count === undefined ? undefined : readMeasure(node.count);
    const number = count?.ok ? Number(count.written.canonical) : undefined;
    return {
        is: 'rate',
        amount: lowerExpression(file, node.amount, span, wanted),
        per: node.unit ?? (node.count === undefined ? '' : 'each'),
        ...(number === undefined || Number.isNaN(number) ? {} : { count: number }),
        span,
    };
}

function lowerEvery(file: FileLowering, node: Ast.Every, span: Span): DesignExpression {
    const kind =
        node.target?.$type === 'Reference' && node.target.target?.$refText in vocabulary.partKinds
            ? node.target.target.$refText
            : undefined;
    const target = kind === undefined ? lowerExpression(file, node.target, span, selectable) : undefined;
    if (target?.is === 'broken') {
        return target;
    }
    return {
        is: 'every',
        ...(kind === undefined ? {} : { kind }),
        ...(target === undefined ? {} : { target }),
        ...(node.within === undefined ? {} : { within: lowerExpression(file, node.within, span, selectable) }),
        except: lowerSelectors(file, node.except, span),
        span,
    };
}

// ---------------------------------------------------------------- places

/** The places of one `at`. */
export function lowerPlaces(file: FileLowering, nodes: readonly Ast.Place[] | undefined, around: Span): Place[] {
    const places = nodes ?? [];
    const isBroken = reportDecimalComma(
        file,
        places.map(({ distance }) => distance),
    );
    return isBroken ? [{ distance: { is: 'broken', span: around }, span: around }] : places.map((place) => lowerPlace(file, place, around));
}

function lowerPlace(file: FileLowering, node: Ast.Place, around: Span): Place {
    const span = node.$cstNode ? file.span(node) : around;
    return {
        ...(node.distance === undefined ? {} : { distance: lowerExpression(file, node.distance, span) }),
        ...(node.relation === undefined ? {} : { relation: node.relation as Relation }),
        ...(node.target === undefined ? {} : { target: lowerExpression(file, node.target, span) }),
        ...(node.each === undefined ? {} : { each: node.each }),
        ...(node.series === undefined ? {} : { series: lowerSeries(file, node.series, span) }),
        ...(node.scribe === undefined ? {} : { scribe: lowerExpression(file, node.scribe, span) }),
        span,
    };
}

function lowerSeries(file: FileLowering, node: Ast.Series, span: Span): Extract<DesignExpression, { is: 'series' }> {
    const place = (one: Ast.Place | undefined): Place => (one ? lowerPlace(file, one, span) : { distance: { is: 'broken', span }, span });
    return { is: 'series', step: lowerExpression(file, node.step, span), first: place(node.first), last: place(node.last), span };
}
