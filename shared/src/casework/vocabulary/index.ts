/** The vocabulary of the language: one table, from which checking, completion, hovers and the reference come. */
export { type FactKind, factKinds } from './facts.js';
export { type PartKind, partKinds, placesOnParts, type SizeOfPart, sizesOfParts, stagesOfParts } from './parts.js';
export type { ClauseWord, DimensionName, Properties, PropertyRow, Shape } from './row.js';
export { type RecipeKind, type RecipeKindName, recipeKinds, type StepKind, stepKinds } from './steps.js';
export {
    type BuiltInFunction,
    endWords,
    frontForms,
    functions,
    functionsOfCurves,
    placeWords,
    relations,
    reserveWords,
    roomFaces,
    shareWords,
    type TypeOfValue,
    types,
} from './words.js';
