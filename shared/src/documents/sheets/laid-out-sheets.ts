/** The layouts of sheets, found once for each casework: the search for them takes longer than all else, and several documents need them. */
import type { Casework } from '../../casework/index.js';
import { layOutSheets, type SheetLayout } from '../../stock/index.js';
import { onlyBuilt } from '../only-built.js';
import { type MaterialJob, sheetJobs } from './sheet-jobs.js';

/** How often each layout is changed in search of a better one: a fraction of a second for a case. */
const steps = 6000;

export interface LaidOutSheets {
    readonly of: MaterialJob;
    readonly layout: SheetLayout;
}

const known = new WeakMap<Casework, readonly LaidOutSheets[]>();

/** What is cut from sheets, of all that is built, by material. */
export function laidOutSheets(evaluated: Casework): readonly LaidOutSheets[] {
    let found = known.get(evaluated);
    if (!found) {
        found = sheetJobs(onlyBuilt(evaluated)).map((of) => ({ of, layout: layOutSheets(of.job, { steps }) }));
        known.set(evaluated, found);
    }
    return found;
}
