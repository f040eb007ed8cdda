// Breaks every line of a text in thirteen ways and counts what the rest of the file keeps.
// Knows texts and trees in general: nothing of the grammar, and nothing of how the parser recovers.
import { type AstNode, isAstNode, isReference, type ParseResult } from 'langium';
import { ownProperties } from './tree-text.js';

/** Parses a text; the same function is asked for the whole text and for each damaged one. */
export type Parse = (text: string) => ParseResult;

/** A kind of damage: the broken forms of a line, without its trailing comment. */
export interface DamageKind {
    name: string;
    damage(line: string): string[];
}

const wordsOf = (line: string): string[] => line.match(/\s*\S+/g) ?? [];
const insertInMiddle = (line: string, text: string): string => {
    const words = wordsOf(line);
    const middle = words.length >> 1;
    return [...words.slice(0, middle), ` ${text}`, ...words.slice(middle)].join('');
};
const onlyIf = (condition: boolean, broken: string): string[] => (condition ? [broken] : []);

export const damageKinds: readonly DamageKind[] = [
    {
        name: 'line half typed',
        damage: (line) =>
            wordsOf(line)
                .map((_, index, words) => words.slice(0, index).join(''))
                .slice(1),
    },
    { name: 'last word gone', damage: (line) => [line.replace(/\s*\S+\s*$/, '')] },
    { name: 'first word gone', damage: (line) => [line.replace(/^(\s*)\S+\s*/, '$1')] },
    {
        name: 'a word in the middle gone',
        damage: (line) => {
            const words = wordsOf(line);
            return onlyIf(words.length > 2, words.filter((_, index) => index !== words.length >> 1).join(''));
        },
    },
    { name: 'a stray word', damage: (line) => [insertInMiddle(line, 'blah')] },
    { name: 'a stray sign', damage: (line) => [')', '=', ',', '$'].map((sign) => insertInMiddle(line, sign)) },
    { name: 'first word misspelt', damage: (line) => onlyIf(/^\s*[a-z]{3}/.test(line), line.replace(/^(\s*)(\w)(\w)/, '$1$3$2')) },
    { name: 'text not closed', damage: (line) => onlyIf(line.includes('"'), line.replace(/"(?=[^"]*$)/, '')) },
    { name: 'bracket not closed', damage: (line) => onlyIf(/[\])]/.test(line), line.replace(/[\])]/, '')) },
    { name: '{ lost', damage: (line) => onlyIf(line.includes('{') && !line.includes('}'), line.replace('{', '')) },
    { name: '} lost', damage: (line) => onlyIf(line.trim() === '}', '') },
    { name: '} too many', damage: (line) => [`${line} }`] },
    { name: '{ too many', damage: (line) => [`${line} {`] },
];

/** What one kind of damage does to one text or, added up, to several. */
export interface DamageCount {
    /** Damaged texts that were parsed. */
    tries: number;
    /** Nodes on other lines than the broken one, over all tries. */
    nodes: number;
    /** Those of them that were lost, changed or moved to another parent. */
    lost: number;
    /** Tries in which nothing was lost. */
    unharmed: number;
    /** Errors reported on other lines than the broken one. */
    errorsElsewhere: number;
    /** Tries in which one line has more than one error. */
    crowdedLines: number;
    /** The worst tries: the damaged line and how many nodes it cost. */
    worst: { line: number; text: string; lost: number }[];
}

