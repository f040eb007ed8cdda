/** What a text becomes: names resolved, words in their places, nothing computed. */
import type { Design, PartStatement, Span, Statement } from 'casewright-shared/casework';
import { describe, expect, test } from 'vitest';
import { FilesInMemory, lowerText } from '../files-in-memory.js';
import { damageKinds } from '../grammar/damage.js';

const materials = `material Ply : plywood { thickness 3/4in }
edging Lipped { band 1/8in of Ply }
joint Fixed { glue }
`;

async function lowerCase(body: string, before = materials): Promise<{ statements: readonly Statement[]; design: Design; text: string }> {
    const text = `${before}case K of Ply {\n${body}\n}\n`;
    const { design, problems } = await lowerText(text);
    expect(problems).toEqual([]);
    return { statements: design.cases.at(-1)!.statements, design, text };
}

function part(statement: Statement | undefined): PartStatement {
    if (statement?.is !== 'part') throw new Error(`a ${statement?.is} stands where a part was expected`);
    return statement;
}

/** A value without its spans, for comparisons. */
function bare(value: unknown): unknown {
    if (Array.isArray(value)) return value.map(bare);
    if (typeof value !== 'object' || value === null) return value;
    return Object.fromEntries(
        Object.entries(value).flatMap(([key, inner]) => (/span$/i.test(key) || key === 'quantity' ? [] : [[key, bare(inner)]])),
    );
}

