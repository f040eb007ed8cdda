/**
 * A value that is computed when it is first asked for, and only once; what was asked for while parts were still being added, to count
 * them or to decide on them, is computed again with all of them there. Sizes may name sizes in any order; a size that comes to depend on
 * itself is reported once, with its path, and is unknown from then on.
 */
import type { Span } from '../design/design.js';
import type { Construction, Running } from './construction.js';

export class Cell<T> implements Running {
    private state: 'new' | 'running' | 'done' = 'new';
    private result: T | undefined;
    private generation = 0;

    constructor(
        private readonly construction: Construction,
        readonly name: string,
        readonly span: Span | undefined,
        private readonly compute: () => T | undefined,
    ) {}

    get value(): T | undefined {
        const { running, generation } = this.construction;
        if (this.state === 'done' && this.generation === generation) return this.result;
        if (this.state === 'running') return this.reportCycle();
        this.generation = generation;
        this.result = undefined;
        if (running.length >= mostRunning) return this.reportTooDeep();
        this.state = 'running';
        running.push(this);
        try {
            const result = this.compute();
            if (this.stillRunning()) this.result = result;
        } finally {
            running.pop();
            this.state = 'done';
        }
        return this.result;
    }

    /** False after a cycle has declared the cell unknown while it was being computed. */
    private stillRunning(): boolean {
        return this.state === 'running';
    }

    private reportCycle(): undefined {
        const { running } = this.construction;
        const path = withoutRepeats(running.slice(running.lastIndexOf(this)));
        const at = path.find((cell) => cell.span)?.span ?? this.span;
        this.state = 'done';
        if (!at) return undefined;
        const names = [...path.map((cell) => cell.name), this.name];
        return this.construction.report('PLC-007', {
            span: at,
            message: path.length === 1 ? `\`${this.name}\` depends on itself` : `this size depends on itself: ${names.join(' needs ')}`,
            hint: 'give one of them a size or a place of its own',
            found: names.join(' -> '),
            needed: 'a size that does not lead back to itself',
            related: path.slice(1).flatMap((cell) => (cell.span ? [{ span: cell.span, message: `${cell.name} is needed here` }] : [])),
        });
    }

    /** So long a chain is a slip, or a text made by a program; it would also use up the stack. */
    private reportTooDeep(): undefined {
        this.state = 'done';
        const [first] = this.construction.running;
        const at = first?.span ?? this.span;
        if (!at || this.construction.isTooDeep) return undefined;
        this.construction.isTooDeep = true;
        return this.construction.report('PLC-007', {
            span: at,
            message: `\`${first?.name ?? this.name}\` hangs on more than ${mostRunning} other sizes, one behind the other`,
            hint: 'state one of them outright, or write first what the others need',
            needed: `at most ${mostRunning}`,
        });
    }
}

/** How many sizes may wait for one another. */
const mostRunning = 500;

/** What is asked of one part after another, its place and how far it runs, is one step of the way round. */
function withoutRepeats(path: readonly Running[]): readonly Running[] {
    return path.filter((cell, index) => index === 0 || cell.name !== path[index - 1]?.name);
}
