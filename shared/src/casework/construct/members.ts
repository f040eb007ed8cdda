/** `receiver.member` and `receiver[index]`. */
import { dimension, quantity, Rational, real } from '../../quantity/index.js';
import type { Expression, Span } from '../design/design.js';
import type { Axis, Stage } from '../model/casework.js';
import type { Measure } from '../model/measure.js';
import type { CaseBuild } from './case-build.js';
import type { Construction } from './construction.js';
import { axisOfFace, faceOfPart, facesOfAxis, isFaceName } from './kinds.js';
import { derived, minus, plus, times } from './measures.js';
import type { PlacedPart } from './placed-part.js';
import { anyone, noOne, type Room, type Spot } from './room.js';
import { sizeOfPart } from './sizes.js';
import { describeValue, type Value } from './value.js';

type Member = Extract<Expression, { is: 'member' }>;
type Item = Extract<Expression, { is: 'item' }>;

const stages: readonly string[] = ['opening', 'finished', 'core', 'rough'];
const sizes: readonly string[] = ['length', 'width', 'thickness'];
const membersOfRooms: readonly string[] = ['width', 'height', 'depth', 'left', 'right', 'top', 'bottom', 'back', 'front'];
const axisOfSize: Readonly<Record<string, 'x' | 'y' | 'z'>> = { depth: 'y', height: 'z' };

export function memberOf(construction: Construction, receiver: Value, expression: Member): Value | undefined {
    const { member } = expression;
    switch (receiver.is) {
        case 'parts': {
            const [part] = receiver.parts;
            if (!part) return reportNoParts(construction, receiver.name, expression.receiver.span);
            if (receiver.parts.length > 1) {
                return construction.report('NAM-009', {
                    span: expression.receiver.span,
                    message: `\`${receiver.name}\` is a group of ${receiver.parts.length} parts, and each has a \`${member}\` of its own`,
                    hint: `say which one: \`${receiver.name}[1].${member}\``,
                });
            }
            return memberOfPart(construction, part, expression);
        }
        case 'stage':
            if (sizes.includes(member))
                return sizeWithJoints(
                    construction,
                    expression,
                    () => sizeOfPart(receiver.part, receiver.stage)[member as 'length' | 'width' | 'thickness'],
                );
            return unknownMember(construction, receiver, expression, sizes);
        case 'opening':
            if (isMemberOfRooms(member)) return memberOfRoom(receiver.room, member);
            return (
                partsNamed(receiver.room.build, member, receiver.room) ?? unknownMember(construction, receiver, expression, membersOfRooms)
            );
        case 'case':
            if (isMemberOfRooms(member)) return memberOfRoom(receiver.build.room, member);
            return memberOfCase(receiver.build, expression) ?? unknownMember(construction, receiver, expression, membersOfRooms);
        case 'thing': {
            if (receiver.declaration.is !== 'fact') break;
            const value = construction.things.property(receiver.declaration.id, member);
            if (value?.is === 'measure') return { is: 'measure', measure: value.measure };
            break;
        }
    }
    return unknownMember(construction, receiver, expression, []);
}

