/** Designs with one fault each, made from one that has none: every fault is found by the rule that is meant for it, and by no other. */
import { describe, expect, it } from 'vitest';
import { analyseText } from './analysed.js';

const sound = `use casewright.species
use casewright.panels
material Mdf like FibreboardThreeQuarter
material Particle like Particleboard { thickness 3/4in   actual 3/4in ± 1/64in }
material Ply like SoftwoodPlywoodThreeQuarter
material Thin like FibreboardQuarter
material Oak : lumber { species RedOak   rough 4/4   planed 3/4in }
joint Glued { biscuit #20 count 2 inset 2in   glue }
joint Pegged { dowel 5/16in x 1 1/4in count 2 inset 3/4in into 3/8in   glue }
joint Backed { screw #6 x 1in spacing 6in }
goods Binder { size 3in wide 11in deep 12in high   mass 5lb }
shop { lift 50lb }
project "Office" {
    build 1 Press
    route { doorway 32in x 80in   corner 48in x 48in   ceiling 8ft }
}
case Press of Mdf {
    width 30in
    height 72in
    depth 13in
    anchor 70in high
    side Left, Right { edge back rabbet 1/2in deep for back }
    top
    bottom at 4in
    kick of Oak at 2in behind bottom.front
    shelf Row[4] above bottom clear equal { edge front nosing 3/4in of Oak { high 1 1/2in } }
    back of Thin
    join top, bottom, every shelf to every side with Glued
    join kick to bottom, every side with Pegged
    join back to every side, top, bottom, every shelf with Backed
    hold Binder on Row[1], Row[2]
    load 20 lb/ft2 on Row[3], Row[4]
    load 25 lb/ft2 on bottom
    allow unused-declaration because "every design below has these materials to hand"
}
`;

type Change = readonly [words: string, by: string];
const wide = (inches: string): Change => ['width 30in', `width ${inches}`];
const nosing = ' { edge front nosing 3/4in of Oak { high 1 1/2in } }';
const bare: Change = [nosing, ''];
const of = (material: string): Change => [`clear equal${nosing}`, `clear equal of ${material}`];
const few: Change = ['hold Binder on Row[1], Row[2]', 'hold 1 Binder on Row[1]'];
const unanchored: Change = ['    anchor 70in high\n', ''];

const shallow: readonly Change[] = [
    ['depth 13in', 'depth 9in'],
    ['11in deep', '8in deep'],
];

