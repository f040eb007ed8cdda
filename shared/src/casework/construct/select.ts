/** Which parts a selector means: `every shelf in Bay except Floor`, a group, one part, the parts in an opening. */
import type { Expression } from '../design/design.js';
import type { CaseBuild } from './case-build.js';
import type { Construction } from './construction.js';
import { allParts } from './descendants.js';
import { evaluate } from './evaluate.js';
import type { PlacedPart } from './placed-part.js';
import type { Scope } from './scope.js';
import { describeValue } from './value.js';

export function selectParts(construction: Construction, selector: Expression, build: CaseBuild, scope: Scope): readonly PlacedPart[] {
    if (selector.is === 'every') return selectEvery(construction, selector, build, scope);
    const value = evaluate(construction, selector, scope);
    if (!value) return [];
    if (value.is === 'parts') return value.parts;
    if (value.is === 'face' && value.part) return [value.part];
    return (
        construction.report('NAM-007', {
            span: selector.span,
            message: `${describeValue(value)} stands where a part is needed`,
            found: describeValue(value),
            needed: 'a part, a group of parts, or `every` and a kind',
        }) ?? []
    );
}

function selectEvery(
    construction: Construction,
    selector: Extract<Expression, { is: 'every' }>,
    build: CaseBuild,
    scope: Scope,
): readonly PlacedPart[] {
    const { kind, target, within } = selector;
    const all =
        kind !== undefined
            ? allParts(build).filter((part) => part.kind === kind)
            : target
              ? selectParts(construction, target, build, scope)
              : [];
    const left = within ? all.filter((part) => part.isInside(within, scope)) : all;
    if (selector.except.length === 0) return left;
    const out = new Set(selector.except.flatMap((one) => selectParts(construction, one, build, scope)));
    return left.filter((part) => !out.has(part));
}