describe('parts', () => {
    test('the head is the first line of the body', async () => {
        const { statements } = await lowerCase(
            'shelf A at 4in of Ply { edge front Lipped }\nshelf B {\n at 4in\n of Ply\n edge front Lipped\n}',
        );
        const [a, b] = statements.map((one) => bare(part(one).phrases));
        expect(a).toEqual(b);
        expect(a).toMatchObject({
            at: [{ distance: { is: 'measure', text: '4in' } }],
            of: { is: 'name', id: 'design.case#Ply' },
            edges: [{ edges: [{ name: 'front' }], treatment: { recipe: 'design.case#Lipped' } }],
        });
    });

    test('several names, counts, indices, and parts that are called by their kind', async () => {
        const { statements, design } = await lowerCase('side Left, Right\nshelf Tier[i of 4] at i * 10in\nback\nbottom');
        expect(statements.map((one) => bare(part(one).parts))).toMatchObject([
            [
                { id: 'design.case#K.Left', unnamed: false },
                { id: 'design.case#K.Right', unnamed: false },
            ],
            [{ id: 'design.case#K.Tier', count: { text: '4' }, index: { id: 'design.case#K.Tier.i' } }],
            [{ id: 'design.case#K.back', name: 'back', unnamed: true }],
            [{ id: 'design.case#K.bottom', name: 'bottom', unnamed: true }],
        ]);
        expect(part(statements[1]).phrases.at).toMatchObject([
            { distance: { is: 'binary', left: { is: 'name', id: 'design.case#K.Tier.i' } } },
        ]);
        expect(design.declarations.get('design.case#K.Tier.i')).toMatchObject({ is: 'index', name: 'i' });
    });

    test('clauses after a property belong to the part, but for those that the property takes', async () => {
        const { statements } = await lowerCase(
            'shelf A { width 30in at 4in of Ply }\ncurve S of depth over height {\n from 17in at bottom\n to 12in at top\n bow in 1in\n}',
        );
        expect(bare(part(statements[0]).phrases)).toMatchObject({
            at: [{ distance: { text: '4in' } }],
            of: { id: 'design.case#Ply' },
            properties: [{ name: 'width', at: [] }],
        });
        const curve = statements[1];
        expect(curve?.is === 'declare' && bare(curve.declaration)).toMatchObject({
            of: { is: 'word', word: 'depth' },
            over: 'height',
            properties: [
                { name: 'from', value: { text: '17in' }, at: [{ distance: { is: 'word', word: 'bottom' } }] },
                { name: 'to', at: [{ distance: { word: 'top' } }] },
                { name: 'bow', value: { is: 'worded', word: { word: 'in' }, value: { text: '1in' } } },
            ],
        });
    });

    test('`left of` a part is a way; `left`, and `of` a material, are two things', async () => {
        const { statements } = await lowerCase(
            'divider Post at 9in\npanel A at left of Post\npanel B at left of Ply\npanel C at 1in left of Post.left',
        );
        const [, a, b, c] = statements.map((one) => bare(part(one).phrases) as { at: unknown[]; of?: unknown });
        expect(a).toMatchObject({ at: [{ relation: 'left of', target: { is: 'name', id: 'design.case#K.Post' } }] });
        expect(a?.of).toBeUndefined();
        expect(b).toMatchObject({ at: [{ distance: { is: 'word', word: 'left' } }], of: { id: 'design.case#Ply' } });
        expect(c).toMatchObject({ at: [{ distance: { text: '1in' }, relation: 'left of', target: { is: 'member', member: 'left' } }] });
    });

    test('where it could be both, it is said', async () => {
        const { problems } = await lowerText('case K(stuff) {\n width 3in\n panel A at left of stuff\n}\n');
        expect(problems.map(({ code, message }) => `${code} ${message}`)).toEqual([
            'PLC-001 `at left of stuff` can be read in two ways: a place beside `stuff`, or a part at the left that is made of it',
        ]);
    });

    test('openings, rooms, leaves, layers, like, mirrored', async () => {
        const { statements } = await lowerCase(
            [
                'side Wall { layer Outer of Ply\n leave back 1/4in for back }',
                'side Show like Wall mirrored { layer Outer of Ply }',
                'divider Post[2] clear 14in, rest, 14in as A, B, C',
                'shelf Low in B above Post',
                'back',
                'in A, C { shelf High at 3in with Fixed }',
                'require Show.Outer.thickness > 0in and High.thickness > 0in',
            ].join('\n'),
        );
        expect(bare(part(statements[0]))).toMatchObject({
            phrases: { leaves: [{ faces: [{ name: 'back' }], size: { text: '1/4in' }, for: { is: 'name', id: 'design.case#K.back' } }] },
            statements: [{ is: 'part', kind: 'layer', parts: [{ id: 'design.case#K.Wall.Outer' }] }],
        });
        expect(bare(part(statements[1]).phrases)).toMatchObject({ like: { id: 'design.case#K.Wall' }, mirrored: true });
        expect(bare(part(statements[2]).phrases)).toMatchObject({
            openings: [{ id: 'design.case#K.A' }, { id: 'design.case#K.B' }, { id: 'design.case#K.C' }],
            properties: [
                { name: 'clear', value: { is: 'list', items: [{ text: '14in' }, { is: 'word', word: 'rest' }, { text: '14in' }] } },
            ],
        });
        expect(bare(part(statements[3]).phrases)).toMatchObject({ inside: { id: 'design.case#K.B' }, room: { relation: 'above' } });
        expect(bare(statements[5])).toMatchObject({
            is: 'in',
            selectors: [{ id: 'design.case#K.A' }, { id: 'design.case#K.C' }],
            statements: [{ parts: [{ id: 'design.case#K.A.High' }], phrases: { joint: { recipe: 'design.case#Fixed' } } }],
        });
        expect(bare(statements[6])).toMatchObject({
            condition: { left: { left: { receiver: { is: 'member', member: 'Outer', id: 'design.case#K.Show.Outer' } } } },
        });
    });

    test('a part placed by the word that is its own kind is put against the room', async () => {
        const { statements } = await lowerCase('bottom at bottom\nshelf A at 2in above bottom');
        expect(part(statements[0]).phrases.at).toMatchObject([{ distance: { is: 'word', word: 'bottom' } }]);
        expect(part(statements[1]).phrases.at).toMatchObject([{ target: { is: 'name', id: 'design.case#K.bottom' } }]);
    });
});

