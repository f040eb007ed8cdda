/** The cases in a case, and all parts of it and of them. */
import type { CaseBuild } from './case-build.js';
import type { PlacedPart } from './placed-part.js';

function descendants(build: CaseBuild): readonly CaseBuild[] {
    return build.children.flatMap((child) => [child, ...descendants(child)]);
}

/** The case itself, and the cases in it. */
export function withDescendants(build: CaseBuild): readonly CaseBuild[] {
    return [build, ...descendants(build)];
}

export function allParts(build: CaseBuild): readonly PlacedPart[] {
    return withDescendants(build).flatMap((one) => one.parts);
}
