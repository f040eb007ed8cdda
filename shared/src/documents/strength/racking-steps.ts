/** The calculation of what keeps a case square against a declared push: its back as a panel in shear. */

import type { Casework } from '../../casework/index.js';
import { type Brace, type Bracing, bracingOf, type RackedCase } from '../../strength/index.js';
import { holdSteps } from './joint-steps.js';
import { digits, inWords, judged, type Step, sayFigure, type Units } from './worked.js';

/** What braces a case, and with a declared push what that may take. */
export function rackingSteps(casework: Casework, racked: RackedCase, units: Units): readonly Step[] {
    const { braces, isBracedThroughout } = racked;
    const names = [...new Set(braces.map(({ name }) => name))].join(', ');
    if (braces.length === 0) {
        const figures = 'no board across it that faces the room';
        return [{ what: 'Kept square by', figures, verdict: 'fails', judged: { what: 'bracing against racking', figures } }];
    }
    const figures = `${names}${isBracedThroughout ? '' : ', in one half of its height'}`;
    const by: Step = {
        what: 'Kept square by',
        figures,
        verdict: isBracedThroughout ? 'holds' : 'to be noted',
        judged: { what: 'bracing against racking', figures },
    };
    const bracing = bracingOf(casework, racked);
    return bracing ? [by, ...pushSteps(bracing, units)] : [by];
}

function pushSteps(bracing: Bracing, units: Units): readonly Step[] {
    const { braces, capacity, push } = bracing;
    const asked = units.force(push);
    const whole: Step = {
        symbol: 'H',
        what: 'A level push along the wall at its top, as declared',
        result: asked,
        source: 'the design',
    };
    const unknown = 'no design value for the fasteners along all four edges of any of them';
    const result: Step =
        capacity === undefined
            ? {
                  what: 'What keeps it square may take',
                  figures: unknown,
                  verdict: 'not known',
                  judged: { what: 'racking', figures: unknown },
              }
            : {
                  what: 'Push over design value of what keeps it square',
                  formula: 'H / sum of R',
                  figures: `${digits(asked.value)} / ${digits(units.force(capacity).value)}`,
                  result: { value: push / capacity, unit: '' },
                  verdict: push <= capacity ? 'holds' : 'fails',
                  judged: judged('racking by a push along the wall', asked, units.force(capacity), 'design value'),
              };
    return [whole, ...braces.flatMap((brace) => braceSteps(brace, units)), result];
}

function braceSteps({ part, wide, high, edges, capacity }: Brace, units: Units): readonly Step[] {
    const [b, h] = [units.length(wide), units.length(high)];
    const size: Step = {
        symbol: 'b, h',
        what: `${part.name}, between the boards at its sides and at its ends`,
        figures: `${sayFigure(b)}, ${sayFigure(h)}`,
        source: 'the design',
    };
    const along = edgeSteps(edges, units);
    const [left, right, bottom, top] = edges.map((edge) =>
        edge.capacity === undefined ? 'not known' : digits(units.force(edge.capacity).value),
    );
    const sum: Step = {
        symbol: 'R',
        what: `${part.name} may take a push of`,
        formula: 'least of R top, R bottom, R left b / h, R right b / h',
        figures: `${top}, ${bottom}, ${left} × ${digits(b.value)} / ${digits(h.value)}, ${right} × ${digits(b.value)} / ${digits(h.value)}`,
        ...(capacity === undefined ? {} : { result: units.force(capacity) }),
        source: 'statics of a panel in pure shear on a frame of hinges; what the joints of the frame add is not counted on',
    };
    return [size, ...along, sum];
}

/** What each edge is fastened with; edges whose steps are the same are one. */
function edgeSteps(edges: Brace['edges'], units: Units): readonly Step[] {
    const alike = new Map<string, { readonly steps: readonly Step[]; readonly sides: string[] }>();
    for (const { side, holds } of edges) {
        const steps = holds.flatMap((hold) => holdSteps(hold, units));
        const known = alike.get(inWords(steps)) ?? { steps, sides: [] };
        known.sides.push(side);
        alike.set(inWords(steps), known);
    }
    return [...alike.values()].flatMap(({ steps, sides }) => [
        { what: `Along its edge ${sides.join(', ')}`, figures: steps.length === 0 ? 'not fastened' : 'each as follows' },
        ...steps,
    ]);
}
