/** Findings for programs, as JSON. Their names are a contract: they change only with `schemaVersion`. */
import { countFound } from './count.js';
import { type FoundInText, notAllowed } from './found.js';

const schemaVersion = 1;

/** All findings but the allowed ones, in the order in which they are shown; what a finding does not say is null. */
export function findingsAsJson(found: readonly FoundInText[]): string {
    const open = notAllowed(found);
    const { error, warning, note } = countFound(open);
    const report = {
        schemaVersion,
        findings: open.map(({ record: { allowed: _, ...record } }) => record),
        count: { error, warning, note, allowed: found.length - open.length },
    };
    return `${JSON.stringify(report, null, 2)}\n`;
}
