/**
 * Dividing a length: `clear 14in, rest, 14in`. A length is a length, a bare number is a share of what remains, `rest` is one share, and
 * `equal` gives each opening one. Shelves and dividers divide by the openings between them; cases in a row by their own widths.
 */

import { tolerance } from '../../geometry/index.js';
import { dimension, quantity, Rational, real } from '../../quantity/index.js';
import type { Expression, PartStatement, Property } from '../design/design.js';
import type { Axis } from '../model/casework.js';
import type { Measure } from '../model/measure.js';
import type { BodyContext } from './body.js';
import { Cell } from './cell.js';
import type { Construction } from './construction.js';
import { evaluate, expectLength } from './evaluate.js';
import { axes, facesOfAxis, kindOfPart, nameOfFace } from './kinds.js';
import { derived, minus, numberOf, plus, total } from './measures.js';
import type { PlacedPart } from './placed-part.js';
import type { Asker, Room, Spot } from './room.js';
import { type Extents, follow } from './run.js';
import type { Scope } from './scope.js';
import { describeValue } from './value.js';

type Item = { readonly is: 'length'; readonly measure: Measure } | { readonly is: 'share'; readonly parts: Rational };

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
    const clear = statement.phrases.properties.find((one) => one.name === 'clear');
    if (kind && clear?.value) {
        const division = new Division(construction, clear, clear.value, parts, region, kind.thickness, context.scope, 'between');
        for (const [index, part] of parts.entries()) part.shared = division.placeOf(index);
    } else if (!kind && (parts.length > 1 || isListed(statement))) {
        const width = statement.phrases.properties.find((one) => one.name === 'width');
        if (width?.value) {
            const division = new Division(construction, width, width.value, parts, region, 'x', context.scope, 'own');
            for (const [index, part] of parts.entries()) part.shared = division.placeOf(index);
        }
    }
    return kind && kind.thickness !== 'y' ? openingsBetween(statement, parts, region, kind.thickness, context) : [];
}

function isListed(statement: PartStatement): boolean {
    const value = statement.phrases.properties.find((one) => one.name === 'width')?.value;
    return value?.is === 'list' || (value?.is === 'word' && value.word === 'equal');
}

/** The room that is there to be divided: what earlier parts have left of it. */
function regionOf(construction: Construction, first: PlacedPart, axis: Axis | undefined): Cell<Extents> {
    return new Cell(construction, `${first.path}, the room for it`, first.declaration.nameSpan, () => {
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
        const name = `${parts[0]?.path ?? ''}, its shares`;
        this.items = new Cell(construction, name, property.span, () => this.readItems());
        this.share = new Cell(construction, name, property.span, () => this.computeShare());
        for (const index of parts.keys()) {
            this.ends.push(new Cell(construction, `${parts[index]?.path ?? ''}, its place`, property.span, () => this.computeLow(index)));
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
            const what = this.of === 'between' ? 'openings' : 'widths';
            return this.construction.report('PLC-006', {
                span: this.list.span,
                message:
                    this.of === 'between'
                        ? `${this.parts.length === 1 ? 'one part makes' : `${this.parts.length} parts make`} ${this.needed} openings; ${expressions.length} ${expressions.length === 1 ? 'is' : 'are'} given`
                        : `${this.parts.length} cases stand here; ${expressions.length} widths are given`,
                hint: 'give one entry for each, or `equal`',
                found: `${expressions.length} ${what}`,
                needed: `${this.needed} ${what}`,
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
        if (value.is === 'measure') {
            const { quantity: found } = value.measure;
            if (found.dimension === dimension.none) {
                if (real.isExact(found.value) && real.sign(found.value) > 0) return { is: 'share', parts: found.value };
            } else {
                const measure = expectLength(this.construction, value.measure, expression.span);
                return measure && { is: 'length', measure };
            }
        }
        return this.construction.report('PLC-006', {
            span: expression.span,
            message: `${describeValue(value)} is no share`,
            needed: 'a length, a share above zero such as `1`, or `rest`',
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
        const shares = items.reduce((sum, item) => (item.is === 'share' ? sum.plus(item.parts) : sum), Rational.zero);
        if (!this.isEnough(left, shares)) return undefined;
        if (shares.isZero()) return left;
        const one = quantity.scale(left.quantity, Rational.one.dividedBy(shares));
        return derived(
            one,
            {
                kind: 'share',
                about: ['1', shares.toString(), `what is left between ${extent.lo.bound.name} and ${extent.hi.bound.name}`],
                span: this.property.span,
            },
            [left],
        );
    }

    private isEnough(left: Measure, shares: Rational): boolean {
        const spare = numberOf(left);
        const isRight = shares.isZero() ? Math.abs(spare) <= tolerance.fit : spare > 0;
        if (isRight) return true;
        const style = (millimetres: number) =>
            `${Number((millimetres / (this.isMetric(left) ? 1 : 25.4)).toFixed(3))}${this.isMetric(left) ? 'mm' : 'in'}`;
        this.construction.report('PLC-006', {
            span: this.property.span,
            message:
                spare < 0
                    ? `the lengths and parts here are ${style(-spare)} longer than the room for them`
                    : `the lengths and parts here leave ${style(spare)} over`,
            hint: 'make one entry `rest`, or change a length',
            found: style(spare),
            needed: shares.isZero() ? 'lengths that fill the room, or one entry `rest`' : 'room for every opening',
        });
        return false;
    }

    private isMetric(measure: Measure): boolean {
        return measure.quantity.unit?.system === 'mm';
    }

    private lengthOf(item: Item | undefined): Measure | undefined {
        if (!item || item.is === 'length') return item?.measure;
        const one = this.share.value;
        if (!one || item.parts.equals(Rational.one)) return one;
        const says = { kind: 'share' as const, about: [item.parts.toString(), 'one share', ''], span: this.property.span };
        return derived(quantity.scale(one.quantity, item.parts), says, [one]);
    }

    /** The low face of a part: after the one before it and the opening between. */
    private computeLow(index: number): Spot | undefined {
        const items = this.items.value;
        const extent = this.region.value?.[this.axis];
        if (!items || !extent) return undefined;
        // the share decides whether all of it fits: without it nothing has a place
        if (!this.share.value) return undefined;
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
    const { lo, hi } = facesOfAxis[axis];
    const fixedSide =
        (one: Axis, end: 'lo' | 'hi') =>
        (asker: Asker): Spot | undefined =>
            one === 'y' ? room.face(facesOfAxis.y[end], asker) : region.value?.[one][end];
    const across = axis === 'x' ? 'z' : 'x';
    return Array.from({ length: parts.length + 1 }, (_, index) => {
        const [before, after] = [parts[index - 1], parts[index]];
        const declaration = names[index];
        const name = declaration?.name ?? `the opening ${index + 1} of ${statement.parts[0]?.name ?? statement.kind}`;
        const opening = room.within(name, declaration ? `${room.path}.${name}` : room.path, declaration?.span ?? statement.span, {
            [lo]: before ? () => before.faceSpot(axis, 'hi') : fixedSide(axis, 'lo'),
            [hi]: after ? () => after.faceSpot(axis, 'lo') : fixedSide(axis, 'hi'),
            [facesOfAxis[across].lo]: fixedSide(across, 'lo'),
            [facesOfAxis[across].hi]: fixedSide(across, 'hi'),
        });
        if (declaration) build.openings.push(opening);
        return opening;
    });
}
