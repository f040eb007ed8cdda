/** What holds each end of a part that carries something: the load on the joint, and what its screws, its ledge and its pins may carry. */
import type { Casework, Joint, Part } from '../../casework/index.js';
import { type Fastener, type Joinery, joineryOf } from '../../joinery/index.js';
import { bearersOf } from '../shelf-supports.js';
import { driven } from './driven.js';
import { type EndForce, endForces } from './end-forces.js';
import type { Hold } from './hold.js';
import { ledgeOf, restOf } from './ledge.js';
import { type Meeting, meetingsAt } from './meeting.js';
import { unpublishedSteps } from './unpublished.js';

export interface HeldEnd extends EndForce {
    readonly part: Part;
    readonly support: Part;
    readonly joint: Joint;
    /** Whether the part ends beside the support, lies on it or hangs from it. */
    readonly way: Meeting['way'];
    readonly holds: readonly Hold[];
    /** Boards on edge under the part take some of the load; how much is not known. */
    readonly helped: boolean;
}

const found = new WeakMap<Casework, readonly HeldEnd[]>();

/** Each end of each part that carries something and is joined there, in the order of building. Computed once for each casework. */
export function heldEnds(casework: Casework): readonly HeldEnd[] {
    let ends = found.get(casework);
    if (!ends) {
        const joinery = joineryOf(casework);
        ends = [...casework.parts.values()].flatMap((part) => endsOf(casework, joinery, part));
        found.set(casework, ends);
    }
    return ends;
}

function endsOf(casework: Casework, joinery: Joinery, part: Part): readonly HeldEnd[] {
    const forces = endForces(casework, part);
    if (forces.length === 0) return [];
    const helped = bearersOf(casework, part).length > 0;
    return forces.flatMap((force) =>
        meetingsAt(casework, joinery, part, force).map(({ joint, index, contact, support, way }) => ({
            ...force,
            part,
            support,
            joint,
            way,
            helped,
            holds: holdsOf(casework, joinery, { part, support, joint, index, contact, way }),
        })),
    );
}

function holdsOf(casework: Casework, joinery: Joinery, meeting: Meeting): readonly Hold[] {
    const { joint, index } = meeting;
    const features = (joinery.byPart.get(meeting.support.path)?.features ?? []).filter(
        ({ cause }) => cause.is === 'joint' && cause.joint === index,
    );
    const bySteps = new Map<number, Fastener[]>();
    for (const fastener of joinery.byPart.get(meeting.part.path)?.fasteners ?? []) {
        if (fastener.cause.is !== 'joint' || fastener.cause.joint !== index) continue;
        bySteps.set(fastener.cause.step, [...(bySteps.get(fastener.cause.step) ?? []), fastener]);
    }
    return [
        ...ledgeOf(casework, meeting, features),
        ...joint.steps.flatMap((step, at) => restOf(casework, step) ?? driven(casework, meeting, step, bySteps.get(at) ?? [])),
        ...unpublishedSteps(joint),
    ];
}

/** The most that one of the ways of holding may carry by published values: they do not share a load. Undefined where none has one. */
export function greatestHold({ holds }: Pick<HeldEnd, 'holds'>): Extract<Hold, { readonly is: 'known' }> | undefined {
    const known = holds.flatMap((hold) => (hold.is === 'known' ? [hold] : []));
    return known.length === 0 ? undefined : known.reduce((a, b) => (b.capacity > a.capacity ? b : a));
}

/**
 * Whether the end is held: it holds where one way of holding alone carries the load; it fails where all ways have a published value and none
 * carries it; else it is not known.
 */
export function heldVerdict(end: HeldEnd): 'holds' | 'fails' | 'not known' {
    const greatest = greatestHold(end);
    if (greatest && greatest.capacity >= end.force) return 'holds';
    return greatest && !end.helped && end.holds.every(({ is }) => is === 'known') ? 'fails' : 'not known';
}
