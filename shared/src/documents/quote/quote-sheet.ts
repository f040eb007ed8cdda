/** The quote: what is made and what it costs, for the client. None of the shop's hours, costs and shares is in it. */
import type { Alternative, Assembly, Casework, Part, Thing } from '../../casework/index.js';
import { formatQuantity, usualStyle } from '../../quantity/index.js';
import { isSolidWood, thingProperty, wordOf } from '../../strength/index.js';
import type { DocumentOptions } from '../document-options.js';
import { onlyBuilt } from '../only-built.js';
import { inWords, type PrintStyle, printStyle } from '../print-style.js';
import { type Column, type Fact, type Group, type Row, type Sheet, textCell } from '../sheet.js';
import { alternativeCostings } from './alternatives.js';
import { type Costing, costingOf, percent, saysHowToPrice } from './costing.js';
import { difference } from './costing-sheet.js';
import { moneyCell, moneyOf } from './money-cell.js';
import { dateFacts } from './quote-facts.js';

const columns: readonly Column[] = [
    { key: 'group', heading: 'Group', align: 'left', saidByGroup: true },
    { key: 'count', heading: 'Count', align: 'right' },
    { key: 'item', heading: 'What', align: 'left' },
    { key: 'size', heading: 'Over all', align: 'left' },
    { key: 'details', heading: 'Of', align: 'left' },
    { key: 'finish', heading: 'Finish', align: 'left' },
    { key: 'change', heading: 'Change', align: 'right' },
    { key: 'price', heading: 'Price', align: 'right' },
];

/** Undefined where the text says nothing by which work could be priced. */
export function quoteSheet(evaluated: Casework, options: Pick<DocumentOptions, 'units' | 'date'>): Sheet | undefined {
    if (!saysHowToPrice(evaluated)) return undefined;
    const casework = onlyBuilt(evaluated);
    const costing = costingOf(evaluated);
    const groups = [madeGroup(casework, printStyle(casework, options)), priceGroup(costing), alternativesGroup(evaluated, costing)];
    return {
        kind: 'quote',
        title: 'Quote',
        facts: factsOf(casework, costing, options.date),
        columns,
        groups: groups.filter((group): group is Group => group !== undefined),
        notes: termsOf(casework),
    };
}

function factsOf({ project }: Casework, { missing }: Costing, date: string | undefined): readonly Fact[] {
    const stated: readonly (readonly [label: string, text: string | undefined])[] = [
        ['Project', project?.title],
        ['Client', project?.client],
        ['Revision', project?.revision],
    ];
    return [
        ...stated.flatMap(([label, text]) => (text === undefined ? [] : [{ label, text }])),
        ...dateFacts(date),
        ...(missing.length > 0 ? [{ label: 'Not complete', text: `not to be sent: ${missing.join('; ')}` }] : []),
    ];
}

function madeGroup(casework: Casework, print: PrintStyle): Group {
    const heading = 'What is made';
    const outermost = casework.assemblies.filter(({ inside }) => inside === undefined);
    const rows = outermost.map((assembly): Row => {
        const parts = [...casework.parts.values()].filter(({ path }) => path.startsWith(`${assembly.path}.`));
        const finishes = new Set(parts.flatMap(({ finish }) => (finish === undefined ? [] : [casework.finishes?.get(finish)?.name ?? ''])));
        return {
            group: textCell(heading),
            count: { is: 'count', count: assembly.count },
            item: textCell(assembly.name === '' ? assembly.kind : assembly.name),
            size: textCell(overAll(assembly, print)),
            details: textCell(materialsOf(casework, parts)),
            finish: textCell([...finishes].join(', ')),
        };
    });
    return { heading, rows, notes: [] };
}

function overAll({ overall: { width, height, depth } }: Assembly, print: PrintStyle): string {
    return [width && `${inWords(width, print)} wide`, height && `${inWords(height, print)} high`, depth && `${inWords(depth, print)} deep`]
        .filter((size) => size !== undefined)
        .join(', ');
}

/** The materials of the boards of some parts, each once, in the order in which they come. */
function materialsOf(casework: Casework, parts: readonly Part[]): string {
    const ids = new Set(parts.flatMap(({ layers }) => layers.flatMap(({ material }) => material ?? [])));
    return [...new Set([...ids].map((id) => inPlainWords(casework, casework.things.get(id))))].join(', ');
}

/** `black walnut plywood`, `solid black walnut`: by its wood and its sort, not by what the shop calls it; its name where it says neither. */
function inPlainWords(casework: Casework, material: Thing | undefined): string {
    if (!material) return '';
    const species = thingProperty(casework, material, 'species');
    const wood = wordOf(species?.properties.get('commonName')) ?? species?.name;
    if (isSolidWood(material) && material.family !== 'moulding') return wood === undefined ? material.name : `solid ${wood}`;
    return [wood, material.family].filter((word) => word !== undefined).join(' ') || material.name;
}

function priceGroup({ price, shares }: Costing): Group {
    const heading = 'Price';
    const row = (item: string, of: Row[string]): Row => ({ group: textCell(heading), item: textCell(item), price: of });
    if (!price) return { heading, rows: [row('Price', { is: 'unknown' })], notes: ['There is no price yet.'] };
    const { built, currency } = price;
    if (!shares.tax) return { heading, rows: [row('Price', moneyCell(moneyOf(built.price, currency)))], notes: ['Without tax.'] };
    return {
        heading,
        rows: [
            row('Price', moneyCell(moneyOf(built.price, currency))),
            row(`Tax, ${percent(shares.tax)}`, moneyCell(moneyOf(built.tax, currency))),
            row('Total', moneyCell(moneyOf(built.total, currency))),
        ],
        notes: [],
    };
}

function alternativesGroup(evaluated: Casework, costing: Costing): Group | undefined {
    const heading = 'Alternatives';
    const rows = alternativeCostings(evaluated).flatMap(({ name, of, costing: other }): readonly Row[] => [
        {
            group: textCell(heading),
            item: textCell(name),
            details: textCell(takesInPlainWords(evaluated, of)),
            change: textCell(difference(costing.price, other?.price)),
            price: moneyCell(other?.price && moneyOf(other.price.built.price, other.price.currency)),
        },
    ]);
    return rows.length === 0 ? undefined : { heading, rows, notes: costing.shares.tax ? ['Prices before tax.'] : [] };
}

/** `solid cherry instead of solid black walnut` */
function takesInPlainWords(casework: Casework, { takes }: Alternative): string {
    const plainly = (id: string) => {
        const thing = casework.things.get(id);
        return thing?.kind === 'material' ? inPlainWords(casework, thing) : (casework.design.declarations.get(id)?.name ?? '');
    };
    return [...new Set(takes.map(({ taken, instead }) => `${plainly(taken)} instead of ${plainly(instead)}`))].join(', ');
}

/** What the text says: nothing is promised for the shop. */
function termsOf({ project }: Casework): readonly string[] {
    const validity = project?.thing?.properties.get('validity');
    const valid =
        validity?.is === 'measure' ? [`Valid for ${formatQuantity(validity.measure.quantity, usualStyle('inch', 32)).text}.`] : [];
    return [...valid, ...(project?.terms ?? [])];
}
