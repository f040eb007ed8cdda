// Whole numbers that stand before a name: `build 2 Box`, `hold 3 Bowl on Tier`. Knows numbers only.
import { readMeasure } from 'casewright-shared/quantity';
import type * as Ast from '../generated/ast.js';
import type { FileLowering } from './file-lowering.js';

/** The number before what is held or built; 1 where there is none. */
export function lowerCount(file: FileLowering, node: Ast.Literal | undefined): number {
    if (!node?.text) {
        return 1;
    }
    const reading = readMeasure(node.text);
    const count = reading.ok && reading.written.form === 'whole' && !reading.written.unit ? Number(reading.written.canonical) : Number.NaN;
    if (Number.isSafeInteger(count) && count > 0) {
        return count;
    }
    file.report('UNI-006', file.span(node), {
        message: `\`${node.text}\` is no count`,
        hint: 'write a whole number, such as `2`',
        found: `\`${node.text}\``,
        needed: 'a whole number from 1 up',
    });
    return 1;
}
