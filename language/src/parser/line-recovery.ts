// Where parsing goes on after an error. Knows token kinds: no grammar rules, no messages.
//
// The parser's own recovery goes on at any token that may follow any open rule, which lands in the middle of the broken
// line or in the next block. Here it goes on at the end of the statement, or at a mark or a connective inside it.
// This replaces methods of the parser instance that Chevrotain documents as points of extension of its recovery.
import { type EmbeddedActionsParser, EOF, type IToken, type TokenType } from 'chevrotain';

/** What is used of the parser; all of it is protected there. */
interface RecoveringParser {
    LA(ahead: number): IToken;
    SKIP_TOKEN(): IToken;
    consumeToken(): void;
    flattenFollowSet(): TokenType[];
    findReSyncTokenType(): TokenType;
    reSyncTo(type: TokenType): IToken[];
    canTokenTypeBeInsertedInRecovery(type: TokenType): boolean;
    tryInRuleRecovery(expected: TokenType, follows: TokenType[]): IToken;
}

/** Where parsing may go on after an error, if the grammar allows it there: marks and connectives, never a name. */
const ANCHORS = new Set([
    ...['EOL', '{', '}', ')', ']', ','],
    ...['at', 'of', 'for', 'to', 'with', 'on', 'in', 'as', 'like', 'because', 'and', 'or', 'over', 'then', 'else', 'except'],
]);

/** What the parser may imagine: closing marks and ends of statements, never an opening brace or a value. */
const IMAGINED = new Set(['EOL', ')', ']', '}']);

/** Makes the parser recover by lines; to be called before the parser is finalized. */
export function recoverByLines(chevrotainParser: EmbeddedActionsParser): void {
    const parser = chevrotainParser as unknown as RecoveringParser;
    let tokensToSkip = 0; // found by the last search for a place to go on

    parser.findReSyncTokenType = () => {
        const found = findAnchor(parser);
        tokensToSkip = found.distance;
        return found.type;
    };
    parser.reSyncTo = () => {
        const skipped: IToken[] = [];
        for (; tokensToSkip > 0; tokensToSkip--) {
            skipped.push(parser.SKIP_TOKEN());
        }
        return skipped;
    };
    parser.canTokenTypeBeInsertedInRecovery = (type) => IMAGINED.has(type.name);
    const recoverInRule = parser.tryInRuleRecovery.bind(parser);
    parser.tryInRuleRecovery = (expected, follows) =>
        (expected.name === '{' ? skipToBrace(parser, expected) : undefined) ?? recoverInRule(expected, follows);
}

/** The next token, outside of blocks that begin after here, at which an open rule can go on. */
function findAnchor(parser: RecoveringParser): { type: TokenType; distance: number } {
    const follow = new Set(parser.flattenFollowSet().map((type) => type.name));
    let blocks = 0;
    let brackets = 0;
    for (let ahead = 1; ; ahead++) {
        const type = parser.LA(ahead).tokenType;
        const outside = blocks === 0 && (brackets === 0 || type.name === 'EOL');
        if (type === EOF || (outside && ANCHORS.has(type.name) && follow.has(type.name))) {
            return { type, distance: ahead - 1 };
        }
        if (type.name === '{') {
            blocks++;
        } else if (type.name === '}') {
            blocks = Math.max(0, blocks - 1);
        } else if (type.name === '(' || type.name === '[') {
            brackets++;
        } else if (type.name === ')' || type.name === ']') {
            brackets = Math.max(0, brackets - 1);
        }
        if (type.name === 'EOL' || type.name === '{' || type.name === '}') {
            brackets = 0;
        }
    }
}

/** A word too many before a block must not cost the block. */
function skipToBrace(parser: RecoveringParser, brace: TokenType): IToken | undefined {
    for (let ahead = 1; parser.LA(ahead).tokenType !== EOF && parser.LA(ahead).tokenType.name !== 'EOL'; ahead++) {
        if (parser.LA(ahead).tokenType !== brace) {
            continue;
        }
        for (let skipped = 1; skipped < ahead; skipped++) {
            parser.SKIP_TOKEN();
        }
        const found = parser.LA(1);
        parser.consumeToken();
        return found;
    }
    return undefined;
}
