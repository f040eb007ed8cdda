/** `above Floor`: the part of a room that lies that way from something. */
import type { Phrases } from '../design/design.js';
import type { Axis, FaceName } from '../model/casework.js';
import type { BodyContext } from './body.js';
import type { Construction } from './construction.js';
import { evaluate } from './evaluate.js';
import type { Room, Spot } from './room.js';
import { describeValue } from './value.js';

type RoomPhrase = NonNullable<Phrases['room']>;

const ways: Readonly<Record<RoomPhrase['relation'], { readonly axis: Axis; readonly face: FaceName; readonly from: 'lo' | 'hi' }>> = {
    above: { axis: 'z', face: 'bottom', from: 'lo' },
    below: { axis: 'z', face: 'top', from: 'hi' },
    before: { axis: 'y', face: 'back', from: 'lo' },
    behind: { axis: 'y', face: 'front', from: 'hi' },
};

/** The room on that side; what stands in it runs from there. Undefined where the target is no thing with a side. */
export function roomBeside(construction: Construction, phrase: RoomPhrase, context: BodyContext): Room | undefined {
    const { axis, face, from } = ways[phrase.relation];
    const value = evaluate(construction, phrase.target, context.scope);
    if (!value) return undefined;
    let spot: (() => Spot | undefined) | undefined;
    if (value.is === 'face' && value.axis === axis) spot = value.spot;
    const part = value.is === 'parts' && value.parts.length === 1 ? value.parts[0] : undefined;
    if (part) spot = () => part.faceSpot(axis, from === 'lo' ? 'hi' : 'lo');
    if (!spot) {
        return construction.report('PLC-010', {
            span: phrase.target.span,
            message: `${describeValue(value)} has no side to be ${phrase.relation}`,
            ...(value.is === 'parts' ? { hint: `say which one, such as \`${phrase.relation} ${value.name}[1]\`` } : {}),
            needed: 'a part or a face',
        });
    }
    const { room } = context;
    return room.lessened(phrase.span, { [face]: spot }, { ...room.from, [axis]: from });
}
