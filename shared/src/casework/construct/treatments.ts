/** The steps of an edging or joint, by name or written in place. */
import type { Step, Treatment } from '../design/design.js';
import type { Construction } from './construction.js';

const noSteps: readonly Step[] = [];

export function stepsOf(construction: Construction, treatment: Treatment | undefined): readonly Step[] {
    if (!treatment) return noSteps;
    if (treatment.steps) return treatment.steps;
    const recipe = treatment.recipe === undefined ? undefined : construction.design.declarations.get(treatment.recipe);
    return recipe?.is === 'recipe' ? recipe.steps : noSteps;
}

/** The name of the recipe, or its steps' words. */
export function nameOfTreatment(construction: Construction, treatment: Treatment): string {
    const recipe = treatment.recipe === undefined ? undefined : construction.design.declarations.get(treatment.recipe);
    if (recipe?.is === 'recipe') return recipe.name;
    return stepsOf(construction, treatment)
        .map((step) => step.does)
        .join(', ');
}
