/** Depths of shelves on a bow, against the same on an arc. */
import { arcCurve, bowCurve, point } from 'casewright-shared/geometry';
import type { Report } from './report.ts';
import { bestOf } from './timing.ts';

export async function benchGeometry(report: Report): Promise<void> {
    report.title('1,000 shelf depths on a curve');
    const ends = [point(0, 444.5), point(1676.4, 304.8)] as const;
    const [arc, bow] = [arcCurve(...ends, 28.6), bowCurve(...ends, 28.6)];
    if (!arc.ok || !bow.ok) throw new Error('the curves of the benchmark cannot be drawn');
    const heights = Array.from({ length: 1000 }, (_, index) => (1676.4 * index) / 999);
    let sum = 0;
    const best = await bestOf(200, {
        arc: () => {
            for (const height of heights) sum += arc.curve.valueAt(height).value;
        },
        bow: () => {
            for (const height of heights) sum += bow.curve.valueAt(height).value;
        },
    });
    if (!Number.isFinite(sum)) throw new Error('a depth is no number');
    report.goal({ what: 'a bow against an arc', found: best.bow / best.arc, unit: 'times', atMost: 20 });
}
