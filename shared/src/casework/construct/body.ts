/** The statements of a case, in order: parts are put in, openings are named, sentences are kept for later. */
import { quantity, Rational, real } from '../../quantity/index.js';
import type { Expression, OpeningDeclaration, PartDeclaration, PartStatement, Span, Statement } from '../design/design.js';
import { CaseBuild } from './case-build.js';
import type { Construction } from './construction.js';
import { evaluate, evaluateCount, evaluateTruth, letCell } from './evaluate.js';
import { isAssemblyKind, kindOfPart } from './kinds.js';
import { derived } from './measures.js';
import { PlacedPart } from './placed-part.js';
import { reservesOfLeave } from './reserves.js';
import type { Room } from './room.js';
import { roomBeside } from './room-beside.js';
import { Scope } from './scope.js';
import { divideOpening } from './shares.js';
import { describeValue, type Value } from './value.js';

/** Where a statement stands: in which case, which opening, and which turns of which repeats. */
export interface BodyContext {
    readonly build: CaseBuild;
    readonly scope: Scope;
    readonly room: Room;
    readonly repeats: readonly number[];
}

/** More parts than this are a slip of the keyboard, or no piece of furniture. */
const mostParts = 20_000;

export function runBody(construction: Construction, statements: readonly Statement[], context: BodyContext): void {
    for (const statement of statements) hoist(construction, statement, context);
    for (const statement of statements) runStatement(construction, statement, context);
}

/** What holds for the whole block, wherever in it it is written. */
function hoist(construction: Construction, statement: Statement, { scope, build, room }: BodyContext): void {
    if (statement.is === 'let') {
        const cell = letCell(construction, statement.declaration, scope);
        scope.bind(statement.declaration.id, () => cell.value);
    } else if (statement.is === 'every') {
        build.addRule({ statement, scope, within: room === build.room ? undefined : room });
    }
}

function runStatement(construction: Construction, statement: Statement, context: BodyContext): void {
    switch (statement.is) {
        case 'part':
            addParts(construction, statement, context);
            break;
        case 'in':
            for (const selector of statement.selectors) {
                for (const place of placesNamed(construction, selector, context)) runBody(construction, statement.statements, place);
            }
            break;
        case 'if': {
            const said = statement.condition;
            const condition = construction.evaluateEarly(said.span, () => evaluateTruth(construction, said, context.scope));
            if (condition !== undefined) runBody(construction, condition ? statement.then : statement.otherwise, inner(context));
            break;
        }
        case 'repeat':
            runRepeat(construction, statement, context);
            break;
        case 'join':
        case 'hold':
        case 'load':
        case 'require':
        case 'allow':
            context.build.sentences.push({ statement, scope: context.scope });
            break;
        default:
            // let and every hold for the whole block, and were read before
            break;
    }
}

function inner(context: BodyContext): BodyContext {
    return { ...context, scope: new Scope(context.scope) };
}

function runRepeat(construction: Construction, statement: Extract<Statement, { is: 'repeat' }>, context: BodyContext): void {
    const range = construction.evaluateEarly(statement.range.span, () => evaluate(construction, statement.range, context.scope));
    if (!range) return;
    if (range.is !== 'range') {
        construction.report('UNI-006', {
            span: statement.range.span,
            message: `${describeValue(range)} is nothing to repeat over`,
            hint: 'write a range of whole numbers, such as `repeat i in 1..4`',
        });
        return;
    }
    const [first, last] = [real.toNumber(range.first.quantity.value), real.toNumber(range.last.quantity.value)];
    if (!Number.isInteger(first) || !Number.isInteger(last)) {
        construction.report('UNI-006', {
            span: statement.range.span,
            message: 'a repeat runs over whole numbers',
            found: `${first}..${last}`,
            needed: 'whole numbers, such as `1..4`',
        });
        return;
    }
    const turns = Math.max(0, last - first + 1);
    if (construction.turnCount + turns > mostParts) {
        reportTooMany(construction, statement.range.span, construction.turnCount + turns, 'turns');
        return;
    }
    construction.turnCount += turns;
    for (let turn = first; turn <= last; turn++) {
        const scope = new Scope(context.scope);
        scope.bind(statement.index.id, () => indexValue(statement.index.name, turn, statement.index.nameSpan));
        runBody(construction, statement.statements, { ...context, scope, repeats: [...context.repeats, turn] });
    }
}

