/**
 * Reads a page that teaches by samples. What stands in its fences is done in their order:
 *
 *     ```case       a whole file; its first line is its name, `// bookcase.case`. Or a change to the file of the fence before it:
 *                   its first line says where, `// in place of` `X`, `// after` `X` or `// before` `X`
 *     ```sizes      what comes out: `Bookcase.top = 30in x 12in x 3/4in`, or `Bookcase.top.length = 30in`
 *     ```console    a command after `$`, and below it what it prints
 *
 *     ```markdown   a document, by its name: `markdown quote.md`. The command before it has written it, word for word
 *
 * and a table whose first column is `Part` holds rows of the cut list.
 */

export interface Sample {
    /** The line of the page, for messages. */
    readonly line: number;
    readonly heading: string;
    /** The file that the sample is, or changes. */
    readonly file: string;
    /** All files so far, by name. */
    readonly files: ReadonlyMap<string, string>;
    readonly claims: readonly Claim[];
}

export type Claim =
    | { readonly is: 'size'; readonly line: number; readonly path: string; readonly says: string }
    | { readonly is: 'command'; readonly line: number; readonly words: readonly string[]; readonly prints: string }
    | { readonly is: 'document'; readonly line: number; readonly name: string; readonly text: string }
    | { readonly is: 'row'; readonly line: number; readonly text: string };

interface Fence {
    readonly line: number;
    readonly info: string;
    readonly text: string;
}

/** @throws Error if a fence is of no known kind, or a change does not say where it goes */
export function readSamples(page: string): readonly Sample[] {
    const samples: (Sample & { claims: Claim[] })[] = [];
    let files: ReadonlyMap<string, string> = new Map();
    let heading = '';
    for (const block of blocksOf(page)) {
        const latest = samples.at(-1);
        if ('heading' in block) {
            heading = block.heading;
        } else if ('row' in block) {
            latest?.claims.push({ is: 'row', line: block.line, text: block.row });
        } else if (block.info === 'case') {
            const name = /^\/\/ ([\w-]+\.case)\b/.exec(block.text)?.[1];
            const file = name ?? latest?.file ?? '';
            files = new Map([...files, [file, name === undefined ? changed(files.get(file) ?? '', block) : block.text]]);
            samples.push({ line: block.line, heading, file, files, claims: [] });
        } else {
            latest?.claims.push(...claimsOf(block));
        }
    }
    return samples;
}

type Block = Fence | { readonly heading: string } | { readonly line: number; readonly row: string };

function* blocksOf(page: string): Generator<Block> {
    const lines = page.split('\n');
    for (let index = 0; index < lines.length; index++) {
        const line = lines[index] ?? '';
        if (line.startsWith('```')) {
            const end = lines.indexOf('```', index + 1);
            yield { line: index + 1, info: line.slice('```'.length), text: `${lines.slice(index + 1, end).join('\n')}\n` };
            index = end;
        } else if (line.startsWith('#')) {
            yield { heading: line.replace(/^#+ /, '') };
        } else if (line.startsWith('|')) {
            const isCutList = line.startsWith('| Part ');
            for (; lines[index]?.startsWith('|'); index++) if (isCutList) yield { line: index + 1, row: lines[index] ?? '' };
        }
    }
}

function claimsOf({ line, info, text }: Fence): readonly Claim[] {
    const lines = text.trimEnd().split('\n');
    if (info === 'sizes') {
        return lines.map((claim, index) => {
            const [, path = '', says = ''] = /^(\S+) += (.+)$/.exec(claim) ?? [];
            return { is: 'size', line: line + 1 + index, path, says };
        });
    }
    const command = /^\$ casewright (.+)$/.exec(lines[0] ?? '')?.[1];
    if (info === 'console' && command !== undefined) {
        const words = [...command.matchAll(/'([^']*)'|(\S+)/g)].map(([, quoted, plain]) => quoted ?? plain ?? '');
        return [{ is: 'command', line, words, prints: lines.slice(1).join('\n') }];
    }
    const document = /^markdown (\S+)$/.exec(info)?.[1];
    if (document !== undefined) return [{ is: 'document', line, name: document, text }];
    throw new Error(`line ${line}: nobody knows what to do with \`\`\`${info}`);
}

/** A file after the change that a fence says: the lines that its first line names are left out, or stand before or after it. */
function changed(text: string, { line, text: change }: Fence): string {
    const [first = '', ...added] = change.trimEnd().split('\n');
    const [, where = '', names = ''] = /^\/\/ (in place of|after|before) (.+)$/.exec(first) ?? [];
    const named = [...names.matchAll(/`([^`]+)`/g)].map(([, words = '']) => words);
    const lines = text.split('\n');
    const places = named.map((words) => lines.findIndex((one) => one.trim() === words));
    if (places.length === 0 || places.includes(-1)) throw new Error(`line ${line}: where does it go? ${first}`);
    const [place = 0] = places;
    if (where !== 'in place of') return lines.toSpliced(where === 'after' ? place + 1 : place, 0, ...added).join('\n');
    // as many lines as are named stand each in place of one; others all in place of the first
    const isEachForOne = added.length === places.length;
    const instead = places.map((_, index) => (isEachForOne ? added.slice(index, index + 1) : index === 0 ? added : []));
    return lines.flatMap((one, index) => instead[places.indexOf(index)] ?? [one]).join('\n');
}
