import type { ExtensionContext } from 'vscode';
import type { BaseLanguageClient, LanguageClientOptions } from 'vscode-languageclient';
import { registerCommands } from './commands/register.js';

/** The language's identifier in package.json. */
export const LANGUAGE_ID = 'casewright';

/** The name under which the client shows itself in the output panel. */
export const CLIENT_NAME = 'Casewright';

/** What both platforms ask of the client: every Casewright file, saved or not, wherever it is kept. */
export const clientOptions: LanguageClientOptions = {
    documentSelector: [{ language: LANGUAGE_ID }],
};

/** Starts the client and everything that both platforms have in common; the extension's context ends it. */
export async function startClient(context: ExtensionContext, client: BaseLanguageClient): Promise<void> {
    context.subscriptions.push({ dispose: () => client.dispose() });
    registerCommands(context, client, LANGUAGE_ID);
    await client.start();
}
