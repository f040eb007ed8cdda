/**
 * Dividing a length: `clear 14in, rest, 14in`. A length is a length, a bare number is a share of what remains, `rest` is one share, and
 * `equal` gives each opening one. Shelves and dividers divide by the openings between them; cases in a row by their own widths.
 */

import { tolerance } from '../../geometry/index.js';
import { dimension, formatNumber, type Quantity, quantity, Rational, type Real, real } from '../../quantity/index.js';
import type { Expression, PartStatement, Property } from '../design/design.js';
import type { Axis } from '../model/casework.js';
import type { Measure } from '../model/measure.js';
import type { BodyContext } from './body.js';
import { Cell } from './cell.js';
import type { Construction } from './construction.js';
import { evaluate, expectLength } from './evaluate.js';
import { axes, facesOfAxis, kindOfPart, nameOfFace } from './kinds.js';
import { derived, isPositive, minus, numberOf, plus, total } from './measures.js';
import type { PlacedPart } from './placed-part.js';
import type { Asker, Room, Spot } from './room.js';
import { type Extents, follow } from './run.js';
import { sayIn, sayLength } from './say-length.js';
import type { Scope } from './scope.js';
import { describeValue } from './value.js';

type Item = { readonly is: 'length'; readonly measure: Measure } | { readonly is: 'share'; readonly parts: Real };

/** Places the parts of a statement by its list of shares, if it has one, and gives the openings that they make, in order. */
export function divideOpening(
    construction: Construction,
    statement: PartStatement,
    parts: readonly PlacedPart[],
    context: BodyContext,
): readonly Room[] {
    const kind = kindOfPart(statement.kind);
    const [first] = parts;
    if (!first) return [];
    const region = regionOf(construction, first, kind?.thickness);
    if (!kind) {
        shareAmongCases(construction, statement, parts, region, context.scope);
        return [];
    }
    const clear = statement.phrases.properties.find((one) => one.name === 'clear');
    if (clear?.value) {
        const division = new Division(construction, clear, clear.value, parts, region, kind.thickness, context.scope, 'between');
        for (const [index, part] of parts.entries()) part.shared = division.placeOf(index);
    }
    return kind.thickness === 'y' ? [] : openingsBetween(statement, parts, region, kind.thickness, context);
}

const sizesOfCases: readonly (readonly [string, Axis])[] = [
    ['width', 'x'],
    ['height', 'z'],
    ['depth', 'y'],
];

/** `case Unit[3] of Box width equal`: cases in a row, on one another, or one before the other. */
function shareAmongCases(
    construction: Construction,
    statement: PartStatement,
    cases: readonly PlacedPart[],
    region: Cell<Extents>,
    scope: Scope,
): void {
    const clear = statement.phrases.properties.find((one) => one.name === 'clear');
    if (clear) {
        construction.report('PLC-006', {
            span: clear.span,
            message: 'cases divide a room by their own sizes, not by what is clear between them',
            hint: 'write `width equal`, or a size for each: `width 20in, rest, 20in`',
        });
    }
    const said = sizesOfCases.flatMap(([name, axis]) => {
        const property = statement.phrases.properties.find((one) => one.name === name);
        return property?.value ? [{ axis, property, value: property.value }] : [];
    });
    // several cases divide their width even where one size is given: that is one too few, and is reported
    const width = cases.length > 1 ? said.find(({ axis }) => axis === 'x') : undefined;
    const divided = said.find(({ value }) => isList(value)) ?? width;
    if (!divided) return;
    const { axis, property, value } = divided;
    const division = new Division(construction, property, value, cases, region, axis, scope, 'own');
    for (const [index, part] of cases.entries()) part.shared = division.placeOf(index);
}

function isList(value: Expression): boolean {
    return value.is === 'list' || (value.is === 'word' && value.word === 'equal');
}