function indexValue(name: string, value: number, span: Span): Value {
    const says = { kind: 'index' as const, about: [name, `${value}`], span };
    return { is: 'measure', measure: derived(quantity.plain(Rational.of(value)), says, []) };
}

function reportTooMany(construction: Construction, span: Span, count: number, of: 'parts' | 'turns'): void {
    construction.report('PLC-009', {
        span,
        message: `with these there are ${count} ${of === 'parts' ? 'parts' : 'turns of repeats'}; a design may have ${mostParts}`,
        found: `${count} ${of}`,
        needed: `at most ${mostParts}`,
        hint: 'look for a number that lost its decimal point, or split the design',
    });
}

/** The openings and cases that `in` speaks of. */
function placesNamed(construction: Construction, selector: Expression, context: BodyContext): readonly BodyContext[] {
    const target = selector.is === 'every' ? selector.target : selector;
    if (!target) {
        construction.report('PLC-010', {
            span: selector.span,
            message: 'parts go into openings and cases',
            hint: 'name the opening, such as `in every Bay`',
        });
        return [];
    }
    const value = evaluate(construction, target, context.scope);
    if (!value) return [];
    if (value.is === 'opening') {
        return [{ ...context, build: value.room.build, room: value.room, scope: new Scope(context.scope, value.room.build) }];
    }
    if (value.is === 'parts' && value.parts.length === 0) return [];
    const cases = value.is === 'parts' ? value.parts.flatMap((part) => (part.nested ? [part.nested] : [])) : [];
    if (cases.length === 0) {
        construction.report('PLC-010', {
            span: selector.span,
            message: `${describeValue(value)} is nothing to put parts in`,
            hint: 'name an opening (`as Left, Right` names those that a divider or shelf makes) or a case',
            needed: 'an opening or a case',
        });
        return [];
    }
    return cases.map((build) => ({ ...context, build, room: build.room, scope: new Scope(context.scope, build, build.scope) }));
}

function addParts(construction: Construction, statement: PartStatement, context: BodyContext): void {
    const { phrases } = statement;
    const places = phrases.inside ? placesNamed(construction, phrases.inside, context) : [context];
    for (const place of places) {
        const room = phrases.room ? roomBeside(construction, phrases.room, place) : place.room;
        if (room) addPartsTo(construction, statement, { ...place, room }, context.scope);
    }
}

/** Makes the parts of one statement, names them in the scope where it stands, and divides the opening where it says so. */
function addPartsTo(construction: Construction, statement: PartStatement, context: BodyContext, naming: Scope): void {
    const counts = statement.parts.map(({ count }) =>
        count ? construction.evaluateEarly(count.span, () => evaluateCount(construction, count, context.scope, 0)) : 1,
    );
    if (counts.some((count) => count === undefined)) return;
    const total = counts.reduce<number>((sum, count) => sum + (count ?? 0), 0);
    if (construction.partCount + total > mostParts) {
        const at = statement.parts.find((part) => part.count)?.count?.span ?? statement.span;
        reportTooMany(construction, at, construction.partCount + total, 'parts');
        return;
    }
    construction.partCount += total;
    const parts: PlacedPart[] = [];
    for (const [index, declaration] of statement.parts.entries()) {
        const group = groupOf(construction, statement, declaration, counts[index] ?? 0, { first: parts.length, total }, context);
        parts.push(...group);
        const name = declaration.name;
        const value = (): Value => ({ is: 'parts', parts: group, name });
        naming.bind(declaration.id, value);
        // a part put into a case is also a part of that case
        if (naming.build !== context.build) context.build.scope.bind(declaration.id, value);
    }
    for (const part of parts) context.build.addPart(part);
    const openings = divideOpening(construction, statement, parts, context);
    // a case is furnished where it stands, with the share that it has: what is in it may be counted by that
    for (const part of parts) furnishCase(construction, part, context);
    nameOpenings(construction, statement.phrases.openings, openings, naming);
}

