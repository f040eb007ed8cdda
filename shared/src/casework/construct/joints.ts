/** A joint between two parts: where they touch, and what it adds to the part that enters. */
import { boxContact, boxesShare, tolerance } from '../../geometry/index.js';
import type { Expression, JoinStatement, Place, Span, Step } from '../design/design.js';
import type { Axis, JointStep } from '../model/casework.js';
import type { Measure } from '../model/measure.js';
import type { Construction } from './construction.js';
import { evaluate, evaluateMeasure, expectWorkLength } from './evaluate.js';
import { jointStepOf } from './joint-step.js';
import { axes, faceOfPart, facesOfAxis } from './kinds.js';
import { minus, plus, zeroLength } from './measures.js';
import type { PlacedPart } from './placed-part.js';
import { cutSize, takesIn } from './reserves.js';
import { sayLength } from './say-length.js';
import type { Scope } from './scope.js';
import { nameOfTreatment, stepsOf } from './treatments.js';

/** The axis and end of the entering part at which it meets the other. */
export interface Meeting {
    readonly axis: Axis;
    readonly end: 'lo' | 'hi';
}

export interface PlacedJoint {
    readonly enters: PlacedPart;
    readonly receives: PlacedPart;
    readonly recipe: string;
    readonly steps: readonly JointStep[];
    readonly adds: Added;
    /** Undefined where they do not meet. */
    readonly at: Meeting | undefined;
    readonly onSite: boolean;
    readonly span: Span;
}

/** What a joint adds at an end: nothing, so much (below zero for a gap), or what could not be computed and was reported. */
export type Added = { readonly is: 'nothing' } | { readonly is: 'length'; readonly measure: Measure } | { readonly is: 'unknown' };

/** What the text says of a joint. */
export interface SaidJoint {
    readonly treatment: NonNullable<JoinStatement['joint']>;
    readonly onSite: boolean;
    readonly span: Span;
    readonly scope: Scope;
}

/** What a joint is, wherever it is made: its name and its steps, evaluated once for all the pairs that it joins. */
export interface Recipe {
    readonly name: string;
    readonly steps: readonly JointStep[];
    /** The steps that make what enters longer or shorter. */
    readonly lengthening: readonly Step[];
}

export function recipeOf(construction: Construction, { treatment, scope }: SaidJoint): Recipe {
    const written = stepsOf(construction, treatment);
    return {
        name: nameOfTreatment(construction, treatment),
        steps: written.map((step) => jointStepOf(construction, step, scope)),
        lengthening: written.filter(changesLength),
    };
}

export function makeJoint(
    construction: Construction,
    { scope, onSite, span }: SaidJoint,
    { name, steps, lengthening }: Recipe,
    { enters, receives, at }: Pick<PlacedJoint, 'enters' | 'receives' | 'at'>,
): PlacedJoint {
    const isAtEnd = at !== undefined && at.axis !== enters.kindOf?.thickness;
    const done = isAtEnd ? lengthening.filter((step) => isDoneAt(construction, step, enters, at, scope)) : [];
    return { enters, receives, recipe: name, steps, adds: addsOf(construction, done, receives, scope), at, onSite, span };
}

/** Where two parts touch, seen from the first: faces that meet, or a part let into a rabbet that is cut for it. */
export function meetingOf(construction: Construction, enters: PlacedPart, receives: PlacedPart): Meeting | undefined {
    const [a, b] = [enters.box, receives.box];
    if (!a || !b || !boxesShare(a, b, -tolerance.fit)) return undefined;
    const axis = boxContact(a, b);
    const middle = (box: typeof a, one: Axis): number => (box.least[one] + box.most[one]) / 2;
    if (axis) return { axis, end: middle(a, axis) < middle(b, axis) ? 'hi' : 'lo' };
    if (!boxesShare(a, b)) return undefined;
    const entered = axes.find((one) => takesIn(construction, receives, enters, one));
    return entered && { axis: entered, end: middle(a, entered) < middle(b, entered) ? 'hi' : 'lo' };
}