/** The room that is there to be divided: what earlier parts have left of it. */
function regionOf(construction: Construction, first: PlacedPart, axis: Axis | undefined): Cell<Extents> {
    return new Cell(construction, `the room for ${first.name}`, first.declaration.nameSpan, () => {
        const start = {} as Extents;
        for (const one of axes) {
            const [lo, hi] = [first.room.face(facesOfAxis[one].lo, first), first.room.face(facesOfAxis[one].hi, first)];
            if (!lo || !hi) return undefined;
            start[one] = { lo, hi };
        }
        const { extents, unclear } = follow({
            extents: start,
            free: axes,
            fixed: new Set(),
            from: first.room.from,
            through: [],
            obstacles: first.build.partsBefore(first),
            name: first.path,
        });
        if (unclear && unclear.axis === axis) {
            const [before, after] = axis === 'z' ? ['below', 'above'] : ['left of', 'right of'];
            first.report('PLC-001', `\`${unclear.obstacle.name}\` stands in the middle of what is divided here`, {
                hint:
                    axis === 'z'
                        ? `say \`${after} ${unclear.obstacle.name}\` or \`${before} ${unclear.obstacle.name}\``
                        : 'put it in one of the openings with `in`',
                needed: 'one opening',
            });
        }
        return extents;
    });
}

class Division {
    private readonly items: Cell<readonly Item[]>;
    private readonly share: Cell<Measure>;
    private readonly ends: Cell<Spot>[] = [];
    private placed = 0;
    private placedIn = 0;

    constructor(
        private readonly construction: Construction,
        private readonly property: Property,
        private readonly list: Expression,
        private readonly parts: readonly PlacedPart[],
        private readonly region: Cell<Extents>,
        private readonly axis: Axis,
        private readonly scope: Scope,
        /** Whether the list is of the openings between the parts, or of the parts themselves. */
        private readonly of: 'between' | 'own',
    ) {
        const name = `the shares of ${parts[0]?.declaration.name ?? ''}`;
        this.items = new Cell(construction, name, property.span, () => this.readItems());
        this.share = new Cell(construction, name, property.span, () => this.computeShare());
        for (const index of parts.keys()) {
            this.ends.push(new Cell(construction, parts[index]?.path ?? '', property.span, () => this.computeLow(index)));
        }
    }

    placeOf(index: number): NonNullable<PlacedPart['shared']> {
        return { axis: this.axis, lo: () => this.ends[index]?.value, hi: () => this.highOf(index) };
    }

    private get needed(): number {
        return this.of === 'between' ? this.parts.length + 1 : this.parts.length;
    }

    private readItems(): readonly Item[] | undefined {
        const { list } = this;
        if (list.is === 'word' && list.word === 'equal')
            return Array.from({ length: this.needed }, () => ({ is: 'share', parts: Rational.one }));
        const expressions = list.is === 'list' ? list.items : [list];
        if (expressions.length !== this.needed) {
            const what = this.of === 'between' ? 'opening' : 'size';
            const counted = (count: number) => `${count} ${what}${count === 1 ? '' : 's'}`;
            return this.construction.report('PLC-006', {
                span: this.list.span,
                message:
                    this.of === 'between'
                        ? `${this.parts.length === 1 ? 'one part makes' : `${this.parts.length} parts make`} ${this.needed} openings; ${expressions.length === 1 ? 'one is' : `${expressions.length} are`} given`
                        : `${this.parts.length} cases stand here; ${expressions.length === 1 ? 'one size is' : `${expressions.length} sizes are`} given`,
                hint: 'give one entry for each, or `equal`',
                found: counted(expressions.length),
                needed: counted(this.needed),
            });
        }
        const items: Item[] = [];
        for (const expression of expressions) {
            const item = this.readItem(expression);
            if (!item) return undefined;
            items.push(item);
        }
        return items;
    }

