/** Parts under a curve: how deep they are where they are, what a band takes off, how long it is; and the pair that is swept and mirrored. */
import type { Casework, Measure } from 'casewright-shared/casework';
import { bowCurve, point } from 'casewright-shared/geometry';
import { real } from 'casewright-shared/quantity';
import { describe, expect, it } from 'vitest';
import { analyseText } from './analysed.js';
import { expectSizes, inchesAt } from './sizes.js';
import { stock } from './stock.js';

async function built(text: string): Promise<Casework> {
    return (await analyseText(text)).casework;
}

/** A case 40in wide and 60in high under a curve with these words. */
function under(curve: string, words: string): string {
    return `${stock}
case C of Ply {
    width 40in
    height 60in
    depth Line
    curve Line of depth over height {
        ${curve.split('; ').join('\n        ')}
    }
    ${words}
}
`;
}

/** A circle through two points (height, depth) with a rise over the chord: the closed form, in inches. */
function circle(from: readonly [number, number], to: readonly [number, number], rise: number) {
    const [dx, dy] = [to[0] - from[0], to[1] - from[1]];
    const chord = Math.hypot(dx, dy);
    const radius = (chord ** 2 / 4 + rise ** 2) / (2 * Math.abs(rise));
    // the centre is on the far side of the chord from the belly
    const away = (Math.sign(rise) * (radius - Math.abs(rise))) / chord;
    const centre = [(from[0] + to[0]) / 2 + dy * away, (from[1] + to[1]) / 2 - dx * away] as const;
    return {
        radius,
        /** The greatest depth, at the height of the centre. */
        greatest: centre[1] + radius,
        at: (height: number, inside = 0) =>
            centre[1] + Math.sign(rise) * Math.sqrt((radius - Math.sign(rise) * inside) ** 2 - (height - centre[0]) ** 2),
        /** Along the circle between two heights. */
        between: (low: number, high: number) => radius * (Math.asin((high - centre[0]) / radius) - Math.asin((low - centre[0]) / radius)),
    };
}

const arc = 'from 18in at bottom; to 12in at top; arc out 2in';
const bellied = circle([0, 18], [60, 12], 2);

