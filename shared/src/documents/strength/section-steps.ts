/** The section of a shelf, strip by strip, and its stiffness at places along it. */
import { creepOf, modulusSourceOf, type Section, type ShelfSag, type ShelfStrip, sectionOf } from '../../strength/index.js';
import { placeInWords, type ShelfContext } from './shelf-context.js';
import { digits, type Step, sayFigure, type Units } from './worked.js';

type When = 'at once' | 'in years';
const handbook = 'Wood Handbook FPL-GTR-282, chapter 9: transformed section';

/** Whether a shelf is as deep all along; less than a tenth of a millimetre is no difference. */
export function isOneDepth({ depthAt, span }: ShelfSag): boolean {
    const middle = depthAt(span / 2);
    return [0, 1, 2, 3, 4].every((quarter) => Math.abs(depthAt((span * quarter) / 4) - middle) < 0.1);
}

/** How stiff the section is at the middle of the span; in years each strip counts by its modulus over what creep makes of it. */
export function sectionSteps(shelf: ShelfSag, context: ShelfContext, when: When): readonly Step[] {
    const { strips, depthAt, span } = shelf;
    const depth = depthAt(span / 2);
    const section = sectionOf(strips, depth, when);
    const [first, ...others] = strips;
    if (!first) return [];
    const { units } = context;
    const years = when === 'in years' ? ' years' : '';
    const rigidity = units.rigidity(section.stiffness);
    if (years !== '' && new Set(strips.map(({ material }) => creepOf(material).factor)).size === 1) {
        const { factor, source } = creepOf(first.material);
        return [
            { symbol: 'K', what: 'The years make it sag', figures: `${factor} times as far`, source },
            {
                symbol: 'EI years',
                what: 'Stiffness of the section in years',
                formula: 'EI / K',
                figures: `EI / ${factor}`,
                result: rigidity,
            },
        ];
    }
    const stripRows = strips.flatMap((strip, index) => stripSteps(strip, index + 1, depth, context, when));
    const axis: Step = {
        symbol: `y${years}`,
        what: 'Neutral axis, under the upper face',
        formula: 'sum of E b h c / sum of E b h',
        figures: axisFigures(section, units),
        result: units.length(section.neutralAxis),
    };
    const loose = strips.some((strip) => strip.loose);
    return [
        ...stripRows,
        ...(others.some((strip) => !strip.loose) ? [axis] : []),
        {
            symbol: `EI${years}`,
            what: isOneDepth(shelf)
                ? `Stiffness of the section${years === '' ? '' : ' in years'}`
                : 'Stiffness of the section at its middle',
            formula:
                others.length === 0
                    ? 'E b h^3 / 12'
                    : `sum of E (b h^3 / 12 + b h (c - y)^2)${loose ? ', of what is not glued E b h^3 / 12' : ''}`,
            figures: others.length === 0 ? plainFigures(first, depth, context) : stiffnessFigures(section, units),
            result: rigidity,
            ...(years === '' ? { source: handbook } : {}),
        },
    ];
}

/** The two sums: moments of the strips' stiffness about the upper face, and the stiffness. */
function axisFigures({ strips }: Section, units: Units): string {
    const glued = strips
        .filter(({ loose }) => !loose)
        .map(({ width, height, below, modulus }) => [modulus * width * height, below + height / 2] as const);
    const moments = glued.reduce((sum, [weight, middle]) => sum + weight * middle, 0);
    const weights = glued.reduce((sum, [weight]) => sum + weight, 0);
    return `${digits(units.moment(moments).value)} / ${digits(units.force(weights).value)}`;
}

/** What each strip adds. */
function stiffnessFigures({ strips, neutralAxis }: Section, units: Units): string {
    const added = strips.map(({ width, height, below, modulus, loose }) => {
        const off = loose ? 0 : below + height / 2 - neutralAxis;
        return modulus * ((width * height ** 3) / 12 + width * height * off ** 2);
    });
    return added.map((each) => digits(units.rigidity(each).value)).join(' + ');
}

function plainFigures(strip: ShelfStrip, depth: number, { units }: ShelfContext): string {
    return `${digits(units.stress(strip.modulus).value)} × ${digits(units.length(depth).value)} × ${digits(units.length(strip.height).value)}^3 / 12`;
}

/** Its sizes and its modulus. */
function stripSteps(strip: ShelfStrip, number: number, depth: number, context: ShelfContext, when: When): readonly Step[] {
    const { units, casework } = context;
    const { factor, source: creepSource } = creepOf(strip.material);
    const source = modulusSourceOf(casework, strip.material, strip.modulusSpan) ?? `stated in ${placeInWords(strip.modulusSpan, context)}`;
    if (when === 'in years') {
        return [
            {
                symbol: `E${number} years`,
                what: `${strip.name}, stiffness that the years leave`,
                formula: 'E / K',
                figures: `${digits(units.stress(strip.modulus).value)} / ${factor}`,
                result: units.stress(strip.modulus / factor),
                source: creepSource,
            },
        ];
    }
    const width = units.length(strip.role === 'core' ? depth : strip.width);
    const [height, middle] = [units.length(strip.height), units.length(strip.below + strip.height / 2)];
    return [
        {
            symbol: `b${number}, h${number}, c${number}`,
            what: `${strip.name}: width, height, its middle under the upper face`,
            figures: [width, height, middle].map(sayFigure).join(', '),
            source: strip.loose ? 'the design; it is not glued' : 'the design',
        },
        {
            symbol: `E${number}`,
            what: `Modulus of elasticity of ${strip.material.name}${strip.role === 'core' ? ' along the span' : ''}`,
            result: units.stress(strip.modulus),
            source,
        },
    ];
}

const quarters = [0, 1, 2, 3, 4];

/** Where its depth changes along it: depth, stiffness and moment at the ends, the quarters and the middle. */
export function stationSteps({ strips, depthAt, momentAt, span }: ShelfSag, { units }: ShelfContext): readonly Step[] {
    return quarters.map((quarter): Step => {
        const x = (span * quarter) / 4;
        const depth = depthAt(x);
        const moment = units.moment(quarter === 0 || quarter === 4 ? 0 : momentAt(x));
        return {
            symbol: `EI at ${sayFigure(units.length(x))}`,
            what: 'Stiffness there',
            figures: `its board is ${sayFigure(units.length(depth))} deep, M = ${sayFigure(moment)}`,
            result: units.rigidity(sectionOf(strips, depth, 'at once').stiffness),
        };
    });
}

/** The sag at the middle from the stiffness at those places alone, by Simpson's rule: near enough for a pencil. */
export function sagByQuarters({ strips, depthAt, momentAt, span }: ShelfSag, when: When): number {
    const weights = [1, 4, 2, 4, 1];
    const terms = weights.map((weight, quarter) => {
        const x = (span * quarter) / 4;
        const unit = Math.min(x, span - x) / 2;
        return weight * (quarter === 0 || quarter === 4 ? 0 : (momentAt(x) * unit) / sectionOf(strips, depthAt(x), when).stiffness);
    });
    return (span / 12) * terms.reduce((sum, term) => sum + term, 0);
}
