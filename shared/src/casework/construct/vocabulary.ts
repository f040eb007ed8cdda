/** What the vocabulary asks of the value of a property. */
import { type Dimension, dimension } from '../../quantity/index.js';
import { factKinds, type Properties, type Shape } from '../vocabulary/index.js';

/** What a property of a kind of fact takes, or of a block that it has: `['caul', 'force']`. */
export function shapeOfProperty(kind: string, path: readonly string[]): Shape | undefined {
    const kinds: Readonly<Record<string, { readonly properties: Properties }>> = factKinds;
    let properties = kinds[kind]?.properties;
    let shape: Shape | undefined;
    for (const name of path) {
        shape = properties?.[name]?.shape;
        properties = shape && blockOf(shape);
    }
    return shape;
}

function blockOf(shape: Shape): Properties | undefined {
    if (shape.is === 'block') return shape.properties;
    return shape.is === 'either' ? shape.of.map(blockOf).find((one) => one !== undefined) : undefined;
}

/** The dimension that a property takes, where it is always the same. */

export function dimensionOfShape(shape: Shape): Dimension | undefined {
    switch (shape.is) {
        case 'quantity':
        case 'sizes':
        case 'dimensions':
        case 'interval':
            return dimension[shape.dimension];
        case 'list':
            return dimensionOfShape(shape.of);
        case 'worded':
            return dimensionOfShape(shape.value);
        case 'either': {
            const [first, ...rest] = new Set(shape.of.map(dimensionOfShape).filter((one) => one !== undefined));
            return rest.length === 0 ? first : undefined;
        }
        default:
            return undefined;
    }
}
