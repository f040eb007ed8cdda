/**
 * Room kept for a part that comes later: `leave back 1/4in for back`, or a rabbet or groove `for back` in a board's edge. What is written
 * after it runs only to there; the part itself takes the place, and goes into the boards that are cut for it.
 */
import type { Expression, LeaveStatement, Span, Step } from '../design/design.js';
import type { Axis, FaceName } from '../model/casework.js';
import type { Measure } from '../model/measure.js';
import type { Construction } from './construction.js';
import type { Scoped } from './described.js';
import { evaluateMeasure, expectLength, expectWorkLength } from './evaluate.js';
import { axisOfFace, facesOfAxis, isFaceName } from './kinds.js';
import { minus, numberOf, plus } from './measures.js';
import type { PlacedPart } from './placed-part.js';
import type { Asker, Spot } from './room.js';
import type { Scope } from './scope.js';
import { stepsOf } from './treatments.js';

/** Something kept free at a face of a case. */
export interface Reserve {
    readonly face: FaceName;
    /** The part that is cut for it, if one is: it does not keep clear of its own cut. */
    readonly by?: PlacedPart;
    /** Parts written up to this one do not see it. */
    readonly order: number;
    readonly for: DeclarationName;
    /** Cut into boards, from their edges, rather than left free beside them. */
    readonly isCut: boolean;
    /** What is cut: a rabbet or a groove. */
    readonly cut?: string;
    /** False where it takes its size from a part that this build leaves out. */
    readonly isKept: () => boolean;
    readonly size: () => Measure | undefined;
    readonly span: Span;
}

/** The part it is for, by its declaration, or a word such as `scribe`. */
export interface DeclarationName {
    readonly id: string | undefined;
    readonly name: string;
}

export function nameOfTarget(target: Expression): DeclarationName {
    if (target.is === 'name') return { id: target.id, name: target.name };
    if (target.is === 'item') return nameOfTarget(target.receiver);
    return { id: undefined, name: target.is === 'word' ? target.word : 'something' };
}

/**
 * The face less what is kept free there for others than the one who asks. What is left free adds up, in the order of writing; what boards are
 * cut for is measured from their edges, so that of several cuts the deepest counts, and none for who is cut there or goes into a cut.
 */
export function lessReserves(spot: Spot, reserves: readonly Reserve[], face: FaceName, asker: Asker): Spot {
    const here = reserves.filter((reserve) => reserve.face === face && reserve.order < asker.order && reserve.isKept());
    if (here.length === 0) return spot;
    const isFor = (reserve: Reserve) => reserve.for.id !== undefined && reserve.for.id === asker.declaration?.id;
    const own = reserves.filter((reserve) => reserve.face === face && (reserve.by === asker || isFor(reserve)));
    const left = here.filter(({ isCut }) => !isCut);
    const place = left.findIndex(isFor);
    const cuts = own.length > 0 ? [] : here.filter(({ isCut }) => isCut);
    let { measure, bound } = spot;
    const take = ({ reserve, size }: Taken): void => {
        const says = { kind: 'reserve' as const, about: [reserve.for.name, reserve.cut ?? ''], span: reserve.span };
        const isLow = axisOfFace(face).end === 'lo';
        measure = isLow ? plus(measure, size, says) : minus(measure, size, says);
        bound = { name: `${reserve.for.name}.${isLow ? 'front' : 'back'}`, stopped: false };
    };
    for (const taken of takenFor(place < 0 ? left : left.slice(0, place))) take(taken);
    const sizes = takenFor(cuts);
    const deepest = sizes.find(({ size }) => !size) ?? sizes.reduce<Taken | undefined>(deeper, undefined);
    if (deepest) take(deepest);
    return spot.line ? { measure, bound, line: spot.line } : { measure, bound };
}

interface Taken {
    readonly reserve: Reserve;
    readonly size: Measure | undefined;
}

function deeper(a: Taken | undefined, b: Taken): Taken {
    return a && numberOf(a.size) >= numberOf(b.size) ? a : b;
}

