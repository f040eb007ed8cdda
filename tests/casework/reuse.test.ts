/** Cases in cases, and what is said once for many: parameters, lets, repeats, conditions, `every`. Sizes worked out by hand. */
import { describe, it } from 'vitest';
import { analyseText } from './analysed.js';
import { expectSizes } from './sizes.js';
import { caseWith, stock } from './stock.js';

async function expectIn(text: string, sizes: Readonly<Record<string, string>>): Promise<void> {
    expectSizes((await analyseText(text)).casework, sizes);
}

describe('cases in cases', () => {
    const box = `case Box of Ply {
        side Left, Right
        shelf Mid at 10in
    }`;

    it('a case without a size is as large as the place it is put in', () =>
        expectIn(`${stock}${box}\ncase C { width 60in; height 30in; depth 12in\n case Unit[3] of Box width equal }`, {
            'C.Unit[1].width': '20in',
            'C.Unit[2].Left.left': '20in',
            'C.Unit[3].Mid.length': '18 1/2in',
            'C.Unit[3].Mid.left': '40 3/4in',
            'C.Unit[3].Mid.depth': '12in',
        }));

    it('they stand beside, on or before one another by shares', () =>
        expectIn(
            `${stock}${box}
            case C { width 60in; height 48in; depth 30in
                case Low of Box height 12in
                case High[2] of Box height 1, 2
            }`,
            {
                // Low closes the way up from the floor; 36in are left, in three
                'C.High[1].height': '12in',
                'C.High[2].height': '24in',
                'C.High[1].Mid.upper': '22in',
                'C.High[2].Mid.upper': '34in',
            },
        ));

    it('a case with sizes of its own keeps them; what its place says comes first', () =>
        expectIn(
            `${stock}
            case Box of Ply { width 20in; height 30in; depth 10in\n side Left, Right }
            case C { width 60in; height 48in; depth 12in
                case One of Box
                case Two of Box height 40in { edge left at One.right }
            }`,
            {
                'C.One.width': '20in',
                'C.One.height': '30in',
                'C.One.Left.depth': '10in',
                'C.Two.height': '40in',
                'C.Two.Right.right': '40in',
            },
        ));

    it('parts are put into every one of them, and by name into one', () =>
        expectIn(
            `${stock}${box}
            case C { width 60in; height 30in; depth 12in
                case Unit[2] of Box width 1, 2
                in every Unit {
                    shelf Low at 4in
                    shelf Top at 20in above Low
                }
                in Unit[2] { divider Post above Top at middle }
            }`,
            {
                'C.Unit[1].Low.length': '18 1/2in',
                'C.Unit[2].Low.length': '38 1/2in',
                'C.Unit[2].Top.upper': '24in',
                'C.Unit[2].Post.length': '6in',
                // half way between 20 3/4in and 59 1/4in, less half a board
                'C.Unit[2].Post.left': '39 5/8in',
            },
        ));

    it('how many parts there are may follow from the width a case has come to', () =>
        expectIn(
            `${stock}
            case Row(most: Length = 9in) of Ply {
                side Left, Right
                divider Post[ceil(width / most) - 1] of Quarter clear equal
            }
            case C { width 60in; height 30in; depth 12in\n case Unit[2] of Row width 1, 2 }`,
            {
                // 20in wide: three bays of a third of 18 1/2in less two posts of 1/4in
                'C.Unit[1].Post[1].left': '6 3/4in',
                'C.Unit[1].Post[2].left': '13in',
                // 40in wide, and 20in from the left: five bays of a fifth of 38 1/2in less four posts
                'C.Unit[2].Post[1].left': '28 1/4in',
                'C.Unit[2].Post[4].left': '51 1/2in',
            },
        ));

    it('room that is kept free in it is kept inside', () =>
        expectIn(
            `${stock}
            case Box of Ply { leave left 1in for scribe\n side Left, Right }
            case C { width 60in; height 30in; depth 12in
                case Unit[2] of Box width equal { leave right 2in for scribe }
            }`,
            { 'C.Unit[1].Left.left': '1in', 'C.Unit[1].Right.right': '28in', 'C.Unit[2].Left.left': '31in', 'C.Unit[2].width': '30in' },
        ));
});

describe('said once', () => {
    it('a parameter, a let, a repeat and a condition give the sizes that their numbers give', () =>
        expectIn(
            `${stock}
            project "P" { build 1 C(wide = 30in, feet = yes) }
            let gap = 2in
            case C(wide: Length = 40in, feet: Truth = no) of Ply {
                width wide; height 60in; depth 12in
                let step = (height - 4in) / 4
                side Left, Right
                repeat i in 1..3 { shelf Tier at 4in + i * step }
                if feet { kick at gap } else { shelf Wrong at 1in }
            }`,
            { 'C.Tier[1].upper': '18in', 'C.Tier[3].upper': '46in', 'C.Tier[2].length': '28 1/2in', 'C.kick.back': '2in' },
        ));

    it('`every` describes parts by kind, those in an opening, or by name: the narrower wins, and `except` leaves out', () =>
        expectIn(
            caseWith(`side Left, Right
                divider Post at middle as West, East
                every shelf except Bare { thickness 1in }
                every shelf in East { thickness 1/2in }
                shelf A in West at 10in
                shelf B in East at 10in
                shelf D in East at 20in thickness 1 1/4in
                shelf Bare in West at 30in`),
            {
                'C.West.A.thickness': '1in',
                'C.East.B.thickness': '1/2in',
                'C.East.D.thickness': '1 1/4in',
                'C.West.Bare.thickness': '3/4in',
            },
        ));

    it('what stands in the block of an opening speaks of that opening', () =>
        expectIn(
            caseWith(
                'side Left, Right\ndivider Post at middle as West, East\nin East {\n every shelf { thickness 1/2in }\n shelf B at 10in\n}\nshelf A in West at 10in',
            ),
            { 'C.West.A.thickness': '3/4in', 'C.East.B.thickness': '1/2in' },
        ));

    it('the nearer file decides: what it says of every shelf takes the place of what the shop says', async () => {
        const shop = `${stock}every shelf { thickness 1in   edge front Band }`;
        const design = `use "shop.case"\nevery shelf { thickness 1/2in }\ncase C of Ply { width 40in; height 60in; depth 12in\n side Left, Right\n shelf A at 10in }`;
        const { casework } = await analyseText(design, { 'shop.case': shop });
        expectSizes(casework, { 'C.A.thickness': '1/2in', 'C.A.core.width': '11 7/8in' });
    });
});
