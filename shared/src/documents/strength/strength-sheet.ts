/** The strength sheet: each check with its formula, inputs, sources, result and limit, so that another can follow it with a pencil. */
import type { Casework } from '../../casework/index.js';
import {
    carriedPieces,
    caseStabilities,
    type HeldEnd,
    heldEnds,
    liftOf,
    panesIn,
    rackedCases,
    type ShelfSag,
    type ShelfStrength,
    sagLimitOf,
    shelfStrengths,
    wayOf,
} from '../../strength/index.js';
import type { DocumentOptions, Locate } from '../document-options.js';
import { onlyBuilt } from '../only-built.js';
import { namesInWords, partNamer } from '../part-names.js';
import { type PrintStyle, printStyle } from '../print-style.js';
import { projectFacts } from '../project-facts.js';
import type { Group, Sheet } from '../sheet.js';
import { carryingSteps } from './carrying-steps.js';
import { jointSteps } from './joint-steps.js';
import { movementSteps } from './movement-steps.js';
import { paneSteps } from './pane-steps.js';
import { rackingSteps } from './racking-steps.js';
import { shelfSteps } from './shelf-steps.js';
import { standingSteps } from './standing-steps.js';
import { inWords, rowOf, type Step, strengthColumns, unitsOf } from './worked.js';

/** A calculation and what it is of. */
export interface Calculation {
    readonly heading: string;
    readonly steps: readonly Step[];
    readonly notes: readonly string[];
}

/** Of all that is built; undefined where nothing of it is to carry anything, and no case is known well enough to say how it stands. */
export function strengthSheet(evaluated: Casework, options: Pick<DocumentOptions, 'units' | 'locate'>): Sheet | undefined {
    const casework = onlyBuilt(evaluated);
    const print = printStyle(casework, options);
    const calculations = [
        ...shelfCalculations(casework, print, options.locate),
        ...jointCalculations(casework, print),
        ...standingCalculations(casework, print),
        ...rackingCalculations(casework, print),
        ...movementCalculations(casework, print),
        ...paneCalculations(casework, print),
        ...carryingCalculations(casework, print),
    ];
    if (calculations.length === 0) return undefined;
    return {
        kind: 'strength',
        title: 'Strength',
        facts: [...projectFacts(casework, print), { label: 'Who decides', text: whoDecides }],
        columns: strengthColumns,
        groups: [summary(calculations), ...calculations.map(groupOf)],
        notes: [
            'Numbers are rounded to four figures where they are printed and not before: a pencil may differ in the last one.',
            'Shelves are taken as beams on two supports that hold them and do not clamp them; what glue and screws at the ends add is not counted on. Those that are joined to posts under them run on over these. Deflection by shear is in the tabulated stiffness of wood (Wood Handbook FPL-GTR-282, Table 5-3b, note c).',
            'Strengths are those that the materials state. Of averages half the boards are weaker; single boards vary in stiffness by 22 % (Wood Handbook, Table 5-6, from memory).',
            'The years are those in a dry, heated room. In damp or heat wood creeps two or three times as far (Wood Handbook FPL-GTR-282, chapter 5).',
        ],
    };
}

const whoDecides =
    'these are figures for the maker at work; local codes and a licensed professional decide what is safe, and what an anchor in a wall holds';

/** What each check comes to, one line each. */
function summary(calculations: readonly Calculation[]): Group {
    const rows = calculations.flatMap(({ heading, steps }) =>
        steps.flatMap(({ judged, verdict }) =>
            judged && verdict ? [rowOf('Summary', { what: `${heading}: ${judged.what}`, figures: judged.figures, verdict })] : [],
        ),
    );
    return { heading: 'Summary', rows, notes: [] };
}

function groupOf({ heading, steps, notes }: Calculation): Group {
    return { heading, rows: steps.map((step) => rowOf(heading, step)), notes };
}

/** Shelves whose calculation is the same, step by step, are one. */
function shelfCalculations(casework: Casework, print: PrintStyle, locate: Locate): readonly Calculation[] {
    const nameOf = partNamer(casework);
    const context = { casework, units: unitsOf(print), limit: sagLimitOf(casework), locate };
    const alike = new Map<string, { readonly shelf: ShelfStrength; readonly steps: readonly Step[]; readonly names: string[] }>();
    for (const shelf of shelfStrengths(casework)) {
        const steps = shelf.is === 'known' ? shelfSteps(shelf, context) : unknownSteps(shelf);
        const key = `${shelf.load.says} ${inWords(steps)}`;
        const known = alike.get(key);
        if (known) known.names.push(nameOf(shelf.part.path));
        else alike.set(key, { shelf, steps, names: [nameOf(shelf.part.path)] });
    }
    return [...alike.values()].map(({ shelf, steps, names }) => ({
        heading: `${namesInWords(names)}, carrying ${shelf.load.says}`,
        steps,
        notes: shelf.is === 'known' ? shelfNotes(shelf) : [],
    }));
}

function unknownSteps({ material }: Extract<ShelfStrength, { readonly is: 'unknown' }>): readonly Step[] {
    const reason = material ? `nothing says how stiff ${material.name} is` : 'its span or its layers are not known';
    return [{ what: 'Sags', figures: reason, verdict: 'not known', judged: { what: 'sag', figures: reason } }];
}

function shelfNotes({ strips, uncounted }: ShelfSag): readonly string[] {
    const bearers = [...new Set(strips.filter(({ role }) => role === 'bearer').map(({ name }) => name))];
    return [
        ...(bearers.length === 0
            ? []
            : [`Under it runs ${bearers.join(' and ')}, which bends with it. That it may also stand on the floor is not counted on.`]),
        ...uncounted.map(({ part, material }) => {
            const reason = material ? `nothing says how stiff ${material.name} is` : 'how thick it is, or of what, is not known';
            return `Under it runs ${part.name}, which is not counted on: ${reason}.`;
        }),
    ];
}