describe('an arc over the height', () => {
    it('gives a shelf the depth of the circle at the shallower of its faces', async () => {
        const casework = await built(under(arc, 'side Left, Right\nshelf Low at 4in\nshelf Deck at 30in'));
        // going up it comes back: the upper face is the shallower
        expect(inchesAt(casework, 'C.Deck.depth')).toBeCloseTo(bellied.at(30), 9);
        expect(inchesAt(casework, 'C.Low.depth')).toBeCloseTo(Math.min(bellied.at(4), bellied.at(3.25)), 9);
        expect(bellied.at(30)).toBeLessThan(bellied.at(29.25));
    });

    it('where it goes forward again, the lower face is the shallower; where it turns within the board, the turn is', async () => {
        const hollow = circle([0, 16], [60, 16], -3);
        const casework = await built(
            under('from 16in at bottom; to 16in at top; arc in 3in', 'side Left, Right\nshelf High at 50in\nshelf Middle at 30 1/4in'),
        );
        expect(inchesAt(casework, 'C.High.depth')).toBeCloseTo(hollow.at(49.25), 9);
        expect(inchesAt(casework, 'C.Middle.depth')).toBeCloseTo(13, 9);
        expect(Math.min(hollow.at(29.5), hollow.at(30.25))).toBeGreaterThan(13.0002);
    });

    it('is asked for its depth at a height', async () => {
        const { requirements } = await built(under(arc, 'side Left, Right\nrequire Line.at(29in) > 0in'));
        const left = requirements[0]?.left?.quantity.value;
        expect(Number(left) / 25.4).toBeCloseTo(bellied.at(29), 9);
    });

    it('may be given by its radius', async () => {
        const { radius } = circle([0, 16], [60, 16], 3);
        const casework = await built(
            under(`from 16in at bottom; to 16in at top; radius out ${radius}in`, 'side Left, Right\nshelf Middle at 30in'),
        );
        expect(inchesAt(casework, 'C.Left.depth')).toBeCloseTo(19, 6);
    });

    it('a core is the circle inside its band, and a band is as long as the way round', async () => {
        const casework = await built(under(arc, 'side Left, Right { edge top, front Band }'));
        // the line is deepest above the bottom, where it is level: there a band takes off what it is thick
        expect(bellied.greatest).toBeGreaterThan(18);
        expect(inchesAt(casework, 'C.Left.core.width')).toBeCloseTo(bellied.greatest - 0.125, 9);
        expect(inchesAt(casework, 'C.Left.core.length')).toBeCloseTo(59.875, 9);
        // an edge routed to a template is cut 1/4in wider
        expect(inchesAt(casework, 'C.Left.rough.width')).toBeCloseTo(bellied.greatest - 0.125 + 0.25, 9);
        const lengths = casework.pieces
            .filter(({ part, role }) => part === 'C.Left' && role === 'band')
            .map(({ finished }) => Number(finished.length?.quantity.value) / 25.4);
        // the top edge under its band is at 59 7/8in; the front band goes on after it and up to 60in
        expect(lengths).toEqual([expect.closeTo(bellied.at(59.875, 0.125), 9), expect.closeTo(bellied.between(0, 60), 9)]);
    });

    it('where a line slopes, a band takes more off the depth of the core than it is thick: 1/8in over the cosine', async () => {
        const casework = await built(under('from 18in at bottom; to 12in at top', 'side Left, Right { edge front Band }'));
        // 6in in 60in: the cosine is 1 over the root of 1 + 1/100
        expect(inchesAt(casework, 'C.Left.core.width')).toBeCloseTo(18 - 0.125 * Math.hypot(1, 0.1), 9);
        const [band] = casework.pieces.filter(({ part, role }) => part === 'C.Left' && role === 'band');
        expect(Number(band?.finished.length?.quantity.value) / 25.4).toBeCloseTo(Math.hypot(60, 6), 9);
    });

    it('a nosing comes off the depth that the shelf has there', async () => {
        const casework = await built(under(arc, 'side Left, Right\nshelf Deck at 30in { edge front Nose }'));
        expect(inchesAt(casework, 'C.Deck.core.width')).toBeCloseTo(bellied.at(30) - 0.75, 9);
    });

    it('what is past it or short of it keeps its distance where the part is', async () => {
        const casework = await built(
            under(arc, 'top { edge front at 1in past case }\nside Left, Right\nshelf Deck at 30in { edge front at 2in short of Line }'),
        );
        expect(inchesAt(casework, 'C.top.depth')).toBeCloseTo(bellied.at(60) + 1, 9);
        expect(inchesAt(casework, 'C.Deck.depth')).toBeCloseTo(bellied.at(30) - 2, 9);
    });
});

describe('a bow over the height', () => {
    it('is the line that the geometry draws between the same ends', async () => {
        const casework = await built(
            under('from 18in at bottom; to 12in at top; bow out 2in', 'side Left, Right\nshelf Deck at 30in\nshelf Low at 12in'),
        );
        const bow = bowCurve(point(0, 18 * 25.4), point(60 * 25.4, 12 * 25.4), 2 * 25.4);
        if (!bow.ok) throw new Error(bow.refusal.reason);
        for (const [path, height] of [
            ['C.Deck.depth', 30],
            ['C.Low.depth', 12],
        ] as const) {
            const faces = [height, height - 0.75].map((one) => bow.curve.valueAt(one * 25.4).value);
            expect(Math.abs(inchesAt(casework, path) * 25.4 - Math.min(...faces))).toBeLessThan(1e-6);
        }
    });

    it('ends where it is said to end, at a part for one, and holds its last depth past that', async () => {
        const casework = await built(under('from 18in at bottom; to 12in at top.lower', 'top\nside Left, Right\nshelf Deck at 59in'));
        // a straight line from 18in to 12in over 59 1/4in
        expect(inchesAt(casework, 'C.Deck.depth')).toBeCloseTo(18 - (6 * 59) / 59.25, 9);
        expect(inchesAt(casework, 'C.top.depth')).toBeCloseTo(12, 9);
    });
});

