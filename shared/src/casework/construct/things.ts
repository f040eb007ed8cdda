/** Materials, species, goods and the rest, evaluated when first asked for. */
import { dimension } from '../../quantity/index.js';
import type { DeclarationId, Expression, FactDeclaration, Property, Span } from '../design/design.js';
import type { Grain } from '../model/casework.js';
import type { Measure } from '../model/measure.js';
import type { Thing, ThingValue } from '../model/things.js';
import { Cell } from './cell.js';
import type { Construction } from './construction.js';
import { evaluate, evaluateMeasure, expectDimension } from './evaluate.js';
import { because } from './measures.js';
import { Scope } from './scope.js';
import { dimensionOfShape, shapeOfProperty } from './vocabulary.js';

/** A property with those that it is in the block of, and the declaration that they are of. */
interface Stated {
    readonly property: Property;
    readonly path: readonly string[];
    readonly owner: FactDeclaration;
}

/** Properties that say how thick a material is, the truest first. */
const thicknesses: readonly string[] = ['actual', 'planed', 'thickness'];

export class Things {
    private readonly cells = new Map<DeclarationId, Cell<Thing>>();

    constructor(private readonly construction: Construction) {}

    /** The thing of a declaration; undefined if it is none. */
    thing(id: DeclarationId): Thing | undefined {
        this.construction.asks(id);
        let cell = this.cells.get(id);
        if (!cell) {
            const declaration = this.construction.design.declarations.get(id);
            if (declaration?.is !== 'fact') return undefined;
            cell = new Cell(this.construction, declaration.name, declaration.nameSpan, () => this.evaluate(declaration));
            this.cells.set(id, cell);
        }
        return cell.value;
    }

    /** One property by itself, for a declaration of which others are evaluated elsewhere. */
    stated(declaration: FactDeclaration, name: string): ThingValue | undefined {
        const property = declaration.properties.find((one) => one.name === name);
        return property && this.valueOf({ property, path: [name], owner: declaration }, new Scope(undefined));
    }

    property(id: DeclarationId, name: string): ThingValue | undefined {
        return this.thing(id)?.properties.get(name);
    }

    /** All that were asked for, in the order of asking, and what they name: the species of a material. */
    all(): ReadonlyMap<DeclarationId, Thing> {
        const all = new Map<DeclarationId, Thing>();
        // Asking for a thing adds its cell, and the loop comes to it later.
        for (const [id, cell] of this.cells) {
            if (!cell.value) continue;
            all.set(id, cell.value);
            for (const value of cell.value.properties.values()) if (value.is === 'thing') this.thing(value.id);
        }
        return all;
    }

    /** How thick stock of a material is: what a caliper reads, or else what it is planed to, or what it is called. */
    thicknessOf(id: DeclarationId): Measure | undefined {
        for (const name of thicknesses) {
            const value = this.property(id, name);
            if (value?.is === 'measure') return value.measure;
        }
        return undefined;
    }

    /** Whether the text says how thick it is, though perhaps with a value that could not be read. */
    saysThickness(id: DeclarationId): boolean {
        const declaration = this.construction.design.declarations.get(id);
        return declaration?.is === 'fact' && declaration.properties.some(({ name }) => thicknesses.includes(name));
    }

    grainOf(id: DeclarationId): Grain {
        const grain = this.property(id, 'grain');
        if (grain?.is === 'word' && (grain.word === 'width' || grain.word === 'none')) return grain.word;
        const family = this.thing(id)?.family;
        return family === 'fibreboard' || family === 'particleboard' || family === 'hardboard' || family === 'glass' ? 'none' : 'length';
    }

    private evaluate(declaration: FactDeclaration): Thing {
        const model = declaration.like === undefined ? undefined : this.thing(declaration.like);
        const properties = new Map(model?.properties);
        const scope = new Scope(undefined);
        for (const property of declaration.properties) {
            const value = this.valueOf({ property, path: [property.name], owner: declaration }, scope);
            if (value) properties.set(property.name, value);
        }
        const { id, kind, name, span, nameSpan, doc } = declaration;
        const family = declaration.family ?? model?.family;
        return {
            id,
            kind,
            name,
            properties,
            span,
            nameSpan,
            ...(family === undefined ? {} : { family }),
            ...(doc === undefined ? {} : { doc }),
        };
    }

