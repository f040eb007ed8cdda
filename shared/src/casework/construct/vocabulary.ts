/** What the vocabulary asks of the value of a property. */
import { type Dimension, dimension } from '../../quantity/index.js';
import { factKinds, type Properties, type Shape } from '../vocabulary/index.js';

/** The dimension that a property of a kind of fact takes, where it is always the same. */
export function dimensionOfProperty(kind: string, name: string): Dimension | undefined {
    const kinds: Readonly<Record<string, { readonly properties: Properties }>> = factKinds;
    const shape = kinds[kind]?.properties[name]?.shape;
    return shape && dimensionOfShape(shape);
}

function dimensionOfShape(shape: Shape): Dimension | undefined {
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
