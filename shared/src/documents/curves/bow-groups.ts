/** How to draw a bow: the strip, its string, what it pulls, and whether the strip stands it. */
import type { Batten, Casework, Measure } from '../../casework/index.js';
import { type BowCurve, type BowShape, type BowStrip, bowShapeOfRiseInStrip, sameLength } from '../../geometry/index.js';
import { real } from '../../quantity/index.js';
import { type BentStrip, bentStrip, dryBend, dryStrain, thickestFor, type WoodStrength, woodStrength } from '../../strength/index.js';
import { lengthInWords, type PrintStyle } from '../print-style.js';
import type { Group, Row } from '../sheet.js';
import { fineCell, lengthCell, pullCell, strainCell, text } from './curve-cells.js';
import type { LineOfSheet } from './line-groups.js';

/** A batten as numbers, with its wood where that is said. */
interface Strip {
    readonly thickness: number;
    readonly width: number | undefined;
    readonly length: number | undefined;
    readonly wood: WoodStrength | undefined;
}

export function bowGroups(line: LineOfSheet, bow: BowCurve, casework: Casework): readonly Group[] {
    const strip = stripOf(line.model.batten, casework);
    return [stripGroup(line, bow, strip), stringGroup(line, bow, strip)];
}

function stripOf(batten: Batten | undefined, casework: Casework): Strip | undefined {
    const thickness = millimetres(batten?.thickness);
    if (!batten || thickness === undefined) return undefined;
    const species = batten.species === undefined ? undefined : casework.things.get(batten.species);
    return {
        thickness,
        width: millimetres(batten.width),
        length: millimetres(batten.length),
        wood: species && woodStrength(species),
    };
}

function millimetres(measure: Measure | undefined): number | undefined {
    return measure && real.toNumber(measure.quantity.value);
}

type DrawnStrip = Pick<BowStrip, 'length' | 'loadRatio' | 'greatestCurvature'>;

function bent(bow: DrawnStrip, { thickness, width, wood }: Strip): BentStrip {
    const stiffness = wood?.modulusOfElasticity;
    return bentStrip(
        bow,
        thickness,
        width !== undefined && stiffness !== undefined ? { width, modulusOfElasticity: stiffness } : undefined,
    );
}

function stripGroup({ name, print }: LineOfSheet, bow: BowCurve, strip: Strip | undefined): Group {
    const found = strip && bent(bow.strip, strip);
    const end = (bow.strip.endAngle * 180) / Math.PI;
    const rows: Row[] = [
        { what: text('Strip, between the ends of the string'), length: lengthCell(bow.strip.length, print) },
        { what: text('String, pulled tight'), length: lengthCell(bow.strip.stringLength, print) },
        { what: text('Rise over the middle of the string'), rise: lengthCell(Math.abs(bow.rise), print) },
        { what: text('Strip and string at the ends'), note: text(`${end.toFixed(1)} degrees`) },
        ...(found?.pull === undefined ? [] : [{ what: text('Pull of the string'), pull: pullCell(found.pull, print) }]),
        ...(found ? [{ what: text('Strain of the strip, at its middle'), strain: strainCell(found.strain) }] : []),
    ];
    return { heading: `${name}: strip and string`, rows, notes: strip ? stripNotes(bow, strip, print) : [thickestNote(bow, print)] };
}

/** Nothing is said of a strip: what thickness would do, and no pull, for that would be invented. */
function thickestNote(bow: BowCurve, print: PrintStyle): string {
    const radius = 1 / bow.strip.greatestCurvature;
    const [hard, soft] = (['hardwood', 'softwood'] as const).map((wood) =>
        lengthInWords(thickestFor(dryStrain(wood), radius), print, 'down'),
    );
    return `Nothing is said of the strip. Bent dry to this line, one of hardwood may be ${hard} thick at most, one of softwood ${soft} (thickness over radius at most 1/${dryBend.hardwood} and 1/${dryBend.softwood}: NDS-2018, 5.3.8, from memory). With \`batten { thickness ...  width ...  species ... }\` in the shop or in the curve, the pull of the string and the strain are worked out.`;
}

function stripNotes(bow: BowCurve, strip: Strip, print: PrintStyle): readonly string[] {
    const { wood, width, length, thickness } = strip;
    const { strain, pull } = bent(bow.strip, strip);
    const notes: string[] = [];
    const called = `A strip of ${lengthInWords(thickness, print)}${wood ? ` of ${wood.name}` : ''}`;
    if (length !== undefined && length < bow.strip.length)
        notes.push(
            `The batten of ${lengthInWords(length, print)} is too short: ${lengthInWords(bow.strip.length, print)} of it lie between the ends of the string.`,
        );
    notes.push(`${called} ${strainInWords(bow, strain, strip, print)}`);
    if (pull === undefined) {
        const missing = [
            width === undefined ? '`width`' : undefined,
            wood?.modulusOfElasticity === undefined ? '`species` with its stiffness' : undefined,
        ];
        notes.push(`For the pull of the string say ${missing.filter((one) => one !== undefined).join(' and ')} of the batten too.`);
    } else {
        notes.push(
            `The pull is that of the elastica, with 1.1 times the tabulated stiffness of ${wood?.name}, for a strip does not shear (Wood Handbook FPL-GTR-282, Table 5-3b, note c). Single strips vary in stiffness by 22 % (Wood Handbook, Table 5-6, from memory); the line does not depend on it.`,
        );
    }
    return notes;
}

