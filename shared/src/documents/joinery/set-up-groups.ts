/** The drilling list: what is bored, slotted and sawn at one set-up of a machine, fence by fence. */
import type { Casework } from '../../casework/index.js';
import { type FeatureKind, type FencePlace, type PartCuts, type SetUp, setUpsOf, type Tooling } from '../../joinery/index.js';

import { namesInWords, partNamer } from '../part-names.js';
import { lengthAmount, lengthInWords, type PrintStyle } from '../print-style.js';
import { type Column, type Group, type Row, textCell } from '../sheet.js';
import { bitInWords } from './bit-words.js';

/** The columns that only the drilling list has. */
export function setUpColumns(print: PrintStyle): readonly Column[] {
    return [
        { key: 'bit', heading: 'Tool', unit: print.sizeUnit, align: 'right', saidByGroup: true },
        { key: 'toolDepth', heading: 'Tool goes in', unit: print.sizeUnit, align: 'right', saidByGroup: true },
        { key: 'fence', heading: 'Fence', unit: print.sizeUnit, align: 'right' },
        { key: 'fenceFrom', heading: 'Off', align: 'left' },
        { key: 'cutIn', heading: 'In', align: 'left' },
        { key: 'along', heading: 'Along the fence', align: 'left' },
        { key: 'count', heading: 'Cuts', align: 'right' },
    ];
}

export const setUpNotes: readonly string[] = [
    'Set-ups: the fence is set to the middle of holes, biscuit slots and mortises, and to the nearer side of dados, grooves, rabbets and shoulders. Where it does not reach, a straightedge is clamped on at that distance.',
    'Of left and right parts the outer face is the one that looks out of the case: with it on the table or at the fence, both hands are cut at one setting.',
    'Depths are those of full width: the point of a drill goes deeper. Clearance bits are the next 1/64in or 0.5mm above the shank, pilot bits the nearest; try them on an offcut of the same stock.',
    'Cuts are counted over all that is built. Disconnect a machine before its bit or blade is changed, keep hands and clamps out of its path, and wear eye protection.',
];

/** One group for each set-up: `Drill, 7/64in: pilot holes 1in deep`. */
export function setUpGroups(casework: Casework, print: PrintStyle): readonly Group[] {
    const nameOf = partNamer(casework);
    return setUpsOf(casework).map((setUp) => {
        const heading = `Set-up: ${toolingInWords(setUp.tooling, print)}`;
        const rows = setUp.places.flatMap((place) => rowsOf(setUp, place, nameOf, print));
        return { heading, rows: rows.map((row) => ({ part: textCell(heading), ...row })), notes: pocketNotes(setUp, print) };
    });
}

const slots: ReadonlySet<FeatureKind> = new Set(['dado', 'groove', 'rabbet', 'shoulder', 'notch']);
const allBits: Partial<Readonly<Record<FeatureKind, 'up'>>> = { 'clearance hole': 'up', 'bolt hole': 'up' };

function toolingInWords({ does, size, wide, long, depth, pocket, tilt }: Tooling, print: PrintStyle): string {
    const say = (length: number) => lengthInWords(length, print);
    const bit = bitInWords(wide, print, allBits[does] ?? 'nearest');
    const deep = depth === undefined ? 'through' : `${say(depth)} deep`;
    if (pocket) return `pocket-hole jig for ${say(pocket.stock)} stock, step bit ${bit}`;
    if (does === 'biscuit slot') return `biscuit joiner, ${[size, `slots ${deep}`].filter((one) => one !== undefined).join(', ')}`;
    if (does === 'mitre') return `saw tilted to ${Number((tilt ?? 0).toFixed(2))}°, mitres`;
    if (does === 'spline slot') return `spline slots ${say(wide)} wide, ${deep}, square to the mitre`;
    if (does === 'mortise') return `mortises ${bitInWords(wide, print, 'nearest')} x ${say(long ?? 0)}, ${deep}`;
    if (does === 'countersink') return `countersink to ${bit} across`;
    if (slots.has(does)) return `saw or router, ${does}s ${say(wide)} wide, ${deep}`;
    return `drill ${bit}, ${does}s ${deep}`;
}

