/** Fronts that are curved over the width, or both ways; edges square or bevelled to the line; curves through points and of several pieces. */
import { type Casework, lookUp, type Measure, sayQuantity, whyText } from 'casewright-shared/casework';
import { real } from 'casewright-shared/quantity';
import { describe, expect, it } from 'vitest';
import { analyseText } from './analysed.js';
import { inchesAt, measureAt } from './sizes.js';
import { stock } from './stock.js';

const built = async (text: string): Promise<Casework> => (await analyseText(stock + text)).casework;
const problems = async (text: string) =>
    (await analyseText(stock + text)).casework.problems.map(({ code, message }) => `${code} ${message}`);

/** From the closed form of the circle: chord 48in, rise 3in, so a radius of (24^2 + 3^2) / (2 x 3) = 97 1/2in about (24in, -75 1/2in). */
const bow = (x: number, past = 0) => Math.sqrt((97.5 + past) ** 2 - (x - 24) ** 2) - 75.5;
const numberAt = (casework: Casework, path: string) => real.toNumber(measureAt(casework, path).quantity.value);
const degrees = (angle: number) => (angle * 180) / Math.PI;

const bowed = (words: string, more = '') => `
case C of Ply {
    width 48in
    height 34in
    depth Bow${more}
    curve Bow of depth over width {
        from 19in at left
        to   19in at right
        arc  out 3in
    }
    curve Sweep of depth over height {
        from 0in at bottom
        to   -6in at top
    }
    ${words}
}
`;

describe('a plan bow', () => {
    it('meets a side at both its faces: 19in outside, 19.18in inside, bevelled 14 degrees', async () => {
        const casework = await built(bowed('side Left, Right'));
        expect(inchesAt(casework, 'C.Left.front.left')).toBeCloseTo(19, 9);
        expect(inchesAt(casework, 'C.Left.front.right')).toBeCloseTo(bow(0.75), 9);
        expect(casework.parts.get('C.Left')?.front?.form).toBe('bevelled');
        expect(Number(casework.parts.get('C.Left')?.front?.bevel.quantity.value)).toBeCloseTo(
            degrees(Math.atan((bow(0.75) - 19) / 0.75)),
            9,
        );
        expect(Number(casework.parts.get('C.Right')?.front?.bevel.quantity.value)).toBeLessThan(0);
    });

    it('a side that is said to be square stops at its shallower face', async () => {
        const casework = await built(bowed('side Left, Right { edge front square }'));
        expect(inchesAt(casework, 'C.Left.depth')).toBeCloseTo(19, 9);
    });

    it('what stands past the case by as much follows the larger circle on past its sides: 19.77in deep at 1in past them', async () => {
        const casework = await built(bowed('top { edge left, right, front at 1in past case }\nside Left, Right'));
        const line = casework.curves.find(({ parts }) => parts.includes('C.top'));
        expect(line?.follows?.how).toBe('1in outside');
        expect((line?.curve?.valueAt(-25.4).value ?? 0) / 25.4).toBeCloseTo(bow(-1, 1), 9);
        expect(bow(-1, 1)).toBeCloseTo(19.77, 2);
    });

    it('bends a kick behind it: radius 95in, as long as the way round its front', async () => {
        const casework = await built(bowed('side Left, Right\nbottom at 4in\nkick at 2 1/2in behind Bow'));
        const kick = casework.parts.get('C.kick');
        expect(kick?.bent).toBe(true);
        expect(inchesAt(casework, 'C.kick.length')).toBeCloseTo(95 * 2 * Math.asin(23.25 / 95), 6);
        expect((kick?.box.most.y ?? 0) / 25.4).toBeCloseTo(19.5, 9);
        expect((kick?.box.least.y ?? 0) / 25.4).toBeCloseTo(Math.sqrt(94.25 ** 2 - 23.25 ** 2) - 75.5, 6);
    });
});

