// The language without an editor: for the command line and for tests. Knows which services to make and to ask.

import type { Finding } from 'casewright-shared/rules';
import { URI } from 'langium';
import type { Analysis } from './analysis/analysis.js';
import type { PlaceInText } from './analysis/place.js';
import { type ReadFile, TextsByUri } from './analysis/texts.js';
import { createCasewrightServices } from './casewright-module.js';

export interface WorkspaceOptions {
    /** Reads the files that are asked for and those that they use. The built-in library is read without it. */
    readonly readFile: ReadFile;
}

/** A finding and the place of its words. */
export interface PlacedFinding extends Finding {
    readonly place: PlaceInText;
}

/** Files as they are when they are first read. */
export interface Workspace {
    /**
     * Reads a file and all it uses.
     * @param uri such as `file:///home/ann/kiln-lane.case`
     * @throws whatever `readFile` throws for the file itself; a file that it uses and that cannot be read is a finding
     */
    analyse(uri: string): Promise<Analysis>;
    /** The findings of several files, each finding once, at the file where its words are. */
    check(uris: readonly string[]): Promise<readonly PlacedFinding[]>;
}

export function openWorkspace({ readFile }: WorkspaceOptions): Workspace {
    const { shared, casewright } = createCasewrightServices({ fileSystemProvider: () => new TextsByUri(readFile) });
    const analyse = async (uri: string): Promise<Analysis> => {
        const document = await shared.workspace.LangiumDocuments.getOrCreateDocument(URI.parse(uri));
        await shared.workspace.DocumentBuilder.build([document], { validation: false });
        return casewright.analysis.Analyses.of(document);
    };
    return {
        analyse,
        check: async (uris) => {
            const analyses: Analysis[] = [];
            for (const uri of uris) {
                analyses.push(await analyse(uri));
            }
            return placedFindings(analyses);
        },
    };
}

/** The findings of several analyses, each once: what is wrong in a file that two of them use is found by both. */
function placedFindings(analyses: readonly Analysis[]): readonly PlacedFinding[] {
    const found = new Map<string, PlacedFinding>();
    for (const analysis of analyses) {
        for (const finding of analysis.findings) {
            const place = analysis.locate(finding.span);
            const key = [place.uri, finding.span.start, finding.span.end, finding.code, finding.message].join(' ');
            if (!found.has(key)) {
                found.set(key, { ...finding, place });
            }
        }
    }
    return [...found.values()];
}
