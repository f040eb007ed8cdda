/** What is cut from stock for a part: its layers or its board, and the bands and nosings on its edges, in the order of work. */
import { formatLength, Rational, real } from '../../quantity/index.js';
import type { Edge, EdgeName, EdgeStep, Grain, Hand, Layer, Piece, Size } from '../model/casework.js';
import type { Measure } from '../model/measure.js';
import type { Construction } from './construction.js';
import { axisOfFace, facesOfAxis, type KindOfPart } from './kinds.js';
import { because, plus, times } from './measures.js';
import type { PlacedPart } from './placed-part.js';
import { sizeOfPart } from './sizes.js';

export interface PieceContext {
    readonly construction: Construction;
    readonly part: PlacedPart;
    readonly layers: readonly Layer[];
    readonly edges: readonly Edge[];
    readonly quantity: number;
    readonly hand: Hand | undefined;
}

export function piecesOf(context: PieceContext): readonly Piece[] {
    const { part } = context;
    const kind = part.kindOf;
    if (!kind) return [];
    return [...boards(context), ...strips(context, kind)];
}

function boards(context: PieceContext): readonly Piece[] {
    const { part, layers, construction } = context;
    const isLaminated = layers.length > 1;
    const edges = edgesInWords(context);
    return layers.map((layer, index) => {
        const family = layer.material === undefined ? undefined : construction.things.thing(layer.material)?.family;
        const name = isLaminated ? `${part.name}, ${layer.name ?? `layer ${index + 1}`}` : part.name;
        const rough = withThickness(growTo(part, layer.size), layer.thickness);
        return piece(context, {
            id: isLaminated ? `${part.path}/${index + 1}` : part.path,
            role: isLaminated ? 'layer' : family === 'lumber' || family === 'solid' ? 'solid' : 'core',
            name,
            material: layer.material,
            grain: layer.grain,
            finished: withThickness(sizeOfPart(part, 'finished'), layer.thickness),
            core: withThickness(layer.size, layer.thickness),
            rough,
            edges,
            notes: boardNotes(context, layer, index),
        });
    });
}

function withThickness(size: Size, thickness: Measure | undefined): Size {
    return { ...size, thickness };
}

/** The rough size of a layer: its own size and what the part's rough size has over the core. */
function growTo(part: PlacedPart, size: Size): Size {
    const [core, rough] = [sizeOfPart(part, 'core'), sizeOfPart(part, 'rough')];
    const grown = (name: 'length' | 'width'): Measure | undefined => {
        const [own, whole, big] = [size[name], core[name], rough[name]];
        if (!own || !whole || !big) return undefined;
        if (real.compare(own.quantity.value, whole.quantity.value) === 0) return big;
        const { oversize } = part.shop;
        const isLaminated = (part.layers.value?.length ?? 0) > 1;
        const says = { kind: 'stage' as const, about: ['rough', name, part.path] };
        return isLaminated ? plus(own, times(oversize, Rational.of(2), { kind: 'operation', about: ['both ends'] }), says) : own;
    };
    return { length: grown('length'), width: grown('width'), thickness: size.thickness };
}

function boardNotes({ part, layers }: PieceContext, _layer: Layer, index: number): readonly string[] {
    const notes: string[] = [];
    if (layers.length > 1) {
        notes.push(`glue up ${layers.length} layers, then trim them as one`);
        if (index === 0) notes.push('better face out');
        else if (index === layers.length - 1) notes.push('better face in');
    }
    const line = part.extents.value?.y.hi.line;
    const isFrontEdge = part.kindOf?.thickness !== 'y';
    if (line && isFrontEdge) notes.push(`front cut to the template of ${line.name}`);
    return [...notes, ...notesOf(part)];
}

export function notesOf(part: PlacedPart): readonly string[] {
    const said = part.description.value?.properties.get('note')?.said.value;
    return said?.is === 'text' ? [said.text] : [];
}

/** A strip runs from end to end of its edge; one glued on later also covers the ends of those before it. */
function strips(context: PieceContext, kind: KindOfPart): readonly Piece[] {
    const { part, edges } = context;
    const found: Piece[] = [];
    const before: { readonly name: EdgeName; readonly step: EdgeStep }[] = [];
    for (const edge of edges) {
        for (const step of edge.steps) {
            if (step.does !== 'band' && step.does !== 'nosing') continue;
            found.push(strip(context, kind, edge, step, before));
            before.push({ name: edge.name, step });
        }
    }
    return found.map((one, index) => ({ ...one, id: `${part.path}/strip ${index + 1}` }));
}

