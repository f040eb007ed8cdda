/** Designs from their texts to their casework, as the command line and the editor get it. */
import { readdir, readFile } from 'node:fs/promises';
import { pathToFileURL } from 'node:url';
import { type Analysis, openWorkspace } from 'casewright-language';

/** A design in a file on disk, with what it uses. */
export function analyseFile(path: string): Promise<Analysis> {
    return openWorkspace({ readFile: (uri) => readFile(new URL(uri), 'utf8') }).analyse(pathToFileURL(path).href);
}

const texts = new Map<string, string>();
const inMemory = openWorkspace({
    readFile: async (uri) => {
        const found = texts.get(uri);
        if (found === undefined) throw new Error(`there is no ${uri}`);
        return found;
    },
});

/** A text by itself, or with other texts that it uses, by their names. Each is in a folder of its own. */
export function analyseText(text: string, used: Readonly<Record<string, string>> = {}): Promise<Analysis> {
    const folder = `file:///folder-${texts.size}/`;
    for (const [name, content] of Object.entries(used)) texts.set(folder + name, content);
    texts.set(`${folder}design.case`, text);
    return inMemory.analyse(`${folder}design.case`);
}

const designs = new URL('designs/', import.meta.url);
const examples = new URL('../../examples/', import.meta.url);

/** A design with its name and place; what it uses stands beside it. */
export interface DesignFile {
    readonly name: string;
    readonly path: string;
}

/** The designs beside this file, and all examples. */
export async function allDesigns(): Promise<readonly DesignFile[]> {
    const own = await casesIn(designs);
    const folders = (await readdir(examples, { withFileTypes: true })).filter((entry) => entry.isDirectory());
    const given = await Promise.all(folders.map(({ name }) => casesIn(new URL(`${name}/`, examples))));
    return [...own, ...given.flat()];
}

async function casesIn(folder: URL): Promise<readonly DesignFile[]> {
    const names = (await readdir(folder)).filter((name) => name.endsWith('.case') && name !== 'shop.case');
    return names.sort().map((name) => ({ name, path: new URL(name, folder).pathname }));
}

/** The text of a design and those of what it uses, for tests that change them. */
export async function textsOf({ path }: DesignFile): Promise<{ readonly text: string; readonly used: Readonly<Record<string, string>> }> {
    const shop = await readFile(new URL('shop.case', pathToFileURL(path)), 'utf8');
    return { text: await readFile(path, 'utf8'), used: { 'shop.case': shop } };
}