/** What holds the ends of shelves; ends whose calculation is the same are one. */
function jointCalculations(casework: Casework, print: PrintStyle): readonly Calculation[] {
    const nameOf = partNamer(casework);
    const units = unitsOf(print);
    const alike = new Map<
        string,
        { readonly end: HeldEnd; readonly steps: readonly Step[]; readonly names: Set<string>; readonly at: Set<string> }
    >();
    for (const end of heldEnds(casework)) {
        const steps = jointSteps(end, units);
        const key = `${end.way} ${end.joint.recipe} ${inWords(steps)}`;
        const known = alike.get(key) ?? { end, steps, names: new Set(), at: new Set() };
        known.names.add(nameOf(end.part.path));
        known.at.add(end.support.name);
        alike.set(key, known);
    }
    return [...alike.values()].map(({ end, steps, names, at }) => ({
        heading: `${namesInWords([...names])}, ${wordsOfWay[end.way]} ${[...at].join(', ')}`,
        steps,
        notes: [
            'Design values are for sound wood, holes of the right size and screws that hold; ways of holding are not added up, because they do not share a load. What a back adds is not counted on.',
        ],
    }));
}

const wordsOfWay: Readonly<Record<HeldEnd['way'], string>> = { beside: 'held at', on: 'lying on', under: 'hung from' };

/** Each case that stands on the floor. */
function standingCalculations(casework: Casework, print: PrintStyle): readonly Calculation[] {
    const nameOf = partNamer(casework);
    return caseStabilities(casework).map((found) => ({
        heading: `${found.assembly.name === '' ? found.assembly.kind : found.assembly.name}, ${found.assembly.anchor ? 'anchored to the wall' : 'standing by itself'}`,
        steps: standingSteps(found, unitsOf(print), nameOf),
        notes: [
            'The push and the weight on an edge are those of a published test of clothing storage, 16 CFR 1261. Bookcases, shelving and built-in work are outside that rule; its levels are borrowed here, and nothing is claimed of compliance.',
            ...(found.assembly.anchor
                ? [
                      'The anchor, its screws and the wall have to hold the pull by what their makers publish; a strength of the wall is not computed.',
                  ]
                : []),
        ],
    }));
}

/** What keeps the cases square that stand by themselves: where a push is declared, or something is missing. */
function rackingCalculations(casework: Casework, print: PrintStyle): readonly Calculation[] {
    return rackedCases(casework)
        .filter(({ assembly, isBracedThroughout }) => assembly.push || !isBracedThroughout)
        .map((racked) => ({
            heading: `${racked.assembly.name === '' ? racked.assembly.kind : racked.assembly.name}, kept square`,
            steps: rackingSteps(casework, racked, unitsOf(print)),
            notes: ['How far it leans before that is not worked out: no slip of these fasteners is published for furniture.'],
        }));
}

function movementCalculations(casework: Casework, print: PrintStyle): readonly Calculation[] {
    const steps = movementSteps(casework, unitsOf(print));
    if (steps.length === 0) return [];
    const notes = [
        'Leave room for it, or joints that are free to move. A board that was milled at another moisture starts from that, and goes the rest of the way once.',
        'C is the change of flat-sawn width for each percent of moisture between 6 and 14 %; quarter-sawn boards move about half as much. S is the shrinkage from green to ovendry, a part of one.',
    ];
    return [{ heading: 'Solid wood across its grain', steps, notes }];
}

/** Panes of glass; those that are alike are one. */
function paneCalculations(casework: Casework, print: PrintStyle): readonly Calculation[] {
    const nameOf = partNamer(casework);
    const alike = new Map<string, { readonly steps: readonly Step[]; readonly names: string[] }>();
    for (const pane of panesIn(casework)) {
        const steps = paneSteps(pane, unitsOf(print));
        const known = alike.get(inWords(steps));
        if (known) known.names.push(nameOf(pane.part.path));
        else alike.set(inWords(steps), { steps, names: [nameOf(pane.part.path)] });
    }
    return [...alike.values()].map(({ steps, names }) => ({
        heading: `${namesInWords(names)}, of glass`,
        steps,
        notes: ['What a pane may carry is by ASTM E1300 and by the maker of the glass; it is not worked out here.'],
    }));
}

/** What is carried in one piece; pieces that are alike are one. */
function carryingCalculations(casework: Casework, print: PrintStyle): readonly Calculation[] {
    const nameOf = partNamer(casework);
    const alike = new Map<string, { readonly steps: readonly Step[]; readonly names: string[] }>();
    const way = wayOf(casework);
    const isDeclared = way.ceiling !== undefined || way.doorways.length > 0 || way.corners.length > 0;
    for (const piece of carriedPieces(casework)) {
        // nothing is known but its size, and nothing is asked of that
        if (piece.mass === undefined && !isDeclared) continue;
        const steps = carryingSteps(piece, way, liftOf(casework), unitsOf(print));
        const known = alike.get(inWords(steps));
        if (known) known.names.push(nameOf(piece.assembly.path));
        else alike.set(inWords(steps), { steps, names: [nameOf(piece.assembly.path)] });
    }
    return [...alike.values()].map(({ steps, names }) => ({
        heading: `${namesInWords(names)}, carried in one piece`,
        steps,
        notes: ['Nothing is taken off for wrapping, hands, door stops or a lamp: measure the way, and leave an inch.'],
    }));
}