describe('cases in cases', () => {
    const box = `${materials}case Box of Ply {\n shelf Fixed2 at 3in\n}\n`;

    test('the parts of the design are visible in `in every` and after the dot', async () => {
        const { statements } = await lowerCase(
            'case Unit[3] of Box\nin every Unit {\n shelf Low at 2in above Fixed2\n join Low to Fixed2 with Fixed\n}\nrequire Unit[1].Fixed2.thickness > 0in',
            box,
        );
        const inside = statements[1];
        expect(inside?.is === 'in' && bare(inside.statements)).toMatchObject([
            { parts: [{ id: 'design.case#K.Unit.Low' }], phrases: { at: [{ target: { is: 'name', id: 'design.case#Box.Fixed2' } }] } },
            { is: 'join', right: [{ id: 'design.case#Box.Fixed2' }] },
        ]);
        expect(bare(statements[2])).toMatchObject({
            condition: { left: { receiver: { id: 'design.case#Box.Fixed2', receiver: { is: 'item' } } } },
        });
    });

    test('what an `every` names: a kind before a group', async () => {
        const { statements } = await lowerCase(
            'side shelf\nshelf Tier[2] at 3in, 9in\nevery shelf { grain length }\nevery Tier except Tier[1] { grain width }',
        );
        expect(bare(statements[2])).toMatchObject({ selectors: [{ is: 'every', kind: 'shelf' }] });
        expect(bare(statements[3])).toMatchObject({
            selectors: [{ is: 'every', target: { id: 'design.case#K.Tier' }, except: [{ is: 'item' }] }],
        });
    });

    test('a build with a name', async () => {
        const { design, problems } = await lowerText(
            `${box}project "P" {\n build 2 Box as Right\n build Box mirrored as Left\n}\nallow EDG-003 on Right.Fixed2 because "hidden"\n`,
        );
        expect(problems).toEqual([]);
        expect(bare(design.project?.builds)).toMatchObject([
            { count: 2, design: 'design.case#Box', mirrored: false, name: 'Right' },
            { count: 1, mirrored: true, name: 'Left' },
        ]);
        expect(bare(design.allowances)).toMatchObject([
            { rule: 'EDG-003', on: [{ is: 'member', id: 'design.case#Box.Fixed2' }], because: 'hidden' },
        ]);
    });
});

describe('the whole', () => {
    test('spans are the words themselves, in UTF-16 offsets', async () => {
        const text = `// 𝛑 takes two units\nmaterial Nuß : plywood { thickness 1 1/4in }\n\n/// The lowest.\n/// Of all.\ncase Größe of Nuß {\n    shelf   Tier[3] at 4in\n}\n`;
        const { design } = await lowerText(text);
        const words = ({ start, end }: Span) => text.slice(start, end);
        const material = design.declarations.get('design.case#Nuß')!;
        expect([words(material.nameSpan), words(material.span)]).toEqual(['Nuß', 'material Nuß : plywood { thickness 1 1/4in }']);
        const property = material.is === 'fact' ? material.properties[0]! : undefined;
        expect(property && [words(property.nameSpan), words(property.span), words(property.value!.span)]).toEqual([
            'thickness',
            'thickness 1 1/4in',
            '1 1/4in',
        ]);
        const [design1] = design.cases;
        expect(design1?.doc).toBe('The lowest.\nOf all.');
        const tier = part(design1?.statements[0]);
        expect([words(tier.kindSpan), words(tier.parts[0]!.nameSpan), words(tier.parts[0]!.span)]).toEqual(['shelf', 'Tier', 'Tier[3]']);
    });

    test('the shop and its defaults come from the files that are used, the nearest last', async () => {
        const files = new FilesInMemory({
            'a.case': 'use "shop.case"\nevery shelf { grain length }\ncase A { width 3in }\n',
            'shop.case': 'use "base.case"\nshop { kerf 1/8in }\nevery shelf { grain width }\ncase Helper { width 3in }\n',
            'base.case': 'every shelf { show both }\nrequire 1in < 2in because "so it is"\n',
        });
        const { design, problems } = await files.lower('a.case');
        expect(problems).toEqual([]);
        expect(design.shop?.id).toBe('shop.case#shop');
        expect(design.defaults.map(({ span }) => span.file)).toEqual(['base.case', 'shop.case', 'a.case']);
        expect(design.cases.map(({ name }) => name)).toEqual(['A']);
        expect(design.requirements).toHaveLength(1);
    });

    test('what nothing refers to is not used', async () => {
        const { design } = await lowerCase('side Left, Right\nshelf A at 4in\njoin A to Left with Fixed');
        expect([...design.used].sort()).toEqual(['design.case#Fixed', 'design.case#K.A', 'design.case#K.Left', 'design.case#Ply']);
    });
});

