import { describe, expect, test } from 'vitest';
import type { Hover, MarkupContent } from 'vscode-languageserver';
import { Editor, withCursor } from './editor.js';
import { design, shop } from './sample.js';

/** The hover over words of the sample, at the place marked in them: the words underlined, and what is said. */
async function hover(marked: string, text = design): Promise<string> {
    const editor = await Editor.open(withCursor(text, marked), { 'shop.case': shop });
    const found = (await editor.lsp.HoverProvider?.getHoverContent(editor.document(), editor.atCursor)) as Hover | undefined;
    return found?.range ? `${editor.underlined(found.range)}\n${(found.contents as MarkupContent).value}` : 'nothing';
}

describe('hover over a size', () => {
    test('a derived one: both systems, tolerance, the first steps of why', async () => {
        expect(await hover('require Tier[1].cl<|>ear')).toMatchInlineSnapshot(`
          "    require Tier[1].clear >= 15in because "an atlas"
                              ^^^^^
          **17 25/32in shy (451.6mm)**

          worst ±0.010in, likely ±0.006in

          \`\`\`text
          17.78in       from Tier[1].upper to Tier[2].lower
            40.28in     the lower face of Tier[2]  (design.case:26)
              22 1/2in  the upper face of Tier[1]
              17.78in   one of 3 shares of what is left between Floor.upper and Crown.lower  (design.case:26)
            22 1/2in    the upper face of Tier[1]
              21.78in   the lower face of Tier[1]  (design.case:26)
              0.72in    actual of Ply  (shop.case:6)
          \`\`\`

          **clear**

          Clear height above a shelf, up to what is over it."
        `);
    });

    test('a written one', async () => {
        expect(await hover('height 6<|>0in')).toMatchInlineSnapshot(`
          "    height 60in   anchor 57in high
                     ^^^^
          **60in (1524mm)**"
        `);
    });

    test('a load', async () => {
        const text = design.replace('    hold Atlas', '    load 25 lb/ft2 on Floor\n    hold Atlas');
        expect(await hover('25 l<|>b/ft2', text)).toMatchInlineSnapshot(`
          "    load 25 lb/ft2 on Floor
                   ^^^^^^^^^
          **25 lb/ft2 (122.06 kg/m2)**"
        `);
    });

    test('a value with a name, where it is used', async () => {
        expect(await hover('2 * g<|>ap')).toMatchInlineSnapshot(`
          "    shelf Crown at 2 * gap below top
                                 ^^^
          **1/4in (6.4mm)**

          \`\`\`casewright
          let gap = 1/4in
          \`\`\`"
        `);
    });

    test('a parameter, where it is used', async () => {
        expect(await hover('Tier[ti<|>ers] above')).toMatchInlineSnapshot(`
          "    shelf Tier[tiers] above Floor clear equal
                         ^^^^^
          **2**

          \`\`\`casewright
          tiers: Count = 2
          \`\`\`"
        `);
    });

    test('where a face is', async () => {
        const text = design.replace('    back of Ply4\n', '    back of Ply4\n    kick of Ply at 2in behind Floor.front\n');
        expect(await hover('behind Floor.fr<|>ont', text)).toMatchInlineSnapshot(`
          "    kick of Ply at 2in behind Floor.front
                                              ^^^^^
          **12in (304.8mm)**

          \`\`\`text
          12in      the front of Bookcase.Floor  (design.case:24)
            12in    depth of Bookcase  (design.case:16)
              12in  written  (design.case:16)
          \`\`\`

          **front**

          The front face or edge of a part."
        `);
    });
});

