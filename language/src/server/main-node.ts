import { startLanguageServer } from 'langium/lsp';
import { NodeFileSystem } from 'langium/node';
import { createConnection, ProposedFeatures } from 'vscode-languageserver/node';
import { createLanguageServerServices } from './services.js';

// The way to the client (--node-ipc or --stdio) is among the arguments of the process.
const connection = createConnection(ProposedFeatures.all);
startLanguageServer(createLanguageServerServices({ connection, ...NodeFileSystem }).shared);