describe('broken text keeps its healthy rest', () => {
    test('a broken line costs its own statement', async () => {
        const { design } = await lowerText(
            `${materials}case K of Ply {\n    width 30in\n    shelf A at\n    shelf B at 4in of Ply\n    join A, B to with Fixed\n    require B.thickness >\n}\n`,
        );
        const statements = design.cases[0]!.statements;
        expect(statements.map((one) => (one.is === 'part' ? one.parts[0]?.name : one.is))).toEqual(['A', 'B', 'require']);
        const last = statements.at(-1);
        expect(last?.is === 'require' && last.condition).toMatchObject({ is: 'binary', right: { is: 'broken' } });
    });

    test('names of broken lines are not unknown', async () => {
        const { problems } = await lowerText(
            'case K {\n    width 30in\n    shelf ] Tier at 4in\n    join Tier to every side with { glue }\n    hold Pot on Tier\n}\ngoods * Pot { size 1in x 1in x 1in }\n',
        );
        expect(problems).toEqual([]);
    });
});

describe('damage', () => {
    const text = [
        'use "shop.case"',
        'project "Kiln Lane" { client "Kiln Lane Pottery"; build 2 Pottery }',
        'goods Teapot { size 9in wide 6in deep 7in high   mass 2.5lb }',
        'case Pottery {',
        '    width  40in   height 66in   depth Sweep',
        '    curve Sweep of depth over height {',
        '        from 17 1/2in at bottom',
        '        to   12in     at top',
        '        bow  out 1 1/8in',
        '    }',
        '    side Left, Right of Ply layers 2 {',
        '        edge top   Lipped',
        '        edge back  rabbet 1/2in deep for back',
        '    }',
        '    every shelf { of Ply   edge front Lipped }',
        '    shelf Floor at 4in',
        '    shelf Tier[i of 3] above Floor clear 13in, 1, 1, 1',
        '    back of Ply',
        '    join back to every side, every shelf with Fixed',
        '    hold Teapot on Tier[1], Tier[2]',
        '    require Tier[1].clear >= 11in because "a teapot and a hand"',
        '}',
    ];

    // Each line is broken in each way. What is found on the broken line is at most one thing; what is found elsewhere is counted.
    test('one mistake gives one report, nearly always on its own line', async () => {
        const files = new FilesInMemory({ 'a.case': text.join('\n'), 'shop.case': materials });
        expect(await files.problems('a.case')).toEqual([]);
        let tries = 0;
        let elsewhere = 0;
        let several = 0;
        for (const { damage } of damageKinds) {
            for (const [index, line] of text.entries()) {
                for (const broken of damage(line).filter((one) => one !== line)) {
                    const changed = text.with(index, broken).join('\n');
                    await files.change('a.case', changed);
                    const problems = await files.problems('a.case');
                    const lines = problems.map(({ span }) => changed.slice(0, span.start).split('\n').length - 1);
                    expect(problems.every(({ span }) => span.start <= span.end && span.end <= changed.length)).toBe(true);
                    tries++;
                    if (lines.some((one) => one !== index)) elsewhere++;
                    if (lines.filter((one) => one === index).length > 1) several++;
                }
            }
        }
        expect(tries).toBeGreaterThan(250);
        expect(elsewhere / tries).toBeLessThan(0.06);
        expect(several / tries).toBeLessThan(0.02);
    }, 60_000);

    test('a value of very many operations is refused, not crashed on', async () => {
        for (const value of [`1in${' + 1in'.repeat(3000)}`, `b${'.c'.repeat(3000)}`, `${'('.repeat(3000)}1in${')'.repeat(3000)}`]) {
            const problems = await new FilesInMemory({ 'a.case': `let b = 1in\nlet a = ${value}\n` }).problems('a.case');
            expect(problems.map(({ code }) => code)).toEqual(['TXT-001']);
        }
    });
});
