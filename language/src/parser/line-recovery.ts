// Where parsing goes on after an error. Knows kinds of tokens: no grammar rules.
//
// The parser's own recovery goes on at any token that may follow any open rule, which lands in the middle of the broken
// line or in the next block. Here it goes on at the end of the statement, at its block, or at a mark or a connective inside it.
// This replaces methods of the parser instance that Chevrotain keeps for its own recovery: hence one file, with tests of its own.
import {
    type EmbeddedActionsParser,
    EOF,
    type Rule as GrammarRule,
    type IParserErrorMessageProvider,
    type IRecognitionException,
    type IToken,
    MismatchedTokenException,
    NoViableAltException,
    type TokenType,
} from 'chevrotain';
import { FollowSets } from './follow-sets.js';
import { impliedTokenAfter } from './implied-token.js';
import { isSecondStatement, SecondStatementException } from './second-statement.js';

type Rule = (...args: unknown[]) => void;
/** A rule in the rule that called it; empty where nothing called it. */
interface FollowKey {
    readonly ruleName?: string;
    readonly idxInCallingRule?: number;
    readonly inRule?: string;
}

/** What is used of the parser; all of it is protected there. */
interface RecoveringParser {
    tokVector: IToken[];
    tokVectorLength: number;
    currIdx: number;
    LA(ahead: number): IToken;
    SKIP_TOKEN(): IToken;
    consumeToken(): void;
    SAVE_ERROR(error: IRecognitionException): IRecognitionException;
    getCurrRuleFullName(): string;
    buildFullFollowKeyStack(): FollowKey[];
    getCurrFollowKey(): FollowKey;
    isInCurrentRuleReSyncSet(type: TokenType): boolean;
    getGAstProductions(): Record<string, GrammarRule>;
    findReSyncTokenType(): TokenType;
    reSyncTo(type: TokenType): IToken[];
    canTokenTypeBeInsertedInRecovery(type: TokenType): boolean;
    canTokenTypeBeDeletedInRecovery(type: TokenType): boolean;
    getFollowsForInRuleRecovery(type: TokenType, index: number): TokenType[];
    raiseNoAltException(occurrence: number, description: string | undefined): never;
    tryInRuleRecovery(expected: TokenType, follows: TokenType[]): IToken;
    tryInRepetitionRecovery(rule: Rule, args: unknown[], canGoOn: () => boolean, expected: TokenType): void;
}

/** Where parsing may go on after an error, if the grammar allows it there: marks and connectives, never a name. */
const ANCHORS = new Set([
    ...['EOL', '{', '}', ')', ']', ','],
    ...['at', 'of', 'for', 'to', 'with', 'on', 'as', 'like', 'because', 'and', 'or', 'over', 'then', 'else', 'except'],
]);

/** What the parser may imagine: closing brackets and ends of statements. Braces balance already, and a value is not made up. */
const IMAGINED = new Set(['EOL', ')', ']']);

const END_OF_TEXT: ReadonlySet<string> = new Set([EOF.name]);

/** What the parser may never leave out to go on: ends and blocks. */
const KEPT = new Set(['EOL', '{', '}']);

/** The token that the parser was given: a mark of a broken statement may have taken its place. */
export function originalToken(token: IToken): IToken {
    return (token.payload as IToken | undefined) ?? token;
}

export class LineRecovery {
    private readonly parser: RecoveringParser;
    /** How many tokens to leave out, found by the last search for a place to go on. */
    private distance = 0;
    private readonly followSets: FollowSets;

    /** Makes the parser recover by lines; to be called before the parser is finalized. */
    constructor(
        chevrotainParser: EmbeddedActionsParser,
        private readonly tokens: { endOfStatement: TokenType; broken: TokenType },
        private readonly messages: IParserErrorMessageProvider,
    ) {
        const parser = chevrotainParser as unknown as RecoveringParser;
        this.parser = parser;
        this.followSets = new FollowSets(() => parser.getGAstProductions());
        parser.isInCurrentRuleReSyncSet = ({ name }) => this.followersOf(parser.getCurrFollowKey()).has(name);
        parser.findReSyncTokenType = () => this.findAnchor();
        parser.reSyncTo = (type) => {
            const skipped = this.skip(this.distance);
            if (type === tokens.broken) {
                this.markBroken();
            }
            return skipped;
        };
        parser.canTokenTypeBeInsertedInRecovery = (type) => IMAGINED.has(type.name);
        parser.canTokenTypeBeDeletedInRecovery = () => !KEPT.has(parser.LA(1).tokenType.name);
        // What could follow an imagined token is found by a walk through the grammar: only for tokens that are ever imagined.
        const followsOfImagined = parser.getFollowsForInRuleRecovery.bind(parser);
        parser.getFollowsForInRuleRecovery = (type, index) => (IMAGINED.has(type.name) ? followsOfImagined(type, index) : []);
        const recoverInRepetition = parser.tryInRepetitionRecovery.bind(parser);
        parser.tryInRepetitionRecovery = (rule, args, canGoOn, expected) => {
            if (expected !== EOF && expected.name !== '}') {
                recoverInRepetition(rule, args, canGoOn, expected);
            } else if (parser.LA(1).tokenType !== EOF) {
                this.skipBrokenStatement(expected);
                rule.apply(parser, args);
            }
        };
        parser.raiseNoAltException = () => this.raiseNoAlternative();
        const recoverInRule = parser.tryInRuleRecovery.bind(parser);
        parser.tryInRuleRecovery = (expected, follows) =>
            (expected.name === '{' ? this.skipToBrace() : undefined) ?? recoverInRule(expected, follows);
    }

