import { BrowserMessageReader, BrowserMessageWriter, createConnection } from 'vscode-languageserver/browser';
import type { Later } from '../lsp/diagnostics/while-typing.js';
import { serve } from '../lsp/language-server.js';
import { ClientFileSystem } from './client-file-system.js';
import { createLanguageServerServices } from './services.js';

declare const self: DedicatedWorkerGlobalScope;

const later: Later = (run, milliseconds) => {
    const timer = setTimeout(run, milliseconds);
    return () => clearTimeout(timer);
};

const connection = createConnection(new BrowserMessageReader(self), new BrowserMessageWriter(self));
serve(createLanguageServerServices({ connection, later, fileSystemProvider: () => new ClientFileSystem(connection) }).shared);
