/** One way in which a joint holds a part, and what it may carry. Newtons, millimetres, megapascals. */
import type { JointStep, Thing } from '../../casework/index.js';
import type { DrivenForm } from './withdrawal.js';
import type { YieldMode } from './yield.js';

export type Hold = KnownHold | UnpublishedHold;

export interface KnownHold {
    readonly is: 'known';
    /** `3 screws #8`, `the ledge of the dado` */
    readonly what: string;
    /** What all of it together may carry for years. */
    readonly capacity: number;
    readonly by: Shear | Withdrawal | Bearing | Carries;
}

export interface UnpublishedHold {
    readonly is: 'unpublished';
    readonly what: string;
    /** Why there is no figure, as a clause. */
    readonly because: string;
    /** At which one of them comes out in a test, on the average: no design value. */
    readonly tested?: number | undefined;
}

interface Driven {
    readonly step: JointStep;
    readonly form: DrivenForm;
    readonly count: number;
    /** The factor for how long the load lasts. */
    readonly duration: number;
    /** Of one of them, with all factors. */
    readonly each: number;
    readonly shank: number;
    /** In the board that its point is in. */
    readonly depth: number;
}

/** Screws or nails under a load across them. */
export interface Shear extends Driven {
    readonly is: 'shear';
    /** Between the threads, or the shank of a nail. */
    readonly root: number;
    readonly bendingYield: number;
    readonly reduction: number;
    readonly side: Member;
    readonly main: Member;
    readonly mode: YieldMode;
    /** By the yield equations, before the factors. */
    readonly yieldLoad: number;
    readonly penetration: number;
    readonly endGrain: number;
    /** Across it in a test, at the proportional limit: for comparison. */
    readonly tested: number | undefined;
}

export interface Member {
    readonly name: string;
    readonly length: number;
    readonly gravity: number;
    readonly bearing: number;
    readonly source: string;
}

/** Screws or nails that are pulled. */
export interface Withdrawal extends Driven {
    readonly is: 'withdrawal';
    readonly thread: number;
    readonly gravity: number;
    readonly source: string;
    /** At which one comes out in a test, on the average. */
    readonly breaking: number | undefined;
}

/** A face that lies on another. */
export interface Bearing {
    readonly is: 'bearing';
    readonly long: number;
    readonly deep: number;
    readonly material: Thing;
    readonly stated: number;
    readonly divisor: number;
    readonly source: string | undefined;
}

/** Bought things that say what they carry. */
export interface Carries {
    readonly is: 'carries';
    readonly thing: Thing;
    readonly count: number;
    /** In kilograms, of one. */
    readonly each: number;
}
