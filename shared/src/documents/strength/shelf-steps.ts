/** The calculation of one shelf, step by step: what it carries, how stiff its section is, how far it sags, how near it is to breaking. */
import type { Thing } from '../../casework/index.js';
import { ruptureFactors, ruptureOf, type ShelfSag, sectionOf, standardGravity, visibleSag } from '../../strength/index.js';
import { isOneDepth, sagByQuarters, sectionSteps, stationSteps } from './section-steps.js';
import type { ShelfContext } from './shelf-context.js';
import { digits, judged, type Step, sayFigure, type Units } from './worked.js';

export function shelfSteps(shelf: ShelfSag, context: ShelfContext): readonly Step[] {
    return [
        ...loadSteps(shelf, context),
        ...sectionSteps(shelf, context, 'at once'),
        ...(isOneDepth(shelf) ? [] : stationSteps(shelf, context)),
        ...sagSteps(shelf, context),
        ...stressSteps(shelf, context),
    ];
}

function loadSteps(shelf: ShelfSag, { units }: ShelfContext): readonly Step[] {
    const { load, span, ownWeight } = shelf;
    const length = digits(units.length(span).value);
    const own = units.force(ownWeight);
    return [
        { symbol: 'L', what: 'Clear span between its supports', result: units.length(span), source: 'the design' },
        ...carriedSteps(shelf, units),
        {
            symbol: 'w0',
            what: 'Its own weight, along it',
            formula: 'W0 / L',
            figures: ownWeight > 0 ? `${sayFigure(own)} / ${length}` : 'its density is not known: left out',
            result: units.lineForce(ownWeight / span),
            source: 'density of its materials',
        },
        ...(load.way === 'at the middle'
            ? []
            : [
                  {
                      symbol: 'w',
                      what: 'Along it, in all',
                      formula: 'w1 + w0',
                      figures: `${digits(units.lineForce(carriedAlong(shelf)).value)} + ${digits(units.lineForce(ownWeight / span).value)}`,
                      result: units.lineForce(carriedAlong(shelf) + ownWeight / span),
                  },
              ]),
    ];
}

/** What it carries along its length, in N/mm; the mean where its depth changes. */
function carriedAlong({ loadForce, span }: ShelfSag): number {
    return loadForce / span;
}

function carriedSteps(shelf: ShelfSag, units: Units): readonly Step[] {
    const { load, span, loadForce } = shelf;
    const along = units.lineForce(carriedAlong(shelf));
    const length = digits(units.length(span).value);
    const source = 'the design';
    if (load.way === 'at the middle')
        return [{ symbol: 'P', what: `Carried at its middle: ${load.says}`, result: units.force(loadForce), source }];
    if (load.goods) {
        const { count, mass } = load.goods;
        const each = units.mass(mass);
        const gravity = each.unit === 'kg' ? ` × ${standardGravity}` : '';
        return [
            {
                symbol: 'W1',
                what: `Carried: ${load.says}, side by side on the whole shelf`,
                formula: `n m${gravity === '' ? '' : ' g'}`,
                figures: `${count} × ${sayFigure(each)}${gravity}`,
                result: units.force(count * mass * standardGravity),
                source,
            },
            {
                symbol: 'w1',
                what: 'The same along it, over the clear length of the whole shelf',
                formula: 'W1 / length',
                figures: `${digits(units.force(count * mass * standardGravity).value)} / ${digits(units.length((count * mass * standardGravity) / carriedAlong(shelf)).value)}`,
                result: along,
            },
        ];
    }
    if (load.way === 'along') return [{ symbol: 'w1', what: `Carried along it: ${load.says}`, result: along, source }];
    const area = units.areaForce(load.intensity);
    const isInch = area.unit === 'lbf/ft2';
    return [
        { symbol: 'q', what: `Carried on its face: ${load.says}`, result: area, source },
        {
            symbol: 'w1',
            what: isOneDepth(shelf) ? 'The same along it' : 'The same along it, by its mean depth',
            formula: isInch ? 'q d / 144' : 'q d / 1000',
            figures: `${digits(area.value)} × ${sayFigure(units.length(carriedAlong(shelf) / load.intensity))} / ${isInch ? 144 : 1000}`,
            result: along,
        },
        {
            symbol: 'W1',
            what: 'In all on the span',
            formula: 'w1 L',
            figures: `${digits(along.value)} × ${length}`,
            result: units.force(loadForce),
        },
    ];
}

