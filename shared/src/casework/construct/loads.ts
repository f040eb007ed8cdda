/** What the text says that parts carry: goods, or a load by itself, by length or by area. Knows what a load is: not how it bends a shelf. */
import { type Dimension, describeDimension, dimension, formatNumber, real } from '../../quantity/index.js';
import type { Expression, Statement } from '../design/design.js';
import type { CarriedLoad, Path } from '../model/casework.js';
import type { Measure } from '../model/measure.js';
import { partKinds } from '../vocabulary/parts.js';
import type { CaseBuild } from './case-build.js';
import type { Construction } from './construction.js';
import { evaluateMeasure } from './evaluate.js';
import type { Scope } from './scope.js';
import { selectParts } from './select.js';

type Said = Extract<Statement, { is: 'hold' | 'load' }>;

export function loadOf(construction: Construction, statement: Said, build: CaseBuild, scope: Scope): CarriedLoad {
    const parts = statement.on.flatMap((selector) => carriersOf(construction, selector, build, scope));
    const { span } = statement;
    if (statement.is === 'hold') return { is: 'goods', goods: statement.goods, count: statement.count, parts, span };
    const measure = evaluateMeasure(construction, statement.amount, scope);
    return { is: 'load', amount: measure && expectLoad(construction, measure, statement.amount), parts, span };
}

/** The parts that are meant, if things can stand on them. */
function carriersOf(construction: Construction, selector: Expression, build: CaseBuild, scope: Scope): readonly Path[] {
    const parts = selectParts(construction, selector, build, scope);
    const carriers = parts.filter((part) => part.kindOf?.thickness === 'z');
    const other = parts.find((part) => !carriers.includes(part));
    if (other) {
        const called = partKinds[other.kind]?.called ?? 'a part';
        construction.report('NAM-007', {
            span: selector.span,
            message: `\`${other.name}\` is ${called}, and ${other.isAssembly ? 'only the parts in it carry something' : `${called} carries nothing`}`,
            hint: 'name what it stands on, such as a shelf, a top or a bottom',
            found: called,
            needed: 'a part that lies: a shelf, a top, a bottom or a stretcher',
            related: [{ span: other.declaration.nameSpan, message: `\`${other.name}\` is declared here` }],
        });
    }
    return carriers.map(({ path }) => path);
}

/** By itself, by length and by area, as a mass and as a force. */
const loads: readonly Dimension[] = [
    dimension.mass,
    dimension.force,
    dimension.lineLoad,
    dimension.force.dividedBy(dimension.length),
    dimension.areaLoad,
    dimension.pressure,
];

function expectLoad(construction: Construction, measure: Measure, { span }: Expression): Measure | undefined {
    const { dimension: of, value } = measure.quantity;
    const needed = 'a mass or a force, by itself, by length or by area';
    const found = describeDimension(of);
    const hint = 'write it so: `load 40lb on Low`, `load 20 lb/ft on Low` or `load 25 lb/ft2 on Low`';
    if (of === dimension.none) {
        const { kind, about } = measure.why;
        const number = (kind === 'literal' ? about[0] : undefined) ?? formatNumber(value, { decimals: 6, zeros: 'dropped' });
        return construction.report('UNI-001', {
            span,
            message: `\`${number}\` has no unit: a load is needed here`,
            hint: `write \`${number}lb\`, \`${number} lb/ft2\`, \`${number}kg\` or \`${number} kg/m2\``,
            found,
            needed,
        });
    }
    if (!loads.includes(of)) {
        return construction.report('UNI-003', { span, message: `a load is needed here; this is ${found}`, hint, found, needed });
    }
    if (real.sign(value) > 0) return measure;
    return construction.report('PLC-002', {
        span,
        message: 'a load that is not above zero carries nothing',
        hint: 'write what it weighs, or take the line out',
        needed: 'a load above zero',
    });
}
