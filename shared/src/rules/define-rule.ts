import type { Rule } from './rule.js';

/** Declares a rule. The one way to do so: what every rule must have is asked for here. */
export function defineRule(rule: Rule): Rule {
    return rule;
}