/** Both sides are rabbeted for one back: the room for it is kept once. */
function takenFor(reserves: readonly Reserve[]): readonly Taken[] {
    const seen = new Map<string, Reserve>();
    for (const reserve of reserves) if (!seen.has(nameOfReserve(reserve))) seen.set(nameOfReserve(reserve), reserve);
    return [...seen.values()].map((reserve) => ({ reserve, size: reserve.size() }));
}

function nameOfReserve(reserve: Reserve): string {
    return reserve.for.id ?? reserve.for.name;
}

/** The inner side of what is kept for a part: it lies against that. */
export function spotOfReserve(part: PlacedPart): Spot | undefined {
    const { room } = part.build;
    const kind = part.kindOf;
    const face = kind && facesOfAxis[kind.thickness].lo;
    const reserve = part.build.reserves.find((one) => one.face === face && one.for.id === part.declaration.id);
    if (!face || !reserve) return undefined;
    const spot = room.face(face, part);
    const says = { kind: 'reserve' as const, about: [part.name], span: reserve.span };
    return spot && { measure: plus(spot.measure, reserve.size(), says), bound: { name: `the room left for ${part.name}`, stopped: false } };
}

/** All that the words of a part keep free at the faces of its case. */
export function reservesOfPart(construction: Construction, part: PlacedPart): readonly Reserve[] {
    const description = part.description.value;
    if (!description) return [];
    const found: Reserve[] = [];
    const order = part.build.lastOrderOf(part.statement);
    for (const { step, edges, scope } of cutsForOthers(construction, part)) {
        for (const face of edges) {
            if (!isFaceName(face) || !step.for) continue;
            const target = nameOfTarget(step.for);
            found.push({
                face,
                order,
                by: part,
                for: target,
                span: step.span,
                isCut: true,
                cut: step.does,
                isKept: () => cutSaysHowWide(step) || isThere(construction, part.build, target),
                size: () => roomForStep(construction, part, step, scope, target),
            });
        }
    }
    for (const leave of allLeaves(part)) found.push(...reservesOfLeave(construction, { order, build: part.build, by: part }, leave));
    return found;
}

/** The statement `leave`, in a case or a layer. */
export function reservesOfLeave(
    construction: Construction,
    part: { readonly order: number; readonly build: PlacedPart['build']; readonly by?: PlacedPart },
    leave: Scoped<LeaveStatement>,
): readonly Reserve[] {
    const { said, scope } = leave;
    const target = nameOfTarget(said.for);
    return said.faces.flatMap(({ name, span }) => {
        if (!isFaceName(name)) {
            construction.report('PLC-010', {
                span,
                message: `\`${name}\` is no side of the room`,
                needed: 'left, right, front, back, top or bottom',
            });
            return [];
        }
        const { size } = said;
        return [
            {
                face: name,
                order: part.order,
                for: target,
                isCut: part.by !== undefined,
                isKept: () => size !== undefined || isThere(construction, part.build, target),
                size: () =>
                    size
                        ? expectLength(construction, evaluateMeasure(construction, size, scope), size.span)
                        : thicknessOf(part.build.findPart(target.id)),
                span: said.span,
                ...(part.by ? { by: part.by } : {}),
            },
        ];
    });
}

/** Whether the part that room is kept for is built. While parts are still being added, it may only come later. */
function isThere(construction: Construction, build: PlacedPart['build'], target: DeclarationName): boolean {
    if (target.id === undefined) return false;
    if (build.findPart(target.id)) return true;
    if (construction.isEarly)
        construction.reportEarly(
            `the thickness of \`${target.name}\`, which is written further down`,
            `write \`${target.name}\` before it`,
        );
    return false;
}

function cutSaysHowWide({ value }: Step): boolean {
    return value?.is === 'by' || (value?.is === 'dimensions' && value.items.some((item) => item.word === 'wide'));
}

