/** On cases as they are built: the depth of a shelf, looked up on the curve, is at the height of the face that it was taken at. */
import { arcCurve, bowCurve, type CurveOutcome, fairThrough, lineCurve, point } from 'casewright-shared/geometry';
import fc from 'fast-check';
import { expect, it } from 'vitest';
import { analyseText } from './analysed.js';
import { inchesAt } from './sizes.js';
import { stock } from './stock.js';

const sixteenths = (min: number, max: number) => fc.integer({ min: min * 16, max: max * 16 }).map((count) => count / 16);
const shapes = ['line', 'arc', 'bow', 'fair'] as const;
const drawn = fc.record({
    shape: fc.constantFrom(...shapes),
    foot: sixteenths(14, 24),
    falls: sixteenths(3, 8),
    rise: sixteenths(-0.5, 0.5),
    // apart by more than they are thick
    heights: fc
        .uniqueArray(fc.tuple(fc.integer({ min: 1, max: 28 }), sixteenths(0, 1)), {
            minLength: 1,
            maxLength: 6,
            selector: ([step]) => step,
        })
        .map((places) => places.map(([step, more]) => 2 * step + more)),
    form: fc.constantFrom('square', 'bevelled'),
});

/** The line by itself, made without a case: 60in high, in inches. */
function lineOf({
    shape,
    foot,
    falls,
    rise,
}: Pick<typeof drawn extends fc.Arbitrary<infer T> ? T : never, 'shape' | 'foot' | 'falls' | 'rise'>) {
    const [from, to] = [point(0, foot), point(60, foot - falls)];
    const made: Record<(typeof shapes)[number], () => CurveOutcome> = {
        line: () => lineCurve(from, to),
        arc: () => (rise === 0 ? lineCurve(from, to) : arcCurve(from, to, rise)),
        bow: () => (rise === 0 ? lineCurve(from, to) : bowCurve(from, to, rise)),
        fair: () => fairThrough([from, point(30, foot - falls / 2 + rise), to]),
    };
    const outcome = made[shape]();
    if (!outcome.ok) throw new Error(outcome.refusal.reason);
    return outcome.curve;
}

it('over lines, arcs, bows and battens', { timeout: 60_000 }, async () => {
    await fc.assert(
        fc.asyncProperty(drawn, async ({ shape, foot, falls, rise, heights, form }) => {
            const words = `${rise < 0 ? 'in' : 'out'} ${Math.abs(rise)}in`;
            const said = { line: '', arc: `arc ${words}`, bow: `bow ${words}`, fair: `fair through ${foot - falls / 2 + rise}in at 30in` }[
                shape
            ];
            const { casework } = await analyseText(`${stock}
                case C of Ply {
                    width 30in; height 60in; depth Line
                    curve Line of depth over height {
                        from ${foot}in at bottom
                        to ${foot - falls}in at top
                        ${said}
                    }
                    side Left, Right
                    ${heights.map((height, index) => `shelf S${index} at ${height}in { edge front ${form} }`).join('\n')}
                }`);
            const line = lineOf({ shape, foot, falls, rise });
            // it falls all the way, so one depth is at one height
            if (line.turns().length > 0) return;
            for (const [index, height] of heights.entries()) {
                // the shallower face is the upper one, the deeper the lower
                const face = form === 'square' ? height : height - 0.75;
                const found = line.abscissasAt(inchesAt(casework, `C.S${index}.depth`));
                expect(found).toHaveLength(1);
                expect(found[0]).toBeCloseTo(face, 5);
            }
        }),
        { numRuns: 40 },
    );
});