/** How the collar of the step bit is set, and where the mouth of the pocket lies: plain geometry of 15 degrees. */
function pocketNotes({ tooling: { pocket, depth } }: SetUp, print: PrintStyle): readonly string[] {
    if (!pocket || depth === undefined) return [];
    const mouth = (depth + pocket.seat) * Math.cos((15 * Math.PI) / 180);
    return [
        `Set the collar so that the step of the bit stops ${lengthInWords(pocket.seat, print)} before the end, along the bit: it is then ${lengthInWords(depth, print)} in the wood on its axis. The axis meets the face ${lengthInWords(mouth, print)} from the end.`,
    ];
}

function rowsOf({ tooling }: SetUp, { fence, cuts }: FencePlace, nameOf: (path: string) => string, print: PrintStyle): readonly Row[] {
    const alike = new Map<string, PartCuts[]>();
    for (const cut of cuts) {
        const key = `${cut.from}; ${alongInWords(cut, print)}`;
        alike.set(key, [...(alike.get(key) ?? []), cut]);
    }
    return [...alike.values()].map((same): Row => {
        const first = same[0]!;
        const fenceCells = fence && {
            fence: { is: 'amount', amount: lengthAmount(fence.distance, print) } as const,
            fenceFrom: textCell(fence.from === 'outer' ? 'outer face' : `${fence.from} ${sideWord(first, fence.axis)}`),
        };
        return {
            bit: { is: 'amount', amount: lengthAmount(tooling.wide, print) },
            ...fenceCells,
            ...(tooling.depth === undefined ? {} : { toolDepth: { is: 'amount', amount: lengthAmount(tooling.depth, print) } as const }),
            cutIn: textCell(partsInWords(same, nameOf)),
            along: textCell(alongInWords(first, print)),
            count: { is: 'count', count: same.reduce((sum, { part, count }) => sum + part.quantity * count, 0) },
        };
    });
}

function sideWord({ part }: PartCuts, axis: string): 'face' | 'edge' {
    return part.directions.thickness === axis ? 'face' : 'edge';
}

/** `2 1/2in, 14 1/2in from back`; nothing for what runs through. */
function alongInWords({ at, runs, from }: PartCuts, print: PrintStyle): string {
    const places = at.map((place) => lengthInWords(place, print));
    const stretches = runs.map((run) => `${lengthInWords(run.from, print)} to ${lengthInWords(run.to, print)}`);
    const said = [...new Set([...places, ...stretches])];
    return said.length === 0 ? 'whole length' : `${said.join(', ')} from ${from}`;
}

/** `inner face of Left, Right; left edge, right edge of Floor` */
function partsInWords(cuts: readonly PartCuts[], nameOf: (path: string) => string): string {
    const sides = new Map<string, Set<string>>();
    for (const cut of cuts) {
        const name = nameOf(cut.part.path);
        sides.set(name, (sides.get(name) ?? new Set()).add(sideInWords(cut)));
    }
    const bySides = new Map<string, string[]>();
    for (const [name, words] of sides) {
        const said = [...words].sort().join(', ');
        bySides.set(said, [...(bySides.get(said) ?? []), name]);
    }
    return [...bySides].map(([words, names]) => `${words} of ${namesInWords(names)}`).join('; ');
}

function sideInWords({ part: { hand, directions }, side }: PartCuts): string {
    const isFace = directions.thickness === (side === 'left' || side === 'right' ? 'x' : side === 'back' || side === 'front' ? 'y' : 'z');
    if (hand && isFace && directions.thickness === 'x') return side === hand ? 'outer face' : 'inner face';
    return `${side} ${isFace ? 'face' : 'edge'}`;
}
