/** Templates: every shape of a curved part at full size, once for all parts that have it, and the form of every board that is bent. */
import type { Casework } from '../casework/index.js';
import { formDrawing, formShapes, templateDrawing, templateShapes } from '../drawing/index.js';
import type { DocumentOptions } from './document-options.js';
import { onlyBuilt } from './only-built.js';
import { printStyle } from './print-style.js';
import type { ShopDocument } from './shop-document.js';
import { offsetSpacing, servedInWords } from './template-words.js';

/** The templates of all that is built; undefined where no part follows a curve. */
export function templates(evaluated: Casework, options: Pick<DocumentOptions, 'units' | 'spacing'>): ShopDocument | undefined {
    const casework = onlyBuilt(evaluated);
    const { system } = printStyle(casework, options);
    const shapes = templateShapes(casework);
    const forms = formShapes(casework);
    if (shapes.length + forms.length === 0) return undefined;
    const words = { system, spacing: offsetSpacing(system, options), project: projectInWords(casework) };
    return {
        is: 'drawings',
        drawings: [
            ...shapes.map((shape) => templateDrawing(shape, { ...words, serves: servedInWords(shape, casework) })),
            ...forms.map((shape) => formDrawing(shape, { ...words, serves: servedInWords(shape, casework) })),
        ],
        units: system === 'inch' ? 'in' : 'mm',
    };
}

function projectInWords({ project }: Casework): string {
    if (!project) return 'no project is stated';
    return project.revision === undefined ? project.title : `${project.title}, revision ${project.revision}`;
}
