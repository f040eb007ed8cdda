/** What is checked: one file a rule, each with its explanation, source and examples. Knows casework; not how a finding is shown. */

export { type MarkedExample, readMarks } from './page/example-marks.js';
export { countFindings, countInWords, type FindingCount, plural } from './page/finding-count.js';
export { explainRule, listRules, ruleIndex, rulePage, rulePageName, type Said } from './page/rule-page.js';
export { ruleNamed, rules } from './registry.js';
export type { Example, Finding, Found, Report, Rule, RuleCode, RuleSource, Severity } from './rule.js';
export { type RunOptions, runRules } from './run/run-rules.js';
