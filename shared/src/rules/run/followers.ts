/** One mistake, one squiggle: what is said twice, or only comes of another finding, is dropped. */
import type { Path, Span } from '../../casework/index.js';
import type { Finding, Rule, RuleCode } from '../rule.js';

/** Drops findings on a part that has a finding which, by their own rule, is the mistake behind them. */
export function dropFollowers(findings: readonly Finding[], rules: readonly Rule[]): readonly Finding[] {
    const follows = new Map(rules.flatMap(({ code, follows }) => (follows ? [[code, follows] as const] : [])));
    const found = new Map<Path, Set<RuleCode>>();
    for (const { part, code } of findings) {
        if (part === undefined) continue;
        const codes = found.get(part);
        if (codes) codes.add(code);
        else found.set(part, new Set([code]));
    }
    return findings.filter(({ part, code }) => {
        const codes = part === undefined ? undefined : found.get(part);
        return !codes || !follows.get(code)?.some((origin) => codes.has(origin));
    });
}

/**
 * Drops repeats of a finding: the parts of an array, of two builds and of `every` share the words that are flagged. The first is kept.
 * What is allowed and what is not are counted apart, so that an allowance for one part of an array does not hide the others.
 */
export function dropRepeats(findings: readonly Finding[]): readonly Finding[] {
    const said = new Set<string>();
    return findings.filter(({ code, span, allowed }) => {
        const key = `${code} ${placeOf(span)} ${allowed === undefined ? 'open' : 'allowed'}`;
        if (said.has(key)) return false;
        said.add(key);
        return true;
    });
}

function placeOf({ file, start, end }: Span): string {
    return `${start}-${end} ${file}`;
}
