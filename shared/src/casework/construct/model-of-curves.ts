/** The curves of a case as the model shows them, with who follows each and how far. */
import { isJoined } from '../../geometry/index.js';
import type { CurveModel, Part } from '../model/casework.js';
import { battenOf } from './batten.js';
import type { CaseBuild } from './case-build.js';
import type { CurveLaw, DeclaredCurve } from './curve-law.js';
import { withDescendants } from './descendants.js';
import type { PlacedPart } from './placed-part.js';

/** @param parts those of the case and of the cases in it */
export function curveModels(outermost: CaseBuild, parts: readonly Part[]): readonly CurveModel[] {
    const builds = withDescendants(outermost);
    const placed = builds.flatMap((build) => build.parts);
    const derived = new Map<string, CurveLaw>();
    for (const { frontLaw } of placed) if (frontLaw?.variant !== undefined) derived.set(frontLaw.path, frontLaw);
    return builds.flatMap(({ curves }) =>
        curves.flatMap((declared) => {
            const asking = new Set(placed.filter((part) => asksAlong(part, declared)).map(({ path }) => path));
            const used = parts.filter(({ path }) => asking.has(path));
            const following = [...derived.values()].filter(({ declaredPath }) => declaredPath === declared.path);
            return [
                curveModel(declared, declared, parts, used),
                ...following.map((law) =>
                    curveModel(
                        declared,
                        law,
                        parts,
                        parts.filter(({ frontCurve }) => frontCurve === law.path),
                    ),
                ),
            ];
        }),
    );
}

/** Whether a part follows a curve along its front edge, or stands upright across it. */
function asksAlong({ frontLaw, extents, kindOf }: PlacedPart, { path }: DeclaredCurve): boolean {
    const across = kindOf?.thickness === 'x' ? extents.value?.y.hi.front?.line : undefined;
    return frontLaw?.path === path || across?.path === path;
}

/** @param asking those that ask for its depth */
function curveModel(declared: DeclaredCurve, law: CurveLaw, parts: readonly Part[], asking: readonly Part[]): CurveModel {
    const { axis, name, over, build, variant } = law;
    const { span, nameSpan } = law.declaration;
    const batten = battenOf(build.construction, law.declaration);
    const followers = parts.filter((part) => part.frontCurve === law.path);
    const { shown } = declared;
    const pieces = declared.shownPieces.map((piece) => ({
        kind: piece.curve.kind,
        over: piece.curve.span,
        get span() {
            return piece.span;
        },
        ...(piece.points ? { points: piece.points } : {}),
    }));
    return {
        path: law.path,
        name,
        ...(variant === undefined ? {} : { follows: { path: declared.path, how: variant } }),
        assembly: build.path,
        over,
        curve: law.shown,
        pieces,
        joints: shown && isJoined(shown) ? shown.joints : [],
        used: asking.length === 0 ? undefined : reach(asking, axis, law.origin),
        parts: followers.map((part) => part.path),
        ...(batten ? { batten } : {}),
        span,
        nameSpan,
    };
}

function reach(parts: readonly Part[], axis: CurveLaw['axis'], origin: number): NonNullable<CurveModel['used']> {
    return {
        from: Math.min(...parts.map((part) => part.box.least[axis])) - origin,
        to: Math.max(...parts.map((part) => part.box.most[axis])) - origin,
    };
}
