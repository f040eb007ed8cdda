import { startLanguageServer } from 'langium/lsp';
import { BrowserMessageReader, BrowserMessageWriter, createConnection } from 'vscode-languageserver/browser';
import { ClientFileSystem } from './client-file-system.js';
import { createLanguageServerServices } from './services.js';

declare const self: DedicatedWorkerGlobalScope;

const connection = createConnection(new BrowserMessageReader(self), new BrowserMessageWriter(self));
startLanguageServer(createLanguageServerServices({ connection, fileSystemProvider: () => new ClientFileSystem(connection) }).shared);
