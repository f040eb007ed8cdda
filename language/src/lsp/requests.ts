// Requests of our own, beside those of the language server protocol. Both sides take names and types from here.
import type { Location, Position, TextDocumentIdentifier } from 'vscode-languageserver';

/** What a client may say when it starts a server that has no disk of its own. */
export interface InitializationOptions {
    /** The address of the TrueType file that a PDF is set in where it has letters that not every reader has: they lose their marks without it. */
    readonly typeface?: string;
}

/** What every request is about. */
export interface DesignRequest {
    readonly textDocument: TextDocumentIdentifier;
}

/** Takes a `DesignRequest`, checks the project that the file belongs to, publishes all that is found, and gives a `CheckResult`. */
export const CHECK = 'casewright/check';

/** What there is to see in the diagnostics of the project's files. */
export interface CheckResult {
    /** `2 errors, 1 warning in kiln-lane.case and shop.case` */
    readonly summary: string;
    readonly error: number;
    readonly warning: number;
    readonly note: number;
}

/** Takes a `DesignRequest`, gives the `Buildable`s: what can be built where the file is open. */
export const BUILDABLE = 'casewright/buildable';

export interface Buildable {
    /** The file itself if it is a project or nobody else builds it, otherwise also those that use it. */
    readonly designs: readonly BuildableDesign[];
    /** Every kind of document, in the order in which they are written. */
    readonly kinds: readonly BuildableKind[];
}

export interface BuildableDesign {
    readonly uri: string;
    /** The name of its file, without `.case`. */
    readonly name: string;
    /** As the project says. */
    readonly title: string | undefined;
}

export interface BuildableKind {
    /** What `only` calls it. */
    readonly kind: string;
    readonly title: string;
    readonly description: string;
}

/** Takes a `BuildRequest`, gives a `BuildResult`. Nothing is written: the client has the files. Can be cancelled between documents. */
export const BUILD = 'casewright/build';

export interface BuildRequest extends DesignRequest {
    /** Kinds of documents; all that the design has something of if it is not given. */
    readonly only?: readonly string[];
    /** Under which to report `WorkDoneProgress`, a step for each kind. */
    readonly workDoneToken?: number | string;
}

export type BuildResult =
    | {
          readonly is: 'made';
          readonly title: string | undefined;
          readonly documents: readonly BuiltDocument[];
          /** `2 warnings, 1 note`; undefined if nothing is found. */
          readonly found: string | undefined;
      }
    /** The design has errors, so that there are no documents. */
    | { readonly is: 'refused'; readonly summary: string; readonly first: Location }
    /** There is nothing to write, with the reason and what to do about it. */
    | { readonly is: 'nothing'; readonly message: string; readonly advice: readonly string[] };

/** A file, as text or as the bytes that the Base64 text (RFC 4648) stands for. */
export type BuiltDocument = { readonly name: string } & ({ readonly text: string } | { readonly base64: string });

/** Takes a `WhyRequest`, gives a `WhyResult`. */
export const WHY = 'casewright/why';

export interface WhyRequest extends DesignRequest {
    readonly position: Position;
}

export interface WhyResult {
    /** The sizes that the words at the position have or are, in the order in which they are asked for most; the sag of what carries something. */
    readonly sizes: readonly SizeToExplain[];
}

export interface SizeToExplain {
    /** `PotteryCase.Tier[2].depth`, or the words of an expression. */
    readonly name: string;
    /** In both systems of units; a sag at once and in years. */
    readonly value: string;
    /** The document that explains it, to be asked for with `workspace/textDocumentContent`. */
    readonly uri: string;
}
