/** How the surfaces of parts are finished: which finish a part gets, and what is done in it. */
import type { Property, RecipeDeclaration, Step } from '../design/design.js';
import type { Finish, FinishStep, Part } from '../model/casework.js';
import type { CaseBuild } from './case-build.js';
import type { Construction } from './construction.js';
import type { Scoped } from './described.js';
import { evaluate, evaluateCount } from './evaluate.js';
import type { PlacedPart } from './placed-part.js';
import { Scope } from './scope.js';
import { describeValue } from './value.js';

/** Declaration id of the finish of a part: its own, or else that of its case. Undefined where none is said, or `none`. */
export function finishOfPart(construction: Construction, part: PlacedPart): string | undefined {
    const said = part.description.value?.properties.get('finished') ?? finishedOfCase(part.build);
    const value = said?.said.value;
    if (!said || !value || (value.is === 'word' && value.word === 'none')) return undefined;
    const found = evaluate(construction, value, said.scope);
    if (!found) return undefined;
    if (found.is === 'thing' && found.declaration.kind === 'finish') return found.declaration.id;
    if (found.is === 'word' && found.word === 'none') return undefined;
    return construction.report('NAM-007', {
        span: value.span,
        message: `${describeValue(found)} stands where a finish is needed`,
        found: describeValue(found),
        needed: 'a finish',
    });
}

function finishedOfCase(build: CaseBuild): Scoped<Property> | undefined {
    for (let one: CaseBuild | undefined = build; one; one = one.parent) {
        const said = one.declaration.phrases.properties.find(({ name }) => name === 'finished');
        if (said) return { said, scope: one.scope };
    }
    return undefined;
}

/** The finishes that parts get, each by its declaration id, with their steps in the order of work. */
export function finishesOf(construction: Construction, parts: readonly Part[]): ReadonlyMap<string, Finish> {
    const finishes = new Map<string, Finish>();
    for (const { finish } of parts) {
        const declaration = finish === undefined || finishes.has(finish) ? undefined : construction.design.declarations.get(finish);
        if (declaration?.is === 'recipe') finishes.set(declaration.id, finishOf(construction, declaration));
    }
    return finishes;
}

function finishOf(construction: Construction, { name, steps, span }: RecipeDeclaration): Finish {
    return { name, steps: steps.flatMap((step) => stepOf(construction, step) ?? []), span };
}

function stepOf(construction: Construction, step: Step): FinishStep | undefined {
    const scope = new Scope(undefined);
    if (step.does === 'sand') {
        const grit = step.value?.is === 'tradeSize' ? step.value.text : undefined;
        return { does: 'sand', ...(grit === undefined ? {} : { grit }), span: step.span };
    }
    const value = step.value && evaluate(construction, step.value, scope);
    const coating = value?.is === 'thing' ? construction.things.thing(value.declaration.id)?.id : undefined;
    const said = step.options.find(({ name }) => name === 'count')?.value;
    const count = said ? evaluateCount(construction, said, scope, 1) : 1;
    return coating === undefined || count === undefined ? undefined : { does: 'coat', coating, count, span: step.span };
}
