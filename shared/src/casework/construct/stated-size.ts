/** A size of a part that the text states. */
import type { Property } from '../design/design.js';
import type { Measure } from '../model/measure.js';
import type { Construction } from './construction.js';
import type { Scoped } from './described.js';
import { evaluateMeasure, expectLength } from './evaluate.js';
import { because, isPositive } from './measures.js';
import type { PlacedPart } from './placed-part.js';
import { sayIn } from './say-length.js';

/** The length that a property of a part states; what is no length above zero is reported, and unknown. */
export function statedSize(construction: Construction, part: PlacedPart, { said, scope }: Scoped<Property>): Measure | undefined {
    const { name, value, span } = said;
    const measure = value && expectLength(construction, evaluateMeasure(construction, value, scope), value.span);
    if (!measure) return undefined;
    if (isPositive(measure)) return because(measure, { kind: 'property', about: [name, part.name], span });
    const found = sayIn(part.build, measure.quantity);
    return construction.report('PLC-002', {
        span: value.span,
        message: `the ${name} of \`${part.name}\` is stated as ${found}`,
        found,
        needed: 'more than nothing',
        part: part.path,
    });
}
