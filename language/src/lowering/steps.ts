// The steps of recipes, against the table of steps. Knows each step's value, options and connectives: not where a recipe is used.
import {
    type Expression as DesignExpression,
    type Place,
    type Property,
    type Relation,
    type Span,
    type Step,
    vocabulary,
} from 'casewright-shared/casework';
import type * as Ast from '../generated/ast.js';
import { lowerExpression, lowerPlaces } from './expressions.js';
import type { FileLowering } from './file-lowering.js';
import { reportStray } from './misplaced.js';
import { reportNotBuilt } from './not-built.js';
import { lowerProperties } from './properties.js';
import type { Asking } from './value-messages.js';
import { checked, lowerValue } from './values.js';
import { listWords, nearestWord } from './words.js';

type RecipeName = vocabulary.RecipeKindName;

export function lowerStep(file: FileLowering, node: Ast.Step, recipe: RecipeName): Step | undefined {
    const { kind } = node;
    if (!kind) {
        return undefined;
    }
    const span = file.span(node);
    const wordSpan = file.word(span.start, kind);
    const row = Object.hasOwn(vocabulary.stepKinds, kind) ? vocabulary.stepKinds[kind]! : undefined;
    if (!row) {
        reportUnknownStep(file, kind, wordSpan, recipe);
        return undefined;
    }
    if (row.built === false) {
        reportNotBuilt(file, node, kind, wordSpan);
        return undefined;
    }
    if (!row.in.includes(recipe)) {
        const of = vocabulary.recipeKinds[recipe].called;
        file.report('NAM-013', wordSpan, {
            message: `\`${kind}\` is no step of ${of}`,
            hint: `${of} has ${listWords(stepsOf(recipe), 'and', 20)}`,
            found: `\`${kind}\``,
            needed: `a step of ${of}`,
        });
        return undefined;
    }
    const read = lowerStepValue(file, node, kind, row, wordSpan);
    const clauses = lowerStepClauses(file, read.clauses, kind, row, span);
    const options = [...read.options, ...lowerOptions(file, node, kind, row, read.options)];
    const inBraces = node.body ? lowerProperties(file, { called: `\`${kind}\``, table: row.options }, node.body.members ?? []) : [];
    const of = read.of ?? clauses.of;
    if (row.of && !of && node.value && read.value?.is !== 'broken') {
        file.report('PRP-004', wordSpan, {
            message: `\`${kind}\` does not say what it is of`,
            hint: `write it so: \`${row.example}\``,
            found: `\`${kind}\` without \`of\``,
            needed: 'a material',
        });
    }
    return {
        does: kind,
        ...(read.value === undefined ? {} : { value: read.value }),
        ...(of === undefined ? {} : { of }),
        ...(clauses.for === undefined ? {} : { for: clauses.for }),
        ...(clauses.on === undefined ? {} : { on: clauses.on }),
        at: [...read.at, ...clauses.at],
        options: [...options, ...inBraces],
        span,
        wordSpan,
    };
}

interface ReadValue {
    readonly value?: DesignExpression;
    readonly of?: DesignExpression;
    readonly at: readonly Place[];
    readonly options: readonly Property[];
    /** Those that are still to be read. */
    readonly clauses: readonly Ast.Clause[];
}

/** The value of a step, with what stands in its place for short: `band Walnut 1/8in` is `band 1/8in of Walnut`. */
function lowerStepValue(file: FileLowering, node: Ast.Step, kind: string, row: vocabulary.StepKind, wordSpan: Span): ReadValue {
    const asking = { name: kind, example: row.example, shape: row.value ?? { is: 'nothing' as const } };
    const rest = { at: [], options: [], clauses: node.clauses ?? [] };
    const { value, extra } = node;
    if (!value) {
        if (row.valueRequired) {
            file.report('PRP-002', wordSpan, {
                message: `\`${kind}\` needs a value`,
                hint: `write it so: \`${row.example}\``,
                found: `\`${kind}\` alone`,
                needed: `\`${row.example}\``,
            });
        }
        return rest;
    }
    if (extra && value.$type === 'Reference') {
        const word = value.target?.$refText ?? '';
        const option = Object.hasOwn(row.options, word) ? row.options[word] : undefined;
        if (option) {
            return { ...rest, options: [lowerOption(file, word, option, file.span(value).start, extra)] };
        }
        if (row.of) {
            return { ...rest, of: lowerMaterial(file, value, kind, row.of), value: lowerValue(file, asking, extra, wordSpan) };
        }
    }
    if (extra) {
        const word = lowerExpression(file, value, wordSpan);
        const after = lowerExpression(file, extra, wordSpan);
        const span = file.between(word.span.start, after.span.end);
        return { ...rest, value: checked(file, asking, { is: 'worded', word, value: after, span }, node) };
    }
    return lowerSizeAndPlace(file, node, value, row, asking, wordSpan) ?? { ...rest, value: lowerValue(file, asking, value, wordSpan) };
}

/** `groove 1/4in deep, 1/2in above bottom`: after the comma begins the place. */
function lowerSizeAndPlace(
    file: FileLowering,
    node: Ast.Step,
    value: Ast.Expression,
    row: vocabulary.StepKind,
    asking: Asking,
    wordSpan: Span,
): ReadValue | undefined {
    const [clause, ...others] = node.clauses ?? [];
    if (value.$type !== 'List' || value.items?.length !== 2 || clause?.$type !== 'RoomClause' || !row.clauses.includes('at')) {
        return undefined;
    }
    const [size, distance] = value.items as [Ast.Expression, Ast.Expression];
    const start = file.span(distance).start;
    const place: Place = {
        distance: lowerExpression(file, distance, wordSpan),
        relation: clause.relation as Relation,
        target: lowerExpression(file, clause.target, wordSpan),
        span: file.between(start, file.span(clause).end),
    };
    return { value: lowerValue(file, asking, size, wordSpan), at: [place], options: [], clauses: others };
}

