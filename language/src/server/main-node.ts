import * as modules from 'node:module';
import { createConnection, ProposedFeatures } from 'vscode-languageserver/node';
import { serve } from '../lsp/language-server.js';
import { createNodeServices } from './node-services.js';

// The way to the client (--node-ipc or --stdio) is among the arguments of the process.
const connection = createConnection(ProposedFeatures.all);
serve(createNodeServices(() => connection).shared);

// An editor that ends the server leaves it no time to keep what it has compiled for the next start, where that is kept.
setTimeout(() => modules.flushCompileCache?.(), 10_000).unref();
