/**
 * A rule is declared once. Its diagnostics, its page, `explain`, the catalogue and its tests all come from the one declaration.
 *
 * Rules with `check` look at casework. Rules without are found while a text is read or computed (the problems of `Casework`, syntax and
 * names), and are declared here so that each code has a page, a source and examples that run.
 */
import type { Casework, Path, Span, TextEdit } from '../casework/index.js';
import type { CaseworkSolids } from '../solids/index.js';

export type Severity = 'error' | 'warning' | 'note';

export interface Rule {
    /** `EDG-003`; never used again for another rule. */
    readonly code: RuleCode;
    /** What is flagged, in kebab case; reads as "allow <name>". */
    readonly name: string;
    readonly severity: Severity;
    /** reading: names, units, properties, places, found on the way; sizes: the check of one file; project: over all that is built. */
    readonly phase: 'reading' | 'sizes' | 'project';
    /** One line, as a sentence without a stop. */
    readonly title: string;
    readonly what: string;
    readonly why: string;
    readonly mend: string;
    readonly source: RuleSource;
    readonly fix: 'none' | 'safe' | 'unsafe';
    /**
     * It concludes from something that is not said (never used, not joined, no size). A check is then silent while any of the text could
     * not be read; a problem is dropped while part of its own declaration could not.
     */
    readonly fromAbsence?: true;
    /**
     * A finding of one of these on the same part (in the same file, where this one is about no part) is the mistake, and one of this rule
     * only what comes of it: it is dropped.
     */
    readonly follows?: readonly RuleCode[];
    readonly examples: { readonly bad: readonly Example[]; readonly good: readonly Example[] };
    check?(casework: Casework, report: Report): void;
    /** Of a rule that looks at solids: it runs where they were made, on the command line, and never between two keystrokes. */
    checkSolids?(casework: Casework, solids: CaseworkSolids, report: Report): void;
}

export type RuleCode = `${string}-${number}`;

export interface RuleSource {
    readonly kind: 'physics' | 'standard' | 'handbook' | 'shop practice' | 'language';
    /** Title, edition, table or section; `common practice, no source`. */
    readonly citation: string;
    /** The number that is used, with its unit. */
    readonly value?: string;
}

/** A whole file, called `design.case`; in a bad one `»` and `«` stand round the words that are flagged. */
export interface Example {
    readonly text: string;
    /** One sentence, shown over it. */
    readonly note?: string;
    /** The files that stand beside it, by name. */
    readonly beside?: Readonly<Record<string, string>>;
}

export type Report = (finding: Found) => void;

/** What a check says; the registry adds code and severity. */
export interface Found {
    readonly span: Span;
    readonly message: string;
    readonly hint?: string;
    readonly found?: string;
    readonly needed?: string;
    readonly part?: Path;
    /** Other parts whose place or size is wrong because of it. */
    readonly concerns?: readonly Path[];
    readonly related?: readonly { readonly span: Span; readonly message: string }[];
    readonly fix?: TextEdit;
    /** Found of several parts, and said once. */
    readonly saidOnce?: SaidOnce;
}

/** One mistake of which several findings are left once the allowed ones are set apart: the first that is reported speaks for all. */
export interface SaidOnce {
    /** What the findings of one mistake share; by itself, those on the same words are one. */
    readonly key: string;
    /** What the others are, behind their number: `of \`Tier\`, none worse`. */
    readonly others: string;
}

export interface Finding extends Found {
    readonly code: RuleCode;
    readonly name: string;
    readonly severity: Severity;
    readonly related: readonly { readonly span: Span; readonly message: string }[];
    /** The reason of the `allow` that silences it. */
    readonly allowed?: string;
}
