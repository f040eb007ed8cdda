/** The layouts of sheets and boards, found once for each casework: the search for them takes longer than all else, and several documents need them. */
import type { Casework } from '../casework/index.js';
import { layOutSheets, type SheetLayout } from '../stock/index.js';
import { type BoardJob, boardJobs, layOutBoards } from './boards/board-jobs.js';
import { onlyBuilt } from './only-built.js';
import { type MaterialJob, sheetJobs } from './sheets/sheet-jobs.js';

/** How often each layout of sheets is changed in search of a better one: a fraction of a second for a case. */
const steps = 6000;

export interface LaidOut<Job> {
    readonly of: Job;
    readonly layout: SheetLayout;
}

const sheets = new WeakMap<Casework, readonly LaidOut<MaterialJob>[]>();
const boards = new WeakMap<Casework, { readonly laidOut: readonly LaidOut<BoardJob>[]; readonly without: readonly string[] }>();

/** What is cut from sheets, of all that is built, by material. */
export function laidOutSheets(evaluated: Casework): readonly LaidOut<MaterialJob>[] {
    let found = sheets.get(evaluated);
    if (!found) {
        found = sheetJobs(onlyBuilt(evaluated)).map((of) => ({ of, layout: layOutSheets(of.job, { steps }) }));
        sheets.set(evaluated, found);
    }
    return found;
}

/** What is got out of boards, of all that is built, by material, and the solid woods that do not say in which boards they come. */
export function laidOutBoards(evaluated: Casework): {
    readonly laidOut: readonly LaidOut<BoardJob>[];
    readonly without: readonly string[];
} {
    let found = boards.get(evaluated);
    if (!found) {
        const { jobs, without } = boardJobs(onlyBuilt(evaluated));
        found = { laidOut: jobs.map((of) => ({ of, layout: layOutBoards(of) })), without };
        boards.set(evaluated, found);
    }
    return found;
}
