/** Designs in memory, for tests: files by name, read, changed and deleted as an editor would. */

import type { Problem } from 'casewright-shared/casework';
import type { LangiumDocument } from 'langium';
import { URI } from 'langium';
import { syntaxProblems } from '../src/analysis/syntax-problems.js';
import { TextsByUri } from '../src/analysis/texts.js';
import { createCasewrightServices } from '../src/casewright-module.js';
import type { LoweredDesign } from '../src/lowering/lowering.js';

const folder = 'file:///designs/';

export class FilesInMemory {
    readonly services;
    private readonly texts: Map<string, string>;

    constructor(texts: Readonly<Record<string, string>>) {
        this.texts = new Map(Object.entries(texts));
        this.services = createCasewrightServices({
            fileSystemProvider: () =>
                new TextsByUri(async (uri) => {
                    const text = this.texts.get(uri.slice(folder.length));
                    if (text === undefined) throw new Error(`${uri} does not exist`);
                    return text;
                }),
        });
    }

    get names(): readonly string[] {
        return [...this.texts.keys()];
    }

    async open(name: string): Promise<LangiumDocument> {
        const { workspace } = this.services.shared;
        const document = await workspace.LangiumDocuments.getOrCreateDocument(URI.parse(folder + name));
        await workspace.DocumentBuilder.build([document], { validation: false });
        return document;
    }

    /** Changes a file and lets the builder do what it does after a keystroke. */
    async change(name: string, text: string): Promise<void> {
        this.texts.set(name, text);
        await this.services.shared.workspace.DocumentBuilder.update([URI.parse(folder + name)], []);
    }

    async delete(name: string): Promise<void> {
        this.texts.delete(name);
        await this.services.shared.workspace.DocumentBuilder.update([], [URI.parse(folder + name)]);
    }

    /** Reads a file, and lowers it with all it uses. */
    async lower(name: string): Promise<LoweredDesign> {
        return this.services.casewright.lowering.Lowering.lowerDesign(await this.open(name));
    }

    /** The problems in a file itself, of its syntax and of what it says, in the order of the text. */
    async problems(name: string): Promise<readonly Problem[]> {
        const document = await this.open(name);
        const { problems } = await this.lower(name);
        const own = problems.filter(({ span }) => span.file === name);
        return [...syntaxProblems(document, name), ...own].sort((a, b) => a.span.start - b.span.start);
    }
}

/** One design in one file. */
export async function lowerText(text: string): Promise<LoweredDesign> {
    return new FilesInMemory({ 'design.case': text }).lower('design.case');
}
