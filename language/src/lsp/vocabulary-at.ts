// Which rows of the vocabulary hold where a node stands. Knows shapes of the syntax tree and the vocabulary's tables.
import { vocabulary } from 'casewright-shared/casework';
import type { AstNode } from 'langium';
import type * as Ast from '../generated/ast.js';
import { DeclaredName } from '../scoping/declared-name.js';

/** What may be said in a place, and of what: `a shelf`. */
export interface Sayable {
    readonly called: string;
    readonly properties: vocabulary.Properties;
}

/** What may be said of the thing whose head or braces a node stands in. */
function sayableAt(node: AstNode | undefined): Sayable | undefined {
    for (let at = node; at; at = at.$container) {
        switch (at.$type) {
            case 'Fact':
                return sayableOfKind((at as Ast.Fact).kind);
            case 'PartDeclaration':
            case 'DesignDeclaration':
                return sayableOfKind((at as Ast.PartDeclaration).kind);
            case 'EveryStatement':
                return sayableOfKind(kindSelected((at as Ast.EveryStatement).selectors));
            case 'Step':
                return sayableOfStep((at as Ast.Step).kind);
            case 'Property': {
                const row = rowOf(at as Ast.Property);
                return row && sayableInBraces((at as Ast.Property).name, row.shape);
            }
        }
    }
    return undefined;
}

/** The row of the table that a property is checked by. */
export function rowOf(property: Ast.Property): vocabulary.PropertyRow | undefined {
    return own(sayableAt(property.$container)?.properties, property.name);
}

/** The row of an option of a step. */
export function rowOfOption(option: Ast.Option): vocabulary.PropertyRow | undefined {
    return own(sayableAt(option.$container)?.properties, option.name);
}

/** What may be said of a kind of thing or part. */
export function sayableOfKind(kind: string | undefined): Sayable | undefined {
    return kind === undefined ? undefined : (own(vocabulary.partKinds, kind) ?? own(vocabulary.factKinds, kind));
}

export function sayableOfStep(kind: string | undefined): Sayable | undefined {
    const step = own(vocabulary.stepKinds, kind);
    return step && { called: `the step \`${kind}\``, properties: step.options };
}

/** What may stand in the braces of a property: `route { doorway 32in x 80in }`. */
export function sayableInBraces(name: string, shape: vocabulary.Shape): Sayable | undefined {
    return shape.is === 'block' || shape.is === 'newName' ? { called: `\`${name}\``, properties: shape.properties } : undefined;
}

/** The kind of the parts that selectors speak of: `every shelf`, `every Tier`. */
function kindSelected(selectors: readonly Ast.Expression[] | undefined): string | undefined {
    for (const selector of selectors ?? []) {
        const target = selector.$type === 'Every' ? selector.target : selector;
        if (target?.$type === 'Reference') {
            const name = target.target?.$nodeDescription;
            return name instanceof DeclaredName ? name.kind : target.target?.$refText;
        }
    }
    return undefined;
}

/** A row by its name, if the table itself has it. */
export function own<Row>(table: Readonly<Record<string, Row>> | undefined, name: string | undefined): Row | undefined {
    return table && name !== undefined && Object.hasOwn(table, name) ? table[name] : undefined;
}
