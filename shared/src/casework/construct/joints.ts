/** How parts meet: which of them a `join` joins, whether they touch, and what the joint adds to the part that enters. */
import { boxContact, boxOverlap, tolerance } from '../../geometry/index.js';
import { dimension, formatLength } from '../../quantity/index.js';
import type { Expression, JoinStatement, Span, Step } from '../design/design.js';
import type { Axis, JointStep } from '../model/casework.js';
import type { Measure } from '../model/measure.js';
import { boxOf } from './box.js';
import type { CaseBuild } from './case-build.js';
import type { Construction } from './construction.js';
import { wordOf } from './edges.js';
import { evaluate, evaluateCount, evaluateMeasure, expectLength } from './evaluate.js';
import { axes, facesOfAxis } from './kinds.js';
import { minus, plus } from './measures.js';
import type { PlacedPart } from './placed-part.js';
import { cutSize, rabbetFor } from './reserves.js';
import type { Scope } from './scope.js';
import { selectParts } from './select.js';
import { nameOfTreatment, stepsOf } from './treatments.js';

export interface PlacedJoint {
    readonly enters: PlacedPart;
    readonly receives: PlacedPart;
    readonly recipe: string;
    readonly steps: readonly JointStep[];
    readonly adds: Measure | undefined;
    /** The axis and end of the entering part at which they meet; undefined where they do not. */
    readonly at: { readonly axis: Axis; readonly end: 'lo' | 'hi' } | undefined;
    readonly onSite: boolean;
    readonly span: Span;
    /** How narrowly it was said: the narrower of two joints of one pair holds. */
    readonly rank: number;
}

/** The joints of a case and of the cases in it: the narrower rule wins for each pair. */
export function jointsOf(construction: Construction, build: CaseBuild): readonly PlacedJoint[] {
    const byPair = new Map<string, PlacedJoint>();
    for (const part of allParts(build)) {
        for (const joint of ownJoints(construction, part)) keepNarrower(construction, byPair, joint);
    }
    for (const one of [build, ...descendants(build)]) {
        for (const { statement, scope } of one.sentences) {
            if (statement.is !== 'join') continue;
            for (const joint of joinsOf(construction, statement, one, scope)) keepNarrower(construction, byPair, joint);
        }
    }
    return [...byPair.values()];
}

export function descendants(build: CaseBuild): readonly CaseBuild[] {
    return build.children.flatMap((child) => [child, ...descendants(child)]);
}
export function allParts(build: CaseBuild): readonly PlacedPart[] {
    return [build, ...descendants(build)].flatMap((one) => one.parts);
}

function keepNarrower(construction: Construction, byPair: Map<string, PlacedJoint>, joint: PlacedJoint): void {
    const key = `${joint.enters.path} ${joint.receives.path}`;
    const before = byPair.get(key);
    if (before && before.rank === joint.rank && before.span !== joint.span) {
        construction.report('PRP-003', {
            span: joint.span,
            message: `\`${joint.enters.name}\` is joined to \`${joint.receives.name}\` twice, and neither rule is narrower`,
            hint: 'name the pair in one of them, or take it out with `except`',
            related: [{ span: before.span, message: 'the other joint' }],
        });
        return;
    }
    if (!before || joint.rank > before.rank) byPair.set(key, joint);
}

/** `shelf Tier with Pinned`: joined so to whatever it runs up to. */
function ownJoints(construction: Construction, part: PlacedPart): readonly PlacedJoint[] {
    const said = part.description.value?.joint;
    const extents = part.extents.value;
    if (!said || !extents) return [];
    const found: PlacedJoint[] = [];
    for (const axis of axes) {
        for (const end of ['lo', 'hi'] as const) {
            const other = part.build.parts.find((one) => one.path === extents[axis][end].bound.part);
            if (other)
                found.push(
                    makeJoint(construction, { treatment: said.said, onSite: false, span: said.said.span }, part, other, said.scope, 0),
                );
        }
    }
    return found;
}

function joinsOf(construction: Construction, statement: JoinStatement, build: CaseBuild, scope: Scope): readonly PlacedJoint[] {
    const { joint: treatment } = statement;
    if (!treatment) return [];
    const found: PlacedJoint[] = [];
    for (const left of statement.left) {
        for (const right of statement.right) {
            const isNamed = left.is !== 'every' && right.is !== 'every';
            const pairs = pairsOf(selectParts(construction, left, build, scope), selectParts(construction, right, build, scope));
            const rank = 1 + widthOf(left) + widthOf(right);
            const joints = pairs.map(([a, b]) =>
                makeJoint(construction, { treatment, onSite: statement.onSite, span: statement.span }, a, b, scope, rank),
            );
            const meeting = joints.filter((joint) => joint.at);
            found.push(...meeting);
            if (isNamed) for (const joint of joints) if (!joint.at) reportApart(construction, joint, right);
        }
    }
    return found;
}

function pairsOf(left: readonly PlacedPart[], right: readonly PlacedPart[]): readonly (readonly [PlacedPart, PlacedPart])[] {
    return left.flatMap((a) => right.filter((b) => b !== a).map((b) => [a, b] as const));
}

function widthOf(selector: Expression): number {
    if (selector.is !== 'every') return 3;
    return selector.within ? 2 : 1;
}

interface Said {
    readonly treatment: NonNullable<JoinStatement['joint']>;
    readonly onSite: boolean;
    readonly span: Span;
}

