/** Where a lying part meets what carries it at its ends. */
import type { Casework, Joint, Part } from '../../casework/index.js';
import type { Contact, Joinery } from '../../joinery/index.js';
import type { End, EndForce } from './end-forces.js';

/** A joint at an end, and whether the part ends beside its support, lies on it or hangs from it. */
export interface Meeting {
    readonly part: Part;
    readonly support: Part;
    readonly joint: Joint;
    readonly index: number;
    readonly contact: Contact;
    readonly way: 'beside' | 'on' | 'under';
}

/** The joint that carries a part at one of its ends; none where nothing is joined there. */
export function meetingsAt(casework: Casework, joinery: Joinery, part: Part, { end }: EndForce): readonly Meeting[] {
    const meetings = part.joints.flatMap((index): readonly Meeting[] => {
        const [joint, contact] = [casework.joints[index], joinery.contacts.get(index)];
        if (!joint?.touching || !contact) return [];
        const enters = contact.enters === part.path;
        const support = casework.parts.get(enters ? contact.receives : contact.enters);
        const side = enters ? contact.sideOfEntering : contact.sideOfReceiving;
        if (!support) return [];
        if (side === end) return [{ part, support, joint, index, contact, way: 'beside' }];
        const isUpright = support.directions.thickness === 'x';
        if (!isUpright || (side !== 'bottom' && side !== 'top') || !isAt(end, part, support)) return [];
        return [{ part, support, joint, index, contact, way: side === 'bottom' ? 'on' : 'under' }];
    });
    // what lies on one board and ends beside another is carried by the first
    const lying = meetings.filter(({ way }) => way === 'on');
    return lying.length > 0 ? lying.slice(0, 1) : meetings.slice(0, 1);
}

/** Whether an upright board stands at that end of a lying one: within a tenth of its length. */
function isAt(end: End, { box: { least, most } }: Part, support: Part): boolean {
    const middle = (support.box.least.x + support.box.most.x) / 2;
    const off = end === 'left' ? middle - least.x : most.x - middle;
    return off <= (most.x - least.x) / 10;
}
