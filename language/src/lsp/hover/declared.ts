// Hovers over names: what the declared thing has become. Knows declared names and where their casework is.
import type { Assembly, Casework, CurveModel, Measure, Opening } from 'casewright-shared/casework';
import { namesInWords } from 'casewright-shared/documents';
import { formatLength } from 'casewright-shared/quantity';
import type { Analysis } from '../../analysis/analysis.js';
import { docBefore } from '../../lowering/source-text.js';
import type { DeclaredName } from '../../scoping/declared-name.js';
import { builtCasesOf, declarationNode, fileOf, insertedCasesOf, isAt, openingsOf, partsOf, thingOf } from '../declared-things.js';
import { code, paragraphs, table } from './markdown.js';
import { inBothSystems, lengthStyle, measureText } from './measures.js';
import { partsText } from './parts.js';
import { thingText } from './things.js';

/** What is said where a name is used, besides the name. */
export interface Use {
    /** The index behind it: `Tier[2]` speaks of one part of three. */
    readonly index: number | undefined;
    readonly value: Measure | undefined;
}

/** What a name stands for. */
export function declaredText(name: DeclaredName, analysis: Analysis, { index, value }: Use): string | undefined {
    switch (name.sort) {
        case 'part':
            return partText(name, analysis, index) ?? source(name);
        case 'fact':
            return name.kind === 'curve' ? curveText(name, analysis) : factText(name, analysis);
        case 'design':
        case 'build':
            return designText(name, analysis) ?? source(name);
        case 'opening':
            return openingText(name, analysis) ?? source(name);
        case 'let':
        case 'parameter':
        case 'index':
            return valueText(name, analysis, value);
        default:
            return source(name);
    }
}

function partText(name: DeclaredName, analysis: Analysis, chosen: number | undefined): string | undefined {
    const { casework } = analysis;
    const parts = partsOf(name, analysis, chosen);
    if (parts.length > 0) {
        return partsText(parts, casework);
    }
    const inside = insertedCasesOf(name, analysis);
    return inside.length > 0 ? assembliesText(inside, casework) : undefined;
}

function factText(name: DeclaredName, analysis: Analysis): string | undefined {
    const thing = thingOf(name, analysis);
    return thing ? thingText(thing, analysis) : source(name);
}

function curveText(name: DeclaredName, analysis: Analysis): string {
    const models = analysis.casework.curves.filter((curve) => isAt(curve.nameSpan, name, analysis));
    return paragraphs(source(name), ...models.map((model) => usedOver(model, analysis.casework)));
}

function usedOver({ over, used, parts }: CurveModel, casework: Casework): string | undefined {
    if (!used || parts.length === 0) {
        return undefined;
    }
    const say = (millimetres: number): string => formatLength(millimetres, lengthStyle(casework)).text;
    return `used over a ${over} of ${say(used.from)} to ${say(used.to)}, by \`${namesInWords(parts)}\``;
}

function designText(name: DeclaredName, analysis: Analysis): string | undefined {
    const built = builtCasesOf(name, analysis);
    return built.length > 0 ? paragraphs(docOf(name), assembliesText(built, analysis.casework)) : undefined;
}

function assembliesText(assemblies: readonly Assembly[], casework: Casework): string {
    const rows = assemblies.flatMap(({ path, width, height, depth, overall }) => {
        const stated = [`\`${path}\``, ...sizes([width, height, depth], casework)];
        const all = ['over all', ...sizes([overall.width, overall.height, overall.depth], casework)];
        return all.slice(1).join() === stated.slice(1).join() ? [stated] : [stated, all];
    });
    const [{ kind, count, parts }] = assemblies as [Assembly];
    const head = `**${kind}**, ${count === 1 ? 'built once' : `built ${count} times`}, of ${parts.length} parts`;
    return paragraphs(assemblies.length === 1 ? head : `**${kind}**`, table(['', 'width', 'height', 'depth'], rows));
}

function openingText(name: DeclaredName, analysis: Analysis): string | undefined {
    const { casework } = analysis;
    const openings = openingsOf(name, analysis);
    const row = ({ path, width, height, depth }: Opening): readonly string[] => [`\`${path}\``, ...sizes([width, height, depth], casework)];
    return openings.length > 0 ? paragraphs('**opening**', table(['clear', 'width', 'height', 'depth'], openings.map(row))) : undefined;
}

function sizes(measures: readonly Assembly['width'][], casework: Casework): readonly string[] {
    return measures.map((measure) => (measure ? inBothSystems(measure.quantity, casework) : '?'));
}

/** The value where the name stands, or where it is declared. */
function valueText(name: DeclaredName, analysis: Analysis, here: Measure | undefined): string {
    const segment = name.nameSegment;
    const file = fileOf(name, analysis);
    const value = here ?? (segment && file !== undefined ? analysis.valueAt({ file, start: segment.offset, end: segment.end }) : undefined);
    return paragraphs(value && measureText(value, analysis), source(name));
}

/** The declaration as it is written, with its comment; of a long one the first line. */
function source(name: DeclaredName): string {
    const node = declarationNode(name.node);
    const text = name.document.textDocument.getText().slice(node.$cstNode?.offset ?? 0, node.$cstNode?.end ?? 0);
    const lines = text.split('\n');
    return paragraphs(docOf(name), code(lines.length > mostLines ? `${lines[0]} ... }` : text));
}
const mostLines = 12;

function docOf(name: DeclaredName): string | undefined {
    const start = declarationNode(name.node).$cstNode?.offset;
    return start === undefined ? undefined : docBefore(name.document.textDocument.getText(), start);
}