const beamSource = 'Wood Handbook FPL-GTR-282, Equation 9-2 and Table 9-1';

function sagSteps(shelf: ShelfSag, context: ShelfContext): readonly Step[] {
    const { units, limit } = context;
    const { span, sagAtOnce, sagInYears } = shelf;
    const length = digits(units.length(span).value);
    const may = units.length(span * limit.share);
    const straight = units.length(span * visibleSag);
    return [
        ...supportSteps(shelf, units),
        { ...sagFormula(shelf, units, 'EI'), symbol: 's', what: 'Sags at once', result: units.length(sagAtOnce), source: beamSource },
        {
            symbol: 's max',
            what: 'May sag at once',
            formula: `L / ${digits(1 / limit.share)}`,
            figures: `${length} / ${digits(1 / limit.share)}`,
            result: may,
            source: limit.source,
            verdict: sagAtOnce <= span * limit.share ? 'holds' : 'fails',
            judged: judged('sag at once', units.length(sagAtOnce), may),
        },
        ...sectionSteps(shelf, context, 'in years'),
        {
            ...sagFormula(shelf, units, 'EI years'),
            symbol: 's years',
            what: 'Sags in years',
            result: units.length(sagInYears),
            source: beamSource,
        },
        {
            symbol: 's seen',
            what: 'Looks straight up to',
            formula: 'L / 384',
            figures: `${length} / 384`,
            result: straight,
            source: 'common practice, no source: 1/32in in a foot',
            verdict: sagInYears <= span * visibleSag ? 'holds' : 'to be noted',
            judged: judged('sag in years, as the eye sees it', units.length(sagInYears), straight),
        },
    ];
}

/** The moments over posts that it runs on over. */
function supportSteps({ overSupports }: ShelfSag, units: Units): readonly Step[] {
    if (!overSupports) return [];
    const { spans, moments } = overSupports;
    const source = 'three moments (Clapeyron): on both sides of a post it turns alike';
    const what = `of ${spans} stretches that it runs over in one, with the load on every other`;
    return [
        { symbol: 'Ml', what: `Moment at its left end, ${what}`, result: units.moment(moments[0]), source },
        { symbol: 'Mr', what: 'The same at its right end', result: units.moment(moments[1]), source },
    ];
}

function sagFormula(shelf: ShelfSag, units: Units, rigidity: 'EI' | 'EI years'): Pick<Step, 'formula' | 'figures'> {
    if (!isOneDepth(shelf)) {
        const near = units.length(sagByQuarters(shelf, rigidity === 'EI' ? 'at once' : 'in years'));
        return {
            formula: `integral of f = M m / ${rigidity} along the span, m = x / 2 up to the middle`,
            figures: `from the quarters alone, L / 12 (4 f + 2 f + 4 f) = ${sayFigure(near)}`,
        };
    }
    const length = digits(units.length(shelf.span).value);
    const own = digits(units.lineForce(shelf.ownWeight / shelf.span).value);
    if (shelf.overSupports) {
        const { overSupports: _, ...simple } = shelf;
        const plain = sagFormula(simple, units, rigidity);
        return {
            formula: `integral of M m / ${rigidity} along the span, M with Ml at its left end and Mr at its right`,
            figures: `at its middle ${plain.figures} + (Ml + Mr) × ${length}^2 / (16 ${rigidity})`,
        };
    }
    if (shelf.load.way === 'at the middle') {
        return {
            formula: `P L^3 / (48 ${rigidity}) + 5 w0 L^4 / (384 ${rigidity})`,
            figures: `${digits(units.force(shelf.loadForce).value)} × ${length}^3 / (48 ${rigidity}) + 5 × ${own} × ${length}^4 / (384 ${rigidity})`,
        };
    }
    const all = digits(units.lineForce(carriedAlong(shelf) + shelf.ownWeight / shelf.span).value);
    return { formula: `5 w L^4 / (384 ${rigidity})`, figures: `5 × ${all} × ${length}^4 / (384 ${rigidity})` };
}

