/** A finding as programs read it: with lines and columns, and the source of its rule. */
import { type Finding, ruleNamed } from '../rules/index.js';
import type { Locate, SourcePlace } from './document-options.js';

export interface FindingRecord {
    readonly code: string;
    readonly severity: string;
    readonly message: string;
    readonly hint: string | null;
    readonly file: string;
    readonly range: { readonly start: LinePlace; readonly end: LinePlace };
    /** The path of the part it is about. */
    readonly part: string | null;
    readonly found: string | null;
    readonly needed: string | null;
    /** The reason of the `allow` that silences it. */
    readonly allowed: string | null;
    /** Where the rule comes from. */
    readonly source: string | null;
}
type LinePlace = Omit<SourcePlace, 'file'>;

export function findingRecord(finding: Finding, locate: Locate): FindingRecord {
    const { span } = finding;
    const { file, ...start } = locate(span);
    const { line, column } = locate({ ...span, start: span.end });
    return {
        code: finding.code,
        severity: finding.severity,
        message: finding.message,
        hint: finding.hint ?? null,
        file,
        range: { start, end: { line, column } },
        part: finding.part ?? null,
        found: finding.found ?? null,
        needed: finding.needed ?? null,
        allowed: finding.allowed ?? null,
        source: ruleNamed(finding.code)?.source.citation ?? null,
    };
}
