/**
 * The document of cauls: the crown to plane into each bearer so that the clamps at its ends press a panel evenly. A document of its own,
 * and no part of that of curves: flat panels want it as much as swept ones, and a design without a curve has them.
 */

import type { Casework, Caul, Measure } from '../../casework/index.js';
import { real } from '../../quantity/index.js';
import { woodStrength } from '../../strength/index.js';
import { cautions } from '../cautions.js';
import { withTable } from '../curves/curve-cells.js';
import type { DocumentOptions } from '../document-options.js';
import { onlyBuilt } from '../only-built.js';
import { printStyle } from '../print-style.js';
import { projectFacts } from '../project-facts.js';
import type { Sheet } from '../sheet.js';
import { caulColumns } from './caul-cells.js';
import { type CaulOfShop, panelGroups } from './panel-groups.js';
import { gluedPanels } from './panels.js';

/** For all panels that are glued up of layers; undefined where there is none, or the shop says nothing of its cauls. */
export function caulSheet(evaluated: Casework, options: Pick<DocumentOptions, 'units'>): Sheet | undefined {
    const casework = onlyBuilt(evaluated);
    const panels = gluedPanels(casework);
    const said = casework.shop.caul;
    if (!said || panels.length === 0) return undefined;
    const print = printStyle(casework, options);
    const caul = { ...caulOf(said, casework), clamps: casework.shop.clamps };
    return {
        kind: 'cauls',
        title: 'Cauls',
        facts: projectFacts(casework, print),
        columns: caulColumns(print),
        groups: panels.flatMap((panel) => panelGroups(panel, caul, print)).map(withTable),
        notes: [
            'Cauls come in pairs, one over and one under the panel, drawn together by a clamp at each end. Plane the crown into both of a pair: high in the middle, and down by what stands here towards the ends.',
            'The crown is what a beam that is held at its ends and loaded evenly bends: 5 w L^4 / (384 E I) at its middle (Wood Handbook FPL-GTR-282, Equation 9-2 and Table 9-1), with the tabulated stiffness of the wood. A caul that is shorter than 14 of its heights bends a little more; single boards vary in stiffness by 22 % (Wood Handbook, Table 5-6, from memory).',
            'Under the cauls the pressure is taken as even over half of the way to the next on each side, which wants stiff outer layers or a platen.',
            cautions.bent,
            cautions.decides,
        ],
    };
}

function caulOf({ height, width, species, spacing, force }: Caul, casework: Casework): Omit<CaulOfShop, 'clamps'> {
    const thing = species === undefined ? undefined : casework.things.get(species);
    return {
        height: inBaseUnits(height),
        width: inBaseUnits(width),
        spacing: inBaseUnits(spacing),
        // the base unit of force is a thousandth of a newton: kg mm/s2
        force: force && real.toNumber(force.quantity.value) / 1000,
        wood: thing && woodStrength(thing),
    };
}

function inBaseUnits(measure: Measure | undefined): number | undefined {
    return measure && real.toNumber(measure.quantity.value);
}
