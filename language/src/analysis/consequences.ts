// What only comes of a line that could not be read. Knows codes of rules and which problems came of reading: nothing of any rule.
import type { Problem } from 'casewright-shared/casework';
import type { Finding } from 'casewright-shared/rules';

/** Rules that flag a line of which it is not known what it was to say: it may have declared, placed or sized anything. */
const unreadable: ReadonlySet<string> = new Set(['TXT-001', 'PRP-001', 'PRP-002', 'PRP-006', 'NAM-013']);

/** Of these, the rules that flag a line that is there in whole: the names that it may declare are known, and are not called unknown. */
const whole: ReadonlySet<string> = new Set(['PRP-001']);

/** Rules that flag the want of something that an unreadable line may have been about to say. */
const wanting: ReadonlySet<string> = new Set(['NAM-001', 'NAM-009']);

/** Rules that flag what is not there when it is built. What could not be read is not built and says no material and no place; that has been said. */
const notThere: ReadonlySet<string> = new Set(['NAM-009', 'NAM-010', 'PLC-001', 'PLC-010', 'MAT-001']);

/**
 * Leaves out errors that may only come of another one, so that a half-written line does not spread over finished ones: while a line of a
 * file cannot be read, the errors in that file that only computing finds; while anything cannot be read, those for things that are not built.
 * @param reading what was found while the text was read
 */
export function withoutConsequences(findings: readonly Finding[], reading: readonly Problem[]): readonly Finding[] {
    const errors = findings.filter(({ severity }) => severity === 'error');
    const fromReading = new Set(reading.map(placeOf));
    const halfRead = new Set(errors.filter(({ code }) => unreadable.has(code)).map(({ span }) => span.file));
    const halfWritten = new Set(errors.filter(({ code }) => unreadable.has(code) && !whole.has(code)).map(({ span }) => span.file));
    const isReadWhole = !errors.some((finding) => fromReading.has(placeOf(finding)));
    return findings.filter((finding) => {
        const { severity, code, span } = finding;
        if (severity !== 'error') {
            return true;
        }
        const isComputed = !fromReading.has(placeOf(finding));
        if ((halfRead.has(span.file) && isComputed) || (halfWritten.has(span.file) && wanting.has(code))) {
            return false;
        }
        return isReadWhole || !isComputed || !notThere.has(code);
    });
}

function placeOf({ code, span }: Pick<Problem, 'code' | 'span'>): string {
    return `${code} ${span.start} ${span.end} ${span.file}`;
}
