/**
 * What was built of each case the last time, for as long as nothing that it depends on has changed.
 *
 * A case is built from its own declaration, from those of the cases in it, and from what stands outside of cases: materials, values,
 * defaults, the shop, the project. It is built anew when one of these is another object than it was; whoever makes designs keeps
 * the declarations that an edit has left alone. Where something was wrong, it is built anew as well: what is wrong is reported on the way.
 */
import type { DeclarationId, Design, DesignDeclaration, Span } from '../design/design.js';
import type { Path, Problem } from '../model/casework.js';
import { type Build, isOfFile } from './builds.js';
import type { BuiltCase } from './built-case.js';

interface Kept {
    readonly built: BuiltCase;
    /** Its own declaration, and those of the cases in it. */
    readonly of: readonly DesignDeclaration[];
}

/** Finds what was built of a case at its path; undefined where it has to be built anew. */
export type FindBuilt = (build: Build, path: Path) => BuiltCase | undefined;

export class BuiltBefore {
    private outside: readonly unknown[] = [];
    private readonly kept = new Map<Path, Kept>();

    /** What can be used again in a design. */
    for(design: Design): FindBuilt {
        const outside = outsideOfCases(design);
        if (outside.length !== this.outside.length || outside.some((one, index) => one !== this.outside[index])) return () => undefined;
        return ({ declaration, statement, count }, path) => {
            const known = this.kept.get(path);
            if (!known?.of.every((one) => design.declarations.get(one.id) === one)) return undefined;
            const { build } = known.built;
            const isSame = build.declaration === declaration && build.statement === statement && build.count === count;
            return isSame ? known.built : undefined;
        };
    }

    /** Keeps what has been built, but for cases in which something is wrong. */
    keep(design: Design, built: readonly BuiltCase[], problems: readonly Problem[]): void {
        this.outside = outsideOfCases(design);
        this.kept.clear();
        const designs = new Map<DeclarationId, DesignDeclaration>();
        for (const one of design.declarations.values()) if (one.is === 'design' && isOfFile(one.id)) designs.set(one.id, one);
        const unsound = new Set(problems.map(({ span }) => [...designs.values()].find((one) => holds(one.span, span))));
        if (unsound.has(undefined)) return; // something is wrong outside of cases: what hangs on it is not known
        for (const one of built) {
            const of = withDesignsIn(one.build.declaration, designs);
            if (!of.some((design) => unsound.has(design))) this.kept.set(one.path, { built: one, of });
        }
    }
}

function outsideOfCases({ declarations, defaults, project, shop }: Design): readonly unknown[] {
    return [project, shop, ...defaults, ...[...declarations.values()].filter(({ is, id }) => is !== 'design' && isOfFile(id))];
}

function holds(outer: Span, inner: Span): boolean {
    return outer.file === inner.file && outer.start <= inner.start && inner.end <= outer.end;
}

/** A design and all that it names, directly or further on. */
function withDesignsIn(design: DesignDeclaration, designs: ReadonlyMap<DeclarationId, DesignDeclaration>): readonly DesignDeclaration[] {
    const found = new Set([design]);
    for (const one of found) {
        for (const id of namedIn(one)) {
            const other = designs.get(id);
            if (other) found.add(other);
        }
    }
    return [...found];
}

const named = new WeakMap<DesignDeclaration, ReadonlySet<DeclarationId>>();

/** The declarations of files in which what a design names stands: `kiln-lane.case#PotteryCase` of `kiln-lane.case#PotteryCase.Tier`. */
function namedIn(design: DesignDeclaration): ReadonlySet<DeclarationId> {
    const known = named.get(design);
    if (known) return known;
    const ids = new Set<DeclarationId>();
    const visit = (value: unknown): void => {
        if (typeof value === 'string') {
            const hash = value.indexOf('#');
            if (hash < 0) return;
            const dot = value.indexOf('.', hash);
            ids.add(dot < 0 ? value : value.slice(0, dot));
        } else if (typeof value === 'object' && value !== null) {
            for (const one of Object.values(value)) visit(one);
        }
    };
    visit(design);
    named.set(design, ids);
    return ids;
}
