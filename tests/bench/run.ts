/** `npm run bench`: all benchmarks, or those named. Run it on a machine that has nothing else to do. */
import { benchGeometry } from './geometry.ts';
import { benchLanguage } from './language.ts';
import { Report } from './report.ts';
import { benchServer } from './server.ts';
import { benchSolids } from './solids.ts';
import { benchStock } from './stock.ts';

const benchmarks: Readonly<Record<string, (report: Report) => Promise<void>>> = {
    server: benchServer, // first: from a process that has grown, another starts more slowly
    language: benchLanguage,
    geometry: benchGeometry,
    stock: benchStock,
    solids: benchSolids,
};

const report = new Report();
const asked = process.argv.slice(2);
for (const name of asked.length > 0 ? asked : Object.keys(benchmarks)) {
    const benchmark = benchmarks[name];
    if (!benchmark) throw new Error(`there is no benchmark \`${name}\`; there are ${Object.keys(benchmarks).join(', ')}`);
    await benchmark(report);
}
report.close();