    private readItem(expression: Expression): Item | undefined {
        const value = evaluate(this.construction, expression, this.scope);
        if (!value) return undefined;
        if (value.is === 'word' && (value.word === 'rest' || value.word === 'equal')) return { is: 'share', parts: Rational.one };
        if (value.is !== 'measure') return this.reportNoShare(expression, describeValue(value));
        const { quantity: found } = value.measure;
        if (found.dimension !== dimension.none) {
            const measure = expectLength(this.construction, value.measure, expression.span);
            if (!measure) return undefined;
            return isPositive(measure) ? { is: 'length', measure } : this.reportNoShare(expression, this.say(found));
        }
        return real.sign(found.value) > 0 ? { is: 'share', parts: found.value } : this.reportNoShare(expression, this.say(found));
    }

    private say(of: Quantity): string {
        const [part] = this.parts;
        return part ? sayIn(part.build, of) : '';
    }

    private reportNoShare(expression: Expression, found: string): undefined {
        return this.construction.report('PLC-006', {
            span: expression.span,
            message: `${found} is no share of a length`,
            found,
            needed: 'a length or a share above zero, such as `14in` or `1`, or `rest`',
        });
    }

    /** The length of one share: what lengths and parts leave, divided by how many shares there are. */
    private computeShare(): Measure | undefined {
        const items = this.items.value;
        const extent = this.region.value?.[this.axis];
        if (!items || !extent) return undefined;
        const says = { kind: 'between' as const, about: [extent.lo.bound.name, extent.hi.bound.name], span: this.property.span };
        const whole = minus(extent.hi.measure, extent.lo.measure, says);
        const lengths = items.flatMap((item) => (item.is === 'length' ? [item.measure] : []));
        const thick = this.of === 'between' ? this.parts.map((part) => part.thickness.value) : [];
        const used = [...lengths, ...thick];
        const taken = total(used, { kind: 'operation', about: ['lengths and parts'], span: this.property.span });
        if (used.length > 0 && !taken) return undefined;
        const left = taken ? minus(whole, taken, { kind: 'operation', about: ['what is left'], span: this.property.span }) : whole;
        if (!left) return undefined;
        const shares = items.reduce<Real>((sum, item) => (item.is === 'share' ? real.add(sum, item.parts) : sum), Rational.zero);
        if (!this.isEnough(left, shares)) return undefined;
        if (real.isZero(shares)) return left;
        const one = quantity.scale(left.quantity, real.divide(Rational.one, shares));
        return derived(
            one,
            {
                kind: 'share',
                about: ['1', sayShares(shares), `what is left between ${extent.lo.bound.name} and ${extent.hi.bound.name}`],
                span: this.property.span,
            },
            [left],
        );
    }

    private isEnough(left: Measure, shares: Real): boolean {
        const spare = numberOf(left);
        const isClosed = real.isZero(shares);
        const isRight = isClosed ? Math.abs(spare) <= tolerance.fit : spare > 0;
        if (isRight) return true;
        const amount = this.parts[0] ? sayLength(this.parts[0].build, Math.abs(spare)) : '';
        this.construction.report('PLC-006', {
            span: this.property.span,
            message: sayMisfit(this.of === 'between' ? 'the lengths and parts here' : 'the cases here', spare, amount),
            hint: spare > 0 ? 'make one entry `rest`, or change a length' : 'make a length shorter, or the room larger',
            found: spare > 0 ? `${amount} over` : spare < 0 ? `${amount} too much` : 'nothing left',
            needed: isClosed ? 'lengths that fill the room, or one entry `rest`' : 'room for every share',
        });
        return false;
    }

    private lengthOf(item: Item | undefined): Measure | undefined {
        if (!item || item.is === 'length') return item?.measure;
        const one = this.share.value;
        if (!one || real.compare(item.parts, Rational.one) === 0) return one;
        const says = { kind: 'share' as const, about: [sayShares(item.parts), 'one share', ''], span: this.property.span };
        return derived(quantity.scale(one.quantity, item.parts), says, [one]);
    }

