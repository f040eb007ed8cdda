// Prints a syntax tree on one line, so that a reading can be written beside its text. Knows the shapes of the tree only.
import type { AstNode, GenericAstNode, Reference } from 'langium';
import { isReference } from 'langium';

/** `(70in + 1/4in)`, `→Sweep`, `[a, b]`, else `Type{property: value}` without empty properties. */
export function treeText(value: unknown): string {
    if (Array.isArray(value)) {
        return `[${value.map(treeText).join(', ')}]`;
    }
    if (isReference(value)) {
        return `→${(value as Reference).$refText}`;
    }
    if (typeof value !== 'object' || value === null) {
        return JSON.stringify(value) ?? 'nothing';
    }
    return nodeText(value as GenericAstNode);
}

const field = (node: GenericAstNode, name: string): string => treeText(node[name]);
const word = (node: GenericAstNode, name: string): string => (node[name] === undefined ? '·' : String(node[name]));

/** Types that are easier to read in the notation of the language. */
const SHORT: Readonly<Record<string, (node: GenericAstNode) => string>> = {
    Literal: (node) => word(node, 'text'),
    TradeSize: (node) => word(node, 'text'),
    Text: (node) => `“${word(node, 'text')}”`,
    Truth: (node) => word(node, 'word'),
    Reference: (node) => field(node, 'target'),
    Group: (node) => `‹${field(node, 'inner')}›`,
    Binary: (node) => `(${field(node, 'left')} ${word(node, 'operator')} ${field(node, 'right')})`,
    Unary: (node) => `(${word(node, 'operator')} ${field(node, 'operand')})`,
    MemberAccess: (node) => `${field(node, 'receiver')}.${field(node, 'member').slice(1)}`,
    Index: (node) => `${field(node, 'receiver')}[${field(node, 'index')}]`,
    Range: (node) => `${field(node, 'first')}..${field(node, 'last')}`,
    By: (node) => `By${field(node, 'parts')}`,
    List: (node) => `List${field(node, 'items')}`,
    RecipeReference: (node) => field(node, 'recipe'),
    Body: (node) => `{${field(node, 'members').slice(1, -1)}}`,
    WorkBlock: (node) => `{${field(node, 'steps').slice(1, -1)}}`,
};

function nodeText(node: GenericAstNode): string {
    const short = SHORT[node.$type];
    if (short) {
        return short(node);
    }
    const properties = ownProperties(node)
        .filter(([, value]) => value !== undefined && !(Array.isArray(value) && value.length === 0))
        .map(([name, value]) => `${name}: ${treeText(value)}`);
    return `${node.$type}{${properties.join(', ')}}`;
}

/** What the text gave the node: its properties without those that the parser adds. */
export function ownProperties(node: AstNode): [string, unknown][] {
    return Object.entries(node)
        .filter(([name]) => !name.startsWith('$'))
        .sort(([a], [b]) => (a < b ? -1 : 1));
}
