/** What is done to the edges of a part, in the order of work, and what it takes off the core. */

import { dimension } from '../../quantity/index.js';
import type { Expression, Step } from '../design/design.js';
import type { Edge, EdgeName, EdgeStep } from '../model/casework.js';
import { wordsAt } from '../model/edge-words.js';
import type { Measure } from '../model/measure.js';
import type { Construction } from './construction.js';
import { evaluate, evaluateMeasure, expectDimension, expectWorkLength } from './evaluate.js';
import { reportNoSuchEdge } from './extents.js';
import { takenByBevel } from './front.js';
import { edgesOfPart, isFaceName } from './kinds.js';
import { materialOf } from './layers.js';
import { total } from './measures.js';
import type { PlacedPart } from './placed-part.js';
import { cutSize, nameOfTarget } from './reserves.js';
import type { Scope } from './scope.js';
import { nameOfTreatment, stepsOf } from './treatments.js';

type Does = EdgeStep['does'];
const treatments: readonly string[] = ['band', 'nosing', 'rabbet', 'groove', 'round', 'chamfer', 'bevel'] satisfies readonly Does[];

export function edgesOf(construction: Construction, part: PlacedPart): readonly Edge[] {
    const found: Edge[] = [];
    for (const { said, scope } of part.description.value?.edges ?? []) {
        const { treatment } = said;
        if (!treatment) continue;
        const steps = stepsOf(construction, treatment)
            .filter((step) => treatments.includes(step.does))
            .map((step) => edgeStep(construction, part, step, scope));
        for (const { name, span } of said.edges) {
            if (!isFaceName(name) || !edgesOfPart(part.kind).includes(name)) {
                reportNoSuchEdge(part, name, span);
                continue;
            }
            found.push({
                name,
                recipe: nameOfTreatment(construction, treatment),
                steps,
                takesOff: takesOff(part, steps, name, said.span),
                span: said.span,
            });
        }
    }
    return found;
}

function takesOff(part: PlacedPart, steps: readonly EdgeStep[], name: EdgeName, edge: Edge['span']): Measure | undefined {
    const strips = steps.filter((step) => step.does === 'band' || step.does === 'nosing');
    const [only, second] = strips;
    const span = only && !second ? wordsAt({ span: edge }, only) : edge;
    return total(
        strips.map((step) => (name === 'front' ? takenByBevel(part, step) : step.amount)),
        { kind: 'edge', about: [strips.map((step) => step.does).join(' and '), name], span },
    );
}

function edgeStep(construction: Construction, part: PlacedPart, step: Step, scope: Scope): EdgeStep {
    const does = step.does as Does;
    if (does === 'rabbet' || does === 'groove') return cutStep(construction, part, step, does, scope);
    const [measure, of] = measureAndMaterial(step);
    const said = measure && evaluateMeasure(construction, measure, scope);
    const amount =
        measure &&
        (does === 'bevel'
            ? expectDimension(construction, said, dimension.angle, measure.span)
            : expectWorkLength(construction, said, measure.span, does));
    const material = of && (does === 'band' || does === 'nosing') ? materialOf(construction, of, scope) : undefined;
    const width =
        does === 'band' || does === 'nosing'
            ? (optionOf(construction, step, 'high', scope) ?? highOf(construction, step, scope) ?? part.thickness.value)
            : undefined;
    return {
        does,
        amount,
        width,
        proud: optionOf(construction, step, 'proud', scope),
        span: step.span,
        ...(material === undefined ? {} : { material }),
    };
}

function cutStep(construction: Construction, part: PlacedPart, step: Step, does: Does, scope: Scope): EdgeStep {
    const target = step.for && part.build.findPart(nameOfTarget(step.for).id);
    const width = cutSize(construction, step, scope, 'wide') ?? target?.thickness.value;
    return { does, amount: cutSize(construction, step, scope, 'deep'), width, span: step.span, ...(target ? { for: target.path } : {}) };
}

/** `band 1/8in of Walnut`, or `band Walnut 1/8in`. */
function measureAndMaterial(step: Step): readonly [Expression | undefined, Expression | undefined] {
    const { value } = step;
    if (value?.is === 'worded') return [value.value, value.word];
    if (value?.is === 'dimensions') return [value.items.find((item) => item.word === 'thick')?.value ?? value.items[0]?.value, step.of];
    return [value, step.of];
}

function highOf(construction: Construction, step: Step, scope: Scope): Measure | undefined {
    const item = step.value?.is === 'dimensions' ? step.value.items.find((one) => one.word === 'high' || one.word === 'wide') : undefined;
    return item && expectWorkLength(construction, evaluateMeasure(construction, item.value, scope), item.value.span, item.word);
}

function optionOf(construction: Construction, step: Step, name: string, scope: Scope): Measure | undefined {
    const value = step.options.find((one) => one.name === name)?.value;
    const least = name === 'proud' ? 'nothing' : 'more';
    return value && expectWorkLength(construction, evaluateMeasure(construction, value, scope), value.span, name, least);
}

/** A trade size or other word in an option or value, as text. */
export function wordOf(construction: Construction, expression: Expression | undefined, scope: Scope): string | undefined {
    if (!expression) return undefined;
    if (expression.is === 'by') return wordOf(construction, expression.parts[0], scope);
    const value = expression.is === 'tradeSize' || expression.is === 'word' ? evaluate(construction, expression, scope) : undefined;
    return value?.is === 'tradeSize' ? value.text : value?.is === 'word' ? value.word : undefined;
}
