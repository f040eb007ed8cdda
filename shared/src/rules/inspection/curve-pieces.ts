/** The pieces of declared curves, and where two of them meet. */
import type { Casework, CurveModel, Span } from '../../casework/index.js';
import { type Curve, type CurveFeature, isJoined, surveyOf } from '../../geometry/index.js';

/** A curve as it is declared: lines that follow from others have been told of with those. */
export function* declaredCurvesIn({ curves }: Casework): Generator<CurveModel & { readonly curve: Curve }> {
    const told = new Set<string>();
    for (const line of curves) {
        // two builds of one case have one declaration, and one mistake in it
        const key = `${line.nameSpan.file} ${line.nameSpan.start}`;
        if (!line.curve || line.follows || told.has(key)) continue;
        told.add(key);
        yield { ...line, curve: line.curve };
    }
}

/** What the eye finds where two pieces meet, with the words of the piece that begins there. */
export function suddenChangesIn(
    line: CurveModel & { readonly curve: Curve },
    is: 'corner' | 'jump',
): readonly { readonly feature: CurveFeature; readonly span: Span }[] {
    return featuresOf(line.curve).flatMap((feature) => {
        if (feature.is !== is) return [];
        const after = line.pieces.find(({ over }) => Math.abs(over.from - feature.point.x) < 1e-3);
        return [{ feature, span: after?.span ?? line.nameSpan }];
    });
}

/** Found once for each curve: one that an edit leaves alone is the same at the next keystroke. */
const known = new WeakMap<Curve, readonly CurveFeature[]>();

function featuresOf(curve: Curve): readonly CurveFeature[] {
    let features = known.get(curve);
    if (!features) {
        features = surveyOf(curve);
        known.set(curve, features);
    }
    return features;
}

export interface SaidPiece {
    readonly curve: Curve;
    readonly span: Span;
    /** Where the points between its ends are said. */
    readonly points: readonly Span[];
}

/** The curves of the pieces, with the words that say each. */
export function piecesOf(line: CurveModel & { readonly curve: Curve }): readonly SaidPiece[] {
    const { curve } = line;
    const curves = isJoined(curve) ? curve.pieces : [curve];
    return curves.map((piece, index) => {
        const { span = line.nameSpan, points = [] } = line.pieces[index] ?? {};
        return { curve: piece, span, points };
    });
}