describe('a front that is curved both ways', () => {
    const both = bowed('side Left, Right\nshelf Deck at 17in\nshelf Low at 7in { edge front bevelled }', ' + Sweep');
    const sweep = (height: number) => (-6 * height) / 34;

    it('is as deep as both curves together; a square shelf takes its shallower face, a bevelled one the deeper', async () => {
        const casework = await built(both);
        expect(inchesAt(casework, 'C.Deck.depth')).toBeCloseTo(22 + sweep(17), 9);
        expect(inchesAt(casework, 'C.Low.depth')).toBeCloseTo(22 + sweep(6.25), 9);
        expect(inchesAt(casework, 'C.Low.front.upper')).toBeCloseTo(22 + sweep(7), 9);
        expect(inchesAt(casework, 'C.Left.depth')).toBeCloseTo(bow(0.75), 9);
    });

    it('a bevel is steepest where the edge runs straight across, and less where it runs aslant: 10.0 degrees in the middle, 9.7 at the ends', async () => {
        const casework = await built(both);
        const { along } = casework.parts.get('C.Low')?.front ?? {};
        const fall = Math.atan(6 / 34);
        // the circle of 97 1/2in at 23 1/4in from its middle: the tangent of its slope is 23.25 / sqrt(97.5^2 - 23.25^2)
        const aslant = Math.atan(23.25 / Math.sqrt(97.5 ** 2 - 23.25 ** 2));
        expect(along?.greatest.degrees).toBeCloseTo(degrees(fall), 9);
        expect((along?.greatest.at ?? 0) / 25.4).toBeCloseTo(23.25, 6);
        expect(along?.least.degrees).toBeCloseTo(degrees(Math.atan(Math.tan(fall) * Math.cos(aslant))), 6);
        expect(degrees(fall)).toBeCloseTo(10.0, 1);
        expect(along?.least.degrees).toBeCloseTo(9.7, 1);
        expect(along?.least.at).toBe(0);
        const [board] = casework.pieces.filter(({ part, role }) => part === 'C.Low' && role === 'core');
        const said = board?.notes.flat().map((word) => (typeof word === 'string' ? word : sayQuantity(word.quantity, 'inch')));
        expect(said?.join('')).toContain('square to the edge from 9.7° at 0in to 10.0° at 23.25in from the left end');
        expect(casework.parts.get('C.Deck')?.front?.form).toBe('square');
    });

    it('at 200 places of its shelves is the sum', async () => {
        const casework = await built(both);
        const line = casework.curves.find(({ parts }) => parts.includes('C.Deck'))?.curve;
        for (let place = 0; place < 200; place++) {
            const x = 0.75 + ((place * 61) % 200) * (46.5 / 200);
            expect((line?.valueAt(x * 25.4).value ?? 0) / 25.4).toBeCloseTo(bow(x) + sweep(17), 9);
        }
    });

    it('in the mirror is its mirror image: the deeper end of the bow is at the other side, the heights are as they were', async () => {
        const slanted = both.replace('to   19in at right', 'to   16in at right');
        const text = `project "Pair" { build 1 C as Near\n build 1 C mirrored as Far }\n${slanted}`;
        const casework = await built(text);
        for (const shelf of ['Deck', 'Low']) {
            for (const size of ['depth', 'length', 'core.width', 'front.lower', 'front.upper', 'front.bevel']) {
                expect(numberAt(casework, `Far.${shelf}.${size}`)).toBeCloseTo(numberAt(casework, `Near.${shelf}.${size}`), 9);
            }
            const [near, far] = ['Near', 'Far'].map(
                (build) => casework.curves.find(({ parts }) => parts.includes(`${build}.${shelf}`))?.curve,
            );
            for (const x of [1, 11, 24, 40, 47]) {
                expect(far?.valueAt((48 - x) * 25.4).value).toBeCloseTo(near?.valueAt(x * 25.4).value ?? 0, 6);
            }
        }
        expect(inchesAt(casework, 'Far.Left.depth')).toBeCloseTo(inchesAt(casework, 'Near.Left.depth'), 9);
        // 3in less at the right than at the left: at the left of one, at the right of the other
        const ends = ['Near', 'Far'].map((build) => {
            const line = casework.curves.find(({ parts }) => parts.includes(`${build}.Deck`))?.curve;
            return [0, 48].map((x) => (line?.valueAt(x * 25.4).value ?? 0) / 25.4 - sweep(17));
        });
        expect(ends[0]).toEqual([expect.closeTo(19, 6), expect.closeTo(16, 6)]);
        expect(ends[1]).toEqual([expect.closeTo(16, 6), expect.closeTo(19, 6)]);
    });

    it('takes one curve over the height and one over the width', async () => {
        const found = await problems(bowed('side Left, Right', ' + Bow'));
        expect(found).toEqual([expect.stringContaining('UNI-003 two curves over the width')]);
    });
});

