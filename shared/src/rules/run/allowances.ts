/**
 * `allow RULE on PART because "..."`: a warning or a note that a person has looked at and keeps, with the reason.
 *
 * An allowed finding is not taken away: it carries the reason, so that documents can print it. What is wrong with an allowance itself
 * (no such rule, no reason, an error, nothing to silence) is found here, because only here is it known what there was to silence.
 */
import { type Allowance, type Casework, closestWords, type Path, type Span } from '../../casework/index.js';
import { allowSilencesNothing } from '../decisions/allow-silences-nothing.js';
import { allowWithoutReason } from '../decisions/allow-without-reason.js';
import { errorCannotBeAllowed } from '../decisions/error-cannot-be-allowed.js';
import { unknownName } from '../names/unknown-name.js';
import type { Finding, Rule, RuleCode } from '../rule.js';
import { findingOf } from './finding.js';

export interface Allowed {
    /** The findings, each that an allowance covers with its reason. */
    readonly findings: readonly Finding[];
    /** What is wrong with the allowances. */
    readonly about: readonly Finding[];
}

/** Applies the allowances of a casework. `ran` are the rules that were checked in this run: of others nothing can be said. */
export function applyAllowances(
    casework: Casework,
    findings: readonly Finding[],
    rules: { readonly all: readonly Rule[]; readonly ran: ReadonlySet<RuleCode> },
): Allowed {
    const reasons = new Map<Finding, string>();
    const about: Finding[] = [];
    for (const allowance of casework.allowances) {
        const rule = rules.all.find(({ code, name }) => allowance.rule === code || allowance.rule === name);
        const covered = rule && rule.severity !== 'error' ? findings.filter((finding) => covers(casework, allowance, rule, finding)) : [];
        for (const finding of covered) {
            if (!reasons.has(finding)) reasons.set(finding, allowance.because ?? 'no reason given');
        }
        const wrong = whatIsWrong(allowance, rule, rules, covered.length, () => elsewhere(casework, rule, findings));
        if (wrong) about.push(wrong);
    }
    return { findings: findings.map((finding) => withReason(finding, reasons.get(finding))), about };
}

function withReason(finding: Finding, allowed: string | undefined): Finding {
    return allowed === undefined ? finding : { ...finding, allowed };
}

function covers(casework: Casework, allowance: Allowance, rule: Rule, finding: Finding): boolean {
    const { part, span } = finding;
    if (finding.code !== rule.code) return false;
    if (allowance.everywhere) return span.file === allowance.span.file;
    if (part !== undefined && allowance.parts.includes(part)) return true;
    return allowance.assemblies.some((path) =>
        part === undefined ? isAbout(casework, path, span) : part === path || part.startsWith(`${path}.`),
    );
}

/** Whether words are those that build a case: what is found of it as a whole stands there. */
function isAbout(casework: Casework, path: Path, { file, start, end }: Span): boolean {
    const span = casework.assemblies.find((assembly) => assembly.path === path)?.span;
    return span?.file === file && span.start === start && span.end === end;
}

/** What the parts or cases are called at which a rule finds something, each once. */
function elsewhere(casework: Casework, rule: Rule | undefined, findings: readonly Finding[]): readonly string[] {
    const names = findings
        .filter(({ code }) => code === rule?.code)
        .flatMap(({ part, span }) => {
            if (part !== undefined) return casework.parts.get(part)?.name ?? [];
            return casework.assemblies.find(({ path }) => isAbout(casework, path, span))?.name ?? [];
        });
    return [...new Set(names)];
}

function whatIsWrong(
    allowance: Allowance,
    rule: Rule | undefined,
    rules: { readonly all: readonly Rule[]; readonly ran: ReadonlySet<RuleCode> },
    silenced: number,
    comesAt: () => readonly string[],
): Finding | undefined {
    if (!rule) return noSuchRule(allowance, rules.all);
    const said = `\`${allowance.rule}\``;
    if (rule.severity === 'error') {
        return findingOf(errorCannotBeAllowed, {
            span: allowance.ruleSpan,
            message: `${said} is an error, and an error cannot be allowed: ${lowerFirst(rule.title)}`,
            hint: 'mend what it is about, and take the `allow` out',
        });
    }
    if (!allowance.because) {
        return findingOf(allowWithoutReason, {
            span: allowance.span,
            message: `this allows ${said} without saying why`,
            hint: 'add `because "..."`: the reason is printed with the documents',
            found: 'no reason',
            needed: '`because` and a text',
        });
    }
    if (silenced > 0 || !rules.ran.has(rule.code)) return undefined;
    const others = comesAt();
    const named = others.slice(0, 3).join(', ');
    const more = others.length > 3 ? ` and at ${others.length - 3} more` : '';
    return findingOf(allowSilencesNothing, {
        span: allowance.ruleSpan,
        message: `there is no ${said} here to allow`,
        ...(others.length > 0
            ? { hint: `it comes at \`${named}\`${more}: write \`on ${named}\`` }
            : {
                  hint: 'take the line out: left in, it would hide the next one that comes',
                  fix: { title: 'take the line out', span: allowance.span, text: '', safe: true },
              }),
    });
}

function noSuchRule(allowance: Allowance, rules: readonly Rule[]): Finding {
    const wanted = /^[A-Z]{2,6}-\d{3}$/.test(allowance.rule) ? rules.map(({ code }) => code) : rules.map(({ name }) => name);
    const [close] = closestWords(allowance.rule, wanted);
    return findingOf(unknownName, {
        span: allowance.ruleSpan,
        message: `no rule is called \`${allowance.rule}\`${close ? `; did you mean \`${close}\`?` : ''}`,
        hint: '`casewright explain` lists the rules',
        found: allowance.rule,
        ...(close ? { fix: { title: `write \`${close}\``, span: allowance.ruleSpan, text: close, safe: false } } : {}),
    });
}

function lowerFirst(sentence: string): string {
    return sentence.charAt(0).toLowerCase() + sentence.slice(1);
}