function makeJoint(
    construction: Construction,
    said: Said,
    enters: PlacedPart,
    receives: PlacedPart,
    scope: Scope,
    rank: number,
): PlacedJoint {
    const written = stepsOf(construction, said.treatment);
    const at = meetingOf(construction, enters, receives);
    const isAtEnd = at !== undefined && at.axis !== enters.kindOf?.thickness;
    return {
        enters,
        receives,
        recipe: nameOfTreatment(construction, said.treatment),
        steps: written.map((step) => jointStep(construction, step, scope)),
        adds: isAtEnd ? addsOf(construction, written, scope) : undefined,
        at,
        onSite: said.onSite,
        span: said.span,
        rank,
    };
}

/** Where two parts touch, seen from the first: faces that meet, or a part let into a rabbet that is cut for it. */
function meetingOf(construction: Construction, enters: PlacedPart, receives: PlacedPart): PlacedJoint['at'] {
    const [a, b] = [boxOf(enters), boxOf(receives)];
    if (!a || !b) return undefined;
    const axis = boxContact(a, b);
    const middle = (box: typeof a, one: Axis): number => (box.least[one] + box.most[one]) / 2;
    if (axis) return { axis, end: middle(a, axis) < middle(b, axis) ? 'hi' : 'lo' };
    if (!boxOverlap(a, b)) return undefined;
    const entered = axes.find((one) => rabbetFor(construction, receives, enters, one));
    return entered && { axis: entered, end: middle(a, entered) < middle(b, entered) ? 'hi' : 'lo' };
}

/** What enters the other part makes the entering one longer; a gap makes it shorter. */
function addsOf(construction: Construction, steps: readonly Step[], scope: Scope): Measure | undefined {
    let sum: Measure | undefined;
    for (const step of steps) {
        const says = { kind: 'joint' as const, about: [step.does], span: step.span };
        if (step.does === 'dado' || step.does === 'groove' || step.does === 'rabbet') {
            const deep = cutSize(construction, step, scope, 'deep');
            sum = sum ? plus(sum, deep, says) : deep;
        } else if (step.does === 'tenon') {
            const long = tenonLength(construction, step, scope);
            sum = sum ? plus(sum, long, says) : long;
        } else if (step.does === 'gap' && step.value) {
            const gap = expectLength(construction, evaluateMeasure(construction, step.value, scope), step.value.span);
            const zero = gap && minus(gap, gap, says);
            sum = minus(sum ?? zero, gap, says);
        }
    }
    return sum;
}

function tenonLength(construction: Construction, step: Step, scope: Scope): Measure | undefined {
    const { value } = step;
    const expression = value?.is === 'dimensions' ? value.items.find((item) => item.word === 'long')?.value : value;
    return expression && expectLength(construction, evaluateMeasure(construction, expression, scope), expression.span);
}

function jointStep(construction: Construction, step: Step, scope: Scope): JointStep {
    const length = (name: string): Measure | undefined => {
        const value = step.options.find((one) => one.name === name)?.value;
        return value && expectLength(construction, evaluateMeasure(construction, value, scope), value.span);
    };
    const counted = step.options.find((one) => one.name === 'count')?.value;
    const count = counted && evaluateCount(construction, counted, scope, 0);
    const size = wordOf(construction, step.value, scope);
    return {
        does: step.does,
        amount: amountOf(construction, step, scope),
        spacing: length('spacing'),
        inset: length('inset'),
        span: step.span,
        ...(size === undefined ? {} : { size }),
        ...(count === undefined ? {} : { count }),
    };
}

/** The length in a step's value: `1 1/4in`, or that of `#8 x 1 1/4in`, or the depth of a cut. */
function amountOf(construction: Construction, step: Step, scope: Scope): Measure | undefined {
    const { value } = step;
    if (!value) return undefined;
    if (step.does === 'dado' || step.does === 'groove' || step.does === 'rabbet') return cutSize(construction, step, scope, 'deep');
    const expression = value.is === 'by' ? value.parts.at(-1) : value.is === 'dimensions' ? value.items[0]?.value : value;
    if (!expression || expression.is === 'tradeSize' || expression.is === 'word') return undefined;
    const found = evaluate(construction, expression, scope);
    return found?.is === 'measure' && found.measure.quantity.dimension === dimension.length ? found.measure : undefined;
}

function reportApart(construction: Construction, joint: PlacedJoint, at: Expression): void {
    const [a, b] = [boxOf(joint.enters), boxOf(joint.receives)];
    if (!a || !b) return;
    let [distance, way]: [number, Axis] = [0, 'x'];
    for (const axis of axes) {
        const gap = Math.max(a.least[axis] - b.most[axis], b.least[axis] - a.most[axis]);
        if (gap > distance) [distance, way] = [gap, axis];
    }
    const metric = joint.enters.build.outermost.metric;
    const apart = formatLength(distance, metric ? { system: 'mm', decimals: 1 } : { system: 'inch', denominator: 32 }).text;
    const isApart = distance > tolerance.fit;
    construction.report('PLC-008', {
        span: at.span,
        message: isApart
            ? `\`${joint.enters.name}\` and \`${joint.receives.name}\` do not touch: they are ${apart} apart ${directionOf(way)}`
            : `\`${joint.enters.name}\` and \`${joint.receives.name}\` do not meet with a face`,
        hint: 'move one of them, or join it to the part that it touches',
        found: isApart ? `${apart} between them` : 'no common face',
        needed: 'parts that touch',
        part: joint.enters.path,
    });
}

function directionOf(axis: Axis): string {
    const { lo, hi } = facesOfAxis[axis];
    return `between ${lo} and ${hi}`;
}
