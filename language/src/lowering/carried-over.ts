// What an edit has left alone in a file. Knows declarations as plain data, and that their spans move with the text: nothing of what they say.
import type { Declaration, DeclarationId, EveryStatement, Span } from 'casewright-shared/casework';
import { Rational } from 'casewright-shared/quantity';
import type { LoweredFile } from './lowered-file.js';

/**
 * A file in which each declaration that says what it said before the edit is the same object as before, moved to where it stands now:
 * whoever built something of it can use that again, since what is built has its spans from the declarations.
 * What was lowered before must not be asked for places any more.
 */
export function carryOver(before: LoweredFile, after: LoweredFile): LoweredFile {
    const earlier = new Map<DeclarationId, Declaration>();
    for (const one of before.declarations) if (!earlier.has(one.id)) earlier.set(one.id, one);
    const carried = new Map<Declaration, Declaration>();
    for (const one of after.declarations) {
        const same = earlier.get(one.id);
        earlier.delete(one.id);
        if (same && isCarried(same, one)) carried.set(one, same);
    }
    const now = <One extends Declaration>(one: One): One => (carried.get(one) as One | undefined) ?? one;
    return {
        ...after,
        declarations: after.declarations.map(now),
        cases: after.cases.map(now),
        defaults: after.defaults.map((one, index) => {
            const same = before.defaults[index];
            return same && isCarried(same, one) ? same : one;
        }),
        project: after.project && now(after.project),
        shop: after.shop && now(after.shop),
    };
}

/** Whether one says what the other said; it then stands where the other does. */
function isCarried(before: Declaration | EveryStatement, after: Declaration | EveryStatement): boolean {
    const by = after.span.start - before.span.start;
    if (!isMoved(before, after, by)) return false;
    if (by === 0) return true;
    // a source of deviation is known by its place
    if (statesTolerance(before)) return false;
    move(before, by, new Set());
    return true;
}

/** Whether two pieces of plain data differ in nothing but where they stand. */
function isMoved(before: unknown, after: unknown, by: number): boolean {
    if (before === after) return true;
    if (!isObject(before) || !isObject(after)) return false;
    if (isSpan(before)) {
        return isSpan(after) && before.start + by === after.start && before.end + by === after.end && before.file === after.file;
    }
    if (before instanceof Rational) return after instanceof Rational && before.equals(after);
    const isList = Array.isArray(before);
    if (isList !== Array.isArray(after) || !(isList || (isPlain(before) && isPlain(after)))) return false;
    let keys = 0;
    for (const key in before) {
        if (!isMoved(before[key], after[key], by)) return false;
        keys += 1;
    }
    for (const _ in after) keys -= 1;
    return keys === 0;
}

/** Whether something states a tolerance. */
export function statesTolerance(value: unknown): boolean {
    if (!isObject(value) || !(Array.isArray(value) || isPlain(value))) return false;
    return ('operator' in value && value.operator === '±') || Object.values(value).some(statesTolerance);
}

/** Moves all spans in plain data, each once. */
export function move(value: unknown, by: number, moved: Set<object>): void {
    if (!isObject(value)) return;
    if (isSpan(value)) {
        if (moved.has(value)) return;
        moved.add(value);
        const span: { -readonly [Key in keyof Span]: Span[Key] } = value;
        span.start += by;
        span.end += by;
    } else if (Array.isArray(value) || isPlain(value)) {
        for (const one of Object.values(value)) move(one, by, moved);
    }
}

/** Whether it is data with members. */
export function isObject(value: unknown): value is Record<string, unknown> {
    return typeof value === 'object' && value !== null;
}

/** Whether it is of no class. */
export function isPlain(value: object): boolean {
    return Object.getPrototypeOf(value) === Object.prototype;
}

/** Whether it is a stretch of a text. */
export function isSpan(value: object): value is Span {
    return 'start' in value && 'end' in value && 'file' in value;
}