describe('hover over a part', () => {
    test('one: its sizes at every stage, material, edges, joints, mass, and whom it runs up to', async () => {
        expect(await hover('shelf Fl<|>oor at')).toMatchInlineSnapshot(`
          "    shelf Floor at 4in
                    ^^^^^
          **shelf** \`Bookcase.Floor\`, 2 in all

          |  | length | width | thickness |
          | --- | --- | --- | --- |
          | finished | 34 9/16in shy (877.8mm) | 11 25/32in full (299.6mm) | 23/32in full (18.3mm) |
          | core | 34 9/16in shy (877.8mm) | 11 21/32in full (296.4mm) | 23/32in full (18.3mm) |
          | rough | 34 9/16in shy (877.8mm) | 11 21/32in full (296.4mm) | 23/32in full (18.3mm) |

          - material: \`Ply\`
          - edges: front: band 1/8in of Oak, round 1/16in
          - joints: Fixed into Left, Right; BackFix from back
          - mass: 6.81lb (3.09kg)
          - runs up to: \`Left.inner\`, \`Right.inner\`"
        `);
    });

    test('a group', async () => {
        expect(await hover('shelf Ti<|>er[')).toMatchInlineSnapshot(`
          "    shelf Tier[tiers] above Floor clear equal
                    ^^^^
          **shelf** \`Bookcase.Tier[1..2]\`, 4 in all

          | finished | length | width | thickness |
          | --- | --- | --- | --- |
          | Tier[1..2] | 34 9/16in shy (877.8mm) | 11 25/32in full (299.6mm) | 23/32in full (18.3mm) |

          - material: \`Ply\`
          - edges: front: band 1/8in of Oak, round 1/16in
          - joints: Fixed into Left, Right; BackFix from back
          - mass: 6.81lb (3.09kg)
          - sag: 1/32in shy (0.6mm) at once and 1/16in shy (1.3mm) in years under 2 Atlas; 1/4in shy (6.1mm) at once is the limit"
        `);
    });

    test('one of a group', async () => {
        expect(await hover('hold Atlas on Ti<|>er[1]')).toMatchInlineSnapshot(`
          "    hold Atlas on Tier[1]
                            ^^^^
          **shelf** \`Bookcase.Tier[1]\`, 2 in all

          |  | length | width | thickness |
          | --- | --- | --- | --- |
          | finished | 34 9/16in shy (877.8mm) | 11 25/32in full (299.6mm) | 23/32in full (18.3mm) |
          | core | 34 9/16in shy (877.8mm) | 11 21/32in full (296.4mm) | 23/32in full (18.3mm) |
          | rough | 34 9/16in shy (877.8mm) | 11 21/32in full (296.4mm) | 23/32in full (18.3mm) |

          - material: \`Ply\`
          - edges: front: band 1/8in of Oak, round 1/16in
          - joints: Fixed into Left, Right; BackFix from back
          - mass: 6.81lb (3.09kg)
          - sag: 1/32in shy (0.6mm) at once and 1/16in shy (1.3mm) in years under 2 Atlas; 1/4in shy (6.1mm) at once is the limit
          - runs up to: \`Left.inner\`, \`Right.inner\`"
        `);
    });

    test('one without a name, where it is joined', async () => {
        expect(await hover('join ba<|>ck to')).toMatchInlineSnapshot(`
          "    join back to every side, every shelf with BackFix
                   ^^^^
          **back** \`Bookcase.back\`, 2 in all

          |  | length | width | thickness |
          | --- | --- | --- | --- |
          | finished | 60in (1524mm) | 35 5/16in shy (896.9mm) | 7/32in shy (5.2mm) |
          | core | 60in (1524mm) | 35 5/16in shy (896.9mm) | 7/32in shy (5.2mm) |
          | rough | 60in (1524mm) | 35 5/16in shy (896.9mm) | 7/32in shy (5.2mm) |

          - material: \`Ply4\`
          - joints: BackFix into Left, Right, Floor, Crown, Tier[1..2]
          - mass: 10.05lb (4.56kg)
          - runs up to: \`Left.inner\`, \`Right.inner\`"
        `);
    });

    test('a case', async () => {
        expect(await hover('case Book<|>case(')).toMatchInlineSnapshot(`
          "case Bookcase(tiers: Count = 2) {
               ^^^^^^^^
          **case**, built 2 times, of 7 parts

          |  | width | height | depth |
          | --- | --- | --- | --- |
          | \`Bookcase\` | 36in (914.4mm) | 60in (1524mm) | 12in (304.8mm) |"
        `);
    });

    test('of a design that stands in another: all of them', async () => {
        const text = `use "shop.case"
case Box of Ply { side Left, Right   top }
case Row { width 60in  height 20in  depth 10in
    case Unit[2] of Box width equal
}
`;
        expect(await hover('side Le<|>ft', text)).toMatchInlineSnapshot(`
          "case Box of Ply { side Left, Right   top }
                                 ^^^^
          **side** \`Row.Unit[1..2].Left\`

          | finished | length | width | thickness |
          | --- | --- | --- | --- |
          | Row.Unit[1..2].Left | 20in (508mm) | 10in (254mm) | 23/32in full (18.3mm) |

          - material: \`Ply\`
          - mass: 3.33lb (1.51kg)"
        `);
        expect(await hover('case Un<|>it[2]', text)).toMatchInlineSnapshot(`
          "    case Unit[2] of Box width equal
                   ^^^^
          **case**

          |  | width | height | depth |
          | --- | --- | --- | --- |
          | \`Row.Unit[1]\` | 30in (762mm) | 20in (508mm) | 10in (254mm) |
          | \`Row.Unit[2]\` | 30in (762mm) | 20in (508mm) | 10in (254mm) |"
        `);
    });
});

