// Syntax errors in words. Knows rule names and words of the language: the grammar's own token lists never reach a person.
import type { IToken, TokenType } from 'chevrotain';
import { AbstractParserErrorMessageProvider } from 'langium';

/** What is needed where a rule of the grammar cannot go on. */
const NEEDED_BY_RULE: Record<string, string> = {
    Name: 'a name',
    PlainName: 'a name',
    MemberName: 'a size, an edge or a part',
    Primary: 'a value',
    Prefix: 'a value',
    Expression: 'a value',
    Rated: 'a value',
    Conditional: 'a value',
    PartKind: 'a kind of part, such as `shelf`',
    Treatment: 'an edging, a joint, or a step such as `band 1/8in`',
    Use: 'a file in quotes or a library',
    Text: 'a reason in quotes',
    Selector: 'a part',
    Place: 'a place, such as `4in` or `1/2in below top`',
};

export class CasewrightSyntaxMessages extends AbstractParserErrorMessageProvider {
    override buildMismatchTokenMessage({ expected, actual, previous }: { expected: TokenType; actual: IToken; previous: IToken }): string {
        if (expected.name === 'EOF') {
            return `${found(actual)} outside any declaration`;
        }
        if (expected.name === 'EOL') {
            return `${found(actual)} after \`${previous.image}\`, where nothing more was expected`;
        }
        return `${found(actual)} where ${neededToken(expected)} is needed`;
    }

    override buildNoViableAltMessage({ actual, ruleName }: { actual: IToken[]; ruleName: string }): string {
        return `${found(actual[0])} where ${NEEDED_BY_RULE[ruleName.replace('\u200b', '')] ?? 'something else'} is needed`;
    }

    override buildEarlyExitMessage({ actual }: { actual: IToken[] }): string {
        return `${found(actual[0])} too early`;
    }

    override buildNotAllInputParsedMessage({ firstRedundant }: { firstRedundant: IToken }): string {
        return `${found(firstRedundant)} outside any statement`;
    }
}

function found(token: IToken | undefined): string {
    if (token === undefined || token.image === '') {
        return 'the line ends';
    }
    return token.image.startsWith('"') ? 'a text stands' : `\`${token.image}\` stands`;
}

function neededToken(type: TokenType): string {
    switch (type.name) {
        case 'ID':
            return 'a name';
        case 'QUANTITY':
            return 'a number';
        default:
            return `\`${type.name}\``;
    }
}
