/** What a part lies on: the lower side of a dado, the top of a board, pins. */
import type { Casework, JointStep, ThingValue } from '../../casework/index.js';
import { tolerance } from '../../geometry/index.js';
import { type Feature, lengthOf, spanOf } from '../../joinery/index.js';
import { dimension, real } from '../../quantity/index.js';
import { standardGravity } from '../loads.js';
import { compressionAcross } from '../stiffness.js';
import type { Hold } from './hold.js';
import type { Meeting } from './meeting.js';

const sockets: ReadonlySet<Feature['does']> = new Set(['dado', 'groove', 'rabbet', 'mortise']);

/** What lies on the top of its support, or in a cut with wood under it. */
export function ledgeOf(casework: Casework, { part, support, contact, way }: Meeting, features: readonly Feature[]): readonly Hold[] {
    if (way === 'on') {
        const { face } = contact;
        return [bearing(casework, part, `the top of ${support.name}`, lengthOf(spanOf(face, 'y')), lengthOf(spanOf(face, 'x')))];
    }
    if (way !== 'beside') return [];
    return features.flatMap((feature): readonly Hold[] => {
        if (!sockets.has(feature.does) || feature.solid.is !== 'box') return [];
        const { box } = feature.solid;
        // a rabbet along the lower end of a board has no wood under it
        if (box.least.z <= support.box.least.z + tolerance.fit) return [];
        return [bearing(casework, part, `the ledge of the ${feature.does}`, lengthOf(spanOf(box, 'y')), lengthOf(spanOf(box, 'x')))];
    });
}

function bearing(casework: Casework, part: Meeting['part'], what: string, long: number, deep: number): Hold {
    // layers are listed from the bottom up: it lies on the first
    const id = part.layers[0]?.material;
    const material = id === undefined ? undefined : casework.things.get(id);
    const strength = material && compressionAcross(casework, material);
    if (!material || !strength) {
        const because = `of ${material?.name ?? part.name} no strength across its faces is published`;
        return { is: 'unpublished', what, because };
    }
    const { stated, divisor, allowable, source } = strength;
    return {
        is: 'known',
        what,
        capacity: allowable * long * deep,
        by: { is: 'bearing', long, deep, material, stated, divisor, source },
    };
}

/** `rest on ShelfPin count 2`: undefined for another step. */
export function restOf(casework: Casework, step: JointStep): readonly Hold[] | undefined {
    if (step.does !== 'rest') return undefined;
    const thing = step.on === undefined ? undefined : casework.things.get(step.on);
    const name = thing?.name ?? 'what it rests on';
    const each = thing && carriedBy(thing.properties.get('carries'));
    const { count } = step;
    if (!thing || each === undefined || count === undefined) {
        const because = thing && each !== undefined ? 'the joint does not say how many' : `nothing says what ${name} \`carries\``;
        return [{ is: 'unpublished', what: name, because }];
    }
    const what = `${count} ${name}`;
    return [{ is: 'known', what, capacity: count * each * standardGravity, by: { is: 'carries', thing, count, each } }];
}

/** In kilograms, of one: `carries 20kg`, `carries 75lb per pair`. */
function carriedBy(value: ThingValue | undefined): number | undefined {
    const measure = value?.is === 'measure' ? value.measure : value?.is === 'rate' ? value.amount : undefined;
    if (!measure || measure.quantity.dimension !== dimension.mass) return undefined;
    return real.toNumber(measure.quantity.value) / (value?.is === 'rate' && value.per === 'pair' ? 2 : 1);
}
