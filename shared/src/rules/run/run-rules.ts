/** All findings of a casework: what could not be read or computed, and what the checks of the rules find, in the order of the text. */
import type { Casework, Problem } from '../../casework/index.js';
import type { CaseworkSolids } from '../../solids/index.js';
import { rules } from '../registry.js';
import type { Finding, Found, Rule, RuleCode } from '../rule.js';
import { applyAllowances } from './allowances.js';
import { findingOf } from './finding.js';
import { dropFollowers, dropRepeats, dropUnsaid } from './followers.js';

export interface RunOptions {
    /** What was found while the text was read: syntax, names, units, properties. */
    readonly reading?: readonly Problem[];
    /** `sizes` leaves out the rules over all that is built, for an editor between two keystrokes. All rules run otherwise. */
    readonly phase?: 'sizes' | 'project';
    /** The parts as solids; the rules that look at them run only with it. */
    readonly solids?: CaseworkSolids;
}

const byCode = new Map<string, Rule>(rules.map((rule) => [rule.code, rule]));

/** The rules found while reading: an error of one of these means that part of what the text says is not known. */
const readingGroups = new Set(['TXT', 'NAM', 'UNI', 'PRP']);

/**
 * Runs the rules. Allowed findings are among the result, with the reason of the allowance; who shows findings leaves them out.
 * The result is the same for the same casework, in the order of files, places and codes.
 */
export function runRules(casework: Casework, options: RunOptions = {}): readonly Finding[] {
    const problems = [...(options.reading ?? []), ...casework.problems].map(findingOfProblem);
    const unread = problems.filter(({ code, severity }) => severity === 'error' && readingGroups.has(groupOf(code)));
    const isReadWhole = unread.length === 0;
    const checked = rules.filter((rule) => runs(rule, options, isReadWhole));
    const known = dropUnsaid(problems, unread, casework, rules);
    const found = dropFollowers([...known, ...checked.flatMap((rule) => findingsOf(rule, casework, options.solids))], rules);
    // Rules found while reading have always been looked for.
    const ran = new Set<RuleCode>(
        [...checked, ...rules.filter(({ check, checkSolids }) => !check && !checkSolids)].map(({ code }) => code),
    );
    // where something is in error, rules are silent on what cannot be computed: that nothing came says nothing
    const isSound = isReadWhole && !found.some(({ severity }) => severity === 'error');
    const { findings, about } = applyAllowances(casework, found, { all: rules, ran: isSound ? ran : new Set() });
    return dropRepeats([...findings, ...about]).toSorted(inOrderOf(casework));
}

function runs(rule: Rule, { phase = 'project', solids }: RunOptions, isReadWhole: boolean): boolean {
    const isAsked = rule.check !== undefined || (rule.checkSolids !== undefined && solids !== undefined);
    if (!isAsked || (rule.fromAbsence && !isReadWhole)) return false;
    return rule.phase !== 'project' || phase === 'project';
}

function findingsOf(rule: Rule, casework: Casework, solids: CaseworkSolids | undefined): readonly Finding[] {
    const found: Finding[] = [];
    const report = (what: Found) => found.push(findingOf(rule, what));
    rule.check?.(casework, report);
    if (solids) rule.checkSolids?.(casework, solids, report);
    return found;
}

/** A problem whose code no rule explains is still shown, as an error under its code. */
function findingOfProblem({ code, ...found }: Problem): Finding {
    return findingOf(byCode.get(code) ?? { code: code as RuleCode, name: code.toLowerCase(), severity: 'error' }, found);
}

function groupOf(code: RuleCode): string {
    return code.slice(0, code.indexOf('-'));
}

/** By file in the order of use, then by place, then by code. */
function inOrderOf(casework: Casework): (a: Finding, b: Finding) => number {
    const files = new Map(casework.design.files.map((file, index) => [file, index]));
    const fileOf = ({ span }: Finding) => files.get(span.file) ?? files.size;
    return (a, b) => fileOf(a) - fileOf(b) || a.span.start - b.span.start || a.span.end - b.span.end || compareText(a.code, b.code);
}

function compareText(a: string, b: string): number {
    return a < b ? -1 : a > b ? 1 : 0;
}
