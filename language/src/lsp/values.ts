// What the words under a cursor amount to. Knows syntax trees and analyses: not how a value is shown.
import { lookUp, type Measure } from 'casewright-shared/casework';
import { dimension, readMeasure } from 'casewright-shared/quantity';
import type { AstNode } from 'langium';
import type { Analysis } from '../analysis/analysis.js';
import type * as Ast from '../generated/ast.js';
import type { VisibleNames } from '../scoping/visible-names.js';
import { partsOf } from './declared-things.js';
import type { WordAt } from './word-at.js';

export class Values {
    constructor(private readonly names: VisibleNames) {}

    /** What the expression around a word amounts to, or the property that it names. */
    at({ node, feature, leaf }: WordAt, analysis: Analysis): Measure | undefined {
        if (isKindOfStatement(node) || (node.$type === 'Property' && feature !== 'name')) {
            return undefined;
        }
        if (node.$type === 'Literal') {
            return literalValue(node as Ast.Literal);
        }
        if (node.$type === 'Property' && isSeveralValues((node as Ast.Property).value)) {
            return undefined;
        }
        const at = node.$cstNode ?? leaf;
        return analysis.valueAt({ file: analysis.design.file, start: at.offset, end: at.end }) ?? this.faceValue(node, analysis);
    }

    /** Where a face is: `Floor.front`. */
    private faceValue(node: AstNode, analysis: Analysis): Measure | undefined {
        if (node.$type !== 'MemberAccess') {
            return undefined;
        }
        const { receiver, member } = node as Ast.MemberAccess;
        const part = this.names.declaredBy(receiver.$type === 'Index' ? receiver.receiver : receiver);
        const [built] = part ? partsOf(part, analysis, receiver.$type === 'Index' ? indexBehind(receiver.receiver) : undefined) : [];
        const found = built && member ? lookUp(analysis.casework, `${built.path}.${member.$refText}`) : undefined;
        return found?.ok ? found.measure : undefined;
    }
}

/** What a number says by itself; a plain number needs no explanation. */
function literalValue({ text }: Ast.Literal): Measure | undefined {
    const reading = readMeasure(text ?? '');
    const isMeasure = reading.ok && reading.quantity.dimension !== dimension.none;
    return isMeasure ? { quantity: reading.quantity, why: { kind: 'literal', about: [], inputs: [] } } : undefined;
}

/** `doorway 32in x 80in`: no one value is that of the property. */
function isSeveralValues(value: Ast.Expression | undefined): boolean {
    return value?.$type === 'By' || value?.$type === 'List' || value?.$type === 'Dimensions' || value?.$type === 'Interval';
}

/** Whether a word is the kind of a statement, such as `shelf`, and no value. */
export function isKindOfStatement({ $type }: AstNode): boolean {
    return $type === 'PartDeclaration' || $type === 'Part' || $type === 'Fact' || $type === 'DesignDeclaration';
}

/** The number in `Tier[2]`, where a word is the `Tier` of it. */
export function indexBehind(node: AstNode): number | undefined {
    const index = node.$container?.$type === 'Index' ? (node.$container as Ast.Index) : undefined;
    if (index?.receiver !== node || index.index?.$type !== 'Literal') {
        return undefined;
    }
    const number = Number(index.index.text);
    return Number.isInteger(number) ? number : undefined;
}
