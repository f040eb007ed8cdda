import type { ExtensionContext } from 'vscode';
import { LanguageClient, type ServerOptions, TransportKind } from 'vscode-languageclient/node';
import { serveFiles } from './client-files.js';
import { CLIENT_NAME, clientOptions, LANGUAGE_ID, startClient } from './language-client.js';

/** Nearly all that is made at a keystroke lives shortly: with room for it, it is thrown away in one sweep, and not copied about before. */
const roomForShortLived = '--max-semi-space-size=64';

/** Entry on the desktop and on remote machines: the language server is a Node process of its own. */
export async function activate(context: ExtensionContext): Promise<void> {
    const module = context.asAbsolutePath('dist/server/desktop.mjs');
    const serverOptions: ServerOptions = {
        run: { module, transport: TransportKind.ipc, options: { execArgv: [roomForShortLived] } },
        debug: { module, transport: TransportKind.ipc, options: { execArgv: ['--nolazy', '--inspect=6009'] } },
    };
    const client = new LanguageClient(LANGUAGE_ID, CLIENT_NAME, serverOptions, clientOptions);
    serveFiles(client); // those that are not on this machine
    await startClient(context, client);
}
