/** How cases stand, from the text to the finding and the sheet. */
import { type CaseStability, caseStabilities, stabilityTests } from 'casewright-shared/strength';
import { describe, expect, it } from 'vitest';
import { analyseText } from './analysed.js';

const inch = 25.4;
const pound = 0.45359237;
const poundForce = 4.4482216152605;

const head = 'use casewright.panels\nmaterial Mdf like FibreboardThreeQuarter\n';
const stand = (size: string, inside: string, project = 'project "P" { build 1 Stand }\n') =>
    `${head}${project}case Stand of Mdf {\n${size}\n${inside}\n}\n`;
/** Two sides and a board at the top and at the bottom, glued. */
const box = 'side Left, Right\n shelf Low at 3/4in\n shelf High at top\n join every shelf to every side with { glue }';

async function standing(text: string): Promise<CaseStability> {
    const [found] = caseStabilities((await analyseText(text)).casework);
    if (!found) throw new Error('it stands nowhere');
    return found;
}
const said = async (text: string) => (await analyseText(text)).findings.filter(({ code }) => code === 'STB-001');

describe('a plain box of fibreboard', () => {
    // By hand, at 48 lb/ft3: two sides 40 x 12 x 3/4in and two boards 22 1/2 x 12 x 3/4in, the middle at half its depth and height.
    const mass = ((2 * 40 + 2 * 22.5) * 12 * 0.75 * 48) / 1728;

    it('has its middle in the middle: it leans atan(6 / 20), and goes over under m 6 / 40', async () => {
        const found = await standing(stand('width 24in\n height 40in\n depth 12in', box));
        expect(found.empty.mass / pound).toBeCloseTo(mass, 9);
        expect(found.empty.behindLine / inch).toBeCloseTo(6, 9);
        expect(found.empty.angle).toBeCloseTo(Math.atan(6 / 20), 9);
        expect(found.push / poundForce).toBeCloseTo((mass * 6) / 40, 9);
    });

    // asin(0.43 / depth), computed: 18in 1.3689 degrees, 16in 1.5400 degrees (ASTM F2057-23, 8.2.3: block of 0.43in)
    it.each([
        [18, 1.3689],
        [16, 1.54],
    ])('%din deep it leans %d degrees on the block of a carpet', async (depth, degrees) => {
        const { tilt } = await standing(stand(`width 24in\n height 40in\n depth ${depth}in`, box));
        expect((tilt * 180) / Math.PI).toBeCloseTo(degrees, 4);
    });

    it('stands on its kick when its sides stop above the floor', async () => {
        const text = stand(
            'width 24in\n height 40in\n depth 12in',
            'bottom at 4in\n kick at 3in behind bottom.front\n kick Rear at back below bottom\n side Left, Right above bottom\n join kick, Rear to bottom with { glue }\n join every side to bottom with { glue }',
        );
        const found = await standing(text);
        expect(found.frontLine / inch).toBeCloseTo(9, 9);
    });
});

describe('loads', () => {
    it('only on the upper shelves is the worst, and those are named', async () => {
        const text = stand(
            'width 24in\n height 60in\n depth 12in',
            'side Left, Right\n shelf Row[4] clear equal\n join every shelf to every side with { glue }\n load 20 lb/ft2 on every Row',
        );
        const found = await standing(text);
        expect(found.loadedWorst.angle).toBeLessThan(found.empty.angle);
        expect(found.worstLoads.map(({ name }) => name)).toEqual(['Row[4]']);
        // brute force: no other choice of loaded shelves leans over sooner
        const shelves = [1, 2, 3, 4];
        for (let choice = 1; choice < 16; choice++) {
            const loaded = shelves.filter((_, index) => choice & (1 << index)).map((number) => `Row[${number}]`);
            const one = await standing(text.replace('on every Row', `on ${loaded.join(', ')}`));
            expect(one.loadedWorst.angle).toBeGreaterThanOrEqual(found.loadedWorst.angle - 1e-9);
        }
    });
});

