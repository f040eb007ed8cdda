// Making the documents of a design for a client. Loaded when it is asked for: an editor starts without it.
import { type DocumentKind, documentKinds } from 'casewright-shared/documents';
import { countFindings, countInWords } from 'casewright-shared/rules';
import { contentAsBase64 } from 'casewright-shared/writers';
import type { Analysis } from '../../analysis/analysis.js';
import { chooseDocuments, type DocumentStyle, type MadeDocument, makeDocuments, NotMade } from '../../analysis/shop-documents.js';
import { locationOf } from '../diagnostics/finding-diagnostic.js';
import type { BuildResult, BuiltDocument } from '../requests.js';

/**
 * Makes documents, unless the design has errors.
 * @param only the kinds asked for by name; all that the design has something of if it is not given
 * @param style how they are made
 * @param step is waited for before each kind, with the part of the work that is done, in percent; what it throws is thrown on
 */
export async function buildDocuments(
    analysis: Analysis,
    only: readonly string[] | undefined,
    style: DocumentStyle,
    step: (title: string, percentage: number) => Promise<void>,
): Promise<BuildResult> {
    const open = analysis.findings.filter(({ allowed }) => allowed === undefined);
    const errors = open.filter(({ severity }) => severity === 'error');
    const [first] = errors;
    if (first) {
        const summary = `${countInWords(countFindings(errors))} in \`${analysis.design.file}\`: nothing is written`;
        return { is: 'refused', summary, first: locationOf(first.span, analysis) };
    }
    const kinds = documentKinds.map(({ kind }) => kind);
    const unknown = only?.find((kind) => !kinds.some((known) => known === kind));
    if (unknown !== undefined) {
        return { is: 'nothing', message: `\`${unknown}\` is not a document`, advice: [] };
    }
    try {
        const wanted = chooseDocuments(only as readonly DocumentKind['kind'][] | undefined);
        let done = 0;
        const made = await makeDocuments(analysis, wanted, style, ({ title }) => step(title, Math.round((100 * done++) / wanted.length)));
        const documents: BuiltDocument[] = [];
        for (const document of made) {
            documents.push(await sent(document));
        }
        const found = open.length === 0 ? undefined : countInWords(countFindings(open));
        return { is: 'made', title: analysis.casework.project?.title, documents, found };
    } catch (error) {
        if (error instanceof NotMade) {
            return { is: 'nothing', message: error.message, advice: error.advice };
        }
        throw error;
    }
}

async function sent({ name, content }: MadeDocument): Promise<BuiltDocument> {
    return typeof content === 'string' ? { name, text: content } : { name, base64: await contentAsBase64(content) };
}
