/** One mistake, one squiggle: what is said twice, or only comes of another finding, is dropped. */
import type { Casework, Path, Span } from '../../casework/index.js';
import type { Finding, Rule, RuleCode } from '../rule.js';

/** Drops findings that, by their own rule, come of another one on the same part, or in the same file where they are about no part. */
export function dropFollowers(findings: readonly Finding[], rules: readonly Rule[]): readonly Finding[] {
    const follows = new Map(rules.flatMap(({ code, follows: origins }) => (origins ? [[code, origins] as const] : [])));
    const onParts = new Map<Path, Set<RuleCode>>();
    const inFiles = new Map<string, Set<RuleCode>>();
    for (const { part, concerns = [], code, span } of findings) {
        for (const path of part === undefined ? concerns : [part, ...concerns]) add(onParts, path, code);
        add(inFiles, span.file, code);
    }
    return findings.filter(({ part, code, span }) => {
        const around = part === undefined ? inFiles.get(span.file) : onParts.get(part);
        return !follows.get(code)?.some((origin) => around?.has(origin));
    });
}

function add(to: Map<string, Set<RuleCode>>, key: string, code: RuleCode): void {
    const codes = to.get(key);
    if (codes) codes.add(code);
    else to.set(key, new Set([code]));
}

/**
 * Drops problems that conclude from something unsaid where part of the very declaration could not be read: it may have been said there.
 * @param unread errors that mean that something could not be read
 */
export function dropUnsaid(
    findings: readonly Finding[],
    unread: readonly Finding[],
    casework: Casework,
    rules: readonly Rule[],
): readonly Finding[] {
    if (unread.length === 0) return findings;
    const fromAbsence = new Set(rules.flatMap(({ code, fromAbsence: concludes }) => (concludes ? [code] : [])));
    const declared = new Map([...casework.design.declarations.values()].map(({ nameSpan, span }) => [placeOf(nameSpan), span]));
    return findings.filter(({ code, part, span }) => {
        if (!fromAbsence.has(code)) return true;
        const words = (part === undefined ? undefined : casework.parts.get(part)?.span) ?? declared.get(placeOf(span));
        return !words || !unread.some((gap) => gap.code !== code && isIn(words, gap.span));
    });
}

function isIn(words: Span, gap: Span): boolean {
    return gap.file === words.file && gap.start >= words.start && gap.end <= words.end;
}

/**
 * Drops repeats of a finding: the parts of an array, of two builds and of `every` share the words that are flagged. The first is kept, and
 * says how many others there are where its rule has words for them.
 * What is allowed and what is not are counted apart, so that an allowance for one part of an array does not hide the others.
 */
export function dropRepeats(findings: readonly Finding[]): readonly Finding[] {
    const said = new Map<string, { readonly first: Finding; others: number }>();
    for (const finding of findings) {
        const { code, span, allowed, saidOnce } = finding;
        const key = `${code} ${allowed === undefined ? 'open' : 'allowed'} ${saidOnce?.key ?? placeOf(span)}`;
        const known = said.get(key);
        if (known) known.others++;
        else said.set(key, { first: finding, others: 0 });
    }
    return [...said.values()].map(({ first, others }) =>
        first.saidOnce && others > 0 ? { ...first, message: `${first.message}; so with ${others} more ${first.saidOnce.others}` } : first,
    );
}

function placeOf({ file, start, end }: Span): string {
    return `${start}-${end} ${file}`;
}