/** What is wrong with it, which changes make it so, and which rules find it. */
const faults: readonly (readonly [fault: string, changes: readonly Change[], codes: readonly string[]])[] = [
    ['a wide shelf of bare fibreboard sags', [wide('44in'), bare, ['Row[3], Row[4]', 'every Row']], ['STR-001']],
    ['a wide shelf of particleboard sags', [wide('40in'), of('Particle'), ['20 lb/ft2', '25 lb/ft2']], ['STR-001']],
    ['a wide shelf of plywood sags', [wide('46in'), of('Ply'), few, ['20 lb/ft2', '50 lb/ft2']], ['STR-001']],
    ['plywood with its grain across sags', [wide('36in'), [`clear equal${nosing}`, 'clear equal of Ply { grain width }']], ['STR-001']],
    [
        'one heavy thing on the middle of a long shelf makes it sag',
        [wide('44in'), of('Ply'), few, ['load 20 lb/ft2', 'load 150 lb']],
        ['STR-001'],
    ],
    ['a limit that the project sets is not kept', [['build 1 Press', 'build 1 Press\n    sag 1/2000']], ['STR-001']],
    ['a nosing that is too low does not help', [wide('46in'), ['high 1 1/2in', 'high 7/8in'], ['20 lb/ft2', '25 lb/ft2']], ['STR-001']],
    ['the sag of years is seen', [bare], ['STR-002']],
    [
        'the bottom without its kick sags in years',
        [
            ['    kick of Oak at 2in behind bottom.front\n', ''],
            ['    join kick to bottom, every side with Pegged\n', ''],
        ],
        ['STR-002'],
    ],
    ['a shelf breaks', [bare, few, ['load 20 lb/ft2', 'load 300 lb']], ['STR-003']],
    [
        'nothing says how stiff a shelf is',
        [
            [
                'material Thin',
                'material Plain : plywood { thickness 3/4in   sheet 48in x 96in   grain length   density 40 lb/ft3 }\nmaterial Thin',
            ],
            of('Plain'),
        ],
        ['STR-004'],
    ],
    ['goods are too high for their shelf', [['11in deep 12in high', '11in deep 16in high']], ['LOA-001']],
    ['goods are too deep for their shelf', [['11in deep 12in high', '14in deep 12in high']], ['LOA-001']],
    ['more goods than there is room for', [['hold Binder', 'hold 12 Binder']], ['LOA-001']],
    ['a high and shallow case stands by itself', [unanchored, ...shallow], ['STB-001']],
    ['a case of lighter boards stands by itself', [unanchored, ...shallow, ['case Press of Mdf', 'case Press of Particle']], ['STB-001']],
    [
        'a low one stands by itself',
        [
            unanchored,
            ...shallow,
            ['height 72in', 'height 40in'],
            ['shelf Row[4]', 'shelf Row[2]'],
            ['on Row[1], Row[2]', 'on Row[1]'],
            ['12in high', '9in high'],
            ['on Row[3], Row[4]', 'on Row[2]'],
        ],
        ['STB-001'],
    ],
    ['a top of solid wood is glued across to fibreboard', [['    top\n', '    top of Oak\n']], ['MOV-001']],
    ['a bottom of solid wood is glued between sides of fibreboard', [['bottom at 4in', 'bottom of Oak at 4in']], ['MOV-001']],
    ['shelves of solid wood are glued between sides of fibreboard', [of('Oak')], ['MOV-001']],
    [
        'a load along a wide bare shelf makes it sag',
        [wide('44in'), bare, ['Row[3], Row[4]', 'every Row'], ['load 20 lb/ft2', 'load 30 lb/ft'], ['load 25 lb/ft2 on bottom', '']],
        ['STR-001'],
    ],
    [
        'a pressure on it as well',
        [wide('40in'), of('Particle'), ['Row[3], Row[4]', 'every Row'], ['load 20 lb/ft2', 'load 35 psf']],
        ['STR-001'],
    ],
    [
        'in millimetres too',
        [wide('1100mm'), bare, ['build 1 Press', 'build 1 Press\n    units mm'], ['Row[3], Row[4]', 'every Row']],
        ['STR-001'],
    ],
    ['a nosing of fibreboard instead of oak', [wide('40in'), ['nosing 3/4in of Oak', 'nosing 3/4in of Mdf']], ['STR-002']],
    ['goods are too wide for their shelf', [['3in wide 11in deep', '30in wide 11in deep']], ['LOA-001']],
    ['in a damp house even its kick moves too far', [['build 1 Press', 'build 1 Press\n    climate 10% to 90%']], ['MOV-001']],
    [
        'a wide kick of solid wood is glued to fibreboard',
        [
            ['bottom at 4in', 'bottom at 9in'],
            ['11in deep 12in high', '11in deep 11in high'],
        ],
        ['MOV-001'],
    ],
    ['the hall behind the corner is narrow', [['48in x 48in', '60in x 12in']], ['HND-003']],
    ['it is wider than every doorway both ways', [['32in x 80in', '12in x 80in']], ['HND-001']],
    ['one of two doorways is too narrow', [['doorway 32in x 80in', 'doorway 32in x 80in   doorway 12in x 78in']], ['HND-001']],
    [
        'it comes in lying and does not stand up',
        [
            ['32in x 80in', '32in x 70in'],
            ['ceiling 8ft', 'ceiling 73in'],
        ],
        ['HND-002'],
    ],
    ['the ceiling is lower than the case', [['ceiling 8ft', 'ceiling 71in']], ['HND-002']],
    ['it does not turn the corner', [['48in x 48in', '14in x 14in']], ['HND-003']],
    ['two corners, and one is too tight', [['corner 48in x 48in', 'corner 48in x 48in   corner 15in x 13in']], ['HND-003']],
    ['one person lifts little, and it is heavy', [['lift 50lb', 'lift 25lb']], ['HND-004']],
    [
        'a wide one of thick boards is heavy',
        [
            ['side Left, Right {', 'side Left, Right layers 3 {'],
            ['lift 50lb', 'lift 40lb'],
        ],
        ['HND-004'],
    ],
];

async function codesOf(text: string): Promise<readonly string[]> {
    const { findings } = await analyseText(text);
    return [...new Set(findings.filter(({ allowed }) => allowed === undefined).map(({ code }) => code))].sort();
}

function faulty(changes: readonly Change[]): string {
    return changes.reduce((text, [words, by]) => {
        if (!text.includes(words)) throw new Error(`the design has no \`${words}\``);
        return text.replace(words, by);
    }, sound);
}

it('the design has no finding', async () => {
    const { findings } = await analyseText(sound);
    expect(findings.filter(({ allowed }) => allowed === undefined).map(({ code, message }) => `${code} ${message}`)).toEqual([]);
});

describe('is found by its own rule', () => {
    it.each(faults)('%s', async (_, changes, codes) => expect(await codesOf(faulty(changes))).toEqual(codes));
});
