/** `receiver.member` and `receiver[index]`. */
import { dimension, real } from '../../quantity/index.js';
import type { Expression } from '../design/design.js';
import type { Stage } from '../model/casework.js';
import type { CaseBuild } from './case-build.js';
import type { Construction } from './construction.js';
import { axisOfFace, faceOfPart, facesOfAxis, isFaceName } from './kinds.js';
import { minus } from './measures.js';
import type { PlacedPart } from './placed-part.js';
import { anyone, type Room } from './room.js';
import { sizeOfPart } from './sizes.js';
import { describeValue, type Value } from './value.js';

type Member = Extract<Expression, { is: 'member' }>;
type Item = Extract<Expression, { is: 'item' }>;

const stages: readonly string[] = ['opening', 'finished', 'core', 'rough'];
const sizes: readonly string[] = ['length', 'width', 'thickness'];
const axisOfSize: Readonly<Record<string, 'x' | 'y' | 'z'>> = { depth: 'y', height: 'z' };

export function memberOf(construction: Construction, receiver: Value, expression: Member): Value | undefined {
    const { member } = expression;
    switch (receiver.is) {
        case 'parts': {
            const [part] = receiver.parts;
            if (!part) return undefined;
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
                return measured(sizeOfPart(receiver.part, receiver.stage)[member as 'length' | 'width' | 'thickness']);
            return unknownMember(construction, receiver, expression, sizes);
        case 'opening':
            return (
                memberOfRoom(receiver.room, member) ??
                partsNamed(receiver.room.build, member, receiver.room) ??
                unknownMember(construction, receiver, expression, ['width', 'height', 'depth', 'left', 'right', 'top', 'bottom'])
            );
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
    if (sizes.includes(member)) return measured(sizeOfPart(part, 'finished')[member as 'length' | 'width']);
    const axis = axisOfSize[member];
    if (axis) {
        const extent = part.extents.value?.[axis];
        return (
            extent &&
            measured(minus(extent.hi.measure, extent.lo.measure, { kind: 'between', about: [extent.lo.bound.name, extent.hi.bound.name] }))
        );
    }
    if (member === 'clear') return measured(part.clearAbove());
    if (member === 'middle') return undefined;
    const face = faceOfPart(part.kind, member, part.hand);
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

/** A part or opening of a case inside a case: declared in its design, or put into it from outside. */
function memberOfCase(build: CaseBuild, expression: Member): Value | undefined {
    const declared = expression.id === undefined ? undefined : build.scope.lookup(expression.id);
    if (declared) return declared();
    const opening = build.openings.find((room) => room.name === expression.member);
    return opening ? { is: 'opening', room: opening } : partsNamed(build, expression.member);
}

function partsNamed(build: CaseBuild, name: string, room?: Room): Value | undefined {
    const parts = build.parts.filter((part) => part.declaration.name === name && (!room || part.room === room));
    return parts.length > 0 ? { is: 'parts', parts, name } : undefined;
}

function memberOfRoom(room: Room, member: string): Value | undefined {
    const axis = member === 'width' ? 'x' : axisOfSize[member];
    if (axis) {
        const { lo, hi } = facesOfAxis[axis];
        const [a, b] = [room.face(lo, anyone), room.face(hi, anyone)];
        return a && b && measured(minus(b.measure, a.measure, { kind: 'between', about: [a.bound.name, b.bound.name] }));
    }
    if (!isFaceName(member)) return undefined;
    const { axis: along, end } = axisOfFace(member);
    return { is: 'face', axis: along, end, name: `${room.name}.${member}`, spot: () => room.face(member, anyone) };
}

function measured(measure: import('../model/measure.js').Measure | undefined): Value | undefined {
    return measure && { is: 'measure', measure };
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
