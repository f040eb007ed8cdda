/** The curves of a case as the model shows them, with who follows each and how far. */
import type { CurveModel, Part } from '../model/casework.js';
import { battenOf } from './batten.js';
import type { CaseBuild } from './case-build.js';
import type { CurveLaw } from './curve-law.js';
import { withDescendants } from './descendants.js';

/** @param parts those of the case and of the cases in it */
export function curveModels(outermost: CaseBuild, parts: readonly Part[]): readonly CurveModel[] {
    return withDescendants(outermost).flatMap((build) => build.curves.map((law) => curveModel(build, law, parts)));
}

function curveModel(build: CaseBuild, law: CurveLaw, parts: readonly Part[]): CurveModel {
    const followers = parts.filter((part) => part.frontCurve === law.path);
    const { axis, name, over } = law;
    const { span, nameSpan } = law.declaration;
    const batten = battenOf(build.construction, law.declaration);
    return {
        path: law.path,
        name,
        assembly: build.path,
        over,
        curve: law.shown,
        used: followers.length === 0 ? undefined : reach(followers, axis, law.origin),
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
