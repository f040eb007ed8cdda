/** What a requirement asks, in words. */
import type { Requirement } from '../../casework/index.js';
import type { Speaker } from './speaker.js';

const asked: Readonly<Record<string, string>> = {
    '>=': 'at least',
    '>': 'more than',
    '<=': 'at most',
    '<': 'less than',
    '=': 'exactly',
    '!=': 'other than',
};

/** `found` is the left side, `needed` what the right side asks of it; undefined where the condition compares no two measures. */
export function requirementWords(
    { left, right, operator }: Requirement,
    speaker: Speaker,
): { readonly found: string; readonly needed: string } | undefined {
    const words = asked[operator];
    if (!left || !right || words === undefined) return undefined;
    return { found: speaker.measure(left), needed: `${words} ${speaker.measure(right)}` };
}
