import { EmptyFileSystem } from 'langium';
import { startLanguageServer } from 'langium/lsp';
import { BrowserMessageReader, BrowserMessageWriter, createConnection } from 'vscode-languageserver/browser';
import { createLanguageServerServices } from './services.js';

declare const self: DedicatedWorkerGlobalScope;

const connection = createConnection(new BrowserMessageReader(self), new BrowserMessageWriter(self));
startLanguageServer(createLanguageServerServices({ connection, ...EmptyFileSystem }).shared);
