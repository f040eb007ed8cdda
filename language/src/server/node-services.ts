// The services of a server in Node. Knows the disk and the timer: whoever starts the server brings the connection.
import { readFile } from 'node:fs/promises';
import { NodeFileSystem } from 'langium/node';
import type { Connection } from 'vscode-languageserver/node';
import type { Later } from '../lsp/diagnostics/while-typing.js';
import { ClientFileSystem } from './client-file-system.js';
import { FilesByScheme } from './files-by-scheme.js';
import { loadSolidKernel } from './node-solid-kernel.js';
import { createLanguageServerServices } from './services.js';

const later: Later = (run, milliseconds) => {
    const timer = setTimeout(run, milliseconds);
    return () => clearTimeout(timer);
};

/** Delivered beside the program that this has been bundled into. */
const typeface = () => readFile(new URL('NotoSans_400Regular.ttf', import.meta.url));

/**
 * @param connection asked for when an answer goes to the client: services can be made before there is one
 */
export function createNodeServices(connection: () => Connection): ReturnType<typeof createLanguageServerServices> {
    return createLanguageServerServices({
        get connection() {
            return connection();
        },
        later,
        fileSystemProvider: () => new FilesByScheme(NodeFileSystem.fileSystemProvider(), new ClientFileSystem(connection)),
        typefaceOfPdf: () => typeface,
        solidKernel: loadSolidKernel,
    });
}
