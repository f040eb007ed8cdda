// Where a recipe is used: by its name, or with its steps in place. Knows kinds of recipes: what a step says is told elsewhere.
import { type Span, type Step, type Treatment, vocabulary } from 'casewright-shared/casework';
import type * as Ast from '../generated/ast.js';
import type { FileLowering } from './file-lowering.js';
import { isBuilt } from './not-built.js';
import { lowerStep } from './steps.js';
import { declarationSpan, describeName, reportUnknownName } from './unknown-names.js';

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
    if (!isBuilt(file, target)) {
        return undefined;
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
    return { recipe: file.id(target), span };
}