const unknownStrength = { what: 'breaking', figures: 'nothing says at what stress its materials break' };

function stressSteps(shelf: ShelfSag, { casework, units }: ShelfContext): readonly Step[] {
    const { stress: found, greatestMoment, strengthUnknown } = shelf;
    if (!found) {
        return [{ what: 'Breaking', figures: unknownStrength.figures, verdict: 'not known', judged: unknownStrength }];
    }
    const { strip, stress, allowable } = found;
    const holds = stress <= allowable;
    const judgement = judged(`stress in ${strip.name}`, units.stress(stress), units.stress(allowable));
    const length = digits(units.length(shelf.span).value);
    const rupture = ruptureOf(casework, strip.material) ?? Number.NaN;
    const { weakest, duration, partial } = ruptureFactors(strip.material);
    const own = digits(units.lineForce(shelf.ownWeight / shelf.span).value);
    const all = digits(units.lineForce(carriedAlong(shelf) + shelf.ownWeight / shelf.span).value);
    const section = sectionOf(shelf.strips, shelf.depthAt(greatestMoment.at), 'at once');
    const arm = (stress * section.stiffness) / (greatestMoment.value * strip.modulus);
    const moment =
        !isOneDepth(shelf) || shelf.overSupports
            ? {}
            : shelf.load.way === 'at the middle'
              ? {
                    formula: 'P L / 4 + w0 L^2 / 8',
                    figures: `${digits(units.force(shelf.loadForce).value)} × ${length} / 4 + ${own} × ${length}^2 / 8`,
                }
              : { formula: 'w L^2 / 8', figures: `${all} × ${length}^2 / 8` };
    return [
        { symbol: 'M', what: 'Greatest bending moment', ...moment, result: units.moment(greatestMoment.value), source: beamSource },
        {
            symbol: 'f',
            what: `Greatest stress, in ${strip.name}`,
            formula: 'M E c / EI, c from the neutral axis to its outer face',
            figures: `${digits(units.moment(greatestMoment.value).value)} × ${digits(units.stress(strip.modulus).value)} × ${sayFigure(units.length(arm))} / EI`,
            result: units.stress(stress),
        },
        {
            symbol: 'F',
            what: `${strip.name} may carry for years`,
            formula: 'R × weakest × duration / safety',
            figures: `${digits(units.stress(rupture).value)} × ${weakest.toFixed(3)} × ${duration} / ${partial}`,
            result: units.stress(allowable),
            source: 'average breaking stress R of the material; spread by Wood Handbook, Table 5-6, duration and safety by Eurocode 5, Tables 3.1 and 2.3 (all three from memory)',
            verdict: holds ? 'holds' : 'fails',
            // that one strip holds says nothing of the others
            ...(holds && strengthUnknown.length > 0 ? {} : { judged: judgement }),
        },
        ...(holds && strengthUnknown.length > 0 ? [unknownStrengthStep(strengthUnknown, judgement)] : []),
    ];
}

/** Only some of what it is made of has a known strength: whether the shelf holds is not known. */
function unknownStrengthStep(materials: readonly Thing[], { what, figures }: NonNullable<Step['judged']>): Step {
    const unknown = `of ${materials.map(({ name }) => name).join(' and ')} no strength is known`;
    return {
        what: 'Breaking, as a whole',
        figures: unknown,
        verdict: 'not known',
        judged: { what: 'breaking', figures: `${unknown}; ${what} ${figures}` },
    };
}
