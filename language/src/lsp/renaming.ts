// Renames a thing wherever it is named, in all files; refuses what would change what the text means. Knows names: not values.

import { vocabulary } from 'casewright-shared/casework';
import { unitWords } from 'casewright-shared/quantity';
import type { LangiumDocument, LangiumParser } from 'langium';
import type { RenameProvider } from 'langium/lsp';
import {
    LSPErrorCodes,
    type PrepareRenameParams,
    type Range,
    type RenameParams,
    ResponseError,
    TextEdit,
    type WorkspaceEdit,
} from 'vscode-languageserver';
import { describeName } from '../lowering/unknown-names.js';
import { wordsOfValues } from '../scoping/choices.js';
import { DeclaredName } from '../scoping/declared-name.js';
import type { VisibleNames } from '../scoping/visible-names.js';
import { libraryModule } from '../workspace/library.js';
import type { Occurrence, Occurrences } from './occurrences.js';
import { type WordAt, wordAt } from './word-at.js';

const units = new Set(unitWords);

export class CasewrightRename implements RenameProvider {
    constructor(
        private readonly occurrences: Occurrences,
        private readonly names: VisibleNames,
        private readonly parser: LangiumParser,
    ) {}

    prepareRename(document: LangiumDocument, { position }: PrepareRenameParams): Range | undefined {
        const word = wordAt(document, position);
        return word && this.renamable(word) ? word.range : undefined;
    }

    rename(document: LangiumDocument, { position, newName }: RenameParams): WorkspaceEdit | undefined {
        const word = wordAt(document, position);
        const name = word && this.renamable(word);
        if (!name || name.name === newName) {
            return undefined;
        }
        this.checkWord(newName, name);
        const occurrences = this.occurrences.of(name);
        this.checkFree(newName, name, occurrences);
        const changes: Record<string, TextEdit[]> = {};
        for (const { document: where, range } of occurrences) {
            const uri = where.uri.toString();
            changes[uri] = [...(changes[uri] ?? []), TextEdit.replace(range, newName)];
        }
        return { changes };
    }

    /** The declared thing at a word; words of the language cannot be renamed. */
    private renamable(word: WordAt): DeclaredName | undefined {
        const name = this.occurrences.declaredAt(word);
        if (!name) {
            return undefined;
        }
        if (name.isUnnamed) {
            refuse(
                `this ${name.kind} has no name of its own: give it one where it is declared, such as \`${name.kind} ${capital(name.kind)}\``,
            );
        }
        const library = libraryModule(name.documentUri);
        if (library) {
            refuse(
                `\`${name.name}\` belongs to the library ${library}, which cannot be changed; declare one of your own \`like ${name.name}\``,
            );
        }
        return name;
    }

    private checkWord(newName: string, name: DeclaredName): void {
        if (!/^[A-Za-z_À-ÖØ-öø-ɏ][0-9A-Za-z_À-ÖØ-öø-ɏ]*$/.test(newName)) {
            refuse(`\`${newName}\` is no name: a name is one word of letters, digits and \`_\` that does not begin with a digit`);
        }
        if (units.has(newName)) {
            refuse(`\`${newName}\` is a unit: after a number it would be read as one`);
        }
        if (wordsOfValues.has(newName) || (name.sort === 'recipe' && Object.hasOwn(vocabulary.stepKinds, newName))) {
            refuse(`\`${newName}\` is a word of the language: where it stands for a value it would be read as that`);
        }
        if (this.parser.parse(`case A { edge front ${newName} }`).parserErrors.length > 0) {
            refuse(`\`${newName}\` is a reserved word`);
        }
    }

    /** Nothing else may be called so, neither where the thing is declared nor where it is used. */
    private checkFree(newName: string, name: DeclaredName, occurrences: readonly Occurrence[]): void {
        for (const { node, document, range } of occurrences) {
            const found = this.names.lookup(newName, node) ?? this.declaredFurtherIn(newName, name, document);
            const taken = found instanceof DeclaredName ? found : found?.[0];
            if (taken) {
                const where =
                    taken.document === document
                        ? `in line ${(taken.nameSegment?.range.start.line ?? 0) + 1}`
                        : `in ${taken.documentUri.path.split('/').at(-1)}`;
                const at =
                    document === name.document ? '' : ` as seen from ${document.uri.path.split('/').at(-1)}, line ${range.start.line + 1}`;
                refuse(`\`${newName}\` is already the name of ${describeName(taken)}, declared ${where}${at}`);
            }
        }
    }

    /** A name of the same block or of one in it, which the new name would hide or be hidden by. */
    private declaredFurtherIn(newName: string, name: DeclaredName, document: LangiumDocument): DeclaredName | undefined {
        if (document !== name.document) {
            return undefined;
        }
        const block = name.declarationPath.slice(0, name.declarationPath.length - name.name.length);
        return this.names.of(document).all.find((one) => one.name === newName && one.declarationPath.startsWith(block));
    }
}

function refuse(why: string): never {
    throw new ResponseError(LSPErrorCodes.RequestFailed, why);
}

function capital(word: string): string {
    return word.charAt(0).toUpperCase() + word.slice(1);
}
