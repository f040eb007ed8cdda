// Tokens of the words of the grammar. Knows which terminals may go on where a word ends: no rule, no text.
import type { TokenType } from 'chevrotain';
import { DefaultTokenBuilder, type GrammarAST, RegExpUtils } from 'langium';

/** Asks each terminal once how its texts may begin, and not once for each of the hundreds of words. */
export class CasewrightTokenBuilder extends DefaultTokenBuilder {
    private readonly beginnings = new Map<string, RegExp>();

    protected override findLongerAlt(keyword: GrammarAST.Keyword, terminals: TokenType[]): TokenType[] {
        return terminals.filter(({ PATTERN: pattern }) => {
            if (!(pattern instanceof RegExp)) return false;
            const [begun] = this.beginningOf(pattern.source).exec(keyword.value) ?? [];
            return begun !== undefined && begun.length > 0;
        });
    }

    private beginningOf(source: string): RegExp {
        const beginning = this.beginnings.get(source) ?? RegExpUtils.partialRegExp(`^${source}$`);
        this.beginnings.set(source, beginning);
        return beginning;
    }
}
