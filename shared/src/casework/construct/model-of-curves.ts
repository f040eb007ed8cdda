/** The curves of a case as the model shows them, with who follows each and how far. */
import type { CurveModel, Part } from '../model/casework.js';
import type { CaseBuild } from './case-build.js';
import { descendants } from './joints.js';

export function curveModels(outermost: CaseBuild, parts: ReadonlyMap<string, Part>): readonly CurveModel[] {
    return [outermost, ...descendants(outermost)].flatMap((build) =>
        build.curves.map((law) => {
            const path = `${outermost.path}.${law.name}`;
            const followers = [...parts.values()].filter((part) => part.frontCurve === path);
            const ends = followers.map((part) => [part.box.least[law.axis], part.box.most[law.axis]] as const);
            const { span, nameSpan } = law.declaration;
            const used =
                ends.length === 0 ? undefined : { from: Math.min(...ends.map(([lo]) => lo)), to: Math.max(...ends.map(([, hi]) => hi)) };
            return {
                path,
                name: law.name,
                assembly: build.path,
                over: law.over,
                curve: law.curve,
                used,
                parts: followers.map((part) => part.path),
                span,
                nameSpan,
            };
        }),
    );
}
