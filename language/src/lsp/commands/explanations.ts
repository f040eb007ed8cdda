// Documents that say where a size comes from. Knows their URIs and how to find the size again: not which editor shows them.
import { lookUp, type Measure, sayBoth } from 'casewright-shared/casework';
import { type LangiumDocument, URI } from 'langium';
import type { Analysis } from '../../analysis/analysis.js';
import { explainSize } from '../../analysis/explanation.js';
import type { SizeToExplain } from '../requests.js';
import type { FoundSize } from './sizes-at.js';

const scheme = 'casewright';
const folder = '/why/';

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
    const path = `${folder}${name.replaceAll('/', ' over ')}.txt`;
    const uri = URI.from({ scheme, path, query: JSON.stringify(explained) }).toString();
    return { name, value: sayBoth(measure.quantity, system), uri };
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
