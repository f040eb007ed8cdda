/** What the token builder says of the terminals, held against the analysis of their expressions that it saves each start. */
import { Lexer, type TokenType } from 'chevrotain';
import { DefaultTokenBuilder, EmptyFileSystem } from 'langium';
import { describe, expect, test } from 'vitest';
import { createCasewrightServices } from '../../src/index.js';

const { casewright } = createCasewrightServices(EmptyFileSystem);
const said = casewright.parser.TokenBuilder.buildTokens(casewright.Grammar) as TokenType[];
const analyzed = new DefaultTokenBuilder().buildTokens(casewright.Grammar) as TokenType[];

const longerOf = ({ name, LONGER_ALT: longer }: TokenType) => [name, [longer ?? []].flat().map((terminal) => terminal.name)];

describe('tokens', () => {
    test('words and signs go on in the terminals whose expressions can begin with them', () => {
        expect(said.map(longerOf)).toEqual(analyzed.map(longerOf));
    });

    test('the terminals over lines are those whose expressions can match the end of a line', () => {
        expect(tokensOverLines(said)).toEqual(tokensOverLines(analyzed));
        expect(tokensOverLines(said)).toContain('WS');
    });
});

/** Names of the tokens in which a lexer of these tokens counts lines. */
function tokensOverLines(tokens: TokenType[]): string[] {
    const lexer = new Lexer(tokens, { positionTracking: 'full' }) as unknown as {
        patternIdxToConfig: Record<string, { canLineTerminator: boolean; tokenTypeIdx: number }[]>;
    };
    const overLines = Object.values(lexer.patternIdxToConfig)
        .flat()
        .filter(({ canLineTerminator }) => canLineTerminator)
        .map(({ tokenTypeIdx }) => tokenTypeIdx);
    return tokens
        .filter((token) => overLines.includes((token as TokenType & { tokenTypeIdx: number }).tokenTypeIdx))
        .map(({ name }) => name);
}
