/** The calculation of what holds one end of a part: the load on the joint, and what each way of holding may carry. */
import {
    type Bearing,
    type Carries,
    greatestHold,
    type HeldEnd,
    type Hold,
    heldVerdict,
    type KnownHold,
    type Shear,
    standardGravity,
    type Withdrawal,
} from '../../strength/index.js';
import { digits, judged, type Step, sayFigure, type Units } from './worked.js';

const code = 'NDS-2018';
const lasting = `duration: ${code}, 2.3.2 (from memory)`;

export function jointSteps(end: HeldEnd, units: Units): readonly Step[] {
    return [loadStep(end, units), ...end.holds.flatMap((hold) => holdSteps(hold, units)), verdictStep(end, units)];
}

function loadStep({ force, load, stretch }: HeldEnd, units: Units): Step {
    const span = units.length(stretch.to - stretch.from);
    return {
        symbol: 'V',
        what: `On this end, of ${load.says} and its own weight, along ${sayFigure(span)} to the next support`,
        formula: load.way === 'at the middle' ? 'P / 2 + w0 L / 2' : 'w L / 2, by statics where it is not as deep all along',
        result: units.force(force),
        source: 'statics of a beam on two supports; what stands on the part besides is not in it',
    };
}

/** The steps of one way of holding, down to what it may carry. */
export function holdSteps(hold: Hold, units: Units): readonly Step[] {
    if (hold.is === 'unpublished') {
        const tested =
            hold.tested === undefined ? '' : `; in a test one comes out at ${sayFigure(units.force(hold.tested))} on the average`;
        return [{ what: sentence(hold.what), figures: `${hold.because}${tested}: not counted on` }];
    }
    const { by, capacity } = hold;
    const steps = stepsBy(by, units);
    return [...steps, { symbol: 'R', what: `${sentence(hold.what)} may carry`, ...totalOf(by, units), result: units.force(capacity) }];
}

function stepsBy(by: KnownHold['by'], units: Units): readonly Step[] {
    switch (by.is) {
        case 'shear':
            return shearSteps(by, units);
        case 'withdrawal':
            return withdrawalSteps(by, units);
        case 'bearing':
            return bearingSteps(by, units);
        case 'carries':
            return carriesSteps(by, units);
    }
}

function sentence(words: string): string {
    return words.charAt(0).toUpperCase() + words.slice(1);
}

function totalOf(by: KnownHold['by'], units: Units): Pick<Step, 'formula' | 'figures'> {
    if (by.is === 'bearing') {
        const [long, deep] = [units.length(by.long), units.length(by.deep)];
        return { formula: 'Fc b d', figures: `Fc × ${digits(long.value)} × ${digits(deep.value)}` };
    }
    if (by.is === 'carries') {
        const each = units.mass(by.each);
        return { formula: 'n m', figures: `${by.count} × ${sayFigure(each)}${each.unit === 'kg' ? ` × ${standardGravity}` : ''}` };
    }
    return { formula: "n Z'", figures: `${by.count} × ${sayFigure(units.force(by.each))}` };
}

function shearSteps(by: Shear, units: Units): readonly Step[] {
    const length = (of: number) => digits(units.length(of).value);
    const stress = (of: number) => digits(units.stress(of).value);
    const isScrew = by.form === 'wood screw';
    return [
        ...memberSteps(by, units),
        { symbol: isScrew ? 'Dr' : 'D', what: isScrew ? 'Between the threads' : 'Shank', result: units.length(by.root) },
        {
            symbol: 'Fyb',
            what: 'Yields in bending at',
            result: units.stress(by.bendingYield),
            source: `${code}, Table I1${isScrew ? ' (of screws from memory)' : ''}`,
        },
        {
            symbol: 'Rd',
            what: 'Reduction, by the shank',
            figures: `${digits(by.reduction)} for ${sayFigure(units.length(by.shank))}`,
            source: `${code}, Table 12.3.1B; by the shank it is the greater where that or the root may be meant`,
        },
        {
            symbol: 'Z',
            what: `Each yields first by mode ${by.mode}`,
            formula: `least of the six of ${code}, 12.3.1, with Re = Fem / Fes = ${digits(by.main.bearing / by.side.bearing)}`,
            figures: `Dr ${length(by.root)}, ls ${length(by.side.length)}, lm ${length(by.main.length)}, Fes ${stress(by.side.bearing)}, Fem ${stress(by.main.bearing)}, Fyb ${stress(by.bendingYield)}, Rd ${digits(by.reduction)}`,
            result: units.force(by.yieldLoad),
            source: `${code}, Equations 12.3-1 to 12.3-6; k2 from memory`,
        },
        {
            symbol: "Z'",
            what: by.duration < 1 ? 'Each, for years' : 'Each, for ten minutes',
            formula: `Z × duration × depth${by.endGrain < 1 ? ' × end grain' : ''}`,
            figures: `${digits(units.force(by.yieldLoad).value)} × ${by.duration} × ${digits(by.penetration)}${by.endGrain < 1 ? ` × ${by.endGrain}` : ''}`,
            result: units.force(by.each),
            source: `${lasting}; a depth of ten shanks counts fully (tables of chapter 12, from memory)${by.endGrain < 1 ? '; across a screw in end grain 12.5.2 (from memory)' : ''}`,
        },
        ...(by.tested === undefined
            ? []
            : [
                  {
                      what: 'For comparison, at the proportional limit of a test, on the average',
                      formula: isScrew ? 'K D^2' : 'K D^1.5',
                      result: units.force(by.tested),
                      source: 'Wood Handbook, chapter 8 (from memory)',
                  },
              ]),
    ];
}

