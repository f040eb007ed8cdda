/** What stands at the head of every sheet: whose work it is, and what is built. */
import type { Allowance, Assembly, Casework } from '../casework/index.js';
import { namesInWords, partNamer } from './part-names.js';
import { inWords, type PrintStyle } from './print-style.js';
import type { Fact } from './sheet.js';

/** Project, client, revision and what is built, as far as they are stated, and how sizes are printed. */
export function projectFacts(casework: Casework, print: PrintStyle): readonly Fact[] {
    const { project } = casework;
    const outermost = casework.assemblies.filter((assembly) => assembly.inside === undefined);
    const stated: readonly (readonly [label: string, text: string | undefined])[] = [
        ['Project', project?.title],
        ['Client', project?.client],
        ['Revision', project?.revision],
        ...outermost.map((assembly) => ['Builds', buildInWords(assembly, print)] as const),
        ['Sizes', print.explanation],
        ...(project?.notes ?? []).map((note) => ['Note', note] as const),
        ...allowedInWords(casework).map((text) => ['Allowed', text] as const),
    ];
    return stated.flatMap(([label, text]) => (text === undefined ? [] : [{ label, text }]));
}

/** `end-grain-showing on Left, Right: it stands above eye level`; of cases that are built, each sentence once. */
function allowedInWords(casework: Casework): readonly string[] {
    const nameOf = partNamer(casework);
    const built = new Map(casework.assemblies.map(({ path, name }) => [path, name]));
    const sentences = new Map<string, { readonly allowance: Allowance; readonly on: string[] }>();
    for (const allowance of casework.allowances) {
        if (allowance.because === undefined || (allowance.within !== undefined && !built.has(allowance.within))) continue;
        const key = `${allowance.span.file} ${allowance.span.start}`;
        const known = sentences.get(key) ?? { allowance, on: [] };
        sentences.set(key, known);
        known.on.push(...allowance.assemblies.flatMap((path) => built.get(path) ?? []));
        known.on.push(...allowance.parts.filter((path) => casework.parts.has(path)).map(nameOf));
    }
    return [...sentences.values()].flatMap(({ allowance: { rule, because, everywhere }, on }) => {
        if (!everywhere && on.length === 0) return [];
        return [`${rule}${everywhere ? '' : ` on ${namesInWords([...new Set(on)])}`}: ${because}`];
    });
}

/** `2 PotteryCase, 40in wide, 66in high, 18 5/8in deep over all` */
function buildInWords({ count, name, kind, mirrored, overall }: Assembly, print: PrintStyle): string {
    const sizes = [
        overall.width && `${inWords(overall.width, print)} wide`,
        overall.height && `${inWords(overall.height, print)} high`,
        overall.depth && `${inWords(overall.depth, print)} deep`,
    ].filter((size) => size !== undefined);
    const called = `${count} ${name === '' ? kind : name}${mirrored ? ' mirrored' : ''}`;
    return sizes.length === 0 ? called : `${called}, ${sizes.join(', ')} over all`;
}
