import type { Typeface } from 'casewright-shared/writers';
import { BrowserMessageReader, BrowserMessageWriter, createConnection } from 'vscode-languageserver/browser';
import type { Later } from '../lsp/diagnostics/while-typing.js';
import { serve } from '../lsp/language-server.js';
import type { InitializationOptions } from '../lsp/requests.js';
import { ClientFileSystem } from './client-file-system.js';
import { createLanguageServerServices } from './services.js';

declare const self: DedicatedWorkerGlobalScope;

const later: Later = (run, milliseconds) => {
    const timer = setTimeout(run, milliseconds);
    return () => clearTimeout(timer);
};

const connection = createConnection(new BrowserMessageReader(self), new BrowserMessageWriter(self));
let typeface: Typeface | undefined;
const { shared } = createLanguageServerServices({
    connection,
    later,
    fileSystemProvider: () => new ClientFileSystem(() => connection),
    typefaceOfPdf: () => typeface,
});
shared.lsp.LanguageServer.onInitialize(({ initializationOptions }) => {
    const address = (initializationOptions as InitializationOptions | undefined)?.typeface;
    typeface = address === undefined ? undefined : () => fetchBytes(address);
});
serve(shared);

async function fetchBytes(address: string): Promise<Uint8Array> {
    const response = await fetch(address);
    if (!response.ok) {
        throw new Error(`the typeface at ${address} cannot be read: ${response.status} ${response.statusText}`);
    }
    return new Uint8Array(await response.arrayBuffer());
}
