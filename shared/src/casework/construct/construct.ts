/** A design made into casework: every part in its place, every size with its reasons, every piece that is cut. */
import { type Box, boxAround } from '../../geometry/index.js';
import type { BuildStatement, Design, DesignDeclaration, Statement } from '../design/design.js';
import type {
    Allowance,
    Assembly,
    CarriedLoad,
    Casework,
    CurveModel,
    Joint,
    Opening,
    Part,
    Piece,
    ProjectModel,
    Requirement,
    RouteModel,
    ThingValue,
} from '../model/casework.js';
import { allowanceInCase, allowanceInFile } from './allowances.js';
import { CaseBuild } from './case-build.js';
import { Construction } from './construction.js';
import { withDescendants } from './descendants.js';
import { evaluate } from './evaluate.js';
import { loadOf } from './loads.js';
import { modelOfAssembly } from './model-of-assembly.js';
import { curveModels } from './model-of-curves.js';
import { modelOfOpening } from './model-of-opening.js';
import { modelOfPart } from './model-of-part.js';
import { judge } from './requirements.js';
import { Scope } from './scope.js';

export interface ConstructOptions {
    /** Whether the values of all expressions are kept, by their words: for hovers. */
    readonly keepValues?: boolean;
}

/**
 * Builds what the design's project builds, or each of its cases once. Never throws on a design: what cannot be computed is unknown, and
 * why is in `problems`.
 */
export function construct(design: Design, options: ConstructOptions = {}): Casework {
    const construction = new Construction(design, options.keepValues === true);
    const built = buildsOf(design).map((build) => ({ ...build, case: makeCase(construction, build) }));
    for (const declaration of design.declarations.values()) {
        if (declaration.is === 'fact' && declaration.kind !== 'curve' && declaration.span.file === design.file)
            construction.things.thing(declaration.id);
        if (declaration.is === 'let' && declaration.span.file === design.file && isOfFile(declaration.id)) {
            evaluate(
                construction,
                { is: 'name', id: declaration.id, name: declaration.name, span: declaration.nameSpan },
                new Scope(undefined),
            );
        }
    }
    return gather(construction, built);
}

interface Build {
    readonly declaration: DesignDeclaration;
    readonly statement: BuildStatement | undefined;
    readonly count: number;
}

/** A declaration right in a file has a plain name behind the `#`. */
function isOfFile(id: string): boolean {
    return !id.slice(id.indexOf('#') + 1).includes('.');
}

