/** What is cut from stock for a part: its layers or its board, and the bands and nosings on its edges, in the order of work. */
import { dimension, quantity, Rational, real } from '../../quantity/index.js';
import type { BevelPlace, EdgeStep, FrontEdge, Piece, Size, Words } from '../model/casework.js';
import type { Measure } from '../model/measure.js';
import type { Construction } from './construction.js';
import { frontEdgeOf, isBent } from './front.js';
import { facesOfAxis, nameOfFace } from './kinds.js';
import { minus, plus, times } from './measures.js';
import { PartPiece, type PieceContext } from './piece.js';
import { inWords, sayBevel, sayLine } from './piece-words.js';
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
            notes: boardNotes(context, index),
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

function boardNotes({ part, layers }: PieceContext, index: number): readonly Words[] {
    const said = [...bendingNotes(part), ...(index === 0 ? frontNotes(part) : []), ...notesOf(part).map((note) => [note])];
    if (layers.length === 1) return said;
    const better = index === 0 ? [['better face out']] : index === layers.length - 1 ? [['better face in']] : [];
    // What is done to all of them as one is said once, with the first.
    return [[`glue up ${layers.length} layers, then trim them as one`], ...better, ...said];
}

function bendingNotes(part: PlacedPart): readonly Words[] {
    const line = part.frontLaw;
    if (!line || !isBent(part)) return [];
    return [['bent to ', ...sayLine(line), ': its length is the way round its front, and its ends are trimmed after it is bent']];
}

/** How its front is shaped: cut to a template, or bevelled. */
function frontNotes(part: PlacedPart): readonly Words[] {
    const line = part.frontLaw;
    const edge = frontEdgeOf(part);
    const notes: Words[] = [];
    if (line && !isBent(part)) notes.push(['front edge curved: cut to the template of ', ...sayLine(line)]);
    if (edge?.form === 'bevelled') {
        const [low, high] = (['lo', 'hi'] as const).map((end) => {
            const axis = part.kindOf?.thickness ?? 'z';
            return nameOfFace(part.kind, facesOfAxis[axis][end], part.hand);
        });
        notes.push([
            `front edge bevelled ${sayBevel(edge)}: `,
            edge.low,
            ` deep at the ${low} face, `,
            edge.high,
            ` at the ${high} face`,
            ...sayAlong(part, edge),
        ]);
    }
    return notes;
}

/** `; square to the edge from 11.9° at 0in to 12.4° at 20 1/4in from the left` */
function sayAlong(part: PlacedPart, { along, low }: FrontEdge): Words {
    if (!along || along.greatest.degrees - along.least.degrees < finestBevel) return [];
    const end = part.frontLaw?.over === 'height' ? 'lower' : 'left';
    const place = ({ degrees, at }: BevelPlace): Words => [
        `${degrees.toFixed(1)}° at `,
        { ...low, quantity: quantity.inBaseUnits(at, dimension.length, low.quantity.unit) },
    ];
    return ['; square to the edge from ', ...place(along.least), ' to ', ...place(along.greatest), ` from the ${end} end`];
}

/** Degrees; less is not said. */
const finestBevel = 0.1;

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
