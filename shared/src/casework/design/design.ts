/**
 * What a text says, with every name resolved and nothing computed yet.
 *
 * A design is plain data: it can be compared, sent to a worker and written as JSON. It knows no syntax tree; of the text it keeps
 * only spans. Whoever reads a text (the language) makes designs; `construct` makes casework of them.
 */
import type { Quantity } from '../../quantity/index.js';

/** A stretch of a file, in UTF-16 offsets. */
export interface Span {
    readonly file: string;
    readonly start: number;
    readonly end: number;
}

/** The path of a declaration: `shop.case#WalnutPly`, `kiln-lane.case#PotteryCase.Tier`. It survives edits elsewhere in the file. */
export type DeclarationId = string;

// ---------------------------------------------------------------- expressions

export type Expression =
    | { readonly is: 'measure'; readonly quantity: Quantity; readonly text: string; readonly span: Span }
    /** A word of the language that names no declaration: `front`, `equal`, `both`, `middle`. */
    | { readonly is: 'word'; readonly word: string; readonly span: Span }
    | { readonly is: 'text'; readonly text: string; readonly span: Span }
    | { readonly is: 'truth'; readonly value: boolean; readonly span: Span }
    /** A trade size that is no measure: `#20`, `M6`. */
    | { readonly is: 'tradeSize'; readonly text: string; readonly span: Span }
    | { readonly is: 'name'; readonly id: DeclarationId; readonly name: string; readonly span: Span }
    /** `receiver.member`; `id` where the member is a declared part or opening. */
    | {
          readonly is: 'member';
          readonly receiver: Expression;
          readonly member: string;
          readonly id?: DeclarationId;
          readonly span: Span;
          readonly memberSpan: Span;
      }
    | { readonly is: 'item'; readonly receiver: Expression; readonly index: Expression; readonly span: Span }
    | { readonly is: 'call'; readonly receiver: Expression; readonly arguments: readonly Argument[]; readonly span: Span }
    | {
          readonly is: 'binary';
          readonly operator: BinaryOperator;
          readonly left: Expression;
          readonly right: Expression;
          readonly span: Span;
      }
    | { readonly is: 'unary'; readonly operator: '-' | 'not'; readonly operand: Expression; readonly span: Span }
    | {
          readonly is: 'conditional';
          readonly condition: Expression;
          readonly then: Expression;
          readonly otherwise: Expression;
          readonly span: Span;
      }
    | { readonly is: 'range'; readonly first: Expression; readonly last: Expression; readonly span: Span }
    | { readonly is: 'list'; readonly items: readonly Expression[]; readonly span: Span }
    /** `48in x 96in` */
    | { readonly is: 'by'; readonly parts: readonly Expression[]; readonly span: Span }
    /** `9in wide 6in deep`: each number with its word (`each edge` keeps its two words). */
    | { readonly is: 'dimensions'; readonly items: readonly { readonly value: Expression; readonly word: string }[]; readonly span: Span }
    /** `5in to 9in wide`, `12in to 24in every 2in` */
    | {
          readonly is: 'interval';
          readonly first: Expression;
          readonly last: Expression;
          readonly word?: string;
          readonly step?: Expression;
          readonly span: Span;
      }
    /** `to Post.middle`: a share that ends there. */
    | { readonly is: 'upTo'; readonly target: Expression; readonly span: Span }
    /** `from top 5in, 1, 1`: shares counted from a face. */
    | { readonly is: 'shares'; readonly origin: Expression; readonly sizes: Expression; readonly span: Span }
    /** `every 32mm from 4in above bottom to 4in below top` */
    | { readonly is: 'series'; readonly step: Expression; readonly first: Place; readonly last: Place; readonly span: Span }
    | { readonly is: 'rate'; readonly amount: Expression; readonly per: string; readonly count?: number; readonly span: Span }
    /** `every shelf in Bay except Tier[2]`: `kind` where the word is a kind of part, `target` where it is a group. */
    | {
          readonly is: 'every';
          readonly kind?: string;
          readonly target?: Expression;
          readonly within?: Expression;
          readonly except: readonly Expression[];
          readonly span: Span;
      }
    /** `bow out 1in`, `tenon` with a word before its measure: a word and the value after it. */
    | { readonly is: 'worded'; readonly word: Expression; readonly value: Expression; readonly span: Span }
    /** `through 17in at 14in, 13in at 40in`: depths, each at its place along a curve. */
    | { readonly is: 'points'; readonly points: readonly CurvePoint[]; readonly span: Span }
    /** What could not be read; it has been reported, and spreads silently. */
    | { readonly is: 'broken'; readonly span: Span };

