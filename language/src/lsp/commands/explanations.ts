// Documents that say where a size comes from. Knows their URIs and how to find the size again: not which editor shows them.
import { lookUp, type Measure, type Path, sayBoth } from 'casewright-shared/casework';
import { type LangiumDocument, URI } from 'langium';
import type { Analysis } from '../../analysis/analysis.js';
import { explainSag, explainSize } from '../../analysis/explanation.js';
import type { SizeToExplain } from '../requests.js';
import type { FoundSize } from './sizes-at.js';

const scheme = 'casewright';
const folder = '/why/';
const sagEnding = '.sag';

/** Where the size of an explanation is to be found. */
interface Explained {
    readonly design: string;
    /** Its path, or the words that it is the value of. */
    readonly size: string;
    /** Of a value without a path: the place in the text. */
    readonly at?: { readonly line: number; readonly character: number };
}

/** A found size with the document that explains it. */
export function toExplain(size: FoundSize, document: LangiumDocument, analysis: Analysis, at: Explained['at']): SizeToExplain {
    const { name, measure, isNamed } = size;
    const system = analysis.casework.project?.units === 'mm' ? 'mm' : 'inch';
    const explained: Explained = { design: document.uri.toString(), size: name, ...(isNamed || !at ? {} : { at }) };
    return { name, value: sayBoth(measure.quantity, system), uri: uriOf(explained) };
}

/** How far a part sags, with the document that explains it; undefined for one that carries nothing, or of which too little is known. */
export function sagToExplain(part: Path, document: LangiumDocument, analysis: Analysis): SizeToExplain | undefined {
    const found = explainSag(part, analysis);
    const name = `${part}${sagEnding}`;
    return found && { name, value: found.sag, uri: uriOf({ design: document.uri.toString(), size: name }) };
}

function uriOf(explained: Explained): string {
    const path = `${folder}${explained.size.replaceAll('/', ' over ')}.txt`;
    return URI.from({ scheme, path, query: JSON.stringify(explained) }).toString();
}

/** What a URI asks to be explained; undefined if it is none of ours. */
export function explainedBy(uri: URI): Explained | undefined {
    if (uri.scheme !== scheme || !uri.path.startsWith(folder)) {
        return undefined;
    }
    try {
        const found = JSON.parse(uri.query) as Partial<Explained>;
        return typeof found.design === 'string' && typeof found.size === 'string' ? (found as Explained) : undefined;
    } catch {
        return undefined;
    }
}

/**
 * The text of an explanation, as the design stands now.
 * @param valueAt the value at the place, for one that has no path
 */
export function explanationText({ size, at }: Explained, analysis: Analysis, valueAt: () => Measure | undefined): string {
    const sag = !at && size.endsWith(sagEnding) ? explainSag(size.slice(0, -sagEnding.length), analysis) : undefined;
    if (sag) {
        return `${sag.headline}\n\n${sag.steps}\n`;
    }
    const measure = at ? valueAt() : measureAt(size, analysis);
    if (!measure) {
        return `${size} is not known any more: the design has changed.\n`;
    }
    const { headline, tolerance, steps } = explainSize(size, measure, analysis, ({ file }) => file);
    return `${headline}${tolerance ? `\n${tolerance}` : ''}\n\n${steps}\n`;
}

function measureAt(path: string, { casework }: Analysis): Measure | undefined {
    const found = lookUp(casework, path);
    return found.ok ? found.measure : undefined;
}
