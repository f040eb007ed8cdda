// What stands between two pieces on one line. Knows signs and their roles: no lines, no blocks.
import type { Roles } from './roles.js';
import type { Piece } from './text-pieces.js';

/** Between what stands side by side on a line: properties, phrases of a body, steps. */
export const BETWEEN_MEMBERS = '   ';

const TOUCHES_BEFORE = new Set([',', ')', ']', '[', '.', '..', ';']);
const TOUCHES_AFTER = new Set(['(', '[', '.', '..']);

/** Decides on the blanks inside one statement, piece by piece. */
export class Spacing {
    private brackets = 0;
    private readonly isLet: boolean;

    constructor(
        private readonly roles: Roles,
        first: string,
        second: string | undefined,
    ) {
        this.isLet = first === 'let' || second === 'let';
    }

    /** The blanks between two pieces that follow one another; to be asked in their order. */
    between(previous: Piece, next: Piece): string {
        this.brackets += previous.text === '(' ? 1 : previous.text === ')' ? -1 : 0;
        const { roles } = this;
        if (TOUCHES_BEFORE.has(next.text) || TOUCHES_AFTER.has(previous.text)) {
            return '';
        }
        if (roles.negativeSigns.has(previous.offset) || roles.tightBrackets.has(next.offset)) {
            return '';
        }
        if ([previous.offset, next.offset].some((offset) => roles.hyphens.has(offset) || roles.fractionStrokes.has(offset))) {
            return '';
        }
        // The type of a value touches its name, the family of a material stands apart.
        if (next.text === ':' && (this.brackets > 0 || this.isLet)) {
            return '';
        }
        return roles.memberStarts.has(next.offset) && previous.text !== '{' ? BETWEEN_MEMBERS : ' ';
    }
}
