/** What cauls do for one panel: with the clamps of the shop, and what the glue would want. */
import { type CaulSection, caulCrown, caulLoad, clampPressure, gluePressure, type WoodStrength } from '../../strength/index.js';
import { fineCell, lengthCell, text } from '../curves/curve-cells.js';
import { lengthInWords, type PrintStyle } from '../print-style.js';
import type { Group, Row } from '../sheet.js';
import { forceCell, forceInWords, pressureCell, pressureInWords } from './caul-cells.js';
import type { GluedPanel } from './panels.js';

/** The shop's cauls as numbers: millimetres and newtons. */
export interface CaulOfShop {
    readonly height: number | undefined;
    readonly width: number | undefined;
    readonly spacing: number | undefined;
    readonly force: number | undefined;
    readonly wood: WoodStrength | undefined;
    /** How many clamps the shop has; undefined where it does not say. */
    readonly clamps: number | undefined;
}

/** Under this share of what the glue wants, a set-up keeps a panel flat and does little more. Common practice, no source. */
const onlyFlat = 0.25;

export function panelGroups(panel: GluedPanel, caul: CaulOfShop, print: PrintStyle): readonly Group[] {
    const called = `${panel.names}: ${panel.quantity} in all, ${panel.layers} layers, glued up ${lengthInWords(panel.width, print)} wide`;
    const section = sectionOf(caul);
    const { spacing } = caul;
    if (!section || spacing === undefined) return [{ heading: called, rows: [], notes: [missingNote(caul)] }];
    const wanted = panel.wood && gluePressure[panel.wood];
    const given = caul.force === undefined ? undefined : clampPressure(caul.force, panel.width, spacing);
    const pressure = given ?? wanted?.least;
    const pairs = Math.max(1, Math.ceil(panel.length / spacing));
    const notes = [
        `${pairs} pairs, ${lengthInWords(spacing, print)} from one to the next, the outer ones ${lengthInWords((panel.length - (pairs - 1) * spacing) / 2, print)} from the ends.`,
        ...clampNotes(2 * pairs, caul),
        ...pressureNotes(panel, caul, section, spacing, given, print),
    ];
    if (pressure === undefined) return [{ heading: called, rows: [], notes }];
    const loads: Row[] = [
        ...(given === undefined ? [] : [loadRow('What the clamps give', given, panel, section, spacing, print)]),
        ...(wanted ? [loadRow('What the glue wants, at least', wanted.least, panel, section, spacing, print)] : []),
    ];
    const crown = {
        heading: `${panel.names}: crown of each caul, for ${pressureInWords(pressure, print)}`,
        rows: crownRows(panel, section, spacing, pressure, print),
        notes: [],
    };
    return [{ heading: called, rows: loads, notes }, crown];
}

/** A clamp at each end of each pair, against those that the shop has. */
function clampNotes(needed: number, { clamps }: CaulOfShop): readonly string[] {
    if (clamps === undefined) return [];
    const short = needed - clamps;
    const compared = short > 0 ? `${short} too few, so borrow them, or take cauls farther apart` : 'enough for one panel at a time';
    return [`They take ${needed} clamps for a panel, one at each end of each pair; the shop has ${clamps}: ${compared}.`];
}

function sectionOf({ height, width, wood }: CaulOfShop): CaulSection | undefined {
    const modulusOfElasticity = wood?.modulusOfElasticity;
    return height && width && modulusOfElasticity ? { height, width, modulusOfElasticity } : undefined;
}

function missingNote({ height, width, spacing, wood }: CaulOfShop): string {
    const missing = [
        height ? undefined : '`height`',
        width ? undefined : '`width`',
        wood?.modulusOfElasticity ? undefined : '`species` with its stiffness',
        spacing ? undefined : '`spacing`',
    ].filter((one) => one !== undefined);
    return `For the crown say ${missing.join(' and ')} of the \`caul\` in the shop too.`;
}

function loadRow(what: string, pressure: number, panel: GluedPanel, section: CaulSection, spacing: number, print: PrintStyle): Row {
    const { force, crown, stress } = caulLoad(section, panel.width, spacing, pressure);
    return {
        what: text(what),
        pressure: pressureCell(pressure, print),
        force: forceCell(force, print),
        crown: fineCell(crown, print),
        stress: pressureCell(stress, print),
    };
}

const eighths = [0, 1, 2, 3, 4];

function crownRows(panel: GluedPanel, section: CaulSection, spacing: number, pressure: number, print: PrintStyle): readonly Row[] {
    const load = pressure * spacing;
    const crownAt = (from: number) => caulCrown(section, panel.width, load, from);
    const middle = crownAt(panel.width / 2);
    return eighths.map((eighth): Row => {
        const from = (panel.width * eighth) / 8;
        return {
            ...(eighth === 0 ? { what: text('End') } : eighth === 4 ? { what: text('Middle') } : {}),
            from: lengthCell(from, print),
            off: fineCell(middle - crownAt(from), print),
            crown: fineCell(crownAt(from), print),
        };
    });
}

/** How the clamps stand to the glue, and whether the caul stands it. */
function pressureNotes(
    panel: GluedPanel,
    caul: CaulOfShop,
    section: CaulSection,
    spacing: number,
    given: number | undefined,
    print: PrintStyle,
): readonly string[] {
    const wanted = panel.wood && gluePressure[panel.wood];
    if (!wanted) return ['The wood of its layers is not known, so nothing is said of the pressure that the glue wants.'];
    const { force, stress } = caulLoad(section, panel.width, spacing, wanted.least);
    const range = `White glue wants ${pressureInWords(wanted.least, print)} to ${pressureInWords(wanted.most, print)} on ${panel.wood}s, as its makers publish (a guide: studies and shops differ widely).`;
    const rupture = caul.wood?.modulusOfRupture;
    const breaks = rupture !== undefined && stress > rupture ? ' The caul would break under it.' : '';
    const asked = `${range} That asks ${forceInWords(force, print)} of the clamp at each end of each pair.${breaks}`;
    if (given === undefined)
        return [
            asked,
            'What your clamps give is not said: write `force` in the `caul` of the shop, and the crown for that is given instead.',
        ];
    const share = given / wanted.least;
    const compared = `With ${forceInWords(caul.force ?? 0, print)} at each end, these clamps give ${pressureInWords(given, print)}`;
    if (share >= 1) return [asked, `${compared}: enough.`];
    const percent = `${Math.round(share * 100)} % of the least`;
    if (share >= onlyFlat) return [asked, `${compared}, ${percent}: more cauls, nearer together, press harder.`];
    return [
        asked,
        `${compared}, ${percent}. This set-up keeps the panel flat while the glue sets; it does not press as the glue's makers ask. Spread thin and even, close the joint everywhere from the middle out, and use a press, a vacuum bag with a glue that is made for it, or screws in the waste where the joint must carry.`,
    ];
}