function memberOfPart(construction: Construction, part: PlacedPart, expression: Member): Value | undefined {
    const { member } = expression;
    const own = part.nested && memberOfCase(part.nested, expression);
    if (own) return own;
    if (part.nested && (member === 'width' || member === 'height' || member === 'depth')) return memberOfRoom(part.nested.room, member);
    if (stages.includes(member)) return { is: 'stage', part, stage: member as Stage };
    if (member === 'thickness') return measured(part.thickness.value);
    if (sizes.includes(member))
        return sizeWithJoints(construction, expression, () => sizeOfPart(part, 'finished')[member as 'length' | 'width']);
    if (member === 'area') return sizeWithJoints(construction, expression, () => areaOf(part));
    const axis = axisOfSize[member];
    if (axis) return sizeWithJoints(construction, expression, () => sizeAcross(part, axis));
    if (member === 'mass') return reportNotBuilt(construction, expression);
    if (member === 'clear') return measured(part.clearAbove());
    if (member === 'middle') return middleOf(part);
    const face = faceOfPart(part.kind, member, part.hand);
    if (!face && part.kind === 'side' && (member === 'inner' || member === 'outer')) return reportNoHand(construction, part, expression);
    if (!face)
        return unknownMember(
            construction,
            { is: 'parts', parts: [part], name: part.name },
            expression,
            part.kind === 'side'
                ? ['inner', 'outer', 'front', 'back', 'top', 'bottom', 'thickness', 'length', 'width']
                : ['upper', 'lower', 'front', 'back', 'left', 'right', 'clear', 'thickness', 'length', 'width'],
        );
    const { axis: along, end } = axisOfFace(face);
    return { is: 'face', axis: along, end, name: `${part.name}.${member}`, spot: () => part.faceSpot(along, end), part };
}

function reportNoHand(construction: Construction, part: PlacedPart, expression: Member): undefined {
    return construction.report('NAM-009', {
        span: expression.memberSpan,
        message: `nothing says whether \`${part.name}\` is a left or a right side, so it has no \`${expression.member}\` face`,
        hint: 'say `at left` or `at right`, or speak of its `left` or `right` face',
        found: expression.member,
    });
}

function reportNotBuilt(construction: Construction, expression: Member): undefined {
    return construction.report('PRP-007', {
        span: expression.memberSpan,
        message: `\`${expression.member}\` is read, but this edition does not compute with it`,
        hint: 'what each part weighs is in the cut list',
        found: expression.member,
    });
}

/** A size that joints may make longer or shorter: it is known when all parts and joints are there. */
function sizeWithJoints(construction: Construction, expression: Member, size: () => Measure | undefined): Value | undefined {
    if (construction.isEarly) {
        return construction.reportEarly(
            `\`${expression.member}\` of a part, which joints further down may change`,
            'ask for a size of the case or of an opening, or for a `thickness`',
        );
    }
    return measured(size());
}

/** Its finished size along an axis of the case. */
function sizeAcross(part: PlacedPart, axis: Axis): Measure | undefined {
    const kind = part.kindOf;
    const finished = sizeOfPart(part, 'finished');
    if (kind?.length === axis) return finished.length;
    return kind?.width === axis ? finished.width : finished.thickness;
}

/** Of its face, finished: a curved front is not taken off. */
function areaOf(part: PlacedPart): Measure | undefined {
    const { length, width } = sizeOfPart(part, 'finished');
    if (!length || !width) return undefined;
    return derived(quantity.multiply(length.quantity, width.quantity), { kind: 'measured', about: ['area', part.name, part.name] }, [
        length,
        width,
    ]);
}

/** Half way through it, where it is thin. */
function middleOf(part: PlacedPart): Value | undefined {
    const axis = part.kindOf?.thickness;
    if (!axis) return undefined;
    const spot = (): Spot | undefined => {
        const extent = part.thicknessExtent.value;
        const says = { kind: 'operation' as const, about: ['middle'] };
        const measure = extent && times(plus(extent.lo.measure, extent.hi.measure, says), Rational.of(1, 2), says);
        return measure && { measure, bound: { name: `${part.name}.middle`, part: part.path, stopped: false } };
    };
    return { is: 'face', axis, end: 'lo', name: `${part.name}.middle`, spot, part };
}

/** A part or opening of a case inside a case: declared in its design, or put into it from outside. */
function memberOfCase(build: CaseBuild, expression: Member): Value | undefined {
    const declared = expression.id === undefined ? undefined : build.scope.lookup(expression.id);
    if (declared) return declared();
    const opening = build.openings.find((room) => room.name === expression.member);
    return opening ? { is: 'opening', room: opening } : partsNamed(build, expression.member);
}