describe('a bevelled front with a nosing or band, worked out by hand', () => {
    // the line falls 10in over 40in: 3/16in over the 3/4in of a shelf. At 20in it is 15in deep, at 19 1/4in 15.1875in
    const text = (edge: string) => `
case C of Ply {
    width 30in
    height 40in
    depth Line
    curve Line of depth over height {
        from 20in at bottom
        to   10in at top
    }
    side Left, Right
    shelf Deck at 20in { edge front bevelled; edge front ${edge} }
}
`;
    const bandOf = async (edge: string) => {
        const casework = await built(text(edge));
        return { casework, strip: casework.pieces.find(({ part, role }) => part === 'C.Deck' && (role === 'band' || role === 'nosing')) };
    };
    const inches = (measure: Measure | undefined) => (measure ? real.toNumber(measure.quantity.value) : Number.NaN) / 25.4;

    it('is as deep as its deeper face, and bevelled by the slope of the line: atan(1/4) = 14.036 degrees', async () => {
        const { casework } = await bandOf('Nose');
        expect(inchesAt(casework, 'C.Deck.depth')).toBeCloseTo(15.1875, 9);
        expect(inchesAt(casework, 'C.Deck.front.upper')).toBeCloseTo(15, 9);
        expect(numberAt(casework, 'C.Deck.front.bevel')).toBeCloseTo(-14.036243, 5);
    });

    it('a nosing lies on a core that is sawn square, 3/4in behind the shallower face: 14 1/4in; its blank has the run over its own height on', async () => {
        const { casework, strip } = await bandOf('Nose');
        expect(inchesAt(casework, 'C.Deck.core.width')).toBeCloseTo(14.25, 9);
        // 1in high, from the upper face down: 1/4in of run
        expect(inches(strip?.finished.thickness)).toBeCloseTo(1, 9);
        expect(inches(strip?.finished.width)).toBeCloseTo(1, 9);
        expect(inches(strip?.finished.length)).toBeCloseTo(28.5, 9);
    });

    it('a band lies on the bevel: 1/8in square to it, so 1/8in x sqrt(17)/4 = 0.12885in off the depth, and 0.77308in wide', async () => {
        const { casework, strip } = await bandOf('Band');
        expect(inchesAt(casework, 'C.Deck.core.width')).toBeCloseTo(15.1875 - 0.125 * Math.hypot(1, 0.25), 9);
        expect(inches(strip?.finished.width)).toBeCloseTo(0.75 * Math.hypot(1, 0.25), 9);
        expect(0.75 * Math.hypot(1, 0.25)).toBeCloseTo(0.77308, 5);
    });
});

describe('a line through points and of pieces', () => {
    const line = (words: string) => `
case C of Ply {
    width 30in
    height 40in
    depth Line
    curve Line of depth over height {
        ${words}
    }
    side Left, Right
}
`;
    const depths = async (words: string, heights: readonly number[]) => {
        const [model] = (await built(line(words))).curves;
        return heights.map((height) => (model?.curve?.valueAt(height * 25.4).value ?? 0) / 25.4);
    };

    it('goes through all of them', async () => {
        const found = await depths('from 16in at bottom\nto 12in at top\nfair through 17in at 10in, 14in at 28in', [0, 10, 28, 40]);
        expect(found).toEqual([16, 17, 14, 12].map((depth) => expect.closeTo(depth, 6)));
        const [middle] = await depths('from 16in at bottom\nto 16in at top\narc through 18in at 20in', [20]);
        expect(middle).toBeCloseTo(18, 9);
    });

    it('knows how its pieces go on into one another', async () => {
        const [model] = (await built(line('from 16in at bottom\nto 16in at 10in\nto 12in at top arc tangent'))).curves;
        expect(model?.pieces.map(({ kind }) => kind)).toEqual(['line', 'arc']);
        expect(model?.joints.map(({ continuity }) => continuity)).toEqual(['tangent']);
    });

    it('says which point or piece is out of order, and what has no place', async () => {
        expect(await problems(line('from 16in at bottom\nto 12in at top\nfair through 17in at 30in, 14in at 28in'))).toEqual([
            expect.stringMatching(/^CRV-002 this point of `Line` is at 28in/),
        ]);
        expect(await problems(line('from 16in at bottom\nto 12in at 30in\nto 11in at 20in'))).toEqual([
            expect.stringMatching(/^CRV-002 `Line` turns back here/),
        ]);
    });
});

