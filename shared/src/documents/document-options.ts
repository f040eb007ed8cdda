import type { Span } from '../casework/index.js';
import type { Finding } from '../rules/index.js';
import type { CaseworkSolids } from '../solids/index.js';

/** What a document is made with besides the casework. */
export interface DocumentOptions {
    /** The system sizes are printed in; that of the project where it is not given. */
    readonly units?: 'in' | 'mm';
    /** Between the offsets of a curve, in millimetres; 2in or 50mm where it is not given. */
    readonly spacing?: number;
    /** The date of a quote, `2026-12-01` (ISO 8601); a quote without it has none. */
    readonly date?: string;
    /** Where a span is in the text. Casework knows offsets only. */
    readonly locate: Locate;
    /** What the rules found in the casework, to be passed on. */
    readonly findings: readonly Finding[];
    /** The parts as solids with all that is cut into them, for the documents that say that they want them. */
    readonly solids?: CaseworkSolids;
}

/** The file, line and column (both from 1) at which a span starts. */
export type Locate = (span: Span) => SourcePlace;

export interface SourcePlace {
    readonly file: string;
    readonly line: number;
    readonly column: number;
}
