// What is needed at a place where the grammar cannot go on, as a phrase. Knows rule names; the sentence around it is made elsewhere.
import type { TokenType } from 'chevrotain';
import { AbstractParserErrorMessageProvider } from 'langium';

/** What is needed where nothing more may stand. */
export const NOTHING_MORE = 'nothing more';
/** What is needed where a line begins that is no statement. */
export const A_STATEMENT = 'a statement';

const A_VALUE = 'a value';
const A_NAME = 'a name';

/** By the rule that cannot go on; a rule that is not here needs something by its first tokens. */
const NEEDED_BY_RULE: Readonly<Record<string, string>> = {
    Name: A_NAME,
    PlainName: A_NAME,
    IndexName: A_NAME,
    OpeningName: A_NAME,
    ModuleName: A_NAME,
    RateUnit: 'a unit such as `sheet`',
    RuleName: 'the name of a rule such as `short-grain`',
    MemberName: 'a size, an edge or a part',
    Property: A_VALUE,
    FirstProperty: A_VALUE,
    HeadProperty: A_VALUE,
    PropertyValue: A_VALUE,
    Value: A_VALUE,
    Sizes: A_VALUE,
    Item: A_VALUE,
    Expression: A_VALUE,
    Primary: A_VALUE,
    Prefix: A_VALUE,
    Argument: A_VALUE,
    Reference: A_NAME,
    StepValue: A_VALUE,
    StepPrefix: A_VALUE,
    StepPrimary: A_VALUE,
    Postfix: 'a unit such as `sheet`',
    Place: 'a place such as `4in` or `1/2in below top`',
    Selector: 'a part',
    EdgeStatement: 'a place, an edging or a step such as `band 1/8in`',
    EdgeTreatment: 'a place, an edging or a step such as `band 1/8in`',
    JoinTreatment: 'a joint or a step such as `glue`',
    RecipeUse: 'a joint, or its steps in `{ }`,',
    Use: 'a file in quotes or a library',
    Text: 'a reason in quotes',
    Statement: A_STATEMENT,
    Member: A_STATEMENT,
    If: 'a block in `{ }`',
};

const NEEDED_BY_TOKEN: Readonly<Record<string, string>> = {
    EOL: NOTHING_MORE,
    EOF: A_STATEMENT,
    '}': A_STATEMENT,
    ID: A_NAME,
    QUANTITY: 'a number',
    STRING: 'a text in quotes',
};

/** Answers with what is needed, such as `a value`, in place of the parser's lists of tokens. */
export class NeededWords extends AbstractParserErrorMessageProvider {
    override buildMismatchTokenMessage({ expected }: { expected: TokenType }): string {
        return NEEDED_BY_TOKEN[expected.name] ?? `\`${expected.name}\``;
    }

    override buildNoViableAltMessage({ ruleName }: { ruleName: string }): string {
        return NEEDED_BY_RULE[ruleName.replace('\u200b', '')] ?? 'something else';
    }

    override buildEarlyExitMessage({ ruleName }: { ruleName: string }): string {
        return NEEDED_BY_RULE[ruleName.replace('\u200b', '')] ?? 'something else';
    }

    override buildNotAllInputParsedMessage(): string {
        return A_STATEMENT;
    }
}