/** Whether a step is done where the part meets the other: at each end of its length, at a face, or everywhere where nothing is said. */
function isDoneAt(construction: Construction, step: Step, part: PlacedPart, at: Meeting, scope: Scope): boolean {
    return step.at.length === 0 || step.at.some((place) => isPlaceOfMeeting(construction, place, part, at, scope));
}

function isPlaceOfMeeting(construction: Construction, place: Place, part: PlacedPart, at: Meeting, scope: Scope): boolean {
    if (place.each !== undefined) return place.each !== 'end' || at.axis === part.kindOf?.length;
    const value = place.distance && evaluate(construction, place.distance, scope);
    if (value?.is !== 'word') return true;
    if (value.word === 'ends') return at.axis === part.kindOf?.length;
    if (value.word === 'sides') return at.axis === part.kindOf?.width;
    const face = faceOfPart(part.kind, value.word, part.hand);
    return !face || face === facesOfAxis[at.axis][at.end];
}

/** What enters the other part makes the entering one longer; a gap makes it shorter. */
function addsOf(construction: Construction, steps: readonly Step[], receives: PlacedPart, scope: Scope): Added {
    let sum: Measure | undefined;
    for (const step of steps) {
        const says = { kind: 'joint' as const, about: [step.does], span: step.span };
        const length = lengthOfStep(construction, step, receives, scope);
        if (!length) return { is: 'unknown' };
        if (step.does === 'gap') sum = minus(sum ?? zero, length, says);
        else sum = sum ? plus(sum, length, says) : length;
    }
    return sum ? { is: 'length', measure: sum } : { is: 'nothing' };
}

const zero: Measure = { quantity: zeroLength, why: { kind: 'default', about: ['nothing', 'before the gap'], inputs: [] } };

const lengthening: ReadonlySet<string> = new Set(['dado', 'groove', 'rabbet', 'tenon', 'tongue', 'lap', 'mitre', 'gap']);

function changesLength({ does }: Step): boolean {
    return lengthening.has(does);
}

function lengthOfStep(construction: Construction, step: Step, receives: PlacedPart, scope: Scope): Measure | undefined {
    const { does, value } = step;
    // it runs on to the far face, and is cut back to half the corner
    if (does === 'mitre') return receives.thickness.value;
    if (does === 'tenon' || does === 'tongue' || does === 'lap') return longOf(construction, step, scope);
    if (does !== 'gap') return cutSize(construction, step, scope, 'deep');
    return value && expectWorkLength(construction, evaluateMeasure(construction, value, scope), value.span, 'gap', 'nothing');
}

function longOf(construction: Construction, { does, value }: Step, scope: Scope): Measure | undefined {
    const expression = value?.is === 'dimensions' ? value.items.find((item) => item.word === 'long')?.value : value;
    return expression && expectWorkLength(construction, evaluateMeasure(construction, expression, scope), expression.span, does);
}

const apartAlong: Readonly<Record<Axis, string>> = { x: 'across the width', y: 'in the depth', z: 'in the height' };

/** Two parts that the text names and joins, but that do not meet. */
export function reportApart(construction: Construction, enters: PlacedPart, receives: PlacedPart, at: Expression): void {
    const [a, b] = [enters.box, receives.box];
    if (!a || !b) return;
    let [distance, way]: [number, Axis] = [0, 'x'];
    for (const axis of axes) {
        const gap = Math.max(a.least[axis] - b.most[axis], b.least[axis] - a.most[axis]);
        if (gap > distance) [distance, way] = [gap, axis];
    }
    const apart = sayLength(enters.build, distance);
    const isApart = distance > tolerance.fit;
    construction.report('PLC-008', {
        span: at.span,
        message: isApart
            ? `\`${enters.name}\` and \`${receives.name}\` do not touch: they are ${apart} apart ${apartAlong[way]}`
            : `\`${enters.name}\` and \`${receives.name}\` do not meet with a face`,
        hint: 'move one of them, or join it to the part that it touches',
        found: isApart ? `${apart} between them` : 'no common face',
        needed: 'parts that touch',
        part: enters.path,
    });
}
