/**
 * What one construction shares: the design it reads, the problems it meets, and the cells that are being computed.
 */
import type { DeviationSource } from '../../quantity/index.js';
import type { DeclarationId, Design, Span } from '../design/design.js';
import type { Problem, TextEdit } from '../model/casework.js';
import type { Measure } from '../model/measure.js';
import type { Shop } from '../model/things.js';
import type { Recording } from './recording.js';
import { shopOf } from './shop.js';
import { Things } from './things.js';

/** A problem as it is reported: what may be left out is filled in. */
export type Reported = Omit<Problem, 'related' | 'code'> & { readonly related?: Problem['related']; readonly fix?: TextEdit };

/** Something that is being computed. */
export interface Running {
    readonly name: string;
    readonly span: Span | undefined;
}

export class Construction {
    readonly problems: Problem[] = [];
    readonly deviations = new Map<string, DeviationSource>();
    /** Values by the words that state them; only kept when asked for. */
    readonly values = new Map<string, Measure>();
    /** The cells being computed, outermost first. */
    readonly running: Running[] = [];
    /** Whether a chain of sizes that is too long was reported: what is left of it is no other mistake. */
    isTooDeep = false;
    private readonly reported = new Set<string>();

    readonly things: Things;
    /** How many parts there are so far, and how many turns of repeats were taken for them. */
    partCount = 0;
    turnCount = 0;
    /** How often the parts or what is said of all of them have changed: what was computed before holds no longer. */
    generation = 0;
    /** The words that are evaluated before all parts are there: a count, a condition. */
    private early: Span | undefined;
    private order = 0;
    private figures: Shop | undefined;
    private readonly paths = new Map<string, number>();
    private recording: Recording | undefined;

    constructor(
        readonly design: Design,
        private readonly keepValues: boolean,
    ) {
        this.things = new Things(this);
    }

    /** Reports a problem, once for each code and place: an array evaluates the same words for each of its parts. */
    report(code: string, problem: Reported): undefined {
        const key = `${code} ${spanKey(problem.span)}`;
        if (this.reported.has(key)) return;
        this.reported.add(key);
        this.problems.push({ ...problem, code, related: problem.related ?? [] });
    }

    /** The workshop's figures. */
    get shop(): Shop {
        this.figures ??= shopOf(this);
        return this.figures;
    }

    /** Evaluates words on which it depends which parts there are, while not all of them are there. */
    evaluateEarly<T>(span: Span, evaluate: () => T): T {
        const before = this.early;
        this.early = span;
        try {
            return evaluate();
        } finally {
            this.early = before;
        }
    }

    /** Reports, of words that are evaluated early, that they need something that only comes later; undefined otherwise too. */
    reportEarly(needs: string, hint: string): undefined {
        if (!this.early) return undefined;
        return this.report('PLC-007', {
            span: this.early,
            message: `this decides which parts there are, and needs ${needs}`,
            hint,
            needed: 'something that does not hang on what comes later',
        });
    }
    get isEarly(): boolean {
        return this.early !== undefined;
    }

    /** The next turn in the order of writing. */
    nextOrder(): number {
        this.order += 1;
        return this.order;
    }

    /** The path itself, or, if it is taken, with a number behind it. */
    freePath(path: string): string {
        const before = this.paths.get(path) ?? 0;
        this.paths.set(path, before + 1);
        return before === 0 ? path : `${path}~${before + 1}`;
    }

    /** Runs a step of building a case, and records what it asks of what all cases share. */
    during<T>(recording: Recording, run: () => T): T {
        const [parts, turns] = [this.partCount, this.turnCount];
        this.recording = recording;
        try {
            return run();
        } finally {
            this.recording = undefined;
            recording.partCount += this.partCount - parts;
            recording.turnCount += this.turnCount - turns;
        }
    }

    /** A thing or a value of a file is asked for. */
    asks(id: DeclarationId): void {
        this.recording?.declarations.add(id);
    }

    /** Something is stated to deviate. */
    deviate(source: DeviationSource): void {
        this.deviations.set(source.id, source);
        this.recording?.deviations.set(source.id, source);
    }

    /** Notes what the words at a span amount to, for hovers. */
    note(span: Span, measure: Measure): void {
        if (this.keepValues) this.values.set(spanKey(span), measure);
    }
}

/** A span as the key of a map. */
export function spanKey(span: Span): string {
    return `${span.file}:${span.start}:${span.end}`;
}