it.each(['square', 'bevelled'])(
    'why on the depth of a shelf with a %s front names the curve, the height, the rabbet and the nosing',
    async (form) => {
        const casework = await built(`
case C of Ply {
    width 30in
    height 40in
    depth Line
    curve Line of depth over height {
        from 16in at bottom
        to   12in at top
    }
    side Left, Right { edge back rabbet 3/8in deep for back }
    shelf Deck at 20in { edge front ${form}; edge front Nose }
    back of Quarter
}
`);
        const why = (path: string) => {
            const found = lookUp(casework, path);
            return found.ok ? whyText(found.measure, { system: 'inch', locate: () => undefined }) : '';
        };
        const curve = `the curve Line at the ${form === 'square' ? 'upper' : 'lower'} face of Deck`;
        const all = [
            /measured over the nosing on its front/,
            new RegExp(curve),
            / 20in +written/,
            /the rabbet for back/,
            /3\/4in +written/,
        ];
        for (const step of all) expect(why('C.Deck.depth')).toMatch(step);
        // bevelled: the line falls 4in in 40in, so 0.075in over the 3/4in of the board comes on
        expect(why('C.Deck.depth')).toMatch(form === 'square' ? /3\/4in +nosing on front/ : /the nosing and its bevel on the front/);
        expect(why('C.Deck.core.width')).toMatch(/nosing/);
    },
);

describe('a line inside a curve that would have a sharp point', () => {
    const bent = (edges: string, more = '') => `${more}
case C of Ply {
    width 30in
    height 5in
    depth Line
    curve Line of depth over height {
        from 14in at bottom
        to   14in at top
        arc  out 2in
    }
    side Left, Right { ${edges} }
}
`;
    const cusps = async (text: string) => {
        const analysis = await analyseText(`${stock}${text}`);
        return analysis.findings
            .filter(({ code }) => code === 'CRV-008')
            .map(({ span, related }) => [analysis.textAt(span), ...(related ?? []).map((one) => analysis.textAt(one.span))]);
    };

    it('is at the words of the strip that asks for it, once, and names the curve', async () => {
        expect(await cusps(bent('edge front { nosing 3in of Oak }'))).toEqual([['nosing 3in of Oak', 'Line']]);
        expect(await cusps(bent('edge front Thick', 'edging Thick { nosing 3in of Oak }'))).toEqual([['edge front Thick', 'Line']]);
    });

    it('is at the distance where a part is said to stand behind the curve', async () => {
        expect(await cusps(bent('edge front at 3in short of Line'))).toEqual([['3in short of Line', 'Line']]);
    });
});

describe('a curve over the height of a case that has a top and a bottom', () => {
    it('ends at the ends of the case: the parts of these names hang on it', async () => {
        const text = `
case C of Ply {
    width 36in
    height 60in
    depth Front
    curve Front of depth over height {
        from 15in at bottom
        to   11in at top
    }
    side Left, Right
    bottom at 4in
    top
}
`;
        expect(await problems(text)).toEqual([]);
        // 4in less over 60in: at the lower face of the bottom, 3 1/4in up, the line lies deeper than at its upper face, which is square to it
        expect(inchesAt(await built(text), 'C.bottom.depth')).toBeCloseTo(15 - (4 * 4) / 60, 9);
    });
});
