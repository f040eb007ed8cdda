// `18,5in`: a comma inside a number reads as one between two values. Knows literals and the text between them.
import type * as Ast from '../generated/ast.js';
import type { FileLowering } from './file-lowering.js';

/** Reports values that may be two halves of one number; whether there are such. They begin right after a comma that a digit touches. */
export function reportDecimalComma(file: FileLowering, values: readonly (Ast.Expression | undefined)[]): boolean {
    for (const [index, value] of values.entries()) {
        const whole = lastNumber(values[index - 1]);
        const rest = firstNumber(value);
        if (whole?.$cstNode && rest?.$cstNode && isOneNumber(file, whole, rest)) {
            report(file, whole.text, rest.text, whole.$cstNode.offset, rest.$cstNode.end);
            return true;
        }
    }
    return false;
}

/** A plain number, a comma, and digits with a unit, all in one. */
function isOneNumber(file: FileLowering, whole: Ast.Literal, rest: Ast.Literal): boolean {
    const between = file.text.slice(whole.$cstNode?.end, rest.$cstNode?.offset);
    return between === ',' && /^[0-9]+$/.test(whole.text) && /^[0-9]+ ?[^0-9./ -]/.test(rest.text);
}

function report(file: FileLowering, whole: string, rest: string, start: number, end: number): void {
    const span = file.between(start, end);
    const withPoint = `${whole}.${rest}`;
    const asThousands = /^[0-9]{3}(?![0-9])/.test(rest);
    const one = asThousands ? `\`${whole}${rest}\` or \`${withPoint}\`` : `\`${withPoint}\``;
    file.report('TXT-001', span, {
        message: `\`${whole},${rest}\` can be read as one number or as two`,
        hint: `write ${one}, or \`${whole}, ${rest}\` for two values`,
        found: 'a comma inside a number',
        needed: 'a point inside a number, or a space after the comma between two',
        ...(asThousands ? {} : { fix: { title: `write \`${withPoint}\``, span, text: withPoint, safe: false } }),
    });
}

function firstNumber(value: Ast.Expression | undefined): Ast.Literal | undefined {
    switch (value?.$type) {
        case 'Literal':
            return value;
        case 'Binary':
            return firstNumber(value.left);
        case 'By':
            return firstNumber(value.parts[0]);
        case 'Dimensions':
        case 'Interval':
            return firstNumber(value.first);
        case 'Rate':
            return firstNumber(value.amount);
        default:
            return undefined;
    }
}

function lastNumber(value: Ast.Expression | undefined): Ast.Literal | undefined {
    switch (value?.$type) {
        case 'Literal':
            return value;
        case 'Binary':
            return lastNumber(value.right);
        case 'By':
            return lastNumber(value.parts.at(-1));
        case 'Interval':
            return lastNumber(value.last);
        default:
            return undefined;
    }
}
