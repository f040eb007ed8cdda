import { expect, test } from 'vitest';
import type { Casework, Caul, Layer } from '../../src/casework/index.js';
import { caulSheet } from '../../src/documents/cauls/caul-sheet.js';
import type { Cell, Group } from '../../src/documents/index.js';
import { quantity, real, unitNamed } from '../../src/quantity/index.js';
import { measure, property, size, span, thing } from './casework-builder.js';
import { bookcase } from './sample-casework.js';

const maple = thing('species', 'HardMaple', 'hardwood', {
    // Wood Handbook FPL-GTR-282, Table 5-3b: sugar maple
    modulusOfElasticity: property.measure('1830000 psi'),
    modulusOfRupture: property.measure('15800 psi'),
});
const walnut = thing('species', 'BlackWalnut', 'hardwood', {});
const ply = thing('material', 'LaminatedPly', 'plywood', { species: property.thing('BlackWalnut') });
const layer: Layer = {
    material: ply.id,
    thickness: measure('3/4in'),
    grain: 'length',
    size: size('60in', '20in', '3/4in'),
    box: undefined,
    span,
};
const side = 'Bookcase.Left';

function glued(caul: Partial<Caul> | undefined, layers = 2): Casework {
    const left = bookcase.parts.get(side)!;
    const part = {
        ...left,
        layers: Array.from({ length: layers }, () => layer),
        sizes: { ...left.sizes, rough: size('60in', '20in', '1 1/2in') },
    };
    const said = caul && { height: undefined, width: undefined, species: undefined, spacing: undefined, force: undefined, span, ...caul };
    return {
        ...bookcase,
        parts: new Map([[side, part]]),
        shop: { ...bookcase.shop, ...(said ? { caul: said } : {}) },
        things: new Map([...bookcase.things, ...[maple, walnut, ply].map((one) => [one.id, one] as const)]),
    };
}

const whole = { height: measure('2 1/2in'), width: measure('1 3/4in'), species: maple.id, spacing: measure('6in') };
const sheetOf = (casework: Casework) => caulSheet(casework, { units: 'in' })!;
const amountOf = (cell: Cell | undefined, unit: string) =>
    cell?.is === 'amount' ? real.toNumber(quantity.valueIn(cell.amount.quantity, unitNamed(unit))) : undefined;
const row = (group: Group | undefined, index: number) => group!.rows[index]!;

test('the clamps give twice their force over what a pair of cauls serves, and the crown is that of the beam tables', () => {
    const [panel, crown] = sheetOf(glued({ ...whole, force: measure('1000 lbf') })).groups;
    // 2000 lbf on 20in by 6in
    expect(amountOf(row(panel, 0).pressure, 'psi')).toBeCloseTo(2000 / 120, 9);
    // 5 w L^4 / (384 E I), w = 100 lbf/in (Wood Handbook FPL-GTR-282, Table 9-1)
    const inertia = (1.75 * 2.5 ** 3) / 12;
    const middle = (5 * 100 * 20 ** 4) / (384 * 1.83e6 * inertia);
    expect(amountOf(row(panel, 0).crown, 'in')).toBeCloseTo(middle, 9);
    expect(crown!.rows).toHaveLength(5);
    expect(amountOf(row(crown, 0).off, 'in')).toBeCloseTo(middle, 9);
    expect(amountOf(row(crown, 2).crown, 'in')).toBeCloseTo((57 / 80) * middle, 9);
    expect(amountOf(row(crown, 4).off, 'in')).toBe(0);
});

test('a set-up that presses far less than the glue wants is said to keep the panel flat', () => {
    const [panel] = sheetOf(glued({ ...whole, force: measure('1000 lbf') })).groups;
    // the least for hardwoods is 175 psi: 175 by 120 square inches is 21,000 lbf, half of it at each end
    expect(panel!.notes.join('\n')).toContain('asks 10500 lbf of the clamp at each end');
    expect(panel!.notes.join('\n')).toContain('give 17 psi, 10 % of the least. This set-up keeps the panel flat while the glue sets');
});

test('clamps that are strong enough are said to be', () => {
    const [panel] = sheetOf(glued({ ...whole, force: measure('12000 lbf') })).groups;
    expect(panel!.notes.join('\n')).toContain('give 200 psi: enough');
    // M = 1050 lbf/in by 20^2 / 8, over b h^2 / 6: 28,800 psi, and sugar maple breaks at 15,800
    expect(panel!.notes.join('\n')).toContain('The caul would break under it.');
});

test('without the force of the clamps the crown is for what the glue wants, and what is missing is said', () => {
    const [panel, crown] = sheetOf(glued(whole)).groups;
    expect(crown!.heading).toContain('for 175 psi');
    expect(panel!.notes.join('\n')).toContain('write `force` in the `caul` of the shop');
});

test('without its size or its wood it says what is missing', () => {
    const [panel] = sheetOf(glued({ height: measure('2in') })).groups;
    expect(panel!.notes).toEqual([
        'For the crown say `width` and `species` with its stiffness and `spacing` of the `caul` in the shop too.',
    ]);
});

test('a shop without cauls, or a design in which nothing is glued up, has no such document', () => {
    expect(caulSheet(glued(undefined), {})).toBeUndefined();
    expect(caulSheet(glued(whole, 1), {})).toBeUndefined();
});