    /**
     * To be called where a statement must end. What stands there instead is reported and left out, but for a block:
     * before that a mark is put in, with which the grammar lets it follow a broken statement.
     */
    skipToStatementEnd(): void {
        const { parser } = this;
        const token = parser.LA(1);
        const { endOfStatement } = this.tokens;
        if (token.tokenType === endOfStatement || token.tokenType === EOF) {
            return;
        }
        if (isSecondStatement(token, [parser.LA(0), parser.tokVector[parser.currIdx - 1]], parser.LA(2))) {
            this.endBeforeSecondStatement(token);
        } else {
            this.skipBrokenStatement(endOfStatement);
        }
    }

    /** Reports a second statement on the line, and ends the first one before it, so that both are read. */
    private endBeforeSecondStatement(actual: IToken): void {
        const { parser } = this;
        const expected = this.tokens.endOfStatement;
        const previous = parser.LA(0);
        const message = this.messages.buildMismatchTokenMessage({ expected, actual, previous, ruleName: parser.getCurrRuleFullName() });
        parser.SAVE_ERROR(new SecondStatementException(message, actual, previous));
        parser.tokVector.splice(parser.currIdx + 1, 0, impliedTokenAfter(originalToken(previous), expected, ''));
        parser.tokVectorLength++;
    }

    /** The parser would list every path of tokens that could have stood here; the messages need only the rule. */
    private raiseNoAlternative(): never {
        const { parser } = this;
        const actual = parser.LA(1);
        const previous = parser.LA(0);
        const message = this.messages.buildNoViableAltMessage({
            expectedPathsPerAlt: [],
            actual: [actual],
            previous,
            customUserDescription: '',
            ruleName: parser.getCurrRuleFullName(),
        });
        throw parser.SAVE_ERROR(new NoViableAltException(message, actual, previous));
    }

    private skipBrokenStatement(expected: TokenType): void {
        const { parser } = this;
        const actual = parser.LA(1);
        const previous = parser.LA(0);
        const message = this.messages.buildMismatchTokenMessage({ expected, actual, previous, ruleName: parser.getCurrRuleFullName() });
        parser.SAVE_ERROR(new MismatchedTokenException(message, actual, previous));
        // A brace that closes nothing has been reported: it goes with the statement.
        this.skip(actual.tokenType.name === '}' ? 1 : this.distanceToBlock());
        if (parser.LA(1).tokenType.name === '{') {
            this.markBroken();
        }
    }

    /** Puts the mark of a broken statement before the next token. */
    private markBroken(): void {
        const { parser } = this;
        const mark = impliedTokenAfter(parser.LA(1), this.tokens.broken, '');
        if (parser.currIdx < 0) {
            parser.tokVector.unshift(mark);
            parser.tokVectorLength++;
        } else {
            // The last token has been read: its place is free. Messages still find it in the mark.
            mark.payload = originalToken(parser.tokVector[parser.currIdx]!);
            parser.tokVector[parser.currIdx] = mark;
            parser.currIdx--;
        }
    }

    /**
     * The next token, outside of blocks that begin after here, at which an open rule can go on.
     * A block that no open rule can have is kept for the broken statement.
     */
    private findAnchor(): TokenType {
        const follows = this.parser.buildFullFollowKeyStack().map((key) => this.followersOf(key));
        const canFollow = (name: string): boolean => follows.some((names) => names.has(name));
        let blocks = 0;
        let brackets = 0;
        for (this.distance = 0; ; this.distance++) {
            const type = this.parser.LA(this.distance + 1).tokenType;
            const outside = blocks === 0 && (brackets === 0 || type.name === 'EOL' || type.name === '{');
            if (type === EOF || (outside && ANCHORS.has(type.name) && canFollow(type.name))) {
                return type;
            }
            if (type.name === '{' && blocks === 0 && canFollow(this.tokens.broken.name)) {
                return this.tokens.broken;
            }
            switch (type.name) {
                case '{':
                    blocks++;
                    brackets = 0;
                    break;
                case '}':
                    blocks = Math.max(0, blocks - 1);
                    brackets = 0;
                    break;
                case 'EOL':
                    brackets = 0;
                    break;
                case '(':
                case '[':
                    brackets++;
                    break;
                case ')':
                case ']':
                    brackets = Math.max(0, brackets - 1);
                    break;
            }
        }
    }

    private followersOf({ ruleName, idxInCallingRule, inRule }: FollowKey): ReadonlySet<string> {
        if (ruleName === undefined || idxInCallingRule === undefined || inRule === undefined) return END_OF_TEXT;
        return this.followSets.after(ruleName, idxInCallingRule, inRule);
    }

    private skip(count: number): IToken[] {
        return Array.from({ length: count }, () => this.parser.SKIP_TOKEN());
    }

    /** How many tokens stand before the next brace or the end of the statement. */
    private distanceToBlock(): number {
        let distance = 0;
        while (!['EOL', '{', '}', 'EOF'].includes(this.parser.LA(distance + 1).tokenType.name)) {
            distance++;
        }
        return distance;
    }

    /** A word too many before a block must not cost the block. */
    private skipToBrace(): IToken | undefined {
        const distance = this.distanceToBlock();
        const brace = this.parser.LA(distance + 1);
        if (brace.tokenType.name !== '{') {
            return undefined;
        }
        this.skip(distance);
        this.parser.consumeToken();
        return brace;
    }
}
