/** The edges of a part as a shop says them: `front: band 1/8in of Walnut, round 1/8in; back: rabbet 1/2in deep for back`. */
import type { Casework, Edge, EdgeStep } from '../casework/index.js';
import { thingName } from '../strength/index.js';
import { inWords, type PrintStyle } from './print-style.js';

/** Edges in the order of work: what follows on one edge is said with it, and neighbours that get the same are named together. */
export function edgesInWords(edges: readonly Edge[], casework: Casework, print: PrintStyle): string {
    const byEdge: { readonly name: string; readonly steps: EdgeStep[] }[] = [];
    for (const edge of edges) {
        const before = byEdge.at(-1);
        if (before?.name === edge.name) before.steps.push(...edge.steps);
        else byEdge.push({ name: edge.name, steps: [...edge.steps] });
    }
    const said: { readonly names: string[]; readonly treatment: string }[] = [];
    for (const { name, steps } of byEdge) {
        const treatment = steps.map((step) => stepInWords(step, casework, print)).join(', ');
        const before = said.at(-1);
        if (before?.treatment === treatment) before.names.push(name);
        else said.push({ names: [name], treatment });
    }
    return said.map(({ names, treatment }) => `${names.join(', ')}: ${treatment}`).join('; ');
}

/** One step: its word, its sizes each with the word for what it measures, its material, and what it is for. */
function stepInWords(step: EdgeStep, casework: Casework, print: PrintStyle): string {
    const isCut = step.does === 'rabbet' || step.does === 'groove';
    const words = [
        step.does,
        step.amount && `${inWords(step.amount, print)}${isCut ? ' deep' : ''}`,
        step.material !== undefined && `of ${thingName(casework, step.material)}`,
        // A band is as high as its edge is thick; only a nosing may be higher.
        step.does !== 'band' && step.width && `${inWords(step.width, print)} ${isCut ? 'wide' : 'high'}`,
        step.proud && `${inWords(step.proud, print)} proud`,
        step.for !== undefined && `for ${step.for.slice(step.for.lastIndexOf('.') + 1)}`,
    ];
    return words.filter((word) => typeof word === 'string').join(' ');
}
