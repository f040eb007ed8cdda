/** How documents speak of templates, and how far apart their offsets are. */
import type { Casework } from '../casework/index.js';
import type { FormShape, TemplateShape } from '../drawing/index.js';
import type { DocumentOptions } from './document-options.js';
import { namesInWords, partNamer } from './part-names.js';

const usualSpacing = { inch: 50.8, mm: 50 } as const;

/** Between two offsets, in millimetres. */
export function offsetSpacing(system: 'inch' | 'mm', { spacing }: Pick<DocumentOptions, 'spacing'>): number {
    return spacing ?? usualSpacing[system];
}

/** `Left, Right: 4 in all` */
export function servedInWords({ parts }: TemplateShape | FormShape, casework: Casework): string {
    const nameOf = partNamer(casework);
    const names = namesInWords(parts.map(({ path }) => nameOf(path)));
    return `${names}: ${parts.reduce((sum, { quantity }) => sum + quantity, 0)} in all`;
}