function partsNamed(build: CaseBuild, name: string, room?: Room): Value | undefined {
    const parts = build.parts.filter((part) => part.declaration.name === name && (!room || part.room.isIn(room)));
    return parts.length > 0 ? { is: 'parts', parts, name } : undefined;
}

/** Whether every opening and every case has it, though it may not be known what it amounts to. */
function isMemberOfRooms(member: string): boolean {
    return member === 'width' || Object.hasOwn(axisOfSize, member) || isFaceName(member);
}

/** A size or a side of a room; undefined also where a part that bounds it is not known. */
export function memberOfRoom(room: Room, member: string): Value | undefined {
    const axis = member === 'width' ? 'x' : axisOfSize[member];
    if (axis) {
        const { lo, hi } = facesOfAxis[axis];
        // a case is as large as it is stated; in an opening it is what is left that counts
        const asker = room === room.build.room ? noOne : anyone;
        const [a, b] = [room.face(lo, asker), room.face(hi, asker)];
        return a && b && measured(minus(b.measure, a.measure, { kind: 'between', about: [a.bound.name, b.bound.name] }));
    }
    if (!isFaceName(member)) return undefined;
    const { axis: along, end } = axisOfFace(member);
    return { is: 'face', axis: along, end, name: `${room.name}.${member}`, spot: () => room.face(member, anyone) };
}

function measured(measure: Measure | undefined): Value | undefined {
    return measure && { is: 'measure', measure };
}

function reportNoParts(construction: Construction, name: string, span: Span): undefined {
    return construction.report('NAM-010', {
        span,
        message: `\`${name}\` has no parts here`,
        hint: 'its count comes out as 0',
        found: '0 parts',
        needed: 'at least one',
    });
}

function unknownMember(construction: Construction, receiver: Value, expression: Member, known: readonly string[]): undefined {
    return construction.report('NAM-009', {
        span: expression.memberSpan,
        message: `${describeValue(receiver)} has no \`${expression.member}\``,
        ...(known.length > 0 ? { hint: `it has ${known.map((one) => `\`${one}\``).join(', ')}` } : {}),
        found: expression.member,
    });
}

/** `Tier[2]`, or the run of parts `Tier[1..2]`. */
export function itemOf(construction: Construction, receiver: Value, index: Value, expression: Item): Value | undefined {
    if (receiver.is !== 'parts') {
        return construction.report('NAM-009', {
            span: expression.receiver.span,
            message: `${describeValue(receiver)} is not a group of parts, so it has no \`[...]\``,
        });
    }
    const count = receiver.parts.length;
    if (count === 0) return reportNoParts(construction, receiver.name, expression.receiver.span);
    const [first, last] = index.is === 'range' ? [index.first, index.last] : index.is === 'measure' ? [index.measure, index.measure] : [];
    if (!first || !last || first.quantity.dimension !== dimension.none || last.quantity.dimension !== dimension.none) {
        return construction.report('UNI-006', {
            span: expression.index.span,
            message: `${describeValue(index)} is no index`,
            needed: `a whole number from 1 to ${count}`,
        });
    }
    const [from, to] = [real.toNumber(first.quantity.value), real.toNumber(last.quantity.value)];
    if (!Number.isInteger(from) || !Number.isInteger(to) || from < 1 || to > count || from > to) {
        return construction.report('NAM-010', {
            span: expression.index.span,
            message: `\`${receiver.name}\` has ${count === 1 ? 'one part' : `parts 1 to ${count}`}; there is no ${from === to ? from : `${from} to ${to}`}`,
            found: from === to ? `${from}` : `${from}..${to}`,
            needed: count === 1 ? '1' : `1 to ${count}`,
        });
    }
    return { is: 'parts', parts: receiver.parts.slice(from - 1, to), name: from === to ? `${receiver.name}[${from}]` : receiver.name };
}
