import type { Finding, Found, Rule } from '../rule.js';

/** What a check found, with the code, name and severity of its rule. */
export function findingOf({ code, name, severity }: Pick<Rule, 'code' | 'name' | 'severity'>, found: Found): Finding {
    return { ...found, code, name, severity, related: found.related ?? [] };
}
