/**
 * Reads a module of the built-in library through the language's own parser, and no further: what stands after a property's name, as it was
 * written. Independent of the property table, so that a slip in that table cannot hide one in the library.
 */
import { type Quantity, quantity, readMeasure, readUnit, real } from 'casewright-shared/quantity';
import { EmptyFileSystem } from 'langium';
import { createCasewrightServices } from '../../src/casewright-module.js';
import type { Expression, Fact, File, LikeClause, Property } from '../../src/generated/ast.js';
import { libraryTexts } from '../../src/workspace/library-texts.js';

const { casewright } = createCasewrightServices(EmptyFileSystem);

export interface LibraryFact {
    readonly kind: string;
    readonly name: string;
    readonly family: string | undefined;
    readonly doc: string | undefined;
    /** Its own properties and those it has from what it is like. */
    readonly properties: ReadonlyMap<string, Expression>;
}

/** The facts of a module such as `casewright.species`, in the order of writing. Fails at the first word that does not parse. */
export function readLibrary(module: string): ReadonlyMap<string, LibraryFact> {
    const text = libraryTexts.get(module);
    if (text === undefined) {
        throw new Error(`there is no module ${module}`);
    }
    const parsed = casewright.parser.LangiumParser.parse<File>(text);
    const problem = parsed.lexerErrors[0] ?? parsed.lexerReport?.diagnostics[0] ?? parsed.parserErrors[0];
    if (problem) {
        throw new Error(`${module} does not parse: ${problem.message}`);
    }
    const facts = new Map<string, LibraryFact>();
    for (const statement of parsed.value.statements) {
        if (statement.$type !== 'Fact' || statement.name === undefined || facts.has(statement.name)) {
            throw new Error(`${module} has a ${statement.$type} that is no fact, has no name or stands there twice`);
        }
        const like = statement.phrases.find((phrase): phrase is LikeClause => phrase.$type === 'LikeClause')?.target.$refText;
        const model = like === undefined ? undefined : facts.get(like);
        if (like !== undefined && model === undefined) {
            throw new Error(`${statement.name} is like ${like}, which does not stand before it in ${module}`);
        }
        facts.set(statement.name, readFact(statement, statement.name, text, model));
    }
    return facts;
}

function readFact(fact: Fact, name: string, text: string, model: LibraryFact | undefined): LibraryFact {
    const properties = new Map(model?.properties);
    const own = (fact.body?.members ?? []).filter((member): member is Property => member.$type === 'Property');
    const stated = new Set<string>();
    for (const property of own) {
        if (property.value === undefined || stated.has(property.name)) {
            throw new Error(`${name} states ${property.name} twice or without a value`);
        }
        stated.add(property.name);
        properties.set(property.name, property.value);
    }
    const before = text.slice(0, fact.$cstNode?.offset).trimEnd();
    const lastLine = before.slice(before.lastIndexOf('\n') + 1);
    return {
        kind: fact.kind,
        name,
        family: fact.family ?? model?.family,
        doc: /^\/\/\/ (.+)$/.exec(lastLine)?.[1],
        properties,
    };
}

/** The text of a property, or undefined if the fact does not have it. */
export function textOf(fact: LibraryFact, property: string): string | undefined {
    const value = fact.properties.get(property);
    return value?.$type === 'Text' ? value.text : undefined;
}

/** The word of a property: one that is no measure and no text. */
export function wordOf(fact: LibraryFact, property: string): string | undefined {
    const value = fact.properties.get(property);
    return value?.$type === 'Reference' ? value.target.$refText : value?.$type === 'TradeSize' ? value.text : undefined;
}

/** The value of a property in a unit; a plain number without one. Undefined if the fact does not have it. */
export function amountOf(fact: LibraryFact, property: string, unit = ''): number | undefined {
    const value = fact.properties.get(property);
    return value === undefined ? undefined : valueIn(measureOf(value), unit);
}

/** `0.720in ± 0.010in`, and `48in x 96in`, in a unit. */
export function pairOf(fact: LibraryFact, property: string, unit: string): readonly [number, number] | undefined {
    const value = fact.properties.get(property);
    const [first, second] = value?.$type === 'By' ? value.parts : value?.$type === 'Binary' ? [value.left, value.right] : [];
    return first && second && [valueIn(measureOf(first), unit), valueIn(measureOf(second), unit)];
}

function measureOf(expression: Expression): Quantity {
    if (expression.$type !== 'Literal') {
        throw new Error(`${expression.$cstNode?.text} is not a measure`);
    }
    const read = readMeasure(expression.text);
    if (!read.ok) {
        throw new Error(read.problem.message);
    }
    return read.quantity;
}

function valueIn(measure: Quantity, symbol: string): number {
    const unit = symbol === '' ? undefined : readUnit(symbol);
    if (symbol !== '' && unit?.dimension !== measure.dimension) {
        throw new Error(`a quantity in ${measure.unit?.symbol} is none in ${symbol}`);
    }
    return real.toNumber(unit ? quantity.valueIn(measure, unit) : measure.value);
}