function groupOf(
    construction: Construction,
    statement: PartStatement,
    declaration: PartDeclaration,
    count: number,
    place: { readonly first: number; readonly total: number },
    context: BodyContext,
): readonly PlacedPart[] {
    const isBuilt = kindOfPart(statement.kind) !== undefined || isAssemblyKind(statement.kind);
    if (!isBuilt) return [];
    const turns = context.repeats.map((turn) => `[${turn}]`).join('');
    return Array.from({ length: count }, (_, index) => {
        const number = declaration.count ? `[${index + 1}]` : '';
        const scope = new Scope(context.scope, context.build);
        const { index: counter } = declaration;
        if (counter) scope.bind(counter.id, () => indexValue(counter.name, index + 1, counter.nameSpan));
        const name = `${declaration.name}${turns}${number}`;
        const path = construction.freePath(`${context.room.path}.${name}`);
        const origin = { index: place.first + index, count: place.total };
        const part = new PlacedPart(construction, {
            declaration,
            statement,
            build: context.build,
            room: context.room,
            scope,
            path,
            name,
            order: construction.nextOrder(),
            place: origin,
        });
        part.hand = handOf(part);
        return part;
    });
}

/** Sides have a hand: of two in one statement the first is left; one alone says where it is. */
function handOf(part: PlacedPart): 'left' | 'right' | undefined {
    if (part.kind !== 'side') return undefined;
    if (part.place.count === 2) return part.place.index === 0 ? 'left' : 'right';
    for (const place of part.statement.phrases.at) {
        const word = place.distance?.is === 'word' ? place.distance.word : undefined;
        if (word === 'left' || word === 'right') return word;
        if (place.relation === 'right of') return 'left';
        if (place.relation === 'left of') return 'right';
    }
    return undefined;
}

/** A case inside a case takes the place of the part and is furnished at once, so that what follows may go into it. */
function furnishCase(construction: Construction, part: PlacedPart, context: BodyContext): void {
    if (!part.isAssembly) return;
    const { of } = part.statement.phrases;
    const [target, given] = of?.is === 'call' ? [of.receiver, of.arguments] : [of, []];
    const value = target && evaluate(construction, target, part.scope);
    if (!of || !target) {
        part.report('MAT-001', `nothing says which design \`${part.name}\` is`, {
            hint: `say so: \`case ${part.declaration.name} of Bookcase\``,
            needed: 'a design',
        });
        return;
    }
    if (!value) return;
    if (value.is === 'case') {
        construction.report('PLC-007', {
            span: of.span,
            message: `\`${value.build.declaration.name}\` would contain itself`,
            hint: 'put another design in it',
        });
        return;
    }
    if (value.is !== 'thing' || value.declaration.is !== 'design') {
        construction.report('NAM-007', {
            span: target.span,
            message: `${describeValue(value)} stands where a design is needed`,
            found: describeValue(value),
            needed: 'a case that is declared by itself',
        });
        return;
    }
    const design = value.declaration;
    const nested = new CaseBuild(construction, {
        declaration: design,
        arguments: given,
        outside: part.scope,
        path: part.path,
        name: part.name,
        span: part.statement.span,
        mirrored: part.statement.phrases.mirrored,
        place: part,
    });
    part.nested = nested;
    context.build.children.push(nested);
    const leaves = part.statement.phrases.leaves.map((said) => ({ said, scope: part.scope }));
    nested.keepFree(leaves.flatMap((leave) => reservesOfLeave(construction, { order: -1, build: nested }, leave)));
    nested.furnish();
    const scope = new Scope(part.scope, nested, nested.scope);
    runBody(construction, part.statement.statements, { build: nested, scope, room: nested.room, repeats: [] });
}

function nameOpenings(construction: Construction, names: readonly OpeningDeclaration[], openings: readonly Room[], naming: Scope): void {
    const [first] = names;
    if (!first) return;
    if (openings.length === 0) {
        construction.report('PLC-006', {
            span: first.span,
            message: 'nothing is divided here, so there are no openings to name',
            hint: 'shelves and dividers make openings',
        });
        return;
    }
    if (names.length !== openings.length) {
        construction.report('PLC-006', {
            span: { ...first.span, end: (names.at(-1) ?? first).span.end },
            message: `${openings.length} openings are made, and ${names.length === 1 ? 'one is' : `${names.length} are`} named`,
            found: `${names.length}`,
            needed: `${openings.length}`,
        });
    }
    for (const [index, name] of names.entries()) {
        const room = openings[index];
        if (room) naming.bind(name.id, () => ({ is: 'opening', room }));
    }
}
