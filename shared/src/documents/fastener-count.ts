/** How many screws, biscuits and dowels the joints of all that is built take. */
import type { Casework, Joint, JointStep, Path, Thing, ThingValue } from '../casework/index.js';
import { type Box, tolerance } from '../geometry/index.js';
import { countBySpacing } from '../joinery/index.js';
import { real } from '../quantity/index.js';
import { asBought, type PrintStyle } from './print-style.js';

/** Steps of a joint that use up something bought, each with what the shop calls it. */
const boughtBySteps: Readonly<Record<string, string>> = {
    screw: 'screw',
    pocket: 'pocket screw',
    biscuit: 'biscuit',
    dowel: 'dowel',
    bolt: 'bolt',
    panelScrew: 'panel screw',
    looseTenon: 'loose tenon',
    pin: 'pin',
    nail: 'nail',
    rest: 'support',
};

export interface FastenerTotal {
    /** `screw #8 x 1 1/4in` */
    readonly name: string;
    /** Over all builds; undefined as soon as one joint does not say enough. */
    readonly count: number | undefined;
    /** Names of the joints that take it, in the order of use. */
    readonly joints: readonly string[];
    /** Declaration id of what is bought for it, where the text declares that. */
    readonly thing?: string;
}

/** What all joints take, in the order of first use. */
export function countFasteners(casework: Casework, print: PrintStyle): readonly FastenerTotal[] {
    const totals = new Map<string, { count: number | undefined; readonly joints: Set<string>; readonly thing: string | undefined }>();
    for (const joint of builtJoints(casework)) {
        for (const step of joint.steps) {
            const word = boughtBySteps[step.does];
            if (word === undefined) continue;
            const sizes = [step.size, step.amount && asBought(step.amount, print)].filter((size) => size !== undefined);
            const name = [word, sizes.join(' x ')].filter((text) => text !== '').join(' ');
            const known = totals.get(name) ?? { count: 0, joints: new Set<string>(), thing: declaredFor(step, casework) };
            const count = countInJoint(step, joint, casework);
            known.count = known.count === undefined || count === undefined ? undefined : known.count + count * builds(joint, casework);
            known.joints.add(jointName(joint));
            totals.set(name, known);
        }
    }
    return [...totals].map(([name, { count, joints, thing }]) => ({
        name,
        count,
        joints: [...joints],
        ...(thing === undefined ? {} : { thing }),
    }));
}

/** The sort of fastener that a step takes. */
const familyOfStep: Readonly<Record<string, string>> = {
    screw: 'screw',
    pocket: 'screw',
    panelScrew: 'screw',
    biscuit: 'biscuit',
    dowel: 'dowel',
    bolt: 'bolt',
    pin: 'nail',
    nail: 'nail',
};

/**
 * What the text declares for a step: what it rests on, or the one fastener of its sort, its size and its length. A fastener that states no
 * length is for all of them, and one that states neither size nor diameter is for steps that state none. Undefined where none fits, or several do.
 */
function declaredFor(step: JointStep, { things }: Casework): string | undefined {
    if (step.on !== undefined) return step.on;
    const fits = [...things.values()].filter((thing) => isFor(step, thing));
    const priced = fits.filter(({ properties }) => properties.has('price'));
    const [one, ...others] = priced.length > 0 ? priced : fits;
    return others.length === 0 ? one?.id : undefined;
}

function isFor(step: JointStep, { kind, family, properties }: Thing): boolean {
    if (kind !== 'fastener' || family !== familyOfStep[step.does]) return false;
    const size = properties.get('size');
    const diameter = lengthsIn(properties.get('diameter'))[0];
    const said = step.diameter && real.toNumber(step.diameter.quantity.value);
    const isOfSize =
        said === undefined
            ? (size?.is === 'word' ? size.word : undefined) === step.size && (step.size !== undefined || diameter === undefined)
            : diameter !== undefined && Math.abs(diameter - said) < tolerance.fit;
    const lengths = [...lengthsIn(properties.get('length')), ...lengthsIn(properties.get('lengths'))];
    const length = step.amount && real.toNumber(step.amount.quantity.value);
    return isOfSize && (length === undefined || lengths.length === 0 || lengths.some((one) => Math.abs(one - length) < tolerance.fit));
}

/** In millimetres. */
function lengthsIn(value: ThingValue | undefined): readonly number[] {
    const measures = value?.is === 'measure' ? [value.measure] : value?.is === 'measures' ? value.measures : [];
    return measures.map(({ quantity: of }) => real.toNumber(of.value));
}

/** The names of the joints that are glued, in the order of use. */
export function gluedJoints(casework: Casework): readonly string[] {
    const glued = builtJoints(casework).filter((joint) => joint.steps.some((step) => step.does === 'glue'));
    return [...new Set(glued.map(jointName))];
}

/** The name of a joint; one that is written in place has none but the words of its steps. */
function jointName({ recipe, steps }: Joint): string {
    const words = steps.map(({ does }) => does);
    return recipe === words.join(', ') ? `joint written in place (${words.join(' and ')})` : recipe;
}

/** What a joint joins: a part, or a whole case that stands beside another. */
interface Joined {
    readonly quantity: number;
    readonly box: Box;
}

function joinedAt(path: Path, casework: Casework): Joined | undefined {
    const assembly = casework.assemblies.find((each) => each.path === path);
    return casework.parts.get(path) ?? (assembly && { quantity: assembly.count, box: assembly.extent });
}

/** Joints of cases that are not built have nothing here that they join. */
function builtJoints(casework: Casework): readonly Joint[] {
    return casework.joints.filter(({ enters, receives }) => joinedAt(enters, casework) && joinedAt(receives, casework));
}

/** How often a joint is made: once for each of its parts, of which there may be more on one side. */
function builds(joint: Joint, casework: Casework): number {
    return Math.max(joinedAt(joint.enters, casework)?.quantity ?? 0, joinedAt(joint.receives, casework)?.quantity ?? 0);
}

function countInJoint(step: JointStep, joint: Joint, casework: Casework): number | undefined {
    if (step.count !== undefined) return step.count;
    const enters = joinedAt(joint.enters, casework);
    const receives = joinedAt(joint.receives, casework);
    if (!step.spacing || !enters || !receives) return undefined;
    const length = contactLength(enters.box, receives.box);
    const spacing = real.toNumber(step.spacing.quantity.value);
    if (length === undefined || spacing <= 0) return undefined;
    return countBySpacing(length, spacing, step.inset && real.toNumber(step.inset.quantity.value));
}

/** The longest way along which two boxes touch or overlap, in mm; undefined where they stand apart. */
function contactLength(a: Box, b: Box): number | undefined {
    const shared = (['x', 'y', 'z'] as const).map((axis) => Math.min(a.most[axis], b.most[axis]) - Math.max(a.least[axis], b.least[axis]));
    return Math.min(...shared) < -tolerance.fit ? undefined : Math.max(...shared);
}
