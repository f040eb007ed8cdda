/** Designs without a text: what `construct` is given, said briefly. Every span is one of its own, so that reports do not fall together. */
import type {
    Argument,
    Design,
    DesignDeclaration,
    Expression,
    FactDeclaration,
    PartDeclaration,
    PartStatement,
    Phrases,
    Place,
    Property,
    Span,
    Statement,
} from '../../src/casework/index.js';
import { readMeasure } from '../../src/quantity/index.js';

const file = 'by-hand.case';
let at = 0;

export function span(): Span {
    at += 10;
    return { file, start: at, end: at + 5 };
}

export function measure(text: string): Expression {
    const reading = readMeasure(text);
    if (!reading.ok) throw new Error(reading.problem.message);
    return { is: 'measure', quantity: reading.quantity, text, span: span() };
}
export function word(text: string): Expression {
    return { is: 'word', word: text, span: span() };
}
export function name(id: string): Expression {
    return { is: 'name', id, name: id.slice(id.lastIndexOf('.') + 1), span: span() };
}
export function call(receiver: Expression, ...values: Expression[]): Expression {
    return { is: 'call', receiver, arguments: values.map((value): Argument => ({ value, span: span() })), span: span() };
}

export function property(of: string, value?: Expression): Property {
    return { name: of, ...(value ? { value } : {}), at: [], properties: [], span: span(), nameSpan: span() };
}
export function place(distance: Expression): Place {
    return { distance, span: span() };
}
function phrases(more: Partial<Phrases> = {}): Phrases {
    return { at: [], openings: [], mirrored: false, properties: [], edges: [], leaves: [], ...more };
}

/** `side Left, Right`, with its phrases. */
export function part(
    kind: string,
    names: readonly string[],
    more: Partial<Phrases> = {},
    count?: Expression,
): PartStatement & { readonly is: 'part' } {
    const parts = names.map(
        (one): PartDeclaration => ({
            is: 'part',
            id: `${file}#C.${one}`,
            kind,
            name: one,
            unnamed: false,
            span: span(),
            nameSpan: span(),
            ...(count ? { count } : {}),
        }),
    );
    return { is: 'part', kind, parts, phrases: phrases(more), statements: [], span: span(), kindSpan: span() };
}

/** Plywood 3/4in thick, by the id `by-hand.case#Ply`. */
export const ply: FactDeclaration = {
    is: 'fact',
    id: `${file}#Ply`,
    name: 'Ply',
    kind: 'material',
    family: 'plywood',
    span: span(),
    nameSpan: span(),
    properties: [property('thickness', measure('3/4in'))],
    builds: [],
};

/** A case C of plywood, 40in wide, 60in high and 12in deep unless it says otherwise, with these statements. */
export function designOf(statements: readonly Statement[], sizes: Readonly<Record<string, Expression>> = {}): Design {
    const all = { width: measure('40in'), height: measure('60in'), depth: measure('12in'), ...sizes };
    const built: DesignDeclaration = {
        is: 'design',
        id: `${file}#C`,
        name: 'C',
        kind: 'case',
        parameters: [],
        phrases: phrases({ of: name(ply.id), properties: Object.entries(all).map(([of, value]) => property(of, value)) }),
        statements,
        span: span(),
        nameSpan: span(),
    };
    const parts = statements.flatMap((one) => (one.is === 'part' ? one.parts : []));
    return {
        file,
        files: [file],
        declarations: new Map([ply, built, ...parts].map((one) => [one.id, one])),
        defaults: [],
        requirements: [],
        allowances: [],
        cases: [built],
        used: new Set(),
    };
}
