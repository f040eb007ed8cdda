/** The boards that a part is glued up from, outer to inner, and how thick they are together. */
import type { Real } from '../../quantity/index.js';
import type { Expression, LeaveStatement, Property, Span } from '../design/design.js';
import type { Grain } from '../model/casework.js';
import type { Measure } from '../model/measure.js';
import type { Construction } from './construction.js';
import type { Scoped } from './described.js';
import { evaluate, evaluateCount } from './evaluate.js';
import { derived, total } from './measures.js';
import type { PlacedPart } from './placed-part.js';
import type { Scope } from './scope.js';
import { statedSize } from './stated-size.js';
import { describeValue } from './value.js';

export interface LayerPlan {
    readonly name: string | undefined;
    /** Declaration id of its material. */
    readonly material: string | undefined;
    readonly thickness: Measure | undefined;
    readonly grain: Grain;
    readonly leaves: readonly Scoped<LeaveStatement>[];
    readonly span: Span;
}

export function layersOfPart(construction: Construction, part: PlacedPart): readonly LayerPlan[] {
    const description = part.description.value;
    if (!description) return [];
    const grain = grainWord(description.properties.get('grain')?.said);
    if (description.layers.length > 0) return writtenLayers(construction, part, grain);
    const { of } = description;
    if (!of) {
        if (isCaseWithoutMaterial(part)) return reportCaseWithoutMaterial(construction, part);
        part.report('MAT-001', `\`${part.name}\` has no material`, {
            hint: `say what it is of: \`${part.kind}${part.declaration.unnamed ? '' : ` ${part.declaration.name}`} of ...\`, or \`every ${part.kind} { of ... }\``,
            needed: 'a material',
        });
        return [];
    }
    const material = materialOf(construction, of.said, of.scope);
    const layers = description.properties.get('layers');
    const count = layers?.said.value ? evaluateCount(construction, layers.said.value, layers.scope, 1) : 1;
    if (!material || count === undefined) return [];
    const span = layers?.said.span ?? of.said.span;
    if (count > mostLayers) return reportTooManyLayers(construction, count, span);
    const stated = count === 1 ? description.properties.get('thickness') : undefined;
    return Array.from({ length: count }, (_, index) => {
        const thickness = stated
            ? statedSize(construction, part, stated)
            : pieceThickness(construction, material, part, index + 1, of.said.span);
        return { name: undefined, material, thickness, grain: grain ?? construction.things.grainOf(material), leaves: [], span };
    });
}

/** Whether neither the case nor any part of it says what it is of: it was forgotten at the case, and not at each of its parts. */
function isCaseWithoutMaterial({ build }: PlacedPart): boolean {
    const boards = build.parts.filter((one) => !one.isAssembly);
    return boards.length > 1 && boards.every(({ description: { value } }) => value && !value.of && value.layers.length === 0);
}

function reportCaseWithoutMaterial(construction: Construction, { build }: PlacedPart): readonly LayerPlan[] {
    const { name, kind, nameSpan } = build.declaration;
    construction.report('MAT-001', {
        span: nameSpan,
        message: `neither \`${name}\` nor any part of it says what it is made of`,
        hint: `name the material at the case, \`${kind} ${name} of ...\`, or at each part`,
        needed: 'a material',
    });
    return [];
}

/** More layers than this are a slip of the keyboard. */
const mostLayers = 50;

function reportTooManyLayers(construction: Construction, count: number, span: Span): readonly LayerPlan[] {
    construction.report('PLC-009', {
        span,
        message: `${count} layers are more than a board is glued up from`,
        found: `${count}`,
        needed: `at most ${mostLayers}`,
        hint: 'look for a number that lost its decimal point',
    });
    return [];
}