describe('an arc over the width', () => {
    const counter = `${stock}
        case C of Ply { width 48in; height 34in; depth Bow
            curve Bow of depth over width {
                from 19in at left
                to   19in at right
                arc  out 3in
            }
            top { edge left, right, front at 1in past case }
            side Left, Right
            bottom at 4in { edge front Band }
            divider Post[2] above bottom clear 14in, rest, 14in as A, B, D
        }`;
    const plan = circle([0, 19], [48, 19], 3);

    it('has the radius of its chord and rise: (24^2 + 3^2) / (2 x 3) = 97 1/2in', () => expect(plan.radius).toBeCloseTo(97.5, 12));

    it('gives sides and dividers the depth of the circle where they are deepest, and openings their own widths', async () => {
        const casework = await built(counter);
        expect(inchesAt(casework, 'C.Left.depth')).toBeCloseTo(plan.at(0.75), 9);
        expect(inchesAt(casework, 'C.bottom.depth')).toBeCloseTo(22, 9);
        // Post[1] is at 14 3/4in, and deeper on its inner face
        expect(inchesAt(casework, 'C.Post[1].depth')).toBeCloseTo(plan.at(15.5), 9);
        expectSizes(casework, { 'C.A.width': '14in', 'C.B.width': '17in', 'C.overall.width': '50in' });
        // a counter that is 1in past it, square to the line: the circle that is 1in larger
        expect(inchesAt(casework, 'C.top.depth')).toBeCloseTo(23, 9);
    });

    it('a band is as long as the way round', async () => {
        const casework = await built(counter);
        const [band] = casework.pieces.filter(({ part, role }) => part === 'C.bottom' && role === 'band');
        expect(Number(band?.finished.length?.quantity.value) / 25.4).toBeCloseTo(plan.between(0.75, 47.25), 9);
    });
});