function strip(
    context: PieceContext,
    kind: KindOfPart,
    edge: Edge,
    step: EdgeStep,
    before: readonly { readonly name: EdgeName; readonly step: EdgeStep }[],
): Piece {
    const { part, construction } = context;
    const across = axisOfFace(edge.name).axis;
    const along = across === kind.length ? 'width' : 'length';
    const { lo, hi } = facesOfAxis[along === 'length' ? kind.length : kind.width];
    let length = step.does === 'nosing' ? sizeOfPart(part, 'opening')[along] : sizeOfPart(part, 'core')[along];
    for (const one of before) {
        if (one.name !== lo && one.name !== hi) continue;
        length = plus(length, one.step.amount, { kind: 'edge', about: ['it covers the end of the strip on', one.name], span: edge.span });
    }
    const { bandLong, bandOver } = part.shop;
    const both = { kind: 'operation' as const, about: ['both ends'] };
    const size: Size = { length, width: step.width, thickness: step.amount };
    const rough: Size = {
        length: plus(length, times(bandLong, Rational.of(2), both), {
            kind: 'stage',
            about: ['rough', 'length', `${part.path}, the ${step.does}`],
        }),
        width:
            step.does === 'band'
                ? plus(step.width, times(bandOver, Rational.of(2), both), {
                      kind: 'stage',
                      about: ['rough', 'width', `${part.path}, the band`],
                  })
                : step.width,
        thickness: step.amount,
    };
    const material = step.material;
    const covers = before.filter((one) => one.name === lo || one.name === hi).map((one) => one.name);
    return piece(context, {
        id: '',
        role: step.does === 'nosing' ? 'nosing' : 'band',
        name: `${part.name}, ${edge.name} ${step.does}`,
        material,
        grain: material === undefined ? 'length' : construction.things.grainOf(material),
        finished: size,
        core: size,
        rough,
        edges: [],
        notes: covers.length > 0 ? [`glue on after the ${covers.join(' and ')} strip, and cover its end`] : [],
    });
}

function piece(context: PieceContext, own: Omit<Piece, 'part' | 'quantity' | 'alike' | 'hand'> & { readonly grain: Grain }): Piece {
    const { part, hand, quantity } = context;
    const isHanded = hand !== undefined && own.role !== 'band' && own.role !== 'nosing';
    const line = part.extents.value?.y.hi.line;
    const shape = own.role === 'layer' || own.role === 'core' || own.role === 'solid' ? (line?.name ?? '') : '';
    const key = [
        own.role,
        own.material ?? '',
        own.grain,
        isHanded ? hand : '',
        shape,
        ...sizeKey(own.finished),
        ...sizeKey(own.core),
        ...sizeKey(own.rough),
        ...own.edges,
        ...own.notes,
    ];
    return { ...own, part: part.path, quantity, alike: key.join('|'), ...(isHanded ? { hand } : {}) };
}

/** Sizes exactly; approximate ones to a millionth of a millimetre, beyond which only the arithmetic differs. */
function sizeKey(size: Size): readonly string[] {
    return [size.length, size.width, size.thickness].map((measure) => {
        if (!measure) return '?';
        const { value } = measure.quantity;
        return typeof value === 'number' ? value.toFixed(6) : value.toString();
    });
}

function edgesInWords({ construction, edges }: PieceContext): readonly string[] {
    return edges.map((edge) => `${edge.name}: ${edge.steps.map((step) => stepInWords(construction, step)).join(', ')}`);
}

/** `band 1/8in Walnut`, `rabbet 1/2in deep, 7/32in wide for back`. */
export function stepInWords(construction: Construction, step: EdgeStep): string {
    const amount = step.amount ? inWords(step.amount) : '';
    const material = step.material === undefined ? '' : ` ${construction.things.thing(step.material)?.name ?? ''}`;
    if (step.does === 'rabbet' || step.does === 'groove') {
        const width = step.width ? `, ${inWords(step.width)} wide` : '';
        return `${step.does} ${amount} deep${width}${step.for ? ` for ${step.for.split('.').at(-1)}` : ''}`;
    }
    const high = step.does === 'nosing' && step.width ? `, ${inWords(step.width)} high` : '';
    const proud = step.proud ? `, ${inWords(step.proud)} proud` : '';
    return `${step.does} ${amount}${material}${high}${proud}`.trimEnd();
}

function inWords(measure: Measure): string {
    const of = measure.quantity;
    if (of.dimension.key.startsWith('angle')) return `${real.toNumber(of.value)}°`;
    const isMetric = of.unit?.system === 'mm';
    return formatLength(of, isMetric ? { system: 'mm', decimals: 1, zeros: 'dropped' } : { system: 'inch', denominator: 64 }).text;
}

/** The layers of a part with their own sizes: one may stop short for another part. */
export function layerSize(part: PlacedPart, index: number, less: ReadonlyMap<'length' | 'width', Measure>): Size {
    const core = sizeOfPart(part, 'core');
    const layer = part.layers.value?.[index];
    const shorten = (name: 'length' | 'width'): Measure | undefined => {
        const taken = less.get(name);
        const whole = core[name];
        if (!taken || !whole) return whole;
        return because(plusNegative(whole, taken), { kind: 'stage', about: ['core', name, `${part.path}, layer ${index + 1}`] });
    };
    return { length: shorten('length'), width: shorten('width'), thickness: layer?.thickness };
}

function plusNegative(whole: Measure, taken: Measure): Measure | undefined {
    return plus(whole, times(taken, Rational.of(-1), { kind: 'reserve', about: ['room left free'] }), { kind: 'operation', about: ['-'] });
}
