/**
 * What describes a part: its own words first, then those of the part it is `like`, then what `every` says of it, the nearer and narrower
 * first. A thing stated nearer wins; edges are taken edge by edge.
 */
import type {
    DesignDeclaration,
    EdgeStatement,
    EveryStatement,
    Expression,
    LeaveStatement,
    PartDeclaration,
    PartStatement,
    Phrases,
    Place,
    Property,
    Span,
    Treatment,
} from '../design/design.js';
import type { CaseBuild } from './case-build.js';
import type { Construction } from './construction.js';
import { evaluate } from './evaluate.js';
import type { PlacedPart } from './placed-part.js';
import type { Room } from './room.js';
import type { Scope } from './scope.js';

export interface Scoped<T> {
    readonly said: T;
    readonly scope: Scope;
}

export interface Description {
    readonly of: Scoped<Expression> | undefined;
    readonly at: Scoped<readonly Place[]> | undefined;
    readonly joint: Scoped<Treatment> | undefined;
    readonly properties: ReadonlyMap<string, Scoped<Property>>;
    /** In the order of work. */
    readonly edges: readonly Scoped<EdgeStatement>[];
    /** `edge front bevelled` */
    readonly frontForm: EdgeStatement['form'];
    readonly leaves: readonly Scoped<LeaveStatement>[];
    readonly layers: readonly Scoped<LayerStatement>[];
}

export interface LayerStatement {
    readonly declaration: PartDeclaration;
    readonly phrases: Phrases;
}

/** An `every` as it stands in a case. */
export interface EveryRule {
    readonly statement: EveryStatement;
    readonly scope: Scope;
    /** The opening in whose block it stands: it holds for what is in there. */
    readonly within?: Room | undefined;
}

interface Source {
    readonly phrases: Phrases;
    readonly scope: Scope;
    readonly layers: readonly Scoped<LayerStatement>[];
    readonly rank: number;
    readonly span: Span;
}

export function describePart(construction: Construction, part: PlacedPart): Description {
    const own = ownSources(construction, part, new Set());
    const sources = [...own, ...everySources(construction, part, own)];
    const caseMaterial = materialOfCase(part.build);
    const first = <T>(pick: (phrases: Phrases) => T | undefined): Scoped<T> | undefined => {
        for (const { phrases, scope } of sources) {
            const said = pick(phrases);
            if (said !== undefined) return { said, scope };
        }
        return undefined;
    };
    const properties = new Map<string, Scoped<Property>>();
    for (const { phrases, scope } of sources) {
        for (const property of phrases.properties)
            if (!properties.has(property.name)) properties.set(property.name, { said: property, scope });
    }
    return {
        of: first((phrases) => phrases.of) ?? caseMaterial,
        at: first((phrases) => (phrases.at.length > 0 ? phrases.at : undefined)),
        joint: first((phrases) => phrases.joint),
        properties,
        edges: edgesOf(sources),
        frontForm: first(formOfFront)?.said,
        leaves: sources.flatMap(({ phrases, scope }) => phrases.leaves.map((said) => ({ said, scope }))),
        layers: layersOf(sources),
    };
}

/** The part's own words, and after them those of the part it is like. */
function ownSources(construction: Construction, part: PlacedPart, seen: Set<string>): readonly Source[] {
    return statementSources(construction, part.statement, part.scope, part.build, seen);
}

function statementSources(
    construction: Construction,
    statement: PartStatement,
    scope: Scope,
    build: CaseBuild,
    seen: Set<string>,
): readonly Source[] {
    const { phrases } = statement;
    const layers = statement.statements.flatMap((one) =>
        one.is === 'part' && one.kind === 'layer'
            ? one.parts.map((declaration) => ({ said: { declaration, phrases: one.phrases }, scope }))
            : [],
    );
    const own: Source = { phrases, scope, layers, rank: 0, span: statement.span };
    const { like } = phrases;
    if (!like || seen.has(like.id)) return [own];
    seen.add(like.id);
    const model = build.findPart(like.id);
    return model ? [own, ...statementSources(construction, model.statement, model.scope, model.build, seen)] : [own];
}

/** What `every` says of it: in its case, in the cases around that, then file by file, the nearer first. */
function everySources(construction: Construction, part: PlacedPart, own: readonly Source[]): readonly Source[] {
    const sources: Source[] = [];
    const add = (rules: readonly EveryRule[]): void => {
        sources.push(...matching(construction, part, rules, [...own, ...sources]));
    };
    for (let build: CaseBuild | undefined = part.build; build; build = build.parent) add(build.everys);
    const { defaults } = construction.design;
    const files = new Set(defaults.map((statement) => statement.span.file).reverse());
    const scope = part.build.outermost.fileScope;
    for (const file of files) add(defaults.filter((one) => one.span.file === file).map((statement) => ({ statement, scope })));
    return sources;
}

/** @param nearer what has been said of the part nearer by: it decides, whatever the rules say */
function matching(construction: Construction, part: PlacedPart, rules: readonly EveryRule[], nearer: readonly Source[]): readonly Source[] {
    const found: Source[] = [];
    for (const { statement, scope, within } of rules) {
        if (within && !part.room.isIn(within)) continue;
        if (!isJoinedAs(part, statement)) continue;
        const rank = Math.max(...statement.selectors.map((selector) => rankOf(construction, selector, part, scope)));
        if (rank > 0) found.push({ phrases: statement.phrases, scope, layers: [], rank, span: statement.span });
    }
    found.sort((a, b) => b.rank - a.rank);
    reportEquallyNarrow(construction, part, found, nearer);
    return found;
}

