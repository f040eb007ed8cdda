/** The work on a part as the model says it: its edges, what is cut into it, and how it is joined. */
import type { Casework, Edge, EdgeStep, Joint, JointStep, Part } from '../casework/index.js';
import type { JsonObject } from './json-value.js';
import { baseValue, millimetres } from './model-values.js';

/** What is done to edges, in the order of work. */
export function edgesOf(part: Part, materialName: (id: string) => string): readonly JsonObject[] {
    return part.edges.map((edge) => ({
        edge: edge.name,
        recipe: edge.recipe,
        takesOff: millimetres(edge.takesOff),
        steps: edge.steps.map((step) => ({
            does: step.does,
            amount: baseValue(step.amount),
            width: millimetres(step.width),
            proud: millimetres(step.proud),
            material: step.material === undefined ? null : materialName(step.material),
            for: step.for ?? null,
        })),
    }));
}

/** What is cut into the part along its edges, in the order of work. */
export function featuresOf(part: Part): readonly JsonObject[] {
    return part.edges.flatMap((edge) => edge.steps.filter(isCut).map((step) => featureOf(edge, step)));
}

function isCut({ does }: EdgeStep): boolean {
    return does !== 'band' && does !== 'nosing';
}

function featureOf(edge: Edge, step: EdgeStep): JsonObject {
    return {
        does: step.does,
        edge: edge.name,
        amount: baseValue(step.amount),
        width: millimetres(step.width),
        for: step.for ?? null,
    };
}

/** How the part meets others, seen from it. */
export function jointsOf(part: Part, casework: Casework): readonly JsonObject[] {
    return part.joints.flatMap((index) => {
        const joint = casework.joints[index];
        return joint ? [jointOf(joint, part)] : [];
    });
}

function jointOf(joint: Joint, part: Part): JsonObject {
    const enters = joint.enters === part.path;
    return {
        with: enters ? joint.receives : joint.enters,
        as: enters ? 'enters' : 'receives',
        recipe: joint.recipe,
        adds: millimetres(joint.adds),
        onSite: joint.onSite,
        touching: joint.touching,
        steps: joint.steps.map(jointStepOf),
    };
}

function jointStepOf(step: JointStep): JsonObject {
    return {
        does: step.does,
        size: step.size ?? null,
        amount: baseValue(step.amount),
        count: step.count ?? null,
        spacing: millimetres(step.spacing),
        inset: millimetres(step.inset),
    };
}
