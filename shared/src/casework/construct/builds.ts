/** Which cases of a design are built: what its project says, or each of its cases once. */
import type { BuildStatement, Design, DesignDeclaration, Statement } from '../design/design.js';

export interface Build {
    readonly declaration: DesignDeclaration;
    readonly statement: BuildStatement | undefined;
    readonly count: number;
}

/** A declaration right in a file has a plain name behind the `#`. */
export function isOfFile(id: string): boolean {
    return !id.slice(id.indexOf('#') + 1).includes('.');
}

export function buildsOf(design: Design): readonly Build[] {
    const builds: Build[] = [];
    for (const statement of design.project?.builds ?? []) {
        const declaration = design.declarations.get(statement.design);
        if (declaration?.is === 'design') builds.push({ declaration, statement, count: statement.count });
    }
    const built = new Set(builds.map((build) => build.declaration.id));
    const used = usedInCases(design);
    for (const declaration of design.cases) {
        if (built.has(declaration.id) || used.has(declaration.id) || !statesItsSize(declaration)) continue;
        if (declaration.parameters.some((parameter) => !parameter.value)) continue;
        builds.push({ declaration, statement: undefined, count: design.project ? 0 : 1 });
    }
    return builds;
}

/** A design without a size of its own is checked where it is put. */
function statesItsSize(declaration: DesignDeclaration): boolean {
    return declaration.phrases.properties.some(({ name }) => name === 'width' || name === 'height' || name === 'depth');
}

/** Designs that stand in other cases are built there. One that contains itself is built all the same: that is where it is found out. */
function usedInCases(design: Design): ReadonlySet<string> {
    const contents = new Map<string, ReadonlySet<string>>();
    for (const declaration of design.declarations.values())
        if (declaration.is === 'design') contents.set(declaration.id, designsIn(declaration.statements));
    const used = new Set<string>();
    for (const [owner, inside] of contents) for (const id of inside) if (!contains(contents, id, owner)) used.add(id);
    return used;
}

/** Whether a design is in another, directly or further in, or is the other itself. */
function contains(contents: ReadonlyMap<string, ReadonlySet<string>>, outer: string, inner: string, seen = new Set<string>()): boolean {
    if (outer === inner) return true;
    if (seen.has(outer)) return false;
    seen.add(outer);
    return [...(contents.get(outer) ?? [])].some((id) => contains(contents, id, inner, seen));
}

/** The designs that cases in these statements are of. */
function designsIn(statements: readonly Statement[]): ReadonlySet<string> {
    const found = new Set<string>();
    const visit = (some: readonly Statement[]): void => {
        for (const statement of some) {
            if (statement.is === 'part') {
                const { of } = statement.phrases;
                const target = of?.is === 'call' ? of.receiver : of;
                if (target?.is === 'name') found.add(target.id);
                visit(statement.statements);
            } else if (statement.is === 'if') {
                visit(statement.then);
                visit(statement.otherwise);
            } else if (statement.is === 'in' || statement.is === 'repeat') {
                visit(statement.statements);
            }
        }
    };
    visit(statements);
    return found;
}
