/** Where parts begin and end: what is written first runs through, places, shares, openings. Sizes worked out by hand. */
import { describe, it } from 'vitest';
import { analyseText } from './analysed.js';
import { expectSizes } from './sizes.js';
import { caseWith, stock } from './stock.js';

async function expectIn(text: string, sizes: Readonly<Record<string, string>>): Promise<void> {
    expectSizes((await analyseText(text)).casework, sizes);
}

describe('what is written first runs through', () => {
    it('a top before the sides lies over them: they are 3/4in less than the 60in', () =>
        expectIn(caseWith('top\nside Left, Right'), {
            'C.top.length': '40in',
            'C.Left.length': '59 1/4in',
        }));

    it('a top after the sides fits between them: 40in less two sides of 3/4in', () =>
        expectIn(caseWith('side Left, Right\ntop'), {
            'C.top.length': '38 1/2in',
            'C.Left.length': '60in',
        }));

    it('a kick after its floor stops under it: 4in less 3/4in', () =>
        expectIn(caseWith('side Left, Right\nshelf Floor at 4in\nkick at 2in behind Floor.front'), {
            'C.kick.width': '3 1/4in',
            'C.kick.length': '38 1/2in',
            // the front of the floor is at 12in, so the front of the kick at 10in
            'C.kick.front': '10in',
            'C.kick.back': '9 1/4in',
        }));

    it('a divider after a shelf is above it or below it, as it says', () =>
        expectIn(caseWith('side Left, Right\nshelf Floor at 4in\ndivider Over above Floor at middle\ndivider Under below Floor at 10in'), {
            'C.Over.length': '56in',
            'C.Under.length': '3 1/4in',
            // the middle between 3/4in and 39 1/4in is 20in; half of 3/4in to the left of it
            'C.Over.left': '19 5/8in',
            // a bare distance is from the left of the room, which is that of the case
            'C.Under.left': '10in',
        }));

    it('a part in an opening runs from end to end of it, and goes by its path', () =>
        expectIn(
            caseWith(`side Left, Right
                divider Post[2] clear 10in, rest, 12in as West, Middle, East
                shelf One in West at 20in
                in Middle { shelf Two at 30in }
                shelf Three in East at 40in`),
            {
                'C.West.One.length': '10in',
                // 38 1/2in less 10in, 12in and two posts of 3/4in
                'C.Middle.Two.length': '15in',
                'C.East.Three.length': '12in',
                'C.Middle.width': '15in',
                'C.Middle.height': '60in',
            },
        ));

    it('a rail at the top of a case with a top lies under it, at the front; a stretcher at its back lies before it', () =>
        expectIn(caseWith('side Left, Right\nback of Quarter\ntop\nrail Nailer at top height 3in\nstretcher Brace at back depth 4in'), {
            // 60in less the top
            'C.Nailer.top': '59 1/4in',
            'C.Nailer.bottom': '56 1/4in',
            'C.Nailer.front': '12in',
            'C.Brace.back': '1/4in',
            'C.Brace.front': '4 1/4in',
            'C.Brace.upper': '59 1/4in',
        }));

    it('what stands past the front of the case is stopped by sides that reach the front', () =>
        expectIn(caseWith('side Left, Right\nshelf Deep at 30in { edge front at 1in past case }'), {
            'C.Deep.length': '38 1/2in',
            'C.Deep.width': '13in',
        }));
});