function memberSteps({ side, main }: Shear, units: Units): readonly Step[] {
    return [
        { member: side, sign: 's', does: 'goes through' },
        { member: main, sign: 'm', does: 'is in' },
    ].map(({ member, sign, does }) => ({
        symbol: `Fe${sign}`,
        what: `Bearing of the board that it ${does}, over ${sayFigure(units.length(member.length))}`,
        formula: '16,600 G^1.84 psi',
        figures: `G ${digits(member.gravity)}, ovendry`,
        result: units.stress(member.bearing),
        source: `${code}, Table 12.3.3; G: ${member.source}`,
    }));
}

function withdrawalSteps(by: Withdrawal, units: Units): readonly Step[] {
    const isScrew = by.form === 'wood screw';
    return [
        {
            symbol: "Z'",
            what: 'Each is pulled, and holds for years',
            formula: isScrew ? '2,850 G^2 D (psi) × length × duration' : '1,380 G^(5/2) D (psi) × length × duration',
            figures: `G ${digits(by.gravity)} ovendry, D ${digits(units.length(by.shank).value)}, ${isScrew ? 'thread ' : ''}${sayFigure(units.length(by.thread))} in the wood, ${by.duration}`,
            result: units.force(by.each),
            source: `${code}, Equations 12.2-2 and 12.2-3; ${lasting}; G: ${by.source}`,
        },
        ...(by.breaking === undefined
            ? []
            : [
                  {
                      what: 'For comparison, each comes out in a test at, on the average',
                      formula: isScrew ? '15,700 G^2 D (psi) × length, G at 12 %' : '7,850 G^(5/2) D (psi) × length, G at 12 %',
                      result: units.force(by.breaking),
                      source: 'Wood Handbook FPL-GTR-282, chapter 8',
                  },
              ]),
    ];
}

function bearingSteps({ material, stated, divisor, source }: Bearing, units: Units): readonly Step[] {
    return [
        {
            symbol: 'Fc',
            what: `${material.name} may be pressed across its grain`,
            formula: divisor === 1 ? 'as stated' : 'stress at the proportional limit / 1.67',
            figures: divisor === 1 ? '' : `${digits(units.stress(stated).value)} / ${divisor}`,
            result: units.stress(stated / divisor),
            source: `${source ?? 'the design'}${divisor === 1 ? '' : '; divisor by ASTM D245 (from memory)'}. Of the ledge itself, along its grain, more may be asked`,
        },
    ];
}

function carriesSteps({ thing, each }: Carries, units: Units): readonly Step[] {
    return [
        {
            symbol: 'm',
            what: `${thing.name} carries, each`,
            result: units.mass(each),
            source: "as its `carries` says, which is its maker's",
        },
    ];
}

function verdictStep(end: HeldEnd, units: Units): Step {
    const { force } = end;
    const greatest = greatestHold(end);
    const verdict = heldVerdict(end);
    if (!greatest) {
        const figures = `no design value for ${end.holds.length === 0 ? 'what holds it' : end.holds.map(({ what }) => what).join(', ')}`;
        return { what: 'Held', figures, verdict, judged: { what: 'held', figures } };
    }
    const ratio = force / greatest.capacity;
    const others = end.holds.filter(({ is }) => is === 'unpublished').map(({ what }) => what);
    const besides = verdict === 'not known' ? (end.helped ? ['the board under it'] : others) : [];
    const words = judged(`load on ${greatest.what}`, units.force(force), units.force(greatest.capacity), 'design value');
    return {
        what: `Load over design value of ${greatest.what}`,
        formula: 'V / R',
        figures: `${digits(units.force(force).value)} / ${digits(units.force(greatest.capacity).value)}${besides.length === 0 ? '' : `; besides, ${besides.join(', ')}, without a published value`}`,
        result: { value: ratio, unit: '' },
        verdict,
        judged: {
            ...words,
            figures: `${digits(ratio)} times: ${words.figures}${besides.length === 0 ? '' : `; besides, ${besides.join(', ')}`}`,
        },
    };
}