/** `every shelf with Pinned` is about the shelves whose own words say that joint. */
function isJoinedAs(part: PlacedPart, { joinedWith }: EveryStatement): boolean {
    if (!joinedWith) return true;
    const own = part.statement.phrases.joint;
    return own !== undefined && own.recipe !== undefined && own.recipe === joinedWith.recipe;
}

/** How narrowly a selector takes in a part: 3 by name, 2 by kind within something, 1 by kind, 0 not at all. */
function rankOf(construction: Construction, selector: Expression, part: PlacedPart, scope: Scope): number {
    if (selector.is !== 'every') return includes(construction, selector, part, scope) ? 3 : 0;
    if (selector.except.some((one) => includes(construction, one, part, scope))) return 0;
    if (
        selector.kind !== undefined
            ? selector.kind !== part.kind
            : !selector.target || !includes(construction, selector.target, part, scope)
    )
        return 0;
    if (!selector.within) return selector.kind === undefined ? 3 : 1;
    return part.isInside(selector.within, scope) ? (selector.kind === undefined ? 3 : 2) : 0;
}

function includes(construction: Construction, expression: Expression, part: PlacedPart, scope: Scope): boolean {
    if (expression.is === 'name' && expression.id === part.declaration.id) return true;
    if (expression.is !== 'item' && expression.is !== 'member') return false;
    const value = evaluate(construction, expression, scope);
    return value?.is === 'parts' && value.parts.includes(part);
}

/** Two rules of one width that say different things of one property are an error with both places. */
function reportEquallyNarrow(construction: Construction, part: PlacedPart, sources: readonly Source[], nearer: readonly Source[]): void {
    for (const [index, source] of sources.entries()) {
        const decided = new Set(
            [...nearer, ...sources.filter(({ rank }) => rank > source.rank)].flatMap(({ phrases }) => statedIn(phrases)),
        );
        for (const other of sources.slice(index + 1)) {
            if (other.rank !== source.rank || other.phrases === source.phrases) continue;
            const theirs = new Set(statedIn(other.phrases));
            const both = statedIn(source.phrases).find((one) => theirs.has(one) && !decided.has(one));
            if (!both) continue;
            construction.report('PRP-003', {
                span: other.span,
                message: `two rules, neither narrower than the other, give \`${both}\` to \`${part.name}\``,
                hint: 'make one of them narrower, or say it on the part itself',
                related: [{ span: source.span, message: 'the other rule' }],
            });
        }
    }
}

/** Everything that words settle, by name: what is of which material, joined how, its properties and the work on its edges. */
function statedIn(phrases: Phrases): readonly string[] {
    const { of, joint, properties, edges } = phrases;
    return [
        ...(of ? ['of'] : []),
        ...(joint ? ['with'] : []),
        ...properties.map(({ name }) => name),
        ...edges.filter((one) => one.treatment).flatMap((one) => one.edges.map(({ name }) => `edge ${name}`)),
        ...(formOfFront(phrases) ? ['square or bevelled'] : []),
    ];
}

function formOfFront({ edges }: Phrases): EdgeStatement['form'] {
    return edges.find(({ form, edges: named }) => form !== undefined && named.some(({ name }) => name === 'front'))?.form;
}

/** Own edges first decide; an `every` adds the edges that were not spoken of, in front, because defaults are older. */
function edgesOf(sources: readonly Source[]): readonly Scoped<EdgeStatement>[] {
    const treated = new Set<string>();
    const placed = new Set<string>();
    let result: Scoped<EdgeStatement>[] = [];
    for (const { phrases, scope } of sources) {
        const added: Scoped<EdgeStatement>[] = [];
        for (const said of phrases.edges) {
            if (said.form !== undefined) continue;
            const taken = said.treatment ? treated : placed;
            const edges = said.edges.filter(({ name }) => !taken.has(name));
            if (edges.length > 0) added.push({ said: edges.length === said.edges.length ? said : { ...said, edges }, scope });
        }
        for (const { said } of added) for (const { name } of said.edges) (said.treatment ? treated : placed).add(name);
        result = [...added, ...result];
    }
    return result;
}

/** Own layers replace those of the model by name and keep its order. */
function layersOf(sources: readonly Source[]): readonly Scoped<LayerStatement>[] {
    const layers = new Map<string, Scoped<LayerStatement>>();
    for (const source of sources.toReversed()) {
        for (const layer of source.layers) {
            const before = layers.get(layer.said.declaration.name);
            layers.set(layer.said.declaration.name, before ? mergedLayer(before, layer) : layer);
        }
    }
    return [...layers.values()];
}

function mergedLayer(model: Scoped<LayerStatement>, own: Scoped<LayerStatement>): Scoped<LayerStatement> {
    const phrases: Phrases = {
        ...own.said.phrases,
        ...(own.said.phrases.of ? {} : model.said.phrases.of ? { of: model.said.phrases.of } : {}),
        leaves: own.said.phrases.leaves.length > 0 ? own.said.phrases.leaves : model.said.phrases.leaves,
    };
    return { said: { declaration: own.said.declaration, phrases }, scope: own.scope };
}

/** `case Box of OakPly`: the material of every part that says nothing else. */
function materialOfCase(build: CaseBuild): Scoped<Expression> | undefined {
    for (let one: CaseBuild | undefined = build; one; one = one.parent) {
        const said: DesignDeclaration['phrases']['of'] = one.declaration.phrases.of;
        if (said) return { said, scope: one.scope };
    }
    return undefined;
}