describe('room kept for what comes later', () => {
    it('a rabbet keeps as much as the back is thick, and the back goes into it', () =>
        expectIn(caseWith('side Left, Right { edge back rabbet 3/8in deep for back }\nshelf Floor at 4in\nback of Quarter'), {
            // between the sides 38 1/2in, and 3/8in into each
            'C.back.width': '39 1/4in',
            'C.back.length': '60in',
            'C.back.front': '1/4in',
            // 12in less the back
            'C.Floor.width': '11 3/4in',
            'C.Left.width': '12in',
        }));

    it('a groove stands in from the edge: what is before it stops at the back, not at the edge', () =>
        expectIn(
            caseWith('side Left, Right { edge back groove 1/4in deep for back { inset 1/2in } }\nshelf Floor at 4in\nback of Quarter'),
            {
                'C.back.width': '39in',
                'C.back.back': '1/2in',
                'C.back.front': '3/4in',
                'C.Floor.width': '11 1/4in',
            },
        ));

    it('a back that is laid on is written first, and everything stands before it', () =>
        expectIn(caseWith('back of Quarter\nside Left, Right\nshelf Floor at 4in'), {
            'C.back.width': '40in',
            'C.Left.width': '11 3/4in',
            'C.Floor.width': '11 3/4in',
        }));

    it('`leave` keeps what it says, at the sides that it names, for everything but what it is for', () =>
        expectIn(
            caseWith('leave left, right 1in for scribe\nleave back 2in for Pipes\nside Left, Right\nshelf Floor at 4in\npanel Pipes'),
            {
                'C.Left.left': '1in',
                'C.Right.right': '39in',
                // 40in less 1in at each end and two sides
                'C.Floor.length': '36 1/2in',
                'C.Floor.width': '10in',
                // it lies against what is kept for it: 2in less its thickness
                'C.Pipes.back': '1 1/4in',
                // the case is as large as it says all the same
                'C.width': '40in',
            },
        ));

    it('what is left free adds up, in the order of writing; cuts are from the edge of the board', () =>
        expectIn(
            caseWith(`leave back 2in for Pipes
                leave back 1in for Wires
                side Left, Right { edge back rabbet 1/4in deep for back }
                back of Quarter
                shelf Deck at 20in
                panel Pipes
                panel Wires`),
            {
                'C.Left.back': '3in',
                'C.back.front': '3 1/4in',
                'C.back.width': '39in',
                'C.Deck.back': '3 1/4in',
                'C.Pipes.front': '2in',
                'C.Wires.front': '3in',
            },
        ));

    it('two backs side by side lie in one plane, each in the rabbet of its side and up to the post between them', () =>
        expectIn(
            caseWith(`side Left at left { edge back rabbet 1/4in deep for WestBack }
                side Right at right { edge back rabbet 1/4in deep for EastBack }
                divider Post at middle as West, East
                back WestBack of Quarter in West
                back EastBack of Quarter in East
                shelf Deck in West at 20in`),
            {
                // an opening of 18 7/8in and 1/4in into the side
                'C.West.WestBack.width': '19 1/8in',
                'C.East.EastBack.width': '19 1/8in',
                'C.East.EastBack.front': '1/4in',
                'C.Right.width': '12in',
                'C.Post.width': '11 3/4in',
                'C.West.Deck.width': '11 3/4in',
            },
        ));

    it('a top that is cut for the back takes it in too', () =>
        expectIn(
            caseWith(
                'top { edge back rabbet 3/8in deep for back }\nside Left, Right { edge back rabbet 1/4in deep for back }\nback of Quarter',
            ),
            {
                // under the top 59 1/4in, and 3/8in into it
                'C.back.length': '59 5/8in',
                'C.back.width': '39in',
                'C.top.width': '12in',
            },
        ));

    it('room for a part that this build leaves out is not kept', () =>
        expectIn(
            `${stock}
            project "P" { build 1 C(backed = no) }
            case C(backed: Truth = yes) of Ply {
                width 40in; height 60in; depth 12in
                side Left, Right { edge back rabbet 3/8in deep for back }
                shelf Floor at 4in
                if backed { back of Quarter }
            }`,
            { 'C.Floor.width': '12in' },
        ));
});

