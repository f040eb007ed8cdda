/** Layouts of sheets against published instances, at a second and at five seconds of one core for each. */
import { layOutLengths, layOutSheets } from 'casewright-shared/stock';
import { type PublishedInstance, publishedInstances, publishedLengths } from '../../shared/test/stock/published-instances.ts';
import type { Report } from './report.ts';

interface Family {
    readonly what: string;
    readonly instances: readonly PublishedInstance[];
    readonly seconds: number;
    /** How far over the best known, or over the least possible where none is known, in percent of all sheets together. */
    readonly atMost: number;
}

export async function benchStock(report: Report): Promise<void> {
    const few = (instances: readonly PublishedInstance[], every: number) => instances.filter((_, index) => index % every === 0);
    const families: readonly Family[] = [
        { what: 'Berkey and Wang, Martello and Vigo', instances: few(publishedInstances('bwmv', false), 6), seconds: 1, atMost: 0.8 },
        { what: 'the same with turning', instances: few(publishedInstances('bwmv', true), 10), seconds: 1, atMost: 1.9 },
        { what: 'the same without turning', instances: few(publishedInstances('bwmv', false), 10), seconds: 5, atMost: 0.15 },
        { what: 'jobs of a shop, over the least possible', instances: few(publishedInstances('shop2d'), 3), seconds: 5, atMost: 1.8 },
    ];
    for (const family of families) layOutFamily(report, family);
    layOutBars(
        report,
        publishedLengths().filter((_, index) => index % 2 === 0),
    );
    firstLayout(report);
}

function layOutFamily(report: Report, { what, instances, seconds, atMost }: Family): void {
    let [cost, best, proven, reached] = [0, 0, 0, 0];
    for (const instance of instances) {
        const started = process.cpuUsage();
        const goesOn = () => {
            const { user, system } = process.cpuUsage(started);
            return user + system < seconds * 1e6;
        };
        const layout = layOutSheets(instance.job, { steps: Number.MAX_SAFE_INTEGER, goesOn });
        const known = instance.best ?? layout.leastCost;
        cost += layout.cost;
        best += known;
        if (layout.cost <= known) reached++;
        if (layout.cost <= layout.leastCost) proven++;
    }
    report.title(`${what}: ${instances.length} instances, ${seconds} s of one core each`);
    report.note(
        `cost ${Math.round(cost)}, known ${Math.round(best)}; ${reached} as good as known, ${proven} proved to be the best there is`,
    );
    report.goal({ what: 'over the best known', found: (cost / best - 1) * 100, unit: '%', atMost });
}

/** Lengths cut from bars: how many of the instances are laid out with as few bars as can be. */
function layOutBars(report: Report, instances: ReturnType<typeof publishedLengths>): void {
    const seconds = 5;
    let [bars, best, proven, reached] = [0, 0, 0, 0];
    for (const instance of instances) {
        const started = process.cpuUsage();
        const goesOn = () => {
            const { user, system } = process.cpuUsage(started);
            return user + system < seconds * 1e6;
        };
        const layout = layOutLengths(instance.job, { rounds: Number.MAX_SAFE_INTEGER, goesOn });
        bars += layout.cost;
        best += instance.best;
        if (layout.cost <= instance.best) reached++;
        if (layout.cost <= layout.leastCost) proven++;
    }
    report.title(`lengths from bars: ${instances.length} instances, ${seconds} s of one core each`);
    report.note(`bars ${bars}, least ${best}; ${reached} at the least, ${proven} proved to be so`);
    report.goal({ what: 'not at the least', found: (1 - reached / instances.length) * 100, unit: '%', atMost: 10 });
}

/** How long a first layout of a job of a shop takes, of which a person waits for the picture. */
function firstLayout(report: Report): void {
    const jobs = publishedInstances('shop2d');
    const took = jobs.map(({ job }) => {
        const started = performance.now();
        layOutSheets(job, { steps: 0 });
        return performance.now() - started;
    });
    report.title('first layouts');
    report.goal({ what: `the slowest of ${jobs.length} jobs of a shop`, found: Math.max(...took), unit: 'ms', atMost: 100 });
}
