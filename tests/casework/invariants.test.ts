/** What must hold of the casework of every sound design, whatever is in it. Each invariant over the examples and over designs of every sort. */
import type { Analysis } from 'casewright-language';
import {
    type Casework,
    construct,
    type Derivation,
    type EdgeName,
    type FaceName,
    type Measure,
    type Part,
    type Piece,
    type Size,
    sayQuantity,
} from 'casewright-shared/casework';
import { type Box, boxOverlap, tolerance } from 'casewright-shared/geometry';
import { dimension, formatLength, quantity, Rational, readMeasure, real } from 'casewright-shared/quantity';
import { beforeAll, describe, expect, it } from 'vitest';
import { allDesigns, analyseFile, analyseText, type DesignFile, textsOf } from './analysed.js';

const files = await allDesigns();
const stages = ['opening', 'finished', 'core', 'rough'] as const;
const directions = ['length', 'width', 'thickness'] as const;
const ends = { x: ['left', 'right'], y: ['back', 'front'], z: ['bottom', 'top'] } as const;

it('there are enough designs to tell', () => {
    expect(files.length).toBeGreaterThanOrEqual(14);
});

describe.each(files.map((file) => [file.name, file] as const))('%s', (_, file: DesignFile) => {
    let analysis: Analysis;
    let casework: Casework;
    let parts: readonly Part[];
    beforeAll(async () => {
        analysis = await analyseFile(file.path);
        casework = analysis.casework;
        parts = [...casework.parts.values()];
    });

    it('is sound: nothing overlaps, nothing stands out, nothing is unknown', () => {
        expect(analysis.findings.filter(({ severity }) => severity === 'error').map(({ message }) => message)).toEqual([]);
        expect(casework.problems).toEqual([]);
        expect([...(casework.unplaced ?? [])]).toEqual([]);
        expect(parts.length).toBeGreaterThan(0);
    });

    it('holds no syntax tree and no place in a text but spans', () => {
        const strange: string[] = [];
        forEachObject(casework, (object, path) => {
            // how far a parallel curve is from its own is an offset of another kind
            const isParallel = /\.curves\.\d+\.curve/.test(path);
            for (const key of Object.keys(object))
                if (key.startsWith('$') || key === 'uri' || (key === 'offset' && !isParallel)) strange.push(`${path}.${key}`);
        });
        expect(strange).toEqual([]);
    });

    it('counts from 1, and gives paths that an edit elsewhere leaves alone', async () => {
        const { text, used } = await textsOf(file);
        const edited = await analyseText(`// moved\n\n${text}\n// and longer\n`, used);
        const pathsOf = ({ parts: all, openings, pieces }: Casework) => [[...all.keys()], [...openings.keys()], pieces.map(({ id }) => id)];
        expect(pathsOf(edited.casework)).toEqual(pathsOf(casework));
        for (const paths of pathsOf(casework)) {
            expect(paths.filter((path) => /\[0\]|\[-|~/.test(path))).toEqual([]);
            expect(new Set(paths).size).toBe(paths.length);
        }
    });

    it('derives each size without a circle, from what is written, assumed or counted', () => {
        const leaves = new Set<string>();
        for (const measure of measuresOf(casework)) walk(measure, leaves);
        expect([...leaves].filter((kind) => !['literal', 'default', 'index', 'where an axis begins'].includes(kind))).toEqual([]);
    });

    it('has boxes that agree with the sizes', () => {
        const wrong: string[] = [];
        for (const part of parts) {
            for (const direction of directions) {
                const axis = part.directions[direction];
                const size = numberOf(part.sizes.finished[direction]);
                // a board that is bent is longer than its box, and lies slack in it
                if (part.bent && axis !== 'z') continue;
                if (Math.abs(part.box.most[axis] - part.box.least[axis] - size) > tolerance.fit) wrong.push(`${part.path}.${direction}`);
                const [low, high] = ends[axis].map((face) => numberOf(part.faces[face]));
                if (Math.abs(part.box.least[axis] - (low ?? 0)) > tolerance.fit) wrong.push(`${part.path}, its ${ends[axis][0]}`);
                if (Math.abs(part.box.most[axis] - (high ?? 0)) > tolerance.fit) wrong.push(`${part.path}, its ${ends[axis][1]}`);
            }
        }
        for (const { path, box, width, depth, height } of casework.openings.values()) {
            const sizes = { x: width, y: depth, z: height };
            for (const axis of ['x', 'y', 'z'] as const)
                if (!box || Math.abs(box.most[axis] - box.least[axis] - numberOf(sizes[axis])) > tolerance.fit)
                    wrong.push(`${path} along ${axis}`);
        }
        expect(wrong).toEqual([]);
    });

    it('cuts a core that is what is finished less the strips, and first cuts it no smaller', () => {
        const wrong: string[] = [];
        for (const part of parts) {
            for (const direction of ['length', 'width'] as const) {
                const axis = part.directions[direction];
                const strips = part.edges
                    .filter(({ name }) => (ends[axis] as readonly string[]).includes(name))
                    .map(({ takesOff }) => numberOf(takesOff, 0));
                const taken = strips.reduce((sum, one) => sum + one, 0);
                const less = numberOf(part.sizes.finished[direction]) - numberOf(part.sizes.core[direction]);
                // under a curve a strip takes off more than it is thick, because it lies aslant
                const isCurved = part.frontCurve !== undefined && axis === 'y';
                if (isCurved ? less < taken - tolerance.fit || less > 2 * taken + tolerance.fit : Math.abs(less - taken) > 1e-9)
                    wrong.push(`${part.path}.${direction}: ${less} for ${taken}`);
                const more = numberOf(part.sizes.rough[direction]) - numberOf(part.sizes.core[direction]);
                const oversize = numberOf(casework.shop.oversize);
                const bentLong = part.bent ? 2 * numberOf(casework.shop.bentLong) : 0;
                if (![0, oversize, 2 * oversize, bentLong].some((one) => Math.abs(more - one) < 1e-9))
                    wrong.push(`${part.path}.rough.${direction}: ${more}`);
            }
        }
        for (const piece of casework.pieces)
            for (const direction of directions)
                if (numberOf(piece.rough[direction]) < numberOf(piece.core[direction]) - 1e-9) wrong.push(`${piece.id}.${direction}`);
        expect(wrong).toEqual([]);
    });

    it('treats only edges that a part has', () => {
        const wrong = parts.flatMap((part) =>
            part.edges.filter(({ name }) => !edgesOf(part).includes(name)).map(({ name }) => `${part.path}.${name}`),
        );
        expect(wrong).toEqual([]);
    });

    it('glues boards up from layers that are as thick as they are together, side by side through the board', () => {
        const wrong: string[] = [];
        for (const part of parts) {
            const axis = part.directions.thickness;
            const thickness = part.layers.reduce(
                (sum, layer) => real.add(sum, layer.thickness?.quantity.value ?? Number.NaN),
                Rational.zero as number | Rational,
            );
            const whole = part.sizes.finished.thickness?.quantity.value;
            if (whole === undefined || real.compare(thickness, whole) !== 0) wrong.push(`${part.path}: ${real.toNumber(thickness)}`);
            if (part.bent) continue;
            const spans = part.layers
                .map(({ box }) => [box?.least[axis] ?? Number.NaN, box?.most[axis] ?? Number.NaN] as const)
                .sort(([a], [b]) => a - b);
            const places = [part.box.least[axis], ...spans.flat(), part.box.most[axis]];
            for (let index = 0; index < places.length; index += 2)
                if (!(Math.abs((places[index] ?? 0) - (places[index + 1] ?? 0)) <= tolerance.fit))
                    wrong.push(`${part.path}, layer ${index / 2}`);
        }
        expect(wrong).toEqual([]);
    });

    it('gives each piece to one part, and each part a board for every layer and a strip for every band and nosing', () => {
        const byPart = new Map<string, Piece[]>();
        for (const piece of casework.pieces) byPart.set(piece.part, [...(byPart.get(piece.part) ?? []), piece]);
        expect(new Set(casework.pieces.map(({ id }) => id)).size).toBe(casework.pieces.length);
        expect([...byPart.keys()].filter((path) => !casework.parts.has(path))).toEqual([]);
        for (const part of parts) {
            const own = byPart.get(part.path) ?? [];
            const strips = part.edges.flatMap(({ steps }) => steps).filter(({ does }) => does === 'band' || does === 'nosing');
            expect(own.map(({ id }) => id)).toEqual(part.pieces);
            expect(own.filter(({ role }) => role === 'band' || role === 'nosing')).toHaveLength(strips.length);
            expect(own).toHaveLength(strips.length + part.layers.length);
        }
    });

    it('cuts rabbets and grooves for one part each, no deeper than the board', () => {
        for (const part of parts) {
            const cuts = part.edges.flatMap(({ steps }) => steps).filter(({ does }) => does === 'rabbet' || does === 'groove');
            for (const cut of cuts) {
                expect(numberOf(cut.amount)).toBeLessThan(numberOf(part.sizes.finished.thickness));
                expect(cut.for === undefined || casework.parts.has(cut.for)).toBe(true);
            }
        }
    });

    it('joins parts that touch: they have more than a line in common', () => {
        const apart = casework.joints.filter(({ touching, enters, receives, adds }) => {
            const [a, b] = [casework.parts.get(enters), casework.parts.get(receives)];
            return touching && a && b && !touches(a.box, b.box, Math.max(0, -numberOf(adds, 0)));
        });
        expect(apart.map(({ enters, receives }) => `${enters} and ${receives}`)).toEqual([]);
    });

    it('lets two parts share wood only where one is let into the other', () => {
        const shared: string[] = [];
        for (const [index, a] of parts.entries()) {
            for (const b of parts.slice(index + 1)) {
                if (isOfOneCase(a, b) && boxOverlap(a.box, b.box) && !isLetInto(casework, a, b)) shared.push(`${a.path} and ${b.path}`);
            }
        }
        expect(shared).toEqual([]);
    });

    it('knows every size: none is zero, below zero or no number', () => {
        for (const part of parts)
            for (const stage of stages)
                for (const direction of directions) expect(numberOf(part.sizes[stage][direction])).toBeGreaterThan(0);
        for (const piece of casework.pieces)
            for (const size of [piece.finished, piece.core, piece.rough])
                for (const direction of directions) expect(numberOf(size[direction])).toBeGreaterThan(0);
        for (const one of casework.assemblies)
            for (const size of [one.width, one.height, one.depth, one.overall.width, one.overall.height, one.overall.depth])
                expect(numberOf(size)).toBeGreaterThan(0);
    });

    it('takes pieces for alike only if they are', () => {
        const first = new Map<string, Piece>();
        for (const piece of casework.pieces) {
            const other = first.get(piece.alike);
            if (!other) first.set(piece.alike, piece);
            else expect(sameSizes(piece, other) && piece.material === other.material && piece.hand === other.hand).toBe(true);
        }
    });

    it('prints what it says is exact so that it reads back as the same size', () => {
        for (const { quantity: size } of measuresOf(casework)) {
            if (size.dimension !== dimension.length || !real.isExact(size.value)) continue;
            for (const style of [{ system: 'inch', denominator: 64 } as const, { system: 'mm', decimals: 1 } as const]) {
                const printed = formatLength(size, style);
                if (!printed.exact) continue;
                const read = readMeasure(printed.text.replace(/^-/, ''));
                expect(read.ok && real.compare(read.quantity.value, quantity.absolute(size).value)).toBe(0);
            }
        }
    });

    it('comes out the same whenever it is built', async () => {
        expect(said(construct(analysis.design))).toEqual(said(casework));
        expect(said((await analyseFile(file.path)).casework)).toEqual(said(casework));
    });
});

describe('a build and its mirror image', () => {
    it('differ in nothing but their hands and which side is which', async () => {
        const { casework } = await analyseFile(files.find(({ name }) => name === 'quay-street.case')?.path ?? '');
        const width = 30 * 25.4;
        const pairs = [...casework.parts.values()].filter(({ assembly }) => assembly === 'East');
        expect(pairs).toHaveLength(9);
        for (const right of pairs) {
            const left = casework.parts.get(right.path.replace('East', 'West'));
            expect(left && stages.every((stage) => sameSize(left.sizes[stage], right.sizes[stage]))).toBe(true);
            expect(left?.box.least.x).toBeCloseTo(width - right.box.most.x, 6);
            expect(left?.box.most.x).toBeCloseTo(width - right.box.least.x, 6);
            expect(left?.hand).toBe(right.hand && (right.hand === 'left' ? 'right' : 'left'));
        }
    });
});

// ---------------------------------------------------------------- what the invariants are said with

function numberOf(measure: Measure | undefined, unknown = Number.NaN): number {
    return measure ? real.toNumber(measure.quantity.value) : unknown;
}

/** Every measure that is shown somewhere. */
function measuresOf({ parts, pieces, assemblies, openings, joints }: Casework): readonly Measure[] {
    const sizes = (size: Size) => [size.length, size.width, size.thickness];
    const found = [
        ...[...parts.values()].flatMap((part) => [
            ...stages.flatMap((stage) => sizes(part.sizes[stage])),
            ...Object.values(part.faces),
            ...part.layers.flatMap(({ size, thickness }) => [...sizes(size), thickness]),
            ...part.edges.flatMap(({ takesOff, steps }) => [takesOff, ...steps.flatMap((step) => [step.amount, step.width, step.proud])]),
            part.clear,
        ]),
        ...pieces.flatMap(({ finished, core, rough }) => [...sizes(finished), ...sizes(core), ...sizes(rough)]),
        ...assemblies.flatMap(({ width, height, depth, overall }) => [width, height, depth, overall.width, overall.height, overall.depth]),
        ...[...openings.values()].flatMap(({ width, height, depth }) => [width, height, depth]),
        ...joints.map(({ adds }) => adds),
    ];
    return found.filter((measure) => measure !== undefined);
}

/** Follows a derivation to its ends; throws where it comes back to itself. */
function walk(measure: Measure, leaves: Set<string>, way = new Set<Measure>(), done = new WeakSet<Measure>()): void {
    if (way.has(measure)) throw new Error(`a size comes from itself: ${measure.why.kind} ${measure.why.about.join(', ')}`);
    if (done.has(measure)) return;
    way.add(measure);
    if (measure.why.inputs.length === 0) leaves.add(leafKind(measure.why, measure));
    for (const input of measure.why.inputs) walk(input, leaves, way, done);
    way.delete(measure);
    done.add(measure);
}

function leafKind({ kind }: Derivation, measure: Measure): string {
    return kind === 'face' && real.isExact(measure.quantity.value) && real.isZero(measure.quantity.value) ? 'where an axis begins' : kind;
}

function edgesOf({ directions: { length, width } }: Part): readonly EdgeName[] {
    return [...ends[length], ...ends[width]];
}

/** Whether two boxes meet with a face, but for a gap that is kept between them. */
function touches(a: Box, b: Box, gap: number): boolean {
    const common = (['x', 'y', 'z'] as const).map((axis) => Math.min(a.most[axis], b.most[axis]) - Math.max(a.least[axis], b.least[axis]));
    return common.every((one) => one >= -gap - tolerance.fit) && common.filter((one) => one > tolerance.fit).length >= 2;
}

function isOfOneCase(a: Part, b: Part): boolean {
    return a.path.split('.')[0] === b.path.split('.')[0];
}

/** Whether a joint or a cut lets one into the other, or one of them has a curved front and so does not fill its box. */
function isLetInto({ joints }: Casework, a: Part, b: Part): boolean {
    const isPair = (one: string, other: string) => (one === a.path && other === b.path) || (one === b.path && other === a.path);
    const isCutFor = (board: Part, other: Part) => board.edges.some(({ steps }) => steps.some((step) => step.for === other.path));
    const isShort = (board: Part) => board.layers.some(({ box }) => box !== undefined && !sameReach(box, board));
    return (
        joints.some(({ enters, receives, adds }) => isPair(enters, receives) && numberOf(adds, 0) > 0) ||
        isCutFor(a, b) ||
        isCutFor(b, a) ||
        isShort(a) ||
        isShort(b) ||
        a.frontCurve !== undefined ||
        b.frontCurve !== undefined
    );
}

/** Whether a layer reaches as far as its board, across its thickness. */
function sameReach(layer: Box, { box, directions: { length, width } }: Part): boolean {
    return [length, width].every((axis) => layer.least[axis] === box.least[axis] && layer.most[axis] === box.most[axis]);
}

function sameSize(a: Size, b: Size): boolean {
    return directions.every((direction) => Math.abs(numberOf(a[direction]) - numberOf(b[direction])) < 1e-6);
}
function sameSizes(a: Piece, b: Piece): boolean {
    return sameSize(a.finished, b.finished) && sameSize(a.core, b.core) && sameSize(a.rough, b.rough);
}

/** Casework as what it says: sizes with their derivations would be compared a thousand times over. */
function said(casework: Casework): unknown {
    const say = (measure: Measure | undefined) =>
        measure &&
        `${sayQuantity(measure.quantity, 'mm')} ${real.toNumber(measure.quantity.value)} ${measure.why.kind} ${measure.why.about.join()}`;
    const saySize = (size: Size) => directions.map((direction) => say(size[direction]));
    const { pieces, joints, assemblies, openings, requirements, deviations, problems } = casework;
    return {
        parts: [...casework.parts.values()].map((part) => ({
            path: part.path,
            sizes: stages.map((stage) => saySize(part.sizes[stage])),
            faces: (Object.keys(part.faces) as FaceName[]).map((face) => [face, say(part.faces[face])]),
            box: part.box,
            bounds: part.bounds,
            hand: part.hand,
        })),
        pieces: pieces.map(({ id, alike, quantity: count, edges, notes }) => ({ id, alike, count, edges, notes })),
        joints: joints.map(({ enters, receives, recipe, adds, touching }) => ({ enters, receives, recipe, adds: say(adds), touching })),
        assemblies: assemblies.map(({ path, extent, overall }) => [
            path,
            extent,
            say(overall.width),
            say(overall.depth),
            say(overall.height),
        ]),
        openings: [...openings.values()].map(({ path, box, bounds }) => [path, box, bounds]),
        requirements: requirements.map(({ answer, left, right }) => [answer, say(left), say(right)]),
        deviations: [...deviations.keys()],
        problems,
    };
}

/** Every object that is reached from one, once, with the way there. */
function forEachObject(root: object, visit: (object: object, path: string) => void): void {
    const seen = new Set<object>();
    const waiting: [object, string][] = [[root, '']];
    for (let next = waiting.pop(); next; next = waiting.pop()) {
        const [object, path] = next;
        if (seen.has(object)) continue;
        seen.add(object);
        visit(object, path);
        const entries =
            object instanceof Map
                ? [...object]
                : object instanceof Set
                  ? [...object].map((one) => ['', one] as const)
                  : Object.entries(object);
        for (const [key, value] of entries)
            if (typeof value === 'object' && value !== null) waiting.push([value, `${path}.${String(key)}`]);
    }
}