describe('hover over a thing', () => {
    test('a material: also what it takes over, and from which source', async () => {
        expect(await hover('side Left, Right of P<|>ly')).toMatchInlineSnapshot(`
          "    side Left, Right of Ply {
                                  ^^^
          **material** \`Ply\` : plywood

          The show plywood.

          |  | as written |  |
          | --- | --- | --- |
          | density | 40 lb/ft3 | 640.74 kg/m3 |
          | sheet | 48in x 96in | 1219.2mm x 2438.4mm |
          | grain | length |  |
          | source | common practice, no source: 37 to 43 lb/ft3 by species of the core |  |
          | species | WhiteOak |  |
          | thickness | 3/4in | 19.1mm |
          | actual | 0.720in ± 0.010in | 18.3mm |
          | modulusAlong | 840000 psi | 5791.6 MPa |"
        `);
    });

    test('a species of the library, in the shop file', async () => {
        const editor = await Editor.open(withCursor(shop, 'material Ply like HardwoodPlywood { species White<|>Oak'));
        const found = (await editor.lsp.HoverProvider?.getHoverContent(editor.document(), editor.atCursor)) as Hover;
        expect((found.contents as MarkupContent).value).toMatch(
            /\*\*species\*\* `WhiteOak` : hardwood[\s\S]*\| source \| Wood Handbook FPL-GTR-282/,
        );
    });

    test('goods', async () => {
        expect(await hover('hold At<|>las on')).toMatchInlineSnapshot(`
          "    hold Atlas on Tier[1]
                   ^^^^^
          **goods** \`Atlas\`

          |  | as written |  |
          | --- | --- | --- |
          | size | 12in wide 10in deep 15in high | 304.8mm, 254mm, 381mm |
          | mass | 4lb | 1.81kg |"
        `);
    });

    test('an edging', async () => {
        expect(await hover('edge front Lip<|>ped\n        edge')).toMatchInlineSnapshot(`
          "        edge front Lipped
                             ^^^^^^
          A thin strip, its arrises softened.

          \`\`\`casewright
          edging Lipped { band 1/8in of Oak   round 1/16in }
          \`\`\`"
        `);
    });

    test('a used file', async () => {
        expect(await hover('use "sh<|>op.case"')).toMatchInlineSnapshot(`
          "use "shop.case"
              ^^^^^^^^^^^
          **shop.case** offers

          - material: \`Ply\`, \`Ply4\`, \`Oak\`
          - edging: \`Lipped\`
          - joint: \`Fixed\`, \`BackFix\`"
        `);
    });
});

describe('hover over a word of the language', () => {
    test.each([
        'sh<|>elf Floor',
        'ab<|>ove Floor',
        'rab<|>bet 3/8in',
        'jo<|>in back',
        'edge ba<|>ck',
        'cl<|>ient',
        'clear eq<|>ual',
        'allow shelf-or<|>der',
    ])('%s', async (marked) => {
        const text = `${design}\nallow shelf-order because "so drawn"\n`;
        expect(await hover(marked, text)).toMatchSnapshot();
    });

    test('a choice is explained by its property', async () => {
        const text = design.replace('shelf Floor at 4in', 'shelf Floor at 4in grain length');
        expect(await hover('grain le<|>ngth', text)).toContain('Which way the grain of the part runs.');
    });

    test('nothing over blanks, signs and comments', async () => {
        expect(await hover('// How w<|>ide')).toBe('nothing');
        expect(await hover('case Bookcase(tiers: Count = 2) <|>{')).toBe('nothing');
    });

    test('a file that is half typed still answers', async () => {
        expect(await hover('shelf Fl<|>oor at', design.replace('hold Atlas on Tier[1]', 'hold Atlas on'))).toContain(
            '**shelf** `Bookcase.Floor`',
        );
    });
});

describe('hover over the words of curves', () => {
    const curved = `edition 1
use "shop.case"
case Rack of Ply {
    width 40in; height 60in; depth Sweep + Bow
    curve Sweep of depth over height {
        from 12in at bottom
        to   11in at 20in   fair through 12in at 8in
        to   10in at top   arc tangent
    }
    curve Bow of depth over width {
        from 0in at left
        to   0in at right
        arc  through 2in at middle
    }
    side Left, Right { edge front square }
    shelf Low at 20in { edge front bevelled }
}
shop { batten { thickness 3/16in   species WhiteOak }   caul { height 2in }   tilt 50deg }
`;

    test.each([
        ['f<|>air through', /^\*\*fair\*\*\n\nThe line of a batten that is pinned at both ends/],
        ['fair thr<|>ough', /The line of a batten/],
        ['a<|>rc tangent', /^\*\*arc\*\*\n\nA circle through both ends/],
        ['arc tan<|>gent', /going on from the piece before without a kink/],
        ['arc  thr<|>ough', /through a third point/],
        ['edge front squ<|>are', /^\*\*square\*\*\n/],
        ['edge front bev<|>elled', /^\*\*bevelled\*\*\n/],
        ['shop { bat<|>ten', /The strip that curves are drawn with/],
        ['ca<|>ul {', /Bearers across a panel/],
        ['ti<|>lt 50deg', /How far the blade of the table saw tilts/],
        ['depth Sw<|>eep + Bow', /curve Sweep of depth over height/],
        ['Sweep + B<|>ow', /curve Bow of depth over width/],
    ])('%s', async (marked, expected) => {
        const [, ...lines] = (await hover(marked, curved)).split('\n').slice(1);
        expect(lines.join('\n')).toMatch(expected);
    });
});