/** What the words of a part leave free in its case; those of a case in a case speak of the room inside. */
function allLeaves(part: PlacedPart): readonly Scoped<LeaveStatement>[] {
    const description = part.description.value;
    if (!description || part.isAssembly) return [];
    return [
        ...description.leaves,
        ...description.layers.flatMap(({ said, scope }) => said.phrases.leaves.map((leave) => ({ said: leave, scope }))),
    ];
}

/** A rabbet or groove in the edges of a board that is for another part. */
export interface CutForOther {
    readonly step: Step;
    readonly edges: readonly string[];
    readonly scope: Scope;
}

function cutsForOthers(construction: Construction, part: PlacedPart): readonly CutForOther[] {
    const { known } = part;
    const description = part.description.value;
    if (!description) return [];
    known.cuts ??= description.edges.flatMap(({ said, scope }) =>
        stepsOf(construction, said.treatment)
            .filter((step) => step.for && (step.does === 'rabbet' || step.does === 'groove'))
            .map((step) => ({ step, edges: said.edges.map((edge) => edge.name), scope })),
    );
    return known.cuts;
}

/** A rabbet is as wide as it says, or as the part for it is thick; a groove stands in from the edge as well. */
function roomForStep(construction: Construction, part: PlacedPart, step: Step, scope: Scope, target: DeclarationName): Measure | undefined {
    const width = cutSize(construction, step, scope, 'wide') ?? thicknessOf(part.build.findPart(target.id));
    const said = step.options.find((one) => one.name === 'inset')?.value ?? step.at[0]?.distance;
    if (step.does !== 'groove' || !said) return width;
    const inset = expectLength(construction, evaluateMeasure(construction, said, scope), said.span);
    return plus(inset, width, { kind: 'reserve', about: [target.name], span: step.span });
}

function thicknessOf(part: PlacedPart | undefined): Measure | undefined {
    return part?.thickness.value;
}

/** The measure of a cut that goes with a word; a single bare measure is how deep it is. */
export function cutSize(construction: Construction, step: Step, scope: Scope, word: 'deep' | 'wide'): Measure | undefined {
    const { value } = step;
    const expression =
        value?.is === 'dimensions'
            ? value.items.find((item) => item.word === word)?.value
            : value?.is === 'by'
              ? value.parts[word === 'wide' ? 0 : 1]
              : word === 'deep'
                ? value
                : undefined;
    return expression && expectWorkLength(construction, evaluateMeasure(construction, expression, scope), expression.span, step.does);
}

/** Where a part ends inside a board that is cut for it: the board's face at that end, moved into it by the depth of the rabbet or groove. */
export function rabbetFor(
    construction: Construction,
    board: PlacedPart,
    part: PlacedPart,
    axis: Axis,
    end: 'lo' | 'hi',
): Measure | undefined {
    const kind = board.kindOf;
    if (kind?.thickness !== axis) return undefined;
    const depth = depthFor(construction, board, part);
    if (!depth) return undefined;
    const face = board.faceSpot(axis, end);
    const says = { kind: 'stops' as const, about: [`the rabbet in ${board.name}`, board.name], span: board.span };
    return end === 'hi' ? minus(face?.measure, depth, says) : plus(face?.measure, depth, says);
}

/** Whether a board is cut to take the edge of a part in. */
export function takesIn(construction: Construction, board: PlacedPart, part: PlacedPart, axis: Axis): boolean {
    return board.kindOf?.thickness === axis && depthFor(construction, board, part) !== undefined;
}

function depthFor(construction: Construction, board: PlacedPart, part: PlacedPart): Measure | undefined {
    for (const { step, scope } of cutsForOthers(construction, board)) {
        if (step.for && nameOfTarget(step.for).id === part.declaration.id) return cutSize(construction, step, scope, 'deep');
    }
    const layers = board.layers.value ?? [];
    const short = layers.filter((layer) => layer.leaves.some(({ said }) => nameOfTarget(said.for).id === part.declaration.id));
    let depth: Measure | undefined;
    for (const layer of short) {
        depth = depth
            ? plus(depth, layer.thickness, { kind: 'thickness', about: ['layers that stop short', board.name] })
            : layer.thickness;
    }
    return depth;
}