    private valueOf(stated: Stated, scope: Scope): ThingValue | undefined {
        const { property, path, owner } = stated;
        const { span } = property;
        if (property.properties.length > 0) {
            const properties = new Map<string, ThingValue>();
            for (const inner of property.properties) {
                const value = this.valueOf({ property: inner, path: [...path, inner.name], owner }, scope);
                if (value) properties.set(inner.name, withEarlier(properties.get(inner.name), value));
            }
            return { is: 'block', properties, span };
        }
        if (!property.value) return { is: 'truth', value: true, span };
        return this.fromExpression(property.value, stated, scope);
    }

    private fromExpression(expression: Expression, stated: Stated, scope: Scope): ThingValue | undefined {
        const { span } = stated.property;
        const measure = (one: Expression): Measure | undefined => this.measureOf(one, stated, scope);
        switch (expression.is) {
            case 'list':
                if (expression.items.every((item) => item.is === 'by')) {
                    return {
                        is: 'sizes',
                        sizes: expression.items.map((item) => known(item.is === 'by' ? item.parts.map(measure) : [])),
                        span,
                    };
                }
                return this.measuresOf(expression.items, measure, span);
            case 'by':
                return { is: 'sizes', sizes: [known(expression.parts.map(measure))], span };
            case 'dimensions': {
                const measures = known(expression.items.map((item) => measure(item.value)));
                return { is: 'measures', measures, words: expression.items.map((item) => item.word), span };
            }
            case 'interval':
                return this.measuresOf([expression], measure, span);
            case 'rate': {
                const amount = evaluateMeasure(this.construction, expression.amount, scope);
                const { per, count } = expression;
                return amount && { is: 'rate', amount, per, ...(count === undefined ? {} : { count }), span };
            }
            case 'text':
                return { is: 'text', text: expression.text, span };
            case 'word':
                return { is: 'word', word: expression.word, span };
            case 'tradeSize':
                return { is: 'word', word: expression.text, span };
            case 'truth':
                return { is: 'truth', value: expression.value, span };
        }
        const value = evaluate(this.construction, expression, scope);
        if (value?.is === 'thing') return { is: 'thing', id: value.declaration.id, name: value.declaration.name, span };
        if (value?.is !== 'measure') return undefined;
        const found = this.inNeeded(value.measure, expression, stated);
        return found && { is: 'measure', measure: found, span };
    }

    /** Measures in a row; an interval gives both its ends, and its word: `5in to 9in wide, 8ft to 12ft long`. */
    private measuresOf(items: readonly Expression[], measure: (one: Expression) => Measure | undefined, span: Span): ThingValue {
        const measures = items.flatMap((item) => (item.is === 'interval' ? [measure(item.first), measure(item.last)] : [measure(item)]));
        const words = items.flatMap((item) => (item.is === 'interval' && item.word ? [item.word] : []));
        return { is: 'measures', measures: known(measures), words, span };
    }

    private measureOf(expression: Expression, stated: Stated, scope: Scope): Measure | undefined {
        const measure = evaluateMeasure(this.construction, expression, scope);
        return measure && this.inNeeded(measure, expression, stated);
    }

    /** The measure as the property of its owner, if it is of the dimension that the property takes. */
    private inNeeded(measure: Measure, expression: Expression, { property, path, owner }: Stated): Measure | undefined {
        const shape = shapeOfProperty(owner.kind, path);
        const needed = shape && dimensionOfShape(shape);
        const found = needed ? expectDimension(this.construction, measure, needed, expression.span) : measure;
        const named = because(found, { kind: 'property', about: [property.name, owner.name], span: property.span });
        if (named && named.quantity.dimension !== dimension.none) this.construction.note(property.span, named);
        return named;
    }
}

function known(measures: readonly (Measure | undefined)[]): readonly Measure[] {
    return measures.filter((measure) => measure !== undefined);
}

/** `doorway 32in x 80in; doorway 30in x 78in`: sizes that are said more than once are all kept. */
function withEarlier(earlier: ThingValue | undefined, value: ThingValue): ThingValue {
    return earlier?.is === 'sizes' && value.is === 'sizes' ? { ...value, sizes: [...earlier.sizes, ...value.sizes] } : value;
}
