/** The curves of a case as the model shows them, with who follows each and how far. */
import type { CurveModel, Part } from '../model/casework.js';
import type { CaseBuild } from './case-build.js';
import { descendants } from './joints.js';

/** @param parts the parts of the case, and of the cases in it */
export function curveModels(outermost: CaseBuild, parts: readonly Part[]): readonly CurveModel[] {
    const laws = [outermost, ...descendants(outermost)].flatMap((build) => build.curves.map((law) => ({ build, law })));
    return laws.map(({ build, law }) => {
        const path = `${outermost.path}.${law.name}`;
        const followers = parts.filter((part) => part.frontCurve === path);
        const { name, over, curve, axis } = law;
        const { span, nameSpan } = law.declaration;
        const used =
            followers.length === 0
                ? undefined
                : {
                      from: Math.min(...followers.map((part) => part.box.least[axis])),
                      to: Math.max(...followers.map((part) => part.box.most[axis])),
                  };
        return { path, name, assembly: build.path, over, curve, used, parts: followers.map((part) => part.path), span, nameSpan };
    });
}
