/** The calculation of how solid wood moves across its grain between the driest and the dampest month. */
import type { Casework } from '../../casework/index.js';
import { climateOf, isTabulated, type MovingPart, movingParts } from '../../strength/index.js';
import { namesInWords, partNamer } from '../part-names.js';
import { digits, type Step, sayFigure, type Units } from './worked.js';

const moistureSource = 'Wood Handbook FPL-GTR-282, Equation 4-5, at 70 degrees Fahrenheit';

/** None where nothing is of solid wood. */
export function movementSteps(casework: Casework, units: Units): readonly Step[] {
    const moving = movingParts(casework);
    if (moving.length === 0) return [];
    const { dry, damp, driest, wettest, stated } = climateOf(casework);
    const source = stated ? 'the project' : 'common practice, no source: nothing is said with `climate`';
    const percent = (value: number) => ({ value, unit: '%' });
    const nameOf = partNamer(casework);
    const rows = batched(moving, units).map(({ first, paths }): Step => {
        const { wood, width, moves } = first;
        const [wide, far] = [units.length(width), units.length(moves)];
        const { shrinkage } = wood;
        const byShrinkage = !isTabulated(driest, wettest) && shrinkage !== undefined;
        const difference = `(${digits(wettest)} - ${digits(driest)})`;
        return {
            formula: byShrinkage ? 'D (M2 - M1) / (30 / S - 30 + M1)' : 'D C (M2 - M1)',
            what: `${namesInWords(paths.map(nameOf))}, ${sayFigure(wide)} of ${wood.species} across the grain, flat-sawn: moves`,
            figures: byShrinkage
                ? `${digits(wide.value)} × ${difference} / (30 / ${shrinkage} - 30 + ${digits(driest)})`
                : `${digits(wide.value)} × ${wood.change} × ${difference}`,
            result: far,
            ...(wood.source === undefined ? {} : { source: wood.source }),
        };
    });
    return [
        { symbol: 'h1', what: 'Humidity of the driest month', result: percent(dry * 100), source },
        { symbol: 'h2', what: 'Humidity of the dampest month', result: percent(damp * 100), source },
        { symbol: 'M1', what: 'Moisture that wood takes on in the driest', result: percent(driest), source: moistureSource },
        { symbol: 'M2', what: 'Moisture that it takes on in the dampest', result: percent(wettest), source: moistureSource },
        ...rows,
    ];
}

interface Batch {
    readonly first: MovingPart;
    readonly paths: string[];
}

/** Boards of one wood that are as wide, as far as is printed. */
function batched(moving: readonly MovingPart[], units: Units): readonly Batch[] {
    const batches = new Map<string, Batch>();
    for (const one of moving) {
        const key = `${one.wood.species} ${digits(units.length(one.width).value)}`;
        const known = batches.get(key);
        if (known) known.paths.push(one.part.path);
        else batches.set(key, { first: one, paths: [one.part.path] });
    }
    return [...batches.values()];
}
