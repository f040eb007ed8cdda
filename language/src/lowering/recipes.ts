// Recipes, their steps, and where one is used. Knows the table of steps.
import {
    type Expression as DesignExpression,
    type Place,
    type Property,
    type Span,
    type Step,
    type Treatment,
    vocabulary,
} from 'casewright-shared/casework';
import type * as Ast from '../generated/ast.js';
import { lowerExpression, lowerPlace } from './expressions.js';
import type { FileLowering } from './file-lowering.js';
import { listWords, nearestWord } from './near-word.js';
import { isBuilt } from './not-built.js';
import { lowerProperties, reportStray } from './properties.js';
import { declarationSpan, describeName, reportUnknownName } from './unknown-names.js';
import { checked, lowerValue } from './values.js';

type RecipeName = vocabulary.RecipeKindName;

export function lowerWorkBlock(file: FileLowering, block: Ast.WorkBlock | undefined, recipe: RecipeName): Step[] {
    return (block?.steps ?? []).flatMap((step) => lowerStep(file, step, recipe) ?? []);
}

/** An edging or joint: by its name, or its steps in place. Undefined where it cannot be read, or is not built. */
export function lowerTreatment(file: FileLowering, node: Ast.Treatment | undefined, recipe: RecipeName): Treatment | undefined {
    if (!node) {
        return undefined;
    }
    const span = file.span(node);
    switch (node.$type) {
        case 'RecipeInPlace':
            return { steps: lowerWorkBlock(file, node.body, recipe), span };
        case 'Step': {
            const step = lowerStep(file, node, recipe);
            return step && { steps: [step], span };
        }
        case 'RecipeReference':
            return lowerRecipeReference(file, node, recipe, span);
    }
}

function lowerRecipeReference(file: FileLowering, node: Ast.RecipeReference, recipe: RecipeName, span: Span): Treatment | undefined {
    const text = node.recipe?.$refText;
    if (!text) {
        return undefined;
    }
    const target = file.target(node.recipe);
    if (!target) {
        reportUnknownName(file, text, node, span, [recipe], Object.keys(vocabulary.stepKinds));
        return undefined;
    }
    if (target.sort === 'parameter' || target.sort === 'let') {
        return { recipe: file.id(target), span };
    }
    if (target.kind !== recipe) {
        const { called } = vocabulary.recipeKinds[recipe];
        file.report('NAM-007', span, {
            message: `\`${text}\` is ${describeName(target)}; ${called} is needed here`,
            hint: `name ${called}, or write its steps in braces: \`${vocabulary.recipeKinds[recipe].example.replace(/^\w+ \w+ /, '')}\``,
            found: `\`${text}\`, ${describeName(target)}`,
            needed: called,
            related: [{ span: declarationSpan(file, target), message: `\`${text}\` is declared here` }],
        });
        return undefined;
    }
    return isBuilt(file, target) ? { recipe: file.id(target), span } : undefined;
}

// ---------------------------------------------------------------- steps

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
        file.report('PRP-007', wordSpan, {
            message: `\`${kind}\` is read, but this edition does not build with it`,
            hint: 'leave it for a later edition, or say it another way',
            found: `\`${kind}\``,
        });
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
    const { value, of } = lowerStepValue(file, node, kind, row, wordSpan);
    const clauses = lowerStepClauses(file, node, kind, row, span);
    const options = [
        ...lowerOptions(file, node, kind, row),
        ...(node.body ? lowerProperties(file, { called: `\`${kind}\``, table: row.options }, node.body.members ?? []) : []),
    ];
    const material = of ?? clauses.of;
    return {
        does: kind,
        ...(value === undefined ? {} : { value }),
        ...(material === undefined ? {} : { of: material }),
        ...(clauses.for === undefined ? {} : { for: clauses.for }),
        ...(clauses.on === undefined ? {} : { on: clauses.on }),
        at: clauses.at,
        options,
        span,
        wordSpan,
    };
}

/** The value of a step; `band Walnut 1/8in` is `band 1/8in of Walnut`. */
function lowerStepValue(
    file: FileLowering,
    node: Ast.Step,
    kind: string,
    row: vocabulary.StepKind,
    wordSpan: Span,
): { value?: DesignExpression; of?: DesignExpression } {
    const asking = { name: kind, example: row.example, shape: row.value ?? { is: 'nothing' as const } };
    if (!node.value) {
        if (row.valueRequired && !file.isBroken(wordSpan)) {
            file.report('PRP-002', wordSpan, {
                message: `\`${kind}\` needs a value`,
                hint: `write it so: \`${row.example}\``,
                found: `\`${kind}\` alone`,
                needed: `\`${row.example}\``,
            });
        }
        return {};
    }
    if (node.extra && row.of && node.value.$type === 'Reference') {
        const of = lowerMaterial(file, node.value, kind, row.of);
        return { value: lowerValue(file, asking, node.extra, wordSpan), of };
    }
    if (node.extra) {
        const word = lowerExpression(file, node.value, wordSpan);
        const value = lowerExpression(file, node.extra, wordSpan);
        return { value: checked(file, asking, { is: 'worded', word, value, span: file.between(word.span.start, value.span.end) }) };
    }
    return { value: lowerValue(file, asking, node.value, wordSpan) };
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

function lowerStepClauses(file: FileLowering, node: Ast.Step, kind: string, row: vocabulary.StepKind, span: Span): StepClauses {
    const clauses: StepClauses = { at: [] };
    for (const clause of node.clauses ?? []) {
        switch (clause.$type) {
            case 'AtClause':
                if (row.clauses.includes('at')) {
                    clauses.at.push(...(clause.places ?? []).map((place) => lowerPlace(file, place, span)));
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

function lowerOptions(file: FileLowering, node: Ast.Step, kind: string, row: vocabulary.StepKind): Property[] {
    const options: Property[] = [];
    for (const option of node.options ?? []) {
        const name = option.name;
        const span = file.span(option);
        const nameSpan = file.word(span.start, name ?? '');
        const known = Object.hasOwn(row.options, name) ? row.options[name]! : undefined;
        if (known && option.value) {
            const before = options.find((one) => one.name === name);
            if (before) {
                file.report('PRP-003', nameSpan, {
                    message: `\`${name}\` is stated twice`,
                    hint: 'keep one of the two',
                    related: [{ span: before.nameSpan, message: `\`${name}\` is stated here first` }],
                });
                continue;
            }
            options.push({
                name,
                value: lowerValue(file, { name, example: known.example, shape: known.shape }, option.value, span),
                at: [],
                properties: [],
                span,
                nameSpan,
            });
            continue;
        }
        if (vocabulary.stepKinds[name]?.built === false) {
            file.report('PRP-007', nameSpan, {
                message: `\`${name}\` is read, but this edition does not build with it`,
                hint: 'leave it for a later edition, or say it another way',
                found: `\`${name}\``,
            });
            break; // what follows belongs to it
        }
        if (!file.isBroken(nameSpan)) {
            reportUnknownOption(file, name, kind, row, nameSpan);
        }
    }
    return options;
}

function stepsOf(recipe: RecipeName): string[] {
    return Object.entries(vocabulary.stepKinds)
        .filter(([, row]) => row.in.includes(recipe) && row.built !== false)
        .map(([name]) => name);
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
    if (file.isBroken(span)) {
        return;
    }
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
