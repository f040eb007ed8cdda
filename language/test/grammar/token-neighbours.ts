// Which tokens a grammar lets stand side by side. Knows the grammar as data: nothing of what it describes.
import { GrammarAST } from 'langium';

/** Tokens by name: a terminal's name, or the text of a keyword. */
interface Edges {
    first: Set<string>;
    last: Set<string>;
    canBeEmpty: boolean;
}

/** All pairs `first second` of tokens that can stand side by side in some text of the grammar. */
export function tokenNeighbours(grammar: GrammarAST.Grammar): Set<string> {
    const edges = new Map<GrammarAST.AbstractRule, Edges>();
    const pairs = new Set<string>();
    const rules = grammar.rules.filter(GrammarAST.isParserRule);
    // First and last tokens of rules depend on one another: repeat until nothing is added.
    for (let size = -1; size !== sizeOf(edges); ) {
        size = sizeOf(edges);
        for (const rule of rules) {
            edges.set(rule, edgesOf(rule.definition, edges, pairs));
        }
    }
    return pairs;
}

function sizeOf(edges: Map<GrammarAST.AbstractRule, Edges>): number {
    return [...edges.values()].reduce((sum, { first, last, canBeEmpty }) => sum + first.size + last.size + Number(canBeEmpty), 0);
}

function edgesOf(element: GrammarAST.AbstractElement, rules: Map<GrammarAST.AbstractRule, Edges>, pairs: Set<string>): Edges {
    const edges = edgesOnce(element, rules, pairs);
    const { cardinality } = element;
    if (cardinality === '*' || cardinality === '+') {
        join(edges.last, edges.first, pairs);
    }
    return { ...edges, canBeEmpty: edges.canBeEmpty || cardinality === '*' || cardinality === '?' };
}

function edgesOnce(element: GrammarAST.AbstractElement, rules: Map<GrammarAST.AbstractRule, Edges>, pairs: Set<string>): Edges {
    if (GrammarAST.isKeyword(element)) {
        return token(element.value);
    }
    if (GrammarAST.isRuleCall(element)) {
        const rule = element.rule.ref!;
        return GrammarAST.isTerminalRule(rule)
            ? token(rule.name)
            : (rules.get(rule) ?? { first: new Set(), last: new Set(), canBeEmpty: false });
    }
    if (GrammarAST.isAssignment(element)) {
        return edgesOf(element.terminal, rules, pairs);
    }
    if (GrammarAST.isCrossReference(element)) {
        return edgesOf(element.terminal!, rules, pairs);
    }
    if (GrammarAST.isAlternatives(element)) {
        const alternatives = element.elements.map((alternative) => edgesOf(alternative, rules, pairs));
        return {
            first: new Set(alternatives.flatMap(({ first }) => [...first])),
            last: new Set(alternatives.flatMap(({ last }) => [...last])),
            canBeEmpty: alternatives.some(({ canBeEmpty }) => canBeEmpty),
        };
    }
    if (GrammarAST.isGroup(element)) {
        return element.elements.map((part) => edgesOf(part, rules, pairs)).reduce((left, right) => sequence(left, right, pairs));
    }
    if (GrammarAST.isAction(element)) {
        return { first: new Set(), last: new Set(), canBeEmpty: true };
    }
    throw new Error(`no edges of ${element.$type}`);
}

function token(name: string): Edges {
    return { first: new Set([name]), last: new Set([name]), canBeEmpty: false };
}

function sequence(left: Edges, right: Edges, pairs: Set<string>): Edges {
    join(left.last, right.first, pairs);
    return {
        first: left.canBeEmpty ? new Set([...left.first, ...right.first]) : left.first,
        last: right.canBeEmpty ? new Set([...left.last, ...right.last]) : right.last,
        canBeEmpty: left.canBeEmpty && right.canBeEmpty,
    };
}

function join(left: Set<string>, right: Set<string>, pairs: Set<string>): void {
    for (const first of left) {
        for (const second of right) {
            pairs.add(`${first} ${second}`);
        }
    }
}
