/** The layouts of boards, found once for each casework: several documents need them. */
import type { Casework } from '../../casework/index.js';
import type { SheetLayout } from '../../stock/index.js';
import { onlyBuilt } from '../only-built.js';
import { type BoardJob, boardJobs, layOutBoards } from './board-jobs.js';

export interface LaidOutBoards {
    readonly of: BoardJob;
    readonly layout: SheetLayout;
}

interface Found {
    readonly laidOut: readonly LaidOutBoards[];
    /** Solid woods that do not say in which boards they come. */
    readonly without: readonly string[];
}

const known = new WeakMap<Casework, Found>();

/** What is got out of boards, of all that is built, by material. */
export function laidOutBoards(evaluated: Casework): Found {
    let found = known.get(evaluated);
    if (!found) {
        const { jobs, without } = boardJobs(onlyBuilt(evaluated));
        found = { laidOut: jobs.map((of) => ({ of, layout: layOutBoards(of) })), without };
        known.set(evaluated, found);
    }
    return found;
}
