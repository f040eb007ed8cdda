/** How many findings are shown. */
import { countFindings, type FindingCount } from 'casewright-shared/rules';
import type { FoundInText } from './found.js';

/** The number of findings of each severity. */
export function countFound(found: readonly FoundInText[]): FindingCount {
    return countFindings(found.map(({ record }) => record));
}
