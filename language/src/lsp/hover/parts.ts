// Hovers over parts: sizes at every stage, material, edges, joints, mass. Knows casework: nothing of the syntax tree.
import type { Casework, Part, Stage } from 'casewright-shared/casework';
import { edgesInWords, massOfPart, namesInWords, printStyle } from 'casewright-shared/documents';
import { quantity, unitNamed } from 'casewright-shared/quantity';
import { sagLimitOf, shelfStrengths } from 'casewright-shared/strength';
import { paragraphs, table } from './markdown.js';
import { inBothSystems } from './measures.js';

/** How many parts of a group are listed one by one. */
const mostRows = 8;
const stages: readonly Stage[] = ['finished', 'core', 'rough'];

/** What a declaration has become: one part, or the parts of a group. */
export function partsText(parts: readonly Part[], casework: Casework): string {
    const [first] = parts;
    if (!first) {
        return '';
    }
    return paragraphs(
        headline(parts),
        first.doc,
        parts.length === 1 ? stagesTable(first, casework) : groupTable(parts, casework),
        facts(parts, casework),
    );
}

function headline(parts: readonly Part[]): string {
    const [{ kind }] = parts as [Part];
    const names = namesInWords(parts.map(({ path }) => path));
    const built = parts.reduce((sum, { quantity }) => sum + quantity, 0);
    const pieces = built > parts.length ? `, ${built} in all` : '';
    return `**${kind}** \`${names}\`${pieces}`;
}

/** One part: what is delivered, what is cut from the panel, what is cut first. */
function stagesTable({ sizes }: Part, casework: Casework): string {
    const rows = stages.map((stage) => [stage, ...sizeCells(sizes[stage], casework)]);
    return table(['', 'length', 'width', 'thickness'], rows);
}

/** Several parts: the finished size of each; those alike in one row. */
function groupTable(parts: readonly Part[], casework: Casework): string {
    const alike = new Map<string, string[]>();
    const isOneCase = parts.every(({ assembly }) => assembly === parts[0]?.assembly);
    for (const { path, name, sizes } of parts) {
        const size = sizeCells(sizes.finished, casework).join('|');
        alike.set(size, [...(alike.get(size) ?? []), isOneCase ? name : path]);
    }
    const rows = [...alike].slice(0, mostRows).map(([size, names]) => [namesInWords(names), ...size.split('|')]);
    const more = alike.size > mostRows ? `\n\nand ${alike.size - mostRows} more sizes` : '';
    return table(['finished', 'length', 'width', 'thickness'], rows) + more;
}

function sizeCells({ length, width, thickness }: Part['sizes']['finished'], casework: Casework): readonly string[] {
    return [length, width, thickness].map((measure) => (measure ? inBothSystems(measure.quantity, casework) : '?'));
}

function facts(parts: readonly Part[], casework: Casework): string {
    const [first] = parts as [Part];
    const print = printStyle(casework, {});
    const lines: readonly (readonly [label: string, text: string | undefined])[] = [
        ['material', materials(first, casework)],
        ['edges', edgesInWords(first.edges, casework, print)],
        ['front edge', parts.length === 1 ? frontEdge(first, casework) : undefined],
        ['joints', joints(parts, casework)],
        ['mass', mass(first, casework)],
        ['sag', sag(first, casework)],
        ['runs up to', parts.length === 1 ? bounds(first) : undefined],
    ];
    return lines.flatMap(([label, text]) => (text === undefined || text === '' ? [] : [`- ${label}: ${text}`])).join('\n');
}

/** How it meets a curved line across its thickness: `square; the line is 17in deep at the lower face, 16 15/16in at the upper face, 3.3° off square` */
function frontEdge({ front, directions }: Part, casework: Casework): string | undefined {
    if (!front) {
        return undefined;
    }
    const [low, high] = directions.thickness === 'z' ? ['lower', 'upper'] : ['left', 'right'];
    const [atLow, atHigh] = [front.low, front.high].map(({ quantity }) => inBothSystems(quantity, casework));
    const bevel = Math.abs(Number(front.bevel.quantity.value)).toFixed(1);
    return `${front.form}; the line is ${atLow} deep at the ${low} face, ${atHigh} at the ${high} face, ${bevel}° off square`;
}

function materials({ layers }: Part, casework: Casework): string {
    const names = layers.map(({ material }) =>
        material === undefined ? 'not known' : `\`${casework.things.get(material)?.name ?? material}\``,
    );
    const [first] = names;
    return names.length > 1 && names.every((name) => name === first) ? `${names.length} layers of ${first}` : names.join(', ');
}

/** `ShelfJoint into Left, Right; BackFix from back` */
function joints(parts: readonly Part[], casework: Casework): string {
    const said = new Map<string, string[]>();
    for (const part of parts) {
        for (const index of part.joints) {
            const joint = casework.joints[index];
            if (!joint?.touching) {
                continue;
            }
            const enters = joint.enters === part.path;
            const key = `${joint.recipe} ${enters ? 'into' : 'from'}`;
            const other = casework.parts.get(enters ? joint.receives : joint.enters)?.name ?? '';
            said.set(key, [...(said.get(key) ?? []), other]);
        }
    }
    return [...said].map(([how, others]) => `${how} ${namesInWords(others)}`).join('; ');
}

function mass(part: Part, casework: Casework): string | undefined {
    const found = massOfPart(casework, part);
    return found && inBothSystems(found, casework);
}

/** How far a shelf sags under what it carries: `0.038in (1mm) at once and 0.082in (2.1mm) in years under 8 Teapot; 0.258in (6.5mm) at once is the limit` */
function sag({ path }: Part, casework: Casework): string | undefined {
    const shelf = shelfStrengths(casework).find(({ part }) => part.path === path);
    if (shelf?.is !== 'known') {
        return undefined;
    }
    const say = (millimetres: number) => inBothSystems(quantity.of(millimetres, unitNamed('mm')), casework);
    const limit = shelf.span * sagLimitOf(casework).share;
    return `${say(shelf.sagAtOnce)} at once and ${say(shelf.sagInYears)} in years under ${shelf.load.says}; ${say(limit)} at once is the limit`;
}

/** Who the part would have run through, had it been written earlier. */
function bounds({ bounds: all }: Part): string {
    const stopped = Object.values(all).filter((bound) => bound?.stopped === true);
    return [...new Set(stopped.map((bound) => `\`${bound?.name}\``))].join(', ');
}