describe('curved fronts', () => {
    const swept = (curve: string) =>
        stand('width 24in\n height 40in\n depth Sweep', `curve Sweep of depth over height { ${curve} }\n${box}`);

    it('a side that bellies out over its foot stands on its foot', async () => {
        const found = await standing(swept('from 12in at bottom; to 12in at top; bow out 3in'));
        expect(found.frontLine / inch).toBeCloseTo(12, 6);
    });

    // The middle of a trapezoid of 16in and 8in, 40in high: forward (a² + a b + b²) / 3 (a + b), up h (a + 2 b) / 3 (a + b).
    it('the middle of tapered sides is that of a trapezoid', async () => {
        const found = await standing(
            stand(
                'width 24in\n height 40in\n depth Taper',
                'curve Taper of depth over height { from 16in at bottom; to 8in at top; line }\n side Left, Right',
            ),
        );
        const [a, b, h] = [16, 8, 40];
        expect(found.empty.middle.y / inch).toBeCloseTo((a * a + a * b + b * b) / (3 * (a + b)), 6);
        expect(found.empty.middle.z / inch).toBeCloseTo((h * (a + 2 * b)) / (3 * (a + b)), 6);
    });
});

describe('the rule', () => {
    const tall = 'width 36in\n height 60in\n depth 9in';
    const rows = 'side Left, Right\n shelf Row[4] clear equal\n join every shelf to every side with { glue }';

    it('says which push, and what mends it', async () => {
        const [finding, ...others] = await said(stand(tall, rows));
        expect(others).toEqual([]);
        expect(finding?.message).toMatch(/^`Stand` stands by itself, and goes over under a push of 3\.9 lbf at 56in$/);
        expect(finding?.hint).toContain('`anchor 57in high`');
    });

    it('is silent when it is anchored, and when no project builds it', async () => {
        expect(await said(stand(`${tall}\n anchor 57in high`, rows))).toEqual([]);
        expect(await said(stand(tall, rows, ''))).toEqual([]);
    });

    it('leaves out what is under 27in high or under 30 lb (16 CFR 1261)', async () => {
        expect(stabilityTests.scope.height / inch).toBeCloseTo(27, 9);
        expect(await said(stand('width 60in\n height 26in\n depth 6in', rows))).toEqual([]);
        expect(await said(stand('width 20in\n height 60in\n depth 5in', box))).toEqual([]);
    });

    it('warns of a top far past its feet, which a child tips', async () => {
        const bench = 'top { edge front at 14in past case }\n side Left, Right\n join top to every side with { glue }';
        const [finding] = await said(stand('width 72in\n height 30in\n depth 24in', bench));
        expect(finding?.message).toMatch(/^`Stand` stands by itself, and goes over with 60lb on the front edge of `top`/);
    });

    it('knows a height only as a length', async () => {
        const { findings } = await analyseText(stand(`${tall}\n anchor 57lb high`, rows));
        expect(findings.some(({ severity, span }) => severity === 'error' && span.start > 0)).toBe(true);
    });
});

describe('on a floor that is not level', () => {
    const size = 'width 24in\n height 40in\n depth 18in';
    const project = (floor: string) => `project "P" { build 1 Stand\n ${floor} }\n`;
    const mass = ((2 * 40 + 2 * 22.5) * 18 * 0.75 * 48) / 1728;

    it.each<[string, number]>([
        ['slope 1/4in / 48in', Math.atan(0.25 / 48)],
        ['slope 2%', Math.atan(0.02)],
        // asin(0.43 / 18): 1.3689 degrees (ASTM F2057-23, 8.2.3)
        ['carpet 0.43in', (1.3689 * Math.PI) / 180],
        ['slope 1/48   carpet 0.43in', Math.atan(1 / 48) + (1.3689 * Math.PI) / 180],
    ])('%s: the push is m (9 cos - 20 sin) / 40', async (floor, lean) => {
        // Statics of a rigid body whose middle is 9in behind the front line and 20in high, at 48 lb/ft3.
        const found = await standing(stand(size, box, project(floor)));
        expect(found.floorLean).toBeCloseTo(lean, 5);
        expect(found.push / poundForce).toBeCloseTo((mass * (9 * Math.cos(lean) - 20 * Math.sin(lean))) / 40, 3);
    });

    it('says so, and says when no push is needed', async () => {
        const shallow = 'width 24in\n height 60in\n depth 12in';
        const [sloping] = await said(stand(shallow, box, project('slope 1/20')));
        expect(sloping?.message).toMatch(/goes over under a push of .* on the floor that the project states/);
        const [steep] = await said(stand(shallow, box, project('slope 1/4')));
        expect(steep?.message).toBe('`Stand` stands by itself, and goes over without a push, on the floor that the project states');
    });
});
