/** Panes of glass: their sizes and what they weigh. */
import { type Pane, standardGravity } from '../../strength/index.js';
import { digits, type Step, sayFigure, type Units } from './worked.js';

export function paneSteps({ length, width, thickness, mass, glazing, material }: Pane, units: Units): readonly Step[] {
    const [l, w, t] = [length, width, thickness].map((one) => sayFigure(units.length(one)));
    const isSafe = glazing === 'tempered' || glazing === 'laminated';
    const figures = `${material.name}, ${glazing ?? 'nothing said of how it is made'}`;
    const each = mass === undefined ? undefined : units.mass(mass);
    const perArea = mass === undefined ? undefined : units.areaForce((mass / (length * width)) * standardGravity);
    return [
        { what: 'Ordered to size', figures: `${l} × ${w} × ${t}`, source: 'the design; edges and holes are ordered with it' },
        {
            symbol: 'm',
            what: 'Mass',
            formula: 'density l b t',
            figures: each && perArea ? `${digits(perArea.value)} ${perArea.unit} of face` : 'its density is not known',
            ...(each ? { result: each } : {}),
            source: 'density of its material',
        },
        {
            what: 'Safety glazing',
            figures,
            verdict: isSafe ? 'holds' : 'to be noted',
            judged: { what: 'safety glazing', figures },
            source: '16 CFR 1201 and ANSI Z97.1; furniture is outside the first (from memory), local codes decide',
        },
    ];
}
