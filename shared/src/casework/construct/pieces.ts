/** What is cut from stock for a part: its layers or its board, and the bands and nosings on its edges, in the order of work. */
import { formatLength, Rational, real } from '../../quantity/index.js';
import type { EdgeStep, Layer, Piece, Size } from '../model/casework.js';
import type { Measure } from '../model/measure.js';
import type { Construction } from './construction.js';
import { minus, plus, times } from './measures.js';
import { PartPiece, type PieceContext } from './piece.js';
import type { PlacedPart } from './placed-part.js';
import { sizeOfPart } from './sizes.js';
import { stripsOf } from './strips.js';

export function piecesOf(context: PieceContext): readonly Piece[] {
    const { part } = context;
    const kind = part.kindOf;
    if (!kind) return [];
    return [...boards(context), ...stripsOf(context, kind)];
}

function boards(context: PieceContext): readonly Piece[] {
    const { part, layers, construction } = context;
    const isLaminated = layers.length > 1;
    let words: readonly string[] | undefined;
    const edges = () => (words ??= edgesInWords(context));
    return layers.map((layer, index) => {
        const family = layer.material === undefined ? undefined : construction.things.thing(layer.material)?.family;
        const name = isLaminated ? `${part.name}, ${layer.name ?? `layer ${index + 1}`}` : part.name;
        const rough = withThickness(growTo(part, layer.size), layer.thickness);
        const own = {
            id: isLaminated ? `${part.path}/${index + 1}` : part.path,
            role: isLaminated ? ('layer' as const) : family === 'lumber' || family === 'solid' ? ('solid' as const) : ('core' as const),
            name,
            material: layer.material,
            grain: layer.grain,
            finished: withThickness(sizeOfPart(part, 'finished'), layer.thickness),
            core: withThickness(layer.size, layer.thickness),
            rough,
            notes: boardNotes(context, layer, index),
        };
        return new PartPiece(context, own, edges);
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

function edgesInWords({ construction, edges }: PieceContext): readonly string[] {
    return edges.map((edge) => `${edge.name}: ${edge.steps.map((step) => stepInWords(construction, step)).join(', ')}`);
}

/** `band 1/8in Walnut`, `rabbet 1/2in deep, 7/32in wide for back`. */
function stepInWords(construction: Construction, step: EdgeStep): string {
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
        return minus(whole, taken, { kind: 'stage', about: ['core', name, `${part.path}, layer ${index + 1}`] });
    };
    return { length: shorten('length'), width: shorten('width'), thickness: layer?.thickness };
}
