// What a declared name has become in the casework: parts, cases, openings, things. Knows declared names and places: not how they are shown.
import type { Assembly, Opening, Part, Span, Thing } from 'casewright-shared/casework';
import { type AstNode, isAstNode } from 'langium';
import type { Analysis } from '../analysis/analysis.js';
import type * as Ast from '../generated/ast.js';
import type { DeclaredName } from '../scoping/declared-name.js';

/** The parts that a declaration has become; one of each group if an index says which. */
export function partsOf(name: DeclaredName, analysis: Analysis, chosen: number | undefined): readonly Part[] {
    const parts = [...analysis.casework.parts.values()].filter((part) => isAt(part.nameSpan, name, analysis));
    const meant = chosen === undefined ? parts : parts.filter((part) => part.name.endsWith(`[${chosen}]`));
    return meant.length > 0 ? meant : parts;
}

/** The cases that stand in another where a statement places them. */
export function insertedCasesOf(name: DeclaredName, analysis: Analysis): readonly Assembly[] {
    const statement = declarationNode(name.node).$cstNode;
    return analysis.casework.assemblies.filter(
        ({ span, name: called }) =>
            statement?.offset === span.start &&
            analysis.documentOf(span.file) === name.document &&
            called.replace(/\[.*$/, '') === name.name,
    );
}

/** What is built of a case, or by a `build`. */
export function builtCasesOf(name: DeclaredName, { casework, design }: Analysis): readonly Assembly[] {
    const statement = name.sort === 'build' ? (name.node as Ast.Build).design.$refText : name.name;
    return casework.assemblies.filter((assembly) => assembly.inside === undefined && declaredAs(assembly, statement, design));
}

/** The openings that a name has become. */
export function openingsOf(name: DeclaredName, analysis: Analysis): readonly Opening[] {
    return [...analysis.casework.openings.values()].filter((opening) => isAt(opening.span, name, analysis));
}

/** The material, joint, goods and so on that a name declares. */
export function thingOf(name: DeclaredName, analysis: Analysis): Thing | undefined {
    return [...analysis.casework.things.values()].find((one) => isAt(one.nameSpan, name, analysis));
}

/** `side Left, Right` declares both of its parts. */
export function declarationNode(node: AstNode): AstNode {
    const isPieceOfStatement = node.$type === 'Part' || node.$type === 'IndexName' || node.$type === 'OpeningName';
    return isPieceOfStatement && isAstNode(node.$container) ? declarationNode(node.$container) : node;
}

/** Whether a span is that of a declared name. */
export function isAt(span: Span, name: DeclaredName, analysis: Analysis): boolean {
    const segment = name.nameSegment;
    return segment !== undefined && span.start === segment.offset && analysis.documentOf(span.file) === name.document;
}

/** The name of a document in spans; undefined if the design does not use it. */
export function fileOf(name: DeclaredName, analysis: Analysis): string | undefined {
    return analysis.design.files.find((file) => analysis.documentOf(file) === name.document);
}

/** What a project builds is called by its own name, or by that of its case. */
function declaredAs(assembly: Assembly, name: string, design: Analysis['design']): boolean {
    return (
        assembly.name === name ||
        design.project?.builds.some((build) => build.name === assembly.name && build.design.endsWith(`#${name}`)) === true
    );
}