describe('places', () => {
    it('a height is to the upper face of a shelf, from the floor of the case, whatever stands or is kept free there', () =>
        expectIn(
            caseWith(
                'side Left, Right { edge bottom groove 1/4in deep for bottom { inset 1in } }\nbottom of Quarter\nshelf Deck at 30in\nshelf High at 1/2in below top',
            ),
            {
                'C.bottom.lower': '1in',
                'C.Deck.upper': '30in',
                'C.Deck.clear': '28 3/4in',
                'C.High.upper': '59 1/2in',
            },
        ));

    it('above, below, left of and right of something are from the face that is turned that way', () =>
        expectIn(
            caseWith(`side Left, Right
                shelf Deck at 20in
                shelf Over at 6in above Deck
                shelf Under at 6in below Deck
                divider Post at 3in right of Left above Over
                divider Other at 3in left of Right above Over`),
            {
                'C.Over.upper': '26in',
                // its upper face is 6in below the lower face of Deck at 19 1/4in
                'C.Under.upper': '13 1/4in',
                'C.Post.left': '3 3/4in',
                'C.Other.right': '36 1/4in',
            },
        ));

    it('an edge is put past the case, short of it, or at something', () =>
        expectIn(
            caseWith(`top { edge left, right at 1in past case   edge front at 2in past case }
                side Left, Right { edge front at 3in short of case }
                shelf Deck at 20in { edge front at 8in }`),
            {
                'C.top.length': '42in',
                'C.top.width': '14in',
                'C.Left.width': '9in',
                'C.Deck.width': '8in',
                'C.overall.width': '42in',
                'C.overall.depth': '14in',
            },
        ));

    it('a stated size is measured from where the part stands', () =>
        expectIn(
            caseWith(`side Left, Right
                stretcher Front at top depth 4in
                stretcher Rear depth 4in { edge back at back }
                rail Top height 3in below Front
                shelf Short at 20in length 10in`),
            {
                'C.Front.back': '8in',
                'C.Rear.front': '4in',
                // a rail hangs from the top of its room: under the stretcher, at 59 1/4in
                'C.Top.bottom': '56 1/4in',
                'C.Rear.width': '4in',
                'C.Short.length': '10in',
                'C.Short.left': '3/4in',
            },
        ));

    it('the clear height of a shelf is up to the nearest lying board over it, to a case on it, or to the top of the room', () =>
        expectIn(
            `${stock}case Box of Ply { side Left, Right }
            case C of Ply { width 40in; height 60in; depth 12in
                side Left, Right
                shelf Low at 10in
                shelf Deck at 30in
                case Over of Box height 20in { edge bottom at 36in }
                shelf High at 58in
            }`,
            { 'C.Low.clear': '19 1/4in', 'C.Deck.clear': '6in', 'C.High.clear': '2in' },
        ));

    it('several parts take several heights, one each', () =>
        expectIn(caseWith('side Left, Right\nshelf Tier[3] at 10in, 20in, 25in'), {
            'C.Tier[1].upper': '10in',
            'C.Tier[3].upper': '25in',
            'C.Tier[2].clear': '4 1/4in',
        }));
});

describe('shares', () => {
    it('a length is a length, `rest` is what is left: 38 1/2in less 14in, 14in and two posts', () =>
        expectIn(caseWith('side Left, Right\ndivider Post[2] clear 14in, rest, 14in as A, B, D'), {
            'C.A.width': '14in',
            'C.B.width': '9in',
            'C.D.width': '14in',
            'C.Post[1].left': '14 3/4in',
            'C.Post[2].left': '24 1/2in',
        }));

    it('`equal` makes all openings alike: 60in less three shelves of 3/4in, in four', () =>
        expectIn(caseWith('side Left, Right\nshelf Tier[3] clear equal as P, Q, R, S'), {
            'C.P.height': '14.4375in',
            'C.S.height': '14.4375in',
            'C.Tier[1].lower': '14.4375in',
            'C.Tier[2].clear': '14.4375in',
        }));

    it('bare numbers are weights: 56in less three shelves and 12in is 41 3/4in, in five parts', () =>
        expectIn(caseWith('side Left, Right\nshelf Floor at 4in\nshelf Tier[3] above Floor clear 12in, 1, 2, 2 as P, Q, R, S'), {
            // 56in less three shelves of 3/4in and 12in: 41 3/4in, in five parts of 8.35in
            'C.P.height': '12in',
            'C.Q.height': '8.35in',
            'C.R.height': '16.7in',
            'C.S.height': '16.7in',
        }));

    it('they divide what earlier parts have left, and an opening that is divided again', () =>
        expectIn(
            caseWith(`side Left, Right
                top
                shelf Floor at 4in
                divider Post above Floor at middle as West, East
                in East { shelf Half at 20in as Low, High }
                in High { divider Third clear 1, 1 as I, II }`),
            {
                'C.West.height': '55 1/4in',
                // the right half: 39 1/4in less 20 3/8in
                'C.East.width': '18 7/8in',
                // an opening begins on Floor, at 4in: 20in above that less 3/4in
                'C.East.Low.height': '19 1/4in',
                'C.East.High.height': '35 1/4in',
                // 18 7/8in less a post, in two
                'C.East.High.II.width': '9 1/16in',
            },
        ));
});