/** A point of a curve: how deep it is, and where along it. */
export interface CurvePoint {
    readonly depth: Expression;
    readonly at: Place;
    readonly span: Span;
}

export type BinaryOperator = '+' | '-' | '*' | '/' | '±' | '<=' | '>=' | '<' | '>' | '=' | '!=' | 'and' | 'or';

export interface Argument {
    readonly name?: string;
    readonly value: Expression;
    readonly span: Span;
}

// ---------------------------------------------------------------- declarations

interface Declared {
    readonly id: DeclarationId;
    readonly name: string;
    readonly span: Span;
    readonly nameSpan: Span;
    /** The text of the `///` comment before it. */
    readonly doc?: string;
    /** Declared `private`: no other file can use it. */
    readonly private?: true;
}

/** A material, species, goods, curve, fastener, shop, project, site: what is. */
export interface FactDeclaration extends Declared {
    readonly is: 'fact';
    readonly kind: string;
    /** The text of a project's head. */
    readonly title?: string;
    /** `material A : plywood` */
    readonly family?: string;
    /** The declaration it copies its properties from: `like A`. */
    readonly like?: DeclarationId;
    readonly properties: readonly Property[];
    /** Clauses of the head: `curve Sweep of depth over height`. */
    readonly of?: Expression;
    readonly over?: string;
    readonly builds: readonly BuildStatement[];
}

/** An edging, a joint, a finish: what is done, in the order of work. */
export interface RecipeDeclaration extends Declared {
    readonly is: 'recipe';
    readonly kind: string;
    readonly steps: readonly Step[];
}

/** A case (or drawer, door, frame, plinth) that is declared by itself. */
export interface DesignDeclaration extends Declared {
    readonly is: 'design';
    readonly kind: string;
    readonly parameters: readonly ParameterDeclaration[];
    readonly phrases: Phrases;
    readonly statements: readonly Statement[];
}

export interface ParameterDeclaration extends Declared {
    readonly is: 'parameter';
    readonly type?: string;
    readonly value?: Expression;
}

export interface LetDeclaration extends Declared {
    readonly is: 'let';
    readonly type?: string;
    readonly value: Expression;
}

/** One name of a part statement; `side Left, Right` has two. A part without a name is called by its kind. */
export interface PartDeclaration extends Declared {
    readonly is: 'part';
    readonly kind: string;
    readonly unnamed: boolean;
    /** `Tier[4]`; with `index`, `Tier[i of 4]` */
    readonly count?: Expression;
    readonly index?: IndexDeclaration;
}

export interface IndexDeclaration extends Declared {
    readonly is: 'index';
}
export interface OpeningDeclaration extends Declared {
    readonly is: 'opening';
}

export type Declaration =
    | FactDeclaration
    | RecipeDeclaration
    | DesignDeclaration
    | ParameterDeclaration
    | LetDeclaration
    | PartDeclaration
    | IndexDeclaration
    | OpeningDeclaration;

// ---------------------------------------------------------------- phrases and statements

export interface Property {
    readonly name: string;
    readonly value?: Expression;
    /** `from 17in at bottom`: the places that belong to the property. */
    readonly at: readonly Place[];
    readonly of?: Expression;
    /** `take Oak for Walnut` */
    readonly for?: Expression;
    readonly properties: readonly Property[];
    readonly span: Span;
    readonly nameSpan: Span;
}

/** A distance, a way, a face. */
export interface Place {
    readonly distance?: Expression;
    readonly relation?: Relation;
    readonly target?: Expression;
    /** `each end` */
    readonly each?: string;
    /** `every 32mm from A to B` */
    readonly series?: Extract<Expression, { is: 'series' }>;
    /** `scribe 25mm` */
    readonly scribe?: Expression;
    readonly span: Span;
}
export type Relation = 'above' | 'below' | 'before' | 'behind' | 'left of' | 'right of' | 'past' | 'short of';

/** What describes a part, gathered from its head and its body; lists keep the order of writing. */
export interface Phrases {
    readonly at: readonly Place[];
    readonly of?: Expression;
    readonly inside?: Expression;
    readonly room?: { readonly relation: 'above' | 'below' | 'before' | 'behind'; readonly target: Expression; readonly span: Span };
    readonly like?: { readonly id: DeclarationId; readonly span: Span };
    readonly joint?: Treatment;
    readonly openings: readonly OpeningDeclaration[];
    readonly mirrored: boolean;
    readonly properties: readonly Property[];
    readonly edges: readonly EdgeStatement[];
    readonly leaves: readonly LeaveStatement[];
}

