import { commands, type ExtensionContext, type TextDocument, Uri, window, workspace } from 'vscode';
import type { BaseLanguageClient } from 'vscode-languageclient';
import { build } from './build.js';
import { check } from './check.js';
import { why } from './why.js';

type Command = (design: TextDocument, client: BaseLanguageClient, choice: never) => Promise<unknown>;

/** Offers the commands of package.json. Each takes a file (the open one if it is not given) and a choice, which keeps it from asking. */
export function registerCommands({ subscriptions }: ExtensionContext, client: BaseLanguageClient, language: string): void {
    const all: Readonly<Record<string, Command>> = { 'casewright.check': check, 'casewright.build': build, 'casewright.why': why };
    for (const [name, run] of Object.entries(all)) {
        subscriptions.push(
            commands.registerCommand(name, async (file: unknown, choice: unknown) => {
                const design = await designAt(file, language);
                return design ? await run(design, client, (choice ?? {}) as never) : undefined;
            }),
        );
    }
}

/** The file that a menu or a key binding names, or the open one; tells the user if it is none of ours. */
async function designAt(file: unknown, language: string): Promise<TextDocument | undefined> {
    const design = file instanceof Uri ? await workspace.openTextDocument(file) : window.activeTextEditor?.document;
    if (design?.languageId === language) {
        return design;
    }
    void window.showInformationMessage('Open a `.case` file first: the command works on the design in it.');
    return undefined;
}
