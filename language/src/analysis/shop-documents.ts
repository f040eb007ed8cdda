// The documents of a design that the shop works from, as the content of files. Knows which are asked for: no disk.
import { type DocumentKind, type DocumentOptions, documentKinds, type FormatName } from 'casewright-shared/documents';
import { joineryOf } from 'casewright-shared/joinery';
import type { CaseworkSolids, SolidKernel } from 'casewright-shared/solids';
import { type WriteOptions, writeDocument } from 'casewright-shared/writers';
import { listWords } from '../lowering/words.js';
import type { Analysis } from './analysis.js';

/** How documents are made. */
export interface DocumentStyle extends WriteOptions {
    /** Those of the project if they are not given. */
    readonly units?: 'in' | 'mm';
    /** From one offset of a curve to the next, in millimetres; 2in or 50mm if it is not given. */
    readonly spacing?: number;
    /** The date of a quote, `2026-12-01`. */
    readonly date?: string;
    /** Loads the kernel of solids, for documents that are made of them; without it they have none. */
    readonly solidKernel?: () => Promise<SolidKernel>;
}

export interface MadeDocument {
    readonly of: DocumentKind;
    /** Its name in the folder that it goes to. */
    readonly name: string;
    /** Text is written as UTF-8. */
    readonly content: string | Uint8Array;
}

/** Documents that cannot be made, with the reason in words. */
export class NotMade extends Error {
    /**
     * @param message what is wrong
     * @param advice what to do about it, each a line of its own
     */
    constructor(
        message: string,
        readonly advice: readonly string[],
    ) {
        super(message);
    }
}

/** A kind of document that is asked for. */
export interface WantedDocument {
    readonly kind: DocumentKind;
    readonly formats: readonly FormatName[];
    /** Whether it was asked for by name: then a design that has nothing of it is told so. */
    readonly isNamed: boolean;
}

/**
 * Which documents are asked for, in which formats. What is asked for by name must come in one of the formats.
 * @param only the kinds; all if they are not given
 * @param format the formats; all in which a document comes if they are not given
 * @throws NotMade if a document that is asked for by name does not come in one of them
 */
export function chooseDocuments(only?: readonly DocumentKind['kind'][], format?: readonly FormatName[]): readonly WantedDocument[] {
    const wanted = documentKinds
        .filter(({ kind }) => only?.includes(kind) ?? true)
        .map((kind) => ({ kind, formats: kind.formats.filter((one) => format?.includes(one) ?? true), isNamed: only !== undefined }));
    const without = wanted.find(({ formats, isNamed }) => isNamed && formats.length === 0);
    if (without) {
        const { kind, formats } = without.kind;
        throw new NotMade(`\`${kind}\` does not come as ${listWords(format ?? [], 'and')}`, [`it comes as ${listWords(formats, 'and')}`]);
    }
    return wanted;
}

/**
 * Makes the documents that are asked for, in the order of the kinds. One that the design has nothing of is left out, unless it is asked
 * for by name.
 * @param analysis a design without errors: sizes that are not known would be missing from its documents
 * @param step is waited for before each kind of document; what it throws is thrown on
 * @throws NotMade if the design builds nothing, or has nothing of what is asked for by name
 */
export async function makeDocuments(
    analysis: Analysis,
    wanted: readonly WantedDocument[],
    style: DocumentStyle = {},
    step: (kind: DocumentKind) => Promise<void> = async () => {},
): Promise<readonly MadeDocument[]> {
    const { casework, design } = analysis;
    if (casework.assemblies.length === 0) {
        throw new NotMade(`\`${design.file}\` builds nothing, so there is nothing to write`, [
            'a design has a `case`; what it builds of it is said by `build` in its `project`',
        ]);
    }
    const options = await optionsFor(analysis, wanted, style);
    const made: MadeDocument[] = [];
    for (const { kind, formats, isNamed } of wanted) {
        await step(kind);
        const document = kind.make(casework, options);
        if (!document && isNamed) throw new NotMade(`the design has no \`${kind.kind}\`: ${kind.missing}`, []);
        for (const format of document ? formats : []) {
            if (format === 'glb' && document?.is === 'data' && !document.scene) continue; // no solids here
            const content = await writeDocument(document!, format, style);
            made.push({ of: kind, name: `${kind.fileName}.${format}`, content });
        }
    }
    return made;
}

async function optionsFor(
    analysis: Analysis,
    wanted: readonly WantedDocument[],
    { units, spacing, date, solidKernel }: DocumentStyle,
): Promise<DocumentOptions> {
    const solids = wanted.some(({ kind }) => kind.wantsSolids) && solidKernel ? await solidsFor(analysis, solidKernel) : undefined;
    return {
        ...(units ? { units } : {}),
        ...(spacing === undefined ? {} : { spacing }),
        ...(date === undefined ? {} : { date }),
        ...(solids ? { solids } : {}),
        locate: (span) => {
            const { file, line, column } = analysis.locate(span);
            return { file, line, column };
        },
        findings: analysis.findings,
    };
}

async function solidsFor({ casework }: Analysis, load: () => Promise<SolidKernel>): Promise<CaseworkSolids> {
    const { solidsOf } = await import('casewright-shared/solids');
    return solidsOf(casework, joineryOf(casework), await load(), { meetings: 'left out' });
}
