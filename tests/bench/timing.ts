/** Honest timings on a machine that does other things too: what is compared runs in turns, and the best run of each counts. */

export type Job = () => unknown;

/** The least time of each job in milliseconds, over rounds in which all run in turn. The first round warms up and does not count. */
export async function bestOf<Name extends string>(rounds: number, jobs: Readonly<Record<Name, Job>>): Promise<Record<Name, number>> {
    const names = Object.keys(jobs) as Name[];
    const best = Object.fromEntries(names.map((name) => [name, Number.POSITIVE_INFINITY])) as Record<Name, number>;
    for (let round = 0; round <= rounds; round++) {
        for (const name of names) {
            const started = performance.now();
            await jobs[name]();
            const took = performance.now() - started;
            if (round > 0) best[name] = Math.min(best[name], took);
        }
    }
    return best;
}

/** The best of several runs of one job that cannot be repeated in one process, such as a cold start. */
export async function leastOf(rounds: number, job: () => Promise<number>): Promise<number> {
    let least = Number.POSITIVE_INFINITY;
    for (let round = 0; round < rounds; round++) least = Math.min(least, await job());
    return least;
}
