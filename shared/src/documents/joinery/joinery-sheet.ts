/** The marking-out schedule: for every part where the others meet it, from one edge in each direction; then the cuts by machine set-up. */

import type { Casework, JointStep, Part } from '../../casework/index.js';
import { binned } from '../../joinery/index.js';
import { cautions } from '../cautions.js';
import type { DocumentOptions } from '../document-options.js';
import { onlyBuilt } from '../only-built.js';
import { namesInWords, partNamer } from '../part-names.js';
import { asBought, lengthAmount, lengthInWords, type PrintStyle, printStyle } from '../print-style.js';
import { projectFacts } from '../project-facts.js';
import { type Cell, type Group, type Row, type Sheet, textCell } from '../sheet.js';
import { featureData } from './feature-data.js';
import { type Measured, type Meeting, meetingsOf } from './meetings.js';
import { setUpColumns, setUpGroups, setUpNotes } from './set-up-groups.js';

/** The schedule of all that is built; undefined where nothing is joined. */
export function joinerySheet(evaluated: Casework, options: Pick<DocumentOptions, 'units'>): Sheet | undefined {
    const casework = onlyBuilt(evaluated);
    const print = printStyle(casework, options);
    const marked = groupsOf(casework, print);
    const setUps = setUpGroups(casework, print);
    if (marked.length + setUps.length === 0) return undefined;
    const unit = print.sizeUnit;
    return {
        kind: 'joinery',
        title: 'Marking out and set-ups',
        facts: projectFacts(casework, print),
        columns: [
            { key: 'part', heading: 'On', align: 'left', saidByGroup: true },
            { key: 'side', heading: 'Its', align: 'left' },
            { key: 'enters', heading: 'Meets', align: 'left' },
            { key: 'joint', heading: 'Joint', align: 'left' },
            { key: 'depth', heading: 'Depth', unit, align: 'right' },
            { key: 'datum', heading: 'From its', align: 'left' },
            { key: 'low', heading: 'First line', unit, align: 'right' },
            { key: 'high', heading: 'Second line', unit, align: 'right' },
            { key: 'reach', heading: 'Reaches', align: 'left' },
            { key: 'fasteners', heading: 'Centres', align: 'left' },
            ...setUpColumns(print),
        ],
        groups: [...marked, ...setUps],
        features: featureData(casework),
        notes: [
            'Lines are the two faces of the part that is met. All of them run from one edge of the marked part, so that errors do not add up.',
            'Sizes are of finished parts, bands and nosings on; a part without its band yet is short by it.',
            'Centres are of the slots and holes in the marked part, along the joint, from the same edges: also those of an end that enters.',
            'What a part reaches is where it lies; a slot that must not show stops before the front.',
            'Before a slot is cut, hold the piece that goes in against the lines: sheets are rarely as thick as they are called.',
            ...(setUps.length === 0 ? [] : setUpNotes),
            cautions.routing,
            cautions.boring,
        ],
    };
}

/** One group for all parts that are marked alike. */
function groupsOf(casework: Casework, print: PrintStyle): readonly Group[] {
    const nameOf = partNamer(casework);
    const alike = new Map<string, { readonly parts: Part[]; readonly rows: readonly Row[] }>();
    for (const [part, meetings] of meetingsOf(casework)) {
        const rows = meetings.map((meeting) => rowOf(meeting, nameOf, print));
        const key = JSON.stringify([part.kind, meetings.map((meeting) => exact(meeting))]);
        const known = alike.get(key);
        if (known) known.parts.push(part);
        else alike.set(key, { parts: [part], rows });
    }
    return [...alike.values()].map(({ parts, rows }) => {
        const heading = namesInWords(parts.map(({ path }) => nameOf(path)));
        return { heading, rows: rows.map((row) => ({ part: textCell(heading), ...row })), notes: [] };
    });
}

/** Meetings with equal words and lengths are marked alike. */
function exact({ joint, meets, side, isFace, depth, lines, reach, fasteners }: Meeting): unknown {
    const stretch = (one: Measured | undefined) => one && [one.from, binned(one.stretch.from), binned(one.stretch.to)];
    return [
        joint.recipe,
        meets.name,
        side,
        isFace,
        binned(depth),
        stretch(lines),
        stretch(reach),
        fasteners.map(({ at }) => at.map(binned)),
    ];
}

function rowOf(meeting: Meeting, nameOf: (path: string) => string, print: PrintStyle): Row {
    const { joint, meets, side, isFace, depth, lines, reach, fasteners } = meeting;
    const length = (millimetres: number): Cell => ({ is: 'amount', amount: lengthAmount(millimetres, print) });
    const row = {
        side: textCell(`${side} ${isFace ? 'face' : 'edge'}`),
        enters: textCell(nameOf(meets.path)),
        joint: textCell(jointInWords(joint.recipe, joint.steps, print)),
        reach: textCell(reach ? `${stretchInWords(reach, print)} from ${reach.from}` : ''),
        fasteners: textCell(
            fasteners.map(({ does, at }) => `${does}s ${at.map((place) => lengthInWords(place, print)).join(', ')}`).join('; '),
        ),
        ...(depth > 0.05 ? { depth: length(depth) } : {}),
    };
    if (meets.bent) return { ...row, datum: textCell('take it from its form') };
    if (!lines) return row;
    return { ...row, datum: textCell(lines.from), low: length(lines.stretch.from), high: length(lines.stretch.to) };
}

function stretchInWords({ stretch }: Measured, print: PrintStyle): string {
    return `${lengthInWords(stretch.from, print)} to ${lengthInWords(stretch.to, print)}`;
}

/** `Shelved: biscuit #20, 2; glue` */
function jointInWords(recipe: string, steps: readonly JointStep[], print: PrintStyle): string {
    const words = steps.map(({ does, size, amount, count, spacing }) => {
        const sizes = [size, amount && asBought(amount, print)].filter((one) => one !== undefined).join(' x ');
        const often = count === undefined ? (spacing ? ` every ${asBought(spacing, print)}` : '') : `, ${count}`;
        return `${[does, sizes].filter((one) => one !== '').join(' ')}${often}`;
    });
    const said = words.join('; ');
    return recipe === '' || steps.some(({ does }) => recipe.startsWith(does)) ? said : `${recipe}: ${said}`;
}