/** Whether it will stand the rise: within what dry wood takes for good, up to where it breaks at the latest, or past that. */
function strainInWords(bow: BowCurve, strain: number, { thickness, wood }: Strip, print: PrintStyle): string {
    const found = `is strained by ${percent(strain)}`;
    const kind = wood?.wood;
    const breaks = wood?.ruptureStrain;
    const dry =
        kind === undefined ? undefined : `${percent(dryStrain(kind))} that dry ${kind} takes for good (NDS-2018, 5.3.8, from memory)`;
    const rupture =
        breaks === undefined
            ? undefined
            : `${percent(breaks)} at which clear ${wood?.name} breaks (modulus of rupture over modulus of elasticity)`;
    if (breaks !== undefined && strain >= breaks) {
        const rise = breakingRise(bow, thickness, breaks);
        const reached = rise === undefined ? '' : `, at a rise of ${lengthInWords(rise, print, 'down')}`;
        return `breaks before it reaches the rise: it would be strained by ${percent(strain)}, more than the ${rupture}${reached}.`;
    }
    if (kind === undefined || dry === undefined) return `${found}; its wood is not said, so no limit is known.`;
    if (strain > dryStrain(kind))
        return `${found}, more than the ${dry}${rupture ? `, and under the ${rupture}` : ''}: take a thinner one, or bend it slowly and stand clear.`;
    return `${found}, within the ${dry}${rupture ? `, and far from the ${rupture}` : ''}.`;
}

function percent(share: number): string {
    return `${(share * 100).toFixed(2)} %`;
}

/** The rise at which a strip of this length reaches a strain, by halving: strain grows with the rise. */
function breakingRise(bow: BowCurve, thickness: number, breaks: number): number | undefined {
    let [low, high] = [0, Math.abs(bow.rise)];
    for (let step = 0; step < 50; step++) {
        const rise = (low + high) / 2;
        const shape = bowShapeOfRiseInStrip(rise / bow.length);
        if (shape && bentStrip(inStrip(shape, bow.length), thickness, undefined).strain < breaks) low = rise;
        else high = rise;
    }
    return low > 0 ? low : undefined;
}

/** A shape in a strip of some length. */
function inStrip({ loadRatio, greatestCurvature }: BowShape, length: number): DrawnStrip {
    return { length, loadRatio, greatestCurvature: greatestCurvature / length };
}

// ---------------------------------------------------------------- other rises

/** Steps of rises, finest first: those of a rule in inches, and in millimetres. */
const riseSteps = { inch: [1 / 16, 1 / 8, 1 / 4, 1 / 2, 1, 2].map((inches) => inches * 25.4), mm: [1, 2, 5, 10, 20, 50] } as const;
const stepsEachWay = 4;

/** The same strip with its string shorter and longer. */
function stringGroup({ name, print }: LineOfSheet, bow: BowCurve, strip: Strip | undefined): Group {
    const asked = Math.abs(bow.rise);
    const step = riseSteps[print.system].findLast((one) => one * (stepsEachWay + 1) <= asked) ?? riseSteps[print.system][0]!;
    // whole steps of a rule around what is asked, and that itself
    const middle = Math.round(asked / step);
    const whole = Array.from({ length: 2 * stepsEachWay + 1 }, (_, index) => (middle + index - stepsEachWay) * step);
    const rises = [...whole.filter((rise) => !sameLength(rise, asked)), asked].sort((p, q) => p - q);
    const rows = rises.flatMap((rise): readonly Row[] => {
        const shape = bowShapeOfRiseInStrip(rise / bow.length);
        if (!shape) return [];
        const found = strip && bent(inStrip(shape, bow.length), strip);
        return [
            {
                rise: lengthCell(rise, print),
                length: lengthCell(shape.chord * bow.length, print),
                shortening: fineCell((1 - shape.chord) * bow.length, print),
                ...(found?.pull === undefined ? {} : { pull: pullCell(found.pull, print) }),
                ...(found ? { strain: strainCell(found.strain) } : {}),
                ...(rise === asked ? { note: text('as drawn') } : {}),
            },
        ];
    });
    return {
        heading: `${name}: length of the string for other rises`,
        rows,
        notes: [
            `The strip keeps its ${lengthInWords(bow.length, print)} between the ends of the string. A flat bow rises far for a little string: set it by its rise, and tie the string there.`,
        ],
    };
}
