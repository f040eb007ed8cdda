/** What keeps cases square, against statics and design values worked out by hand. */
import { bracingOf, rackedCases } from 'casewright-shared/strength';
import { describe, expect, it } from 'vitest';
import { analyseText } from './analysed.js';

const inch = 25.4;
const poundForce = 4.4482216152605;

const chest = (inside: string, inCase = '') => `use casewright.species
use casewright.panels
material Pine : lumber { species PonderosaPine   planed 3/4in }
material Thin like SoftwoodPlywood { thickness 1/4in }
project "P" { build 1 Chest }
case Chest of Pine {
    width 36in   height 30in   depth 18in
    ${inCase}
    ${inside}
    side Left, Right
    top
    bottom at 3/4in
    join top, bottom to every side with { glue }
}
`;
const back = 'back of Thin\n join back to every side, top, bottom with { screw #6 x 1 1/4in count 4 inset 2in }';
const codes = async (text: string) => (await analyseText(text)).findings.map(({ code }) => code).filter((code) => code.startsWith('RCK'));

describe('a back screwed along its four edges', () => {
    /** One number 6 through 1/4in of plywood of 0.42, 1in into pine of 0.43, for ten minutes; NDS-2018, Equations 12.3-1 to 12.3-6, in pounds. */
    function oneScrew(): number {
        const [fes, fem] = [16600 * 0.42 ** 1.84, 16600 * 0.43 ** 1.84];
        const [d, rd, fyb, ls, lm] = [0.113, 2.2, 100000, 0.25, 1];
        const [re, rt] = [fem / fes, lm / ls];
        const k1 = (Math.sqrt(re + 2 * re ** 2 * (1 + rt + rt ** 2) + rt ** 2 * re ** 3) - re * (1 + rt)) / (1 + re);
        const k2 = -1 + Math.sqrt(2 * (1 + re) + (2 * fyb * (1 + 2 * re) * d ** 2) / (3 * fem * lm ** 2));
        const k3 = -1 + Math.sqrt((2 * (1 + re)) / re + (2 * fyb * (2 + re) * d ** 2) / (3 * fem * ls ** 2));
        const z = Math.min(
            (d * lm * fem) / rd,
            (d * ls * fes) / rd,
            (k1 * d * ls * fes) / rd,
            (k2 * d * lm * fem) / ((1 + 2 * re) * rd),
            (k3 * d * ls * fem) / ((2 + re) * rd),
            (d ** 2 / rd) * Math.sqrt((2 * fem * fyb) / (3 * (1 + re))),
        );
        // 1in is less than ten shanks of 0.138in: in proportion
        return z * 1.6 * (1 / 1.38);
    }

    it('takes the least of its edges: four screws along the top, four by b / h along a side', async () => {
        const { casework } = await analyseText(chest(back, 'push 50 lbf'));
        const [racked] = rackedCases(casework);
        if (!racked) throw new Error('nothing stands');
        const bracing = bracingOf(casework, racked);
        const [brace] = bracing?.braces ?? [];
        expect(bracing && bracing.push / poundForce).toBeCloseTo(50, 9);
        expect(brace && [brace.wide / inch, brace.high / inch]).toEqual([expect.closeTo(35.25, 6), expect.closeTo(29.25, 6)]);
        // wider than it is high: a side takes more, and the top and bottom decide
        expect(bracing?.capacity && bracing.capacity / poundForce).toBeCloseTo(4 * oneScrew(), 1);
    });

    it('in a high case its sides decide, by the width over the height', async () => {
        const { casework } = await analyseText(chest(back, 'push 50 lbf').replace('height 30in', 'height 72in'));
        const [racked] = rackedCases(casework);
        const capacity = racked && bracingOf(casework, racked)?.capacity;
        expect(capacity && capacity / poundForce).toBeCloseTo((4 * oneScrew() * 35.25) / 71.25, 1);
    });

    it('is asked nothing where no push is declared, and is found where it takes less', async () => {
        expect(await codes(chest(back))).toEqual([]);
        expect(await codes(chest(back, 'push 50 lbf'))).toEqual([]);
        expect(await codes(chest(back, 'push 400 lbf'))).toEqual(['RCK-003']);
    });

    it('of which nothing is published is not judged', async () => {
        const text = chest(back, 'push 4000 lbf').replace('like SoftwoodPlywood {', ': hardboard {');
        expect(await codes(text)).toEqual([]);
        const { casework } = await analyseText(text);
        const [racked] = rackedCases(casework);
        expect(racked && bracingOf(casework, racked)?.capacity).toBeUndefined();
    });
});

describe('bracing', () => {
    it.each<[string, string, string, readonly string[]]>([
        ['nothing', '', '', ['RCK-001']],
        ['nothing, and it is anchored', '', 'anchor 28in high', []],
        ['a back that can be taken out', 'back of Thin\n join back to every side, top, bottom with { loose }', '', ['RCK-001']],
        ['a back in a groove, free to move', 'back of Thin\n join back to every side, top, bottom with { free }', '', []],
        ['a rail under the top alone', 'rail Head at back height 4in\n join Head to every side, top with { glue }', '', ['RCK-002']],
    ])('%s', async (_, inside, inCase, expected) => expect(await codes(chest(inside, inCase))).toEqual(expected));

    it('a board that stands alone has nothing to fold', async () => {
        const text =
            'use casewright.panels\nmaterial Mdf like FibreboardThreeQuarter\nproject "P" { build 1 Screen }\ncase Screen of Mdf { width 3/4in height 40in depth 12in\n side Left }\n';
        expect(await codes(text)).toEqual([]);
    });

    it('of what is not joined yet nothing is known', async () => expect(await codes(chest('').replace(/join .*\n/, ''))).toEqual([]));

    it('what no project builds is not judged', async () => expect(await codes(chest('').replace(/project .*\n/, ''))).toEqual([]));
});
