// Tokens of the words of the grammar. Knows how the terminals begin, and which of them span lines: no rule, no text.
import type { TokenType } from 'chevrotain';
import { DefaultTokenBuilder, type GrammarAST } from 'langium';

/** The only terminals whose texts may begin as a word or a sign of the grammar does. */
const wordTerminals: readonly string[] = ['ID'];
const slashTerminals: readonly string[] = ['DOC_COMMENT', 'COMMENT'];

/** The terminals whose texts may hold the end of a line. */
const terminalsOverLines: readonly string[] = ['WS', 'DOC_COMMENT'];

/**
 * Says of the terminals what would otherwise be found out by analysis of their expressions, at each start. That takes longer than
 * all the rest of making a lexer; tests hold what is said here against that analysis.
 */
export class CasewrightTokenBuilder extends DefaultTokenBuilder {
    protected override findLongerAlt(keyword: GrammarAST.Keyword, terminals: TokenType[]): TokenType[] {
        const names = longerTerminals(keyword.value);
        return terminals.filter(({ name }) => names.includes(name));
    }

    protected override buildTerminalToken(terminal: GrammarAST.TerminalRule): TokenType {
        return { ...super.buildTerminalToken(terminal), LINE_BREAKS: terminalsOverLines.includes(terminal.name) };
    }
}

function longerTerminals(keyword: string): readonly string[] {
    if (/^[a-z]/.test(keyword)) return wordTerminals;
    return keyword === '/' ? slashTerminals : [];
}
