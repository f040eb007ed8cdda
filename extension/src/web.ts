import type { InitializationOptions } from 'casewright-language/requests';
import { type ExtensionContext, Uri } from 'vscode';
import { LanguageClient } from 'vscode-languageclient/browser';
import { serveFiles } from './client-files.js';
import { CLIENT_NAME, clientOptions, LANGUAGE_ID, startClient } from './language-client.js';

/** Entry in VS Code for the Web: the language server runs in a worker of the browser. */
export async function activate(context: ExtensionContext): Promise<void> {
    const delivered = (file: string) => Uri.joinPath(context.extensionUri, 'dist/server', file).toString(true);
    const worker = new Worker(delivered('web.js'));
    const initializationOptions: InitializationOptions = { typeface: delivered('NotoSans_400Regular.ttf') };
    const client = new LanguageClient(LANGUAGE_ID, CLIENT_NAME, worker, { ...clientOptions, initializationOptions });
    serveFiles(client);
    await startClient(context, client);
}