describe('a swept pair, one the mirror image of the other', () => {
    // As laid out on paper: 28in wide and 70in high; cap 3/4in thick over the sides; sides of two layers, 0.71in and 0.72in.
    const pair = `${stock}
        material Inside : plywood { thickness 3/4in   actual 0.72in ± 0.01in   sheet 48in x 96in   grain length }
        material Outside like Inside { actual 0.71in ± 0.01in }
        project "Mill Lane cases" {
            build 1 Cabinet as Near
            build 1 Cabinet mirrored as Far
        }
        case Cabinet {
            width  28in
            height 70in
            depth  Sweep
            curve Sweep of depth over height {
                from 17in at floor
                to   11in at top.lower
                bow  out 1 1/2in
            }
            top of Oak { edge front, right at 3/4in past case }
            side Plain at left {
                layer Outer of Outside
                layer Inner of Inside { leave back 1/4in for back }
                edge top, front Band
            }
            side Seen at right like Plain { layer Outer of Inside }
            every shelf { of Ply   edge front Nose }
            shelf Floor at 4in
            shelf Tier[4] above Floor clear 13in, 1, 1, 1, 1
            kick of Oak at 2 1/2in behind Floor.front
            back of Quarter
        }`;

    it('has the sizes that were worked out by hand', async () => {
        const casework = await built(pair);
        expectSizes(casework, {
            // under the cap: 70in less 3/4in
            'Near.Plain.length': '69 1/4in',
            'Near.Plain.thickness': '1.43in',
            'Near.Seen.thickness': '1.44in',
            // between the sides: 28in less 1.43in and 1.44in
            'Near.Floor.length': '25.13in',
            // from the floor at 4in to the cap at 69 1/4in: 65 1/4in less four shelves and 13in, in four shares of 12.3125in
            'Near.Tier[1].upper': '17 3/4in',
            'Near.Tier[2].upper': '30.8125in',
            'Near.Tier[4].upper': '56.9375in',
            'Near.Tier[4].clear': '12.3125in',
            'Near.kick.width': '3 1/4in',
            // into both inner layers of 0.72in
            'Near.back.width': '26.57in',
            'Near.back.length': '69 1/4in',
            // past the case on one side only
            'Near.top.length': '28 3/4in',
            'Near.overall.width': '28 3/4in',
            'Near.overall.height': '70in',
            'Near.top.left': '0in',
            'Near.top.right': '28 3/4in',
            'Far.top.length': '28 3/4in',
            'Far.top.left': '-3/4in',
            'Far.top.right': '28in',
            'Far.Plain.left': '26.57in',
        });
        expect(inchesAt(casework, 'Near.top.depth')).toBeCloseTo(11.75, 9);
        expect(inchesAt(casework, 'Near.overall.depth')).toBeCloseTo(17, 9);
        const hands = ['Near.Plain', 'Near.Seen', 'Near.top', 'Far.Plain', 'Far.Seen'].map((path) => casework.parts.get(path)?.hand);
        expect(hands).toEqual(['left', 'right', undefined, 'right', 'left']);
    });

    it('gives each shelf the depth of the line at its upper face, less the back and what the nosing takes', async () => {
        const casework = await built(pair);
        const bow = bowCurve(point(0, 17 * 25.4), point(69.25 * 25.4, 11 * 25.4), 1.5 * 25.4);
        if (!bow.ok) throw new Error(bow.refusal.reason);
        for (const [path, upper] of [
            ['Near.Tier[2]', 30.8125],
            ['Far.Tier[4]', 56.9375],
        ] as const) {
            const front = bow.curve.valueAt(upper * 25.4).value / 25.4;
            expect(inchesAt(casework, `${path}.depth`)).toBeCloseTo(front - 0.25, 6);
            expect(inchesAt(casework, `${path}.core.width`)).toBeCloseTo(front - 0.25 - 0.75, 6);
        }
    });
});

describe('what a line is drawn with', () => {
    const line = 'from 18in at bottom; to 12in at top; bow out 2in';
    const shop = 'shop { batten { thickness 3/16in   width 1in   species RedOak }   caul { height 2in   spacing 6in   force 400 lbf } }\n';
    const species = 'species RedOak : hardwood { modulusOfElasticity 1820000 psi   source "this test" }\n';
    const inches = ({ quantity }: Measure) => real.toNumber(quantity.value) / 25.4;
    const battenOf = (casework: Casework) => casework.curves[0]?.batten;

    it("is the shop's batten, with its wood among the things that are known", async () => {
        const casework = await built(`${species}${shop}${under(line, 'side Left, Right')}`);
        const batten = battenOf(casework);
        expect(batten?.thickness && inches(batten.thickness)).toBeCloseTo(3 / 16, 12);
        expect(batten?.length).toBeUndefined();
        expect(casework.things.get(batten?.species ?? '')?.name).toBe('RedOak');
        expect(casework.shop.caul?.height && inches(casework.shop.caul.height)).toBeCloseTo(2, 12);
        expect(casework.problems).toEqual([]);
    });

    it('or its own, which is nearer', async () => {
        const own = under(`${line}; batten { thickness 1/4in }`, 'side Left, Right');
        const batten = battenOf(await built(`${species}${shop}${own}`));
        expect(batten?.thickness && inches(batten.thickness)).toBeCloseTo(1 / 4, 12);
        expect(batten?.species).toBeUndefined();
    });

    it('and nothing where nothing is said', async () => {
        expect(battenOf(await built(under(line, 'side Left, Right')))).toBeUndefined();
    });
});
