// What a file amounts to: design, casework, findings, made when they are asked for. Knows the stages and their order: nothing of any of them.
import { type BuiltBefore, type Casework, construct, type Design, type Measure, type Problem, type Span } from 'casewright-shared/casework';
import { joineryOf } from 'casewright-shared/joinery';
import { type Finding, runRules } from 'casewright-shared/rules';
import type { SolidKernel } from 'casewright-shared/solids';
import type { LangiumDocument } from 'langium';
import type { LoweredDesign } from '../lowering/lowering.js';
import { withoutConsequences } from './consequences.js';
import { type PlaceInText, placeInText } from './place.js';
import { syntaxProblems } from './syntax-problems.js';

/**
 * One state of a file and of all it uses. After an edit there is another, and this one is not asked any more: what the edit has left
 * alone in it goes over to the next and moves with its text.
 */
export class Analysis {
    /** By their names in spans. */
    private readonly documents: ReadonlyMap<string, LangiumDocument>;
    private knownProblems: readonly Problem[] | undefined;
    private knownCasework: Casework | undefined;
    private knownValues: Casework['values'] | undefined;
    private knownFindings: readonly Finding[] | undefined;

    constructor(
        /** The file that was asked for. */
        readonly document: LangiumDocument,
        private readonly lowered: LoweredDesign,
        /** The file and all it uses, in the order of use. */
        used: readonly LangiumDocument[],
        /** What the state before it had built: what is found again is not built again. */
        private readonly before: BuiltBefore,
    ) {
        this.documents = new Map(lowered.design.files.map((file, index) => [file, used[index] ?? document]));
    }

    get design(): Design {
        return this.lowered.design;
    }

    /** What is wrong with the text: syntax, names, units, properties. */
    get problems(): readonly Problem[] {
        this.knownProblems ??= [
            ...[...this.documents].flatMap(([file, document]) => syntaxProblems(document, file)),
            ...this.lowered.problems,
        ];
        return this.knownProblems;
    }

    get casework(): Casework {
        this.knownCasework ??= construct(this.design, { before: this.before });
        return this.knownCasework;
    }

    /** All findings in the file and in those it uses, by file and place. Allowed ones are among them, with the reason. */
    get findings(): readonly Finding[] {
        this.knownFindings ??= withoutConsequences(runRules(this.casework, { reading: this.problems }), this.problems);
        return this.knownFindings;
    }

    /**
     * All findings, with those of the rules that look at the parts as solids. Where something is in error without them it is not looked
     * further: then the solids would be wrong as well, and the kernel is not loaded.
     */
    async findingsOfSolids(loadKernel: () => Promise<SolidKernel>): Promise<readonly Finding[]> {
        if (this.findings.some(({ severity }) => severity === 'error') || this.casework.parts.size < 2) return this.findings;
        const { solidsOf } = await import('casewright-shared/solids');
        const solids = solidsOf(this.casework, joineryOf(this.casework), await loadKernel(), { holes: 'left out' });
        return withoutConsequences(runRules(this.casework, { reading: this.problems, solids }), this.problems);
    }

    /** What the words at a span amount to, where they are a value that was computed. */
    valueAt({ file, start, end }: Span): Measure | undefined {
        // only a hover asks, and not at every keystroke: keeping the values of all words costs more than building once more
        this.knownValues ??= construct(this.design, { keepValues: true }).values;
        return this.knownValues.get(`${file}:${start}:${end}`);
    }

    /** Where a span of the design, of the casework or of a finding is. */
    locate(span: Span): PlaceInText {
        return placeInText(this.documentOf(span.file), span);
    }

    /** The words at a span. */
    textAt(span: Span): string {
        return this.documentOf(span.file).textDocument.getText().slice(span.start, span.end);
    }

    /** The document that spans call by this name. */
    documentOf(file: string): LangiumDocument {
        return this.documents.get(file) ?? this.document;
    }
}
