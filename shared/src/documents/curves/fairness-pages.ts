/** Fairness pages: the curvature comb of every line, to be looked at. */
import type { Casework } from '../../casework/index.js';
import { combDrawing } from '../../drawing/index.js';
import type { DocumentOptions } from '../document-options.js';
import { onlyBuilt } from '../only-built.js';
import { lengthInWords, printStyle } from '../print-style.js';
import type { ShopDocument } from '../shop-document.js';
import { linesOf } from './curve-sheet.js';
import { fairnessInWords, threeLooks } from './fairness-group.js';
import { featureInWords, radiusInWords } from './line-groups.js';

/** A page for every line that what is built follows; undefined where there is none. */
export function fairnessPages(evaluated: Casework, options: Pick<DocumentOptions, 'units' | 'spacing'>): ShopDocument | undefined {
    const casework = onlyBuilt(evaluated);
    const print = printStyle(casework, options);
    const lines = linesOf(casework, options);
    if (lines.length === 0) return undefined;
    const drawings = lines.map((line) =>
        combDrawing(line.curve, {
            title: `${line.name}: depth over ${line.model.over}`,
            over: line.model.over,
            spacing: line.spacing,
            say: (millimetres) => lengthInWords(millimetres, print),
            sayRadius: (millimetres) => radiusInWords(millimetres, print),
            sayFeature: (feature) => (feature.is === 'inflection' ? 'Turns back' : featureInWords(feature)),
            notes: [...fairnessInWords(line), threeLooks],
        }),
    );
    return { is: 'pages', drawings, units: print.system === 'inch' ? 'in' : 'mm' };
}