function writtenLayers(construction: Construction, part: PlacedPart, grain: Grain | undefined): readonly LayerPlan[] {
    const description = part.description.value;
    return (description?.layers ?? []).map(({ said, scope }, index) => {
        const { declaration, phrases } = said;
        const of = phrases.of ?? description?.of?.said;
        const own = grainWord(phrases.properties.find((one) => one.name === 'grain'));
        const material = of && materialOf(construction, of, phrases.of ? scope : (description?.of?.scope ?? scope));
        const stated = phrases.properties.find((one) => one.name === 'thickness');
        if (!of) {
            part.report('MAT-001', `the layer \`${declaration.name}\` of \`${part.name}\` has no material`, {
                span: declaration.nameSpan,
                hint: `say what it is of: \`layer ${declaration.name} of ...\``,
                needed: 'a material',
            });
        }
        return {
            name: declaration.name,
            material,
            thickness: stated
                ? statedSize(construction, part, { said: stated, scope })
                : pieceThickness(construction, material, part, index + 1, declaration.nameSpan),
            grain: own ?? grain ?? (material === undefined ? 'length' : construction.things.grainOf(material)),
            leaves: phrases.leaves.map((leave) => ({ said: leave, scope })),
            span: declaration.span,
        };
    });
}

function grainWord(property: Property | undefined): Grain | undefined {
    const value = property?.value;
    return value?.is === 'word' && (value.word === 'length' || value.word === 'width' || value.word === 'none') ? value.word : undefined;
}

/** The declaration id of the material that an expression names. */
export function materialOf(construction: Construction, of: Expression, scope: Scope): string | undefined {
    const value = evaluate(construction, of, scope);
    if (!value) return undefined;
    if (value.is === 'thing' && value.declaration.kind === 'material') return value.declaration.id;
    return construction.report('NAM-007', {
        span: of.span,
        message: `${describeValue(value)} stands where a material is needed`,
        found: describeValue(value),
        needed: 'a material',
    });
}

/** The thickness of one piece of a material: the same sheet in two layers deviates twice, each piece for itself. */
function pieceThickness(
    construction: Construction,
    material: string | undefined,
    part: PlacedPart,
    number: number,
    span: Span,
): Measure | undefined {
    const thing = material === undefined ? undefined : construction.things.thing(material);
    if (!thing) return undefined;
    const { name } = thing;
    const stock = construction.things.thicknessOf(thing.id);
    if (!stock && construction.things.saysThickness(thing.id)) return undefined; // what it says is no length: that has been reported
    if (!stock) {
        return construction.report('MAT-005', {
            span,
            message: `\`${name}\` has no thickness, so what is made of it has no size`,
            hint: `give it a \`thickness\`, and an \`actual\` where a caliper reads another: \`material ${name} { thickness 3/4in ... }\``,
            needed: 'a material with a thickness',
        });
    }
    const { deviations } = stock.quantity;
    if (!deviations) return stock;
    const own = new Map<string, Real>();
    for (const [source, effect] of deviations) {
        const stated = construction.deviations.get(source);
        if (!stated) continue;
        const id = `${source} ${part.path}/${number}`;
        construction.deviate({ ...stated, id });
        own.set(id, effect);
    }
    return derived({ ...stock.quantity, deviations: own }, { kind: 'thickness', about: ['1', name] }, [stock]);
}

/** What the part says itself, or its layers together. */
export function thicknessOfPart(construction: Construction, part: PlacedPart): Measure | undefined {
    const own = part.description.value?.properties.get('thickness');
    if ((part.layers.value?.length ?? 0) <= 1) return own ? statedSize(construction, part, own) : thicknessOfLayers(construction, part);
    if (own) {
        part.report('PRP-003', `\`${part.name}\` states a thickness, and is glued up of layers that come to one of their own`, {
            span: own.said.span,
            hint: 'take the thickness out, or give it to the layers',
        });
    }
    return thicknessOfLayers(construction, part);
}

function thicknessOfLayers(construction: Construction, part: PlacedPart): Measure | undefined {
    const layers = part.layers.value ?? [];
    const [first] = layers;
    if (!first) return undefined;
    if (layers.length === 1) return first.thickness;
    const names = [
        ...new Set(layers.map((layer) => (layer.material === undefined ? '?' : construction.things.thing(layer.material)?.name))),
    ];
    const says = { kind: 'thickness' as const, about: [`${layers.length}`, names.join(' and ')], span: first.span };
    return total(
        layers.map((layer) => layer.thickness),
        says,
    );
}