    /** Places the parts before it, one after another: a part in the middle of a long row must not wait for all of them at once. */
    private placeUpTo(index: number): void {
        const { generation } = this.construction;
        if (this.placedIn !== generation) [this.placed, this.placedIn] = [0, generation];
        while (this.placed < index) {
            this.placed += 1;
            this.ends[this.placed - 1]?.value;
        }
    }

    /** The low face of a part: after the one before it and the opening between. */
    private computeLow(index: number): Spot | undefined {
        const items = this.items.value;
        const extent = this.region.value?.[this.axis];
        if (!items || !extent) return undefined;
        // the share decides whether all of it fits: without it nothing has a place
        if (!this.share.value) return undefined;
        this.placeUpTo(index);
        const bound = { name: 'its share', stopped: false };
        if (this.of === 'own') {
            if (index === 0) return extent.lo;
            return this.highOf(index - 1);
        }
        const before = index === 0 ? extent.lo : this.highOf(index - 1);
        const part = this.parts[index];
        const face = part ? nameOfFace(part.kind, facesOfAxis[this.axis].lo, part.hand) : '';
        const says = { kind: 'face' as const, about: [face, part?.name ?? ''], span: this.property.span };
        return before && { measure: plus(before.measure, this.lengthOf(items[index]), says), bound };
    }

    private highOf(index: number): Spot | undefined {
        const low = this.ends[index]?.value;
        if (!low) return undefined;
        const bound = { name: this.of === 'own' ? (this.parts[index]?.name ?? 'its share') : 'its thickness', stopped: false };
        const size = this.of === 'own' ? this.lengthOf(this.items.value?.[index]) : this.parts[index]?.thickness.value;
        const part = this.parts[index];
        const face = part ? nameOfFace(part.kind, facesOfAxis[this.axis].hi, part.hand) : '';
        return { measure: plus(low.measure, size, { kind: 'face', about: [face, part?.name ?? ''] }), bound };
    }
}

function sayShares(shares: Real): string {
    return formatNumber(shares, { decimals: 3, zeros: 'dropped' });
}

function sayMisfit(what: string, spare: number, amount: string): string {
    if (spare > 0) return `${what} leave ${amount} over`;
    if (spare < 0) return `${what} are ${amount} longer than the room for them`;
    return `${what} leave nothing for the shares`;
}

/** The openings that parts make in their room: between them, and between them and its ends. */
function openingsBetween(
    statement: PartStatement,
    parts: readonly PlacedPart[],
    region: Cell<Extents>,
    axis: Axis,
    context: BodyContext,
): readonly Room[] {
    const names = statement.phrases.openings;
    const { room, build } = context;
    const turns = context.repeats.map((turn) => `[${turn}]`).join('');
    const { lo, hi } = facesOfAxis[axis];
    const fixedSide =
        (one: Axis, end: 'lo' | 'hi') =>
        (asker: Asker): Spot | undefined =>
            one === 'y' ? room.face(facesOfAxis.y[end], asker) : region.value?.[one][end];
    const across = axis === 'x' ? 'z' : 'x';
    return Array.from({ length: parts.length + 1 }, (_, index) => {
        const [before, after] = [parts[index - 1], parts[index]];
        const declaration = names[index];
        const as = declaration
            ? {
                  name: declaration.name + turns,
                  path: build.construction.freePath(`${room.path}.${declaration.name}${turns}`),
                  opening: declaration.id,
              }
            : { name: `the opening ${index + 1} of ${statement.parts[0]?.name ?? statement.kind}`, path: room.path };
        const faces = {
            [lo]: before ? () => before.faceSpot(axis, 'hi') : fixedSide(axis, 'lo'),
            [hi]: after ? () => after.faceSpot(axis, 'lo') : fixedSide(axis, 'hi'),
            [facesOfAxis[across].lo]: fixedSide(across, 'lo'),
            [facesOfAxis[across].hi]: fixedSide(across, 'hi'),
        };
        const opening = room.divided(declaration?.span ?? statement.span, faces, as);
        if (declaration) build.openings.push(opening);
        return opening;
    });
}