function lowerMaterial(file: FileLowering, node: Ast.Expression, kind: string, kinds: readonly string[]): DesignExpression {
    return lowerValue(file, { name: kind, example: `${kind} 1/8in of Walnut`, shape: { is: 'thing', kinds } }, node, file.span(node));
}

interface StepClauses {
    of?: DesignExpression;
    for?: DesignExpression;
    on?: DesignExpression;
    readonly at: Place[];
}

function lowerStepClauses(
    file: FileLowering,
    read: readonly Ast.Clause[],
    kind: string,
    row: vocabulary.StepKind,
    span: Span,
): StepClauses {
    const clauses: StepClauses = { at: [] };
    for (const clause of read) {
        switch (clause.$type) {
            case 'AtClause':
                if (row.clauses.includes('at')) {
                    clauses.at.push(...lowerPlaces(file, clause.places, span));
                    continue;
                }
                break;
            case 'OfClause':
                if (row.clauses.includes('of') && clause.target) {
                    clauses.of = lowerMaterial(file, clause.target, kind, row.of ?? []);
                    continue;
                }
                break;
            case 'ForClause':
                if (row.clauses.includes('for')) {
                    clauses.for = lowerExpression(file, clause.target, span);
                    continue;
                }
                break;
            case 'OnClause':
                if (row.clauses.includes('on')) {
                    clauses.on = lowerExpression(file, clause.target, span);
                    continue;
                }
                break;
        }
        reportStray(file, clause, `\`${kind}\``);
    }
    return clauses;
}

function lowerOptions(file: FileLowering, node: Ast.Step, kind: string, row: vocabulary.StepKind, before: readonly Property[]): Property[] {
    const stated = new Map(before.map((option) => [option.name, option.nameSpan]));
    const options: Property[] = [];
    for (const option of node.options ?? []) {
        const { name } = option;
        const { start } = file.span(option);
        const nameSpan = file.word(start, name ?? '');
        const known = Object.hasOwn(row.options, name) ? row.options[name] : undefined;
        const first = stated.get(name);
        if (first) {
            file.report('PRP-003', nameSpan, {
                message: `\`${name}\` is stated twice`,
                hint: 'keep one of the two',
                found: `\`${name}\` for the second time`,
                needed: `\`${name}\` once`,
                related: [{ span: first, message: `\`${name}\` is stated here first` }],
            });
        } else if (known && option.value) {
            stated.set(name, nameSpan);
            options.push(lowerOption(file, name, known, start, option.value));
        } else if (vocabulary.stepKinds[name]?.built === false) {
            reportNotBuilt(file, node, name, nameSpan);
            break; // what follows belongs to it
        } else if (Object.hasOwn(vocabulary.stepKinds, name)) {
            reportStepOnLine(file, name, kind, nameSpan);
            break; // what follows belongs to it
        } else {
            reportUnknownOption(file, name, kind, row, nameSpan);
        }
    }
    return options;
}

function lowerOption(file: FileLowering, name: string, row: vocabulary.PropertyRow, start: number, node: Ast.Expression): Property {
    const nameSpan = file.word(start, name);
    const value = lowerValue(file, { name, example: row.example, shape: row.shape }, node, nameSpan);
    return { name, value, at: [], properties: [], span: file.between(start, value.span.end), nameSpan };
}

function stepsOf(recipe: RecipeName): string[] {
    return Object.entries(vocabulary.stepKinds)
        .filter(([, row]) => row.in.includes(recipe) && row.built !== false)
        .map(([name]) => name);
}

/** `sand #180  coat Oil`: a word and a value after a step are read as said of it. */
function reportStepOnLine(file: FileLowering, name: string, kind: string, span: Span): void {
    file.report('PRP-001', span, {
        message: `\`${name}\` is a step of its own and cannot follow \`${kind}\` like this`,
        hint: `put \`;\` before it, or a line of its own`,
        found: `\`${name}\` as if it were said of \`${kind}\``,
        needed: 'a `;` between two steps',
        fix: { title: `put \`;\` before \`${name}\``, span: { ...span, end: span.start }, text: '; ', safe: true },
    });
}

function reportUnknownOption(file: FileLowering, name: string, kind: string, row: vocabulary.StepKind, span: Span): void {
    const known = Object.keys(row.options);
    const near = nearestWord(name, [...known, ...Object.keys(vocabulary.stepKinds)]);
    file.report('PRP-001', span, {
        message: `\`${kind}\` has no \`${name}\`${near ? `; did you mean \`${near}\`?` : ''}`,
        found: `\`${name}\``,
        needed: known.length > 0 ? listWords(known) : `the end of \`${kind}\``,
        ...(near
            ? { fix: { title: `write \`${near}\``, span, text: near, safe: false } }
            : { hint: known.length > 0 ? `it has ${listWords(known, 'and')}` : 'it has no options' }),
    });
}

function reportUnknownStep(file: FileLowering, kind: string, span: Span, recipe: RecipeName): void {
    const known = stepsOf(recipe);
    const near = nearestWord(kind, known);
    file.report('PRP-006', span, {
        message: `no step is called \`${kind}\`${near ? `; did you mean \`${near}\`?` : ''}`,
        found: `\`${kind}\``,
        needed: `a step of ${vocabulary.recipeKinds[recipe].called}`,
        ...(near
            ? { fix: { title: `write \`${near}\``, span, text: near, safe: false } }
            : { hint: `there is ${listWords(known, 'and', 20)}` }),
    });
}