/** Breaks every line of the text in every way of the kind. */
export function measureDamage(text: string, kind: DamageKind, parse: Parse): DamageCount {
    const count: DamageCount = { tries: 0, nodes: 0, lost: 0, unharmed: 0, errorsElsewhere: 0, crowdedLines: 0, worst: [] };
    const lines = text.split('\n');
    const whole = nodesByLine(parse(text).value);
    lines.forEach((line, index) => {
        const bare = line.replace(/\s*\/\/.*$/, '');
        const closes = bare.trim() === '}';
        if (bare.trim() === '' || bare.trim() === '{' || (closes && !kind.name.includes('}'))) {
            return;
        }
        for (const broken of kind.damage(bare).filter((candidate) => candidate !== bare)) {
            const result = parse([...lines.slice(0, index), broken, ...lines.slice(index + 1)].join('\n'));
            const kept = nodesByLine(result.value);
            let nodes = 0;
            let lost = 0;
            for (const [node, at] of whole) {
                if (at !== index) {
                    nodes++;
                    lost += kept.get(node) === at ? 0 : 1;
                }
            }
            const errors = errorLines(result);
            count.tries++;
            count.nodes += nodes;
            count.lost += lost;
            count.unharmed += lost === 0 ? 1 : 0;
            count.errorsElsewhere += errors.filter((at) => at !== index).length;
            count.crowdedLines += new Set(errors).size < errors.length ? 1 : 0;
            if (lost > 0) {
                count.worst.push({ line: index + 1, text: broken, lost });
            }
        }
    });
    return count;
}

export function addDamage(a: DamageCount, b: DamageCount): DamageCount {
    return {
        tries: a.tries + b.tries,
        nodes: a.nodes + b.nodes,
        lost: a.lost + b.lost,
        unharmed: a.unharmed + b.unharmed,
        errorsElsewhere: a.errorsElsewhere + b.errorsElsewhere,
        crowdedLines: a.crowdedLines + b.crowdedLines,
        worst: [...a.worst, ...b.worst].sort((x, y) => y.lost - x.lost).slice(0, 20),
    };
}

/** Share of the nodes on other lines that were lost. */
export function lostShare(count: DamageCount): number {
    return count.nodes === 0 ? 0 : count.lost / count.nodes;
}

/** What typing a text in from the top, word by word, shows on lines that are finished. */
export function measureTyping(text: string, parse: Parse): { steps: number; errorsOnFinishedLines: string[] } {
    const errorsOnFinishedLines: string[] = [];
    const lines = text.split('\n');
    let steps = 0;
    lines.forEach((line, index) => {
        const words = wordsOf(line);
        for (let typed = 1; typed <= words.length; typed++) {
            steps++;
            const current = words.slice(0, typed).join('');
            const result = parse([...lines.slice(0, index), current].join('\n'));
            for (const at of errorLines(result)) {
                if (at < index) {
                    errorsOnFinishedLines.push(`typing \`${current.trim()}\` in line ${index + 1}: error in line ${at + 1}`);
                }
            }
        }
    });
    return { steps, errorsOnFinishedLines };
}

/** Each node as its place, type, own words and parents, with the line it begins on. */
function nodesByLine(root: AstNode): Map<string, number> {
    const nodes = new Map<string, number>();
    const visit = (node: AstNode, parents: string): void => {
        for (const [name, value] of ownProperties(node)) {
            for (const child of Array.isArray(value) ? value : [value]) {
                if (!isAstNode(child) || !child.$cstNode) {
                    continue;
                }
                const { line, character } = child.$cstNode.range.start;
                nodes.set(`${line}:${character} ${signature(child)} < ${parents}`, line);
                // Where a block begins whose brace is missing says nothing: it is left out among the parents.
                visit(child, BLOCKS.has(child.$type) ? parents : `${name}@${line}<${parents}`);
            }
        }
    };
    visit(root, '');
    return nodes;
}

const BLOCKS = new Set(['Body', 'WorkBlock']);

function signature(node: AstNode): string {
    const words = ownProperties(node).flatMap(([name, value]) => {
        if (typeof value === 'string') {
            return [`${name}=${value}`];
        }
        return isReference(value) ? [`${name}=${value.$refText}`] : [];
    });
    return `${node.$type}(${words.join()})`;
}

function errorLines(result: ParseResult): number[] {
    return [
        ...result.lexerErrors.map((error) => error.line ?? 1),
        ...(result.lexerReport?.diagnostics ?? []).map((diagnostic) => diagnostic.line ?? 1),
        ...result.parserErrors.map((error) => error.token.startLine ?? 1),
    ].map((line) => line - 1);
}
