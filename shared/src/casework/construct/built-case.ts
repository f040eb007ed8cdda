/** One case that is built by itself, with all that is in it, as it goes into the casework. */
import { type Box, boxAround } from '../../geometry/index.js';
import type { DeclarationId } from '../design/design.js';
import type {
    Allowance,
    Assembly,
    CarriedLoad,
    CurveModel,
    Joint,
    JointStep,
    Opening,
    Part,
    Path,
    Piece,
    Requirement,
} from '../model/casework.js';
import { allowanceInCase } from './allowances.js';
import type { Build } from './builds.js';
import { CaseBuild } from './case-build.js';
import type { Construction } from './construction.js';
import { withDescendants } from './descendants.js';
import { loadOf } from './loads.js';
import { modelOfAssembly } from './model-of-assembly.js';
import { curveModels } from './model-of-curves.js';
import { modelOfOpening } from './model-of-opening.js';
import { modelOfPart } from './model-of-part.js';
import type { PlacedPart } from './placed-part.js';
import type { Asked } from './recording.js';
import { judge } from './requirements.js';
import { Scope } from './scope.js';

export interface BuiltCase {
    readonly build: Build;
    readonly path: Path;
    /** The case and the cases in it, what each reaches over by its own parts alone. */
    readonly assemblies: readonly Assembly[];
    /** By which declaration each of them is built. */
    readonly builtBy: readonly { readonly id: DeclarationId; readonly path: Path }[];
    readonly parts: readonly Part[];
    readonly unplaced: readonly Path[];
    readonly pieces: readonly Piece[];
    readonly openings: readonly Opening[];
    readonly joints: readonly Joint[];
    /** Where its joints stand among those of the casework: its parts name them by that. */
    readonly firstJoint: number;
    readonly curves: readonly CurveModel[];
    readonly loads: readonly CarriedLoad[];
    readonly requirements: readonly Requirement[];
    readonly allowances: readonly Allowance[];
    readonly asked: Asked;
}

/** Puts all parts in their places. */
export function furnishedCase(construction: Construction, { declaration, statement }: Build, path: Path): CaseBuild {
    const build = new CaseBuild(construction, {
        declaration,
        arguments: statement?.arguments ?? [],
        outside: new Scope(undefined),
        path,
        name: nameOfBuild({ declaration, statement }),
        span: statement?.span ?? declaration.nameSpan,
        mirrored: statement?.mirrored ?? false,
    });
    build.furnish();
    return build;
}

/** What a case is called in paths, unless that is taken. */
export function nameOfBuild({ declaration, statement }: Pick<Build, 'declaration' | 'statement'>): string {
    return statement?.name ?? declaration.name;
}

/** What goes into the casework of a case whose parts are in their places. */
export function builtCase(construction: Construction, build: Build, outermost: CaseBuild, firstJoint: number): Omit<BuiltCase, 'asked'> {
    const joints = outermost.joints.all().map((joint): Joint => {
        const { enters, receives, recipe, steps, adds, onSite, span } = joint;
        return {
            enters: enters.path,
            receives: receives.path,
            recipe,
            steps: inTheMirror(steps, enters),
            adds: adds.is === 'length' ? adds.measure : undefined,
            onSite,
            touching: joint.at !== undefined,
            span,
        };
    });
    const byPart = jointIndices(joints, firstJoint);
    const cases = withDescendants(outermost);
    const assemblies: Assembly[] = [];
    const parts: Part[] = [];
    const unplaced: Path[] = [];
    const pieces: Piece[] = [];
    const sentences: Sentences = { loads: [], requirements: [], allowances: [] };
    for (const one of cases) {
        const boxes: Box[] = [];
        for (const placed of one.parts) {
            if (placed.isAssembly) continue;
            const model = modelOfPart(construction, placed, build.count, byPart.get(placed.path) ?? []);
            if (!model) {
                unplaced.push(placed.path);
                continue;
            }
            parts.push(model.part);
            pieces.push(...model.pieces);
            boxes.push(model.part.box);
        }
        assemblies.push(modelOfAssembly(one, build.count, boxAround(boxes)));
        readSentences(construction, one, sentences);
    }
    return {
        build,
        path: outermost.path,
        assemblies,
        builtBy: cases.map(({ declaration, path }) => ({ id: declaration.id, path })),
        parts,
        unplaced,
        pieces,
        openings: cases.flatMap(({ openings }) => openings.map((room) => modelOfOpening(room))),
        joints,
        firstJoint,
        curves: curveModels(outermost, parts),
        ...sentences,
    };
}

/** The same case where other cases before it have more joints, or fewer. */
export function withJointsFrom(built: BuiltCase, firstJoint: number): BuiltCase {
    const by = firstJoint - built.firstJoint;
    if (by === 0) return built;
    const parts = built.parts.map((part) => ({ ...part, joints: part.joints.map((index) => index + by) }));
    return { ...built, parts, firstJoint };
}

/** The steps of a joint as they are cut: where the case is mirrored, a left face is a right one. */
function inTheMirror(steps: readonly JointStep[], { build: { mirror } }: PlacedPart): readonly JointStep[] {
    if (!mirror.isTurned) return steps;
    return steps.map((step) => (step.face ? { ...step, face: mirror.face(step.face) } : step));
}

function jointIndices(joints: readonly Joint[], from: number): ReadonlyMap<string, number[]> {
    const byPart = new Map<string, number[]>();
    for (const [index, joint] of joints.entries()) {
        for (const path of [joint.enters, joint.receives]) {
            const known = byPart.get(path);
            if (known) known.push(from + index);
            else byPart.set(path, [from + index]);
        }
    }
    return byPart;
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
