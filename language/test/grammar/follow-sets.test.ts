/** Our sets of followers against those that Chevrotain makes of the same grammar. */
import type { Rule, TokenType } from 'chevrotain';
import { createParser, EmptyFileSystem, LangiumParser } from 'langium';
import { describe, expect, test } from 'vitest';
import { createCasewrightServices } from '../../src/index.js';
import { FollowSets } from '../../src/parser/follow-sets.js';

interface Recovering {
    getGAstProductions(): Record<string, Rule>;
    resyncFollows: Record<string, TokenType[]>;
}

const { casewright } = createCasewrightServices(EmptyFileSystem);
const parser = createParser(casewright.Grammar, new LangiumParser(casewright), casewright.parser.Lexer.definition);
parser.finalize();
const { getGAstProductions, resyncFollows } = (parser as unknown as { wrapper: Recovering }).wrapper;
const rules = getGAstProductions.call((parser as unknown as { wrapper: Recovering }).wrapper);

describe('what may follow a rule where another calls it', () => {
    const sets = new FollowSets(() => rules);
    const names = Object.keys(rules).sort((one, other) => other.length - one.length);
    const calls = Object.entries(resyncFollows).map(([key, tokens]) => {
        // Chevrotain writes `Callee` `index` `_~IN~_` `Caller` without blanks between.
        const [call = '', caller = ''] = key.split('_~IN~_');
        const callee = names.find((name) => call.startsWith(name) && /^\d+$/.test(call.slice(name.length))) ?? '';
        return { callee, index: Number(call.slice(callee.length)), caller, tokens: tokens.map(({ name }) => name).sort() };
    });

    test('is what Chevrotain finds, at every call of the grammar', () => {
        expect(calls.length).toBeGreaterThan(100);
        for (const { callee, index, caller, tokens } of calls) {
            expect({ callee, index, caller, tokens: [...sets.after(callee, index, caller)].sort() }).toEqual({
                callee,
                index,
                caller,
                tokens,
            });
        }
    });

    test('is nothing for a call that is not there', () => {
        expect([...sets.after('Length', 7, 'Nothing')]).toEqual([]);
    });
});
