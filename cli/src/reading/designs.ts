/** Reads designs with all they use. */
import { fileURLToPath } from 'node:url';
import { type Analysis, openWorkspace, type Workspace } from 'casewright-language';
import { CouldNotRun } from '../could-not-run.js';
import { shownPath, shownUri, uriOf } from '../paths.js';
import { type Terminal, tellCouldNotRun } from '../terminal.js';
import { readingError } from './nesting.js';
import { MissingFile, readTextFile } from './text-file.js';

/** The designs of one run. */
export class Designs {
    private readonly workspace: Workspace = openWorkspace({ readFile: (uri) => this.read(uri) });
    private readonly unreadable = new Map<string, CouldNotRun>();

    constructor(private readonly workingFolder: string) {}

    /**
     * A design by the path that the user gives, from the working folder.
     * @throws CouldNotRun if the file cannot be read; that a file which it uses is not there, or cannot be read, is a finding
     */
    async analyse(file: string): Promise<Analysis> {
        const uri = uriOf(this.workingFolder, file);
        return await this.workspace.analyse(uri).catch((error: unknown) => {
            this.unreadable.delete(uri); // said by the error itself
            throw readingError(error, shownUri(this.workingFolder, uri));
        });
    }

    /** Tells why files that are used and are there could not be read: a finding at their `use` only says that it is so. */
    tellOfUnreadable(terminal: Terminal): void {
        for (const reason of this.unreadable.values()) tellCouldNotRun(reason, terminal);
    }

    private async read(uri: string): Promise<string> {
        if (!uri.startsWith('file:')) throw new CouldNotRun(`\`${uri}\` is no file`);
        const file = fileURLToPath(uri);
        try {
            return await readTextFile(file, shownPath(this.workingFolder, file));
        } catch (error) {
            if (error instanceof CouldNotRun && !(error instanceof MissingFile)) this.unreadable.set(uri, error);
            throw error;
        }
    }
}