function buildsOf(design: Design): readonly Build[] {
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

function makeCase(construction: Construction, { declaration, statement }: Build): CaseBuild {
    const name = statement?.name ?? declaration.name;
    const build = new CaseBuild(construction, {
        declaration,
        arguments: statement?.arguments ?? [],
        outside: new Scope(undefined),
        path: construction.freePath(name),
        name,
        span: statement?.span ?? declaration.nameSpan,
        mirrored: statement?.mirrored ?? false,
    });
    build.furnish();
    return build;
}

interface Made extends Build {
    readonly case: CaseBuild;
}

function gather(construction: Construction, made: readonly Made[]): Casework {
    const assemblies: Assembly[] = [];
    const parts = new Map<string, Part>();
    const unplaced = new Set<string>();
    const pieces: Piece[] = [];
    const openings = new Map<string, Opening>();
    const joints: Joint[] = [];
    const loads: CarriedLoad[] = [];
    const requirements: Requirement[] = [];
    const allowances: Allowance[] = [];
    const curves: CurveModel[] = [];
    for (const { case: outermost, count } of made) {
        const first = joints.length;
        const own: Part[] = [];
        for (const joint of outermost.joints.all()) {
            const { enters, receives, recipe, steps, adds, onSite, span } = joint;
            joints.push({
                enters: enters.path,
                receives: receives.path,
                recipe,
                steps,
                adds: adds.is === 'length' ? adds.measure : undefined,
                onSite,
                touching: joint.at !== undefined,
                span,
            });
        }
        const byPart = jointIndices(joints, first);
        for (const build of withDescendants(outermost)) {
            const boxes: Box[] = [];
            for (const placed of build.parts) {
                if (placed.isAssembly) continue;
                const model = modelOfPart(construction, placed, count, byPart.get(placed.path) ?? []);
                if (!model) {
                    unplaced.add(placed.path);
                    continue;
                }
                parts.set(placed.path, model.part);
                own.push(model.part);
                pieces.push(...model.pieces);
                boxes.push(model.part.box);
            }
            assemblies.push(modelOfAssembly(build, count, boxAround(boxes)));
            for (const room of build.openings) openings.set(room.path, modelOfOpening(room));
            readSentences(construction, build, { loads, requirements, allowances });
        }
        curves.push(...curveModels(outermost, own));
    }
    readFileSentences(
        construction,
        made.flatMap((one) => withDescendants(one.case)),
        { loads, requirements, allowances },
    );
    const { design, things, shop, deviations, problems, values } = construction;
    return {
        design,
        ...projectOf(construction),
        assemblies: withInside(assemblies),
        parts,
        unplaced,
        pieces,
        openings,
        joints,
        curves,
        loads,
        requirements,
        allowances,
        things: things.all(),
        shop,
        deviations,
        problems,
        values,
    };
}

function jointIndices(joints: readonly Joint[], from: number): ReadonlyMap<string, number[]> {
    const byPart = new Map<string, number[]>();
    for (const [index, joint] of joints.entries()) {
        if (index < from) continue;
        for (const path of [joint.enters, joint.receives]) {
            const known = byPart.get(path);
            if (known) known.push(index);
            else byPart.set(path, [index]);
        }
    }
    return byPart;
}

/** What a case reaches over all takes in the cases inside it, which stand behind it in the list. */
function withInside(assemblies: readonly Assembly[]): readonly Assembly[] {
    const inside = new Map<string, Box[]>();
    return assemblies
        .toReversed()
        .map((assembly) => {
            const extent = boxAround([assembly.extent, ...(inside.get(assembly.path) ?? [])]) ?? assembly.extent;
            if (assembly.inside !== undefined) inside.set(assembly.inside, [...(inside.get(assembly.inside) ?? []), extent]);
            return { ...assembly, extent };
        })
        .reverse();
}

/** What the sentences of cases come to. */
interface Sentences {
    readonly loads: CarriedLoad[];
    readonly requirements: Requirement[];
    readonly allowances: Allowance[];
}

function readSentences(construction: Construction, build: CaseBuild, { loads, requirements, allowances }: Sentences): void {
    for (const { statement, scope } of build.sentences) {
        if (statement.is === 'require') requirements.push(judge(construction, statement, scope, build.path));
        if (statement.is === 'allow') allowances.push(allowanceInCase(construction, statement, build, scope));
        if (statement.is === 'hold' || statement.is === 'load') loads.push(loadOf(construction, statement, build, scope));
    }
}

function readFileSentences(construction: Construction, builds: readonly CaseBuild[], { requirements, allowances }: Sentences): void {
    const { design } = construction;
    const scope = new Scope(undefined);
    for (const statement of design.requirements) requirements.push(judge(construction, statement, scope, undefined));
    for (const statement of design.allowances) allowances.push(allowanceInFile(statement, builds));
}

function routeOf(value: ThingValue | undefined): RouteModel | undefined {
    if (value?.is !== 'block') return undefined;
    const sizes = (name: string) => {
        const found = value.properties.get(name);
        return found?.is === 'sizes' ? found.sizes : [];
    };
    const ceiling = value.properties.get('ceiling');
    return {
        doorways: sizes('doorway'),
        corners: sizes('corner'),
        ...(ceiling?.is === 'measure' ? { ceiling: ceiling.measure } : {}),
        span: value.span,
    };
}

function projectOf(construction: Construction): { readonly project?: ProjectModel } {
    const declaration = construction.design.project;
    if (!declaration) return {};
    const thing = construction.things.thing(declaration.id);
    const text = (name: string): string | undefined => {
        const value = thing?.properties.get(name);
        return value?.is === 'text' ? value.text : undefined;
    };
    const units = thing?.properties.get('units');
    const [client, revision] = [text('client'), text('revision')];
    const [sag, climate] = [thing?.properties.get('sag'), thing?.properties.get('climate')];
    const route = routeOf(thing?.properties.get('route'));
    const project: ProjectModel = {
        title: declaration.title ?? declaration.name,
        units: units?.is === 'word' && units.word === 'mm' ? 'mm' : 'in',
        notes: declaration.doc === undefined ? [] : [declaration.doc],
        ...(client === undefined ? {} : { client }),
        ...(revision === undefined ? {} : { revision }),
        ...(sag?.is === 'measure' ? { sag: sag.measure } : {}),
        ...(route ? { route } : {}),
        ...(climate?.is === 'measures' ? { climate: climate.measures } : {}),
    };
    return { project };
}
