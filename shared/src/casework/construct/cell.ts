/**
 * A value that is computed when it is first asked for, and only once. Sizes may name sizes in any order; a size that comes to depend on
 * itself is reported once, with its path, and is unknown from then on.
 */
import type { Span } from '../design/design.js';
import type { Construction } from './construction.js';

export class Cell<T> {
    private state: 'new' | 'running' | 'done' = 'new';
    private result: T | undefined;

    constructor(
        private readonly construction: Construction,
        private readonly name: string,
        private readonly span: Span | undefined,
        private readonly compute: () => T | undefined,
    ) {}

    get value(): T | undefined {
        if (this.state === 'done') return this.result;
        if (this.state === 'running') return this.reportCycle();
        const { running } = this.construction;
        this.state = 'running';
        running.push({ name: this.name, span: this.span });
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
        const from = running.findLastIndex((cell) => cell.name === this.name);
        const path = running.slice(from);
        const at = path.find((cell) => cell.span)?.span ?? this.span;
        this.state = 'done';
        if (!at) return undefined;
        const names = [...path.map((cell) => cell.name), this.name];
        return this.construction.report('PLC-007', {
            span: at,
            message: `this size depends on itself: ${names.join(' needs ')}`,
            hint: 'give one of them a size or a place of its own',
            found: names.join(' -> '),
            needed: 'a size that does not lead back to itself',
            related: path.slice(1).flatMap((cell) => (cell.span ? [{ span: cell.span, message: `${cell.name} is needed here` }] : [])),
        });
    }
}
