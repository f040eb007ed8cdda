// What the pieces of a text are, where their form alone does not say it. Knows the syntax tree: no layout.
import { type AstNode, AstUtils, type CstNode, GrammarUtils, isAstNode } from 'langium';
import {
    isAllow,
    isBinary,
    isBody,
    isBuild,
    isCall,
    isDesignDeclaration,
    isEdgeStatement,
    isFact,
    isLiteral,
    isProperty,
    isUnary,
    isWorkBlock,
} from '../generated/ast.js';

/** Pieces by their offsets. */
export interface Roles {
    /** Members of a block and steps of a recipe: what stands side by side on a line. */
    memberStarts: ReadonlySet<number>;
    /** Signs of negative numbers: they touch what follows. */
    negativeSigns: ReadonlySet<number>;
    /** Strokes of fractions without a unit, `1/3` and `4/4`: they touch both numbers. */
    fractionStrokes: ReadonlySet<number>;
    /** Round brackets that touch the name before them. */
    tightBrackets: ReadonlySet<number>;
    /** Hyphens inside the name of a rule. */
    hyphens: ReadonlySet<number>;
    /** For a property or an edge alone on its line: where its value begins, by where it begins. */
    values: ReadonlyMap<number, number>;
}

/** Reads the roles from the syntax tree of a text; those in broken statements mean nothing. */
export function readRoles(file: AstNode): Roles {
    const roles = {
        memberStarts: new Set<number>(),
        negativeSigns: new Set<number>(),
        fractionStrokes: new Set<number>(),
        tightBrackets: new Set<number>(),
        hyphens: new Set<number>(),
        values: new Map<number, number>(),
    };
    for (const node of AstUtils.streamAst(file)) {
        const cst = node.$cstNode;
        if (!cst) {
            continue;
        }
        if (isBody(node) || isWorkBlock(node)) {
            for (const member of isBody(node) ? node.members : node.steps) {
                addOffset(roles.memberStarts, member.$cstNode);
            }
        } else if (isUnary(node) && node.operator === '-') {
            addOffset(roles.negativeSigns, cst);
        } else if (isBinary(node) && node.operator === '/' && isWhole(node.left) && isWhole(node.right)) {
            addOffset(roles.fractionStrokes, GrammarUtils.findNodeForProperty(cst, 'operator'));
        } else if (isCall(node) || isBuild(node) || isDesignDeclaration(node) || isFact(node)) {
            addOffset(roles.tightBrackets, GrammarUtils.findNodeForKeyword(cst, '('));
        } else if (isAllow(node)) {
            const rule = GrammarUtils.findNodeForProperty(cst, 'rule');
            for (let at = rule?.text.indexOf('-') ?? -1; at >= 0; at = rule!.text.indexOf('-', at + 1)) {
                roles.hyphens.add(rule!.offset + at);
            }
        }
        const value = secondColumnOf(node);
        if (value) {
            roles.values.set(cst.offset, value.offset);
        }
    }
    return roles;
}

function isWhole(node: AstNode | undefined): boolean {
    return isLiteral(node) && /^[0-9]+$/.test(node.text);
}

function addOffset(offsets: Set<number>, cst: CstNode | undefined): void {
    if (cst) {
        offsets.add(cst.offset);
    }
}

/** What stands in the second column of a run of like lines. */
function secondColumnOf(node: AstNode): CstNode | undefined {
    if (isProperty(node)) {
        const name = GrammarUtils.findNodeForProperty(node.$cstNode, 'name');
        // In `7 layers of Ply` the value comes first: it has no column.
        return name?.offset === node.$cstNode?.offset ? (node.value?.$cstNode ?? firstOf(node.clauses) ?? node.body?.$cstNode) : undefined;
    }
    if (isBuild(node)) {
        return node.count?.$cstNode ?? GrammarUtils.findNodeForProperty(node.$cstNode, 'design');
    }
    if (isEdgeStatement(node)) {
        return node.clause?.$cstNode ?? node.treatment?.$cstNode;
    }
    return undefined;
}

function firstOf(nodes: readonly AstNode[]): CstNode | undefined {
    return nodes.find(isAstNode)?.$cstNode;
}
