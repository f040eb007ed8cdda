/** How many findings there are, in numbers and in words. */
import type { Severity } from '../rule.js';

export type FindingCount = Readonly<Record<Severity, number>>;

/** The number of findings of each severity. */
export function countFindings(findings: readonly { readonly severity: string }[]): FindingCount {
    const of = (severity: Severity) => findings.filter((finding) => finding.severity === severity).length;
    return { error: of('error'), warning: of('warning'), note: of('note') };
}

/** `2 errors, 1 warning`; `nothing found` if there is none. */
export function countInWords(count: FindingCount): string {
    const words = (['error', 'warning', 'note'] as const).filter((severity) => count[severity] > 0).map((one) => plural(count[one], one));
    return words.length === 0 ? 'nothing found' : words.join(', ');
}

/** `1 file`, `2 files` */
export function plural(count: number, noun: string): string {
    return `${count} ${noun}${count === 1 ? '' : 's'}`;
}