export interface EdgeStatement {
    readonly edges: readonly { readonly name: string; readonly span: Span }[];
    readonly at?: readonly Place[];
    readonly treatment?: Treatment;
    /** `edge front bevelled`: how the edge meets a curved line across the thickness of its part. */
    readonly form?: 'square' | 'bevelled';
    readonly span: Span;
}

/** An edging or joint by name, or its steps written in place. */
export interface Treatment {
    readonly recipe?: DeclarationId;
    readonly steps?: readonly Step[];
    readonly span: Span;
}

export interface Step {
    readonly does: string;
    readonly value?: Expression;
    readonly of?: Expression;
    readonly for?: Expression;
    readonly on?: Expression;
    readonly at: readonly Place[];
    readonly options: readonly Property[];
    readonly span: Span;
    readonly wordSpan: Span;
}

export interface LeaveStatement {
    readonly faces: readonly { readonly name: string; readonly span: Span }[];
    readonly size?: Expression;
    readonly for: Expression;
    readonly span: Span;
}

export interface BuildStatement {
    readonly count: number;
    readonly design: DeclarationId;
    readonly arguments: readonly Argument[];
    readonly mirrored: boolean;
    readonly name?: string;
    readonly span: Span;
}

export type Statement =
    | { readonly is: 'let'; readonly declaration: LetDeclaration }
    | { readonly is: 'declare'; readonly declaration: FactDeclaration | RecipeDeclaration }
    | PartStatement
    | EveryStatement
    | { readonly is: 'in'; readonly selectors: readonly Expression[]; readonly statements: readonly Statement[]; readonly span: Span }
    | JoinStatement
    | {
          readonly is: 'hold';
          /** On each of the parts; as many as fit where the text does not say. */
          readonly count: number | undefined;
          readonly goods: DeclarationId;
          readonly on: readonly Expression[];
          readonly span: Span;
      }
    | { readonly is: 'load'; readonly amount: Expression; readonly on: readonly Expression[]; readonly span: Span }
    | { readonly is: 'require'; readonly condition: Expression; readonly because?: string; readonly span: Span }
    | AllowStatement
    | {
          readonly is: 'if';
          readonly condition: Expression;
          readonly then: readonly Statement[];
          readonly otherwise: readonly Statement[];
          readonly span: Span;
      }
    | {
          readonly is: 'repeat';
          readonly index: IndexDeclaration;
          readonly range: Expression;
          readonly statements: readonly Statement[];
          readonly span: Span;
      };

/** `side Left, Right of WalnutPly layers 2 { ... }` */
export interface PartStatement {
    readonly is: 'part';
    readonly kind: string;
    readonly parts: readonly PartDeclaration[];
    readonly phrases: Phrases;
    /** Parts and sentences inside the braces: layers of a board, parts added to a design. */
    readonly statements: readonly Statement[];
    readonly span: Span;
    readonly kindSpan: Span;
}

export interface EveryStatement {
    readonly is: 'every';
    readonly selectors: readonly Expression[];
    /** `every shelf with Pinned { ... }`: only those that are joined so. */
    readonly joinedWith?: Treatment;
    readonly phrases: Phrases;
    readonly span: Span;
}

export interface JoinStatement {
    readonly is: 'join';
    readonly left: readonly Expression[];
    readonly right: readonly Expression[];
    readonly joint?: Treatment;
    readonly onSite: boolean;
    readonly span: Span;
}

export interface AllowStatement {
    readonly is: 'allow';
    /** Code or name of a rule. */
    readonly rule: string;
    readonly ruleSpan: Span;
    readonly on: readonly Expression[];
    readonly because?: string;
    readonly span: Span;
}

// ---------------------------------------------------------------- the whole

/** Everything that a file and the files it uses say. */
export interface Design {
    /** The file that was asked for; findings about unused things and unbuilt cases are about this one. */
    readonly file: string;
    /** The file and all it uses, directly or not, in the order of use. */
    readonly files: readonly string[];
    readonly declarations: ReadonlyMap<DeclarationId, Declaration>;
    /** File-level defaults of shop files: `every shelf { ... }`. The nearer the file, the later: a later one wins. */
    readonly defaults: readonly EveryStatement[];
    readonly requirements: readonly Extract<Statement, { is: 'require' }>[];
    readonly allowances: readonly AllowStatement[];
    /** The project of the file, if it has one. */
    readonly project?: FactDeclaration;
    /** The shop, of the file or of one it uses. */
    readonly shop?: FactDeclaration;
    /** The cases declared in the file itself, in order. */
    readonly cases: readonly DesignDeclaration[];
    /** Declarations that something refers to: what is not here is unused. */
    readonly used: ReadonlySet<DeclarationId>;
}
