import { readFile } from 'node:fs/promises';
import * as modules from 'node:module';
import { NodeFileSystem } from 'langium/node';
import { createConnection, ProposedFeatures } from 'vscode-languageserver/node';
import type { Later } from '../lsp/diagnostics/while-typing.js';
import { serve } from '../lsp/language-server.js';
import { ClientFileSystem } from './client-file-system.js';
import { FilesByScheme } from './files-by-scheme.js';
import { createLanguageServerServices } from './services.js';

const later: Later = (run, milliseconds) => {
    const timer = setTimeout(run, milliseconds);
    return () => clearTimeout(timer);
};

// The way to the client (--node-ipc or --stdio) is among the arguments of the process.
const connection = createConnection(ProposedFeatures.all);
const fileSystemProvider = () => new FilesByScheme(NodeFileSystem.fileSystemProvider(), new ClientFileSystem(connection));
/** Delivered beside the program that this has been bundled into. */
const typeface = () => readFile(new URL('NotoSans_400Regular.ttf', import.meta.url));
serve(createLanguageServerServices({ connection, later, fileSystemProvider, typefaceOfPdf: () => typeface }).shared);

// An editor that ends the server leaves it no time to keep what it has compiled for the next start, where that is kept.
setTimeout(() => modules.flushCompileCache?.(), 10_000).unref();
