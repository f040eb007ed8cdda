// Completion: what fits at the cursor, from the words before it and the names that are visible there. Knows documents and services.
import { vocabulary } from 'casewright-shared/casework';
import { CstUtils, type LangiumDocument, type LangiumDocuments, type Lexer, UriUtils } from 'langium';
import type { CompletionProvider, LangiumServices } from 'langium/lsp';
import { type CompletionList, type CompletionOptions, type CompletionParams, type Range, TextEdit } from 'vscode-languageserver';
import type { CasewrightAddedServices } from '../../casewright-module.js';
import type * as Ast from '../../generated/ast.js';
import { membersOfName } from '../../lowering/members.js';
import type { DeclaredName } from '../../scoping/declared-name.js';
import { insertionOfUse } from '../../scoping/place-for-use.js';
import { isOne, type VisibleNames } from '../../scoping/visible-names.js';
import { libraryModules, libraryNames } from '../../workspace/library.js';
import { kindOfBlocks } from './block-kind.js';
import { type Cursor, readCursor } from './cursor.js';
import { Offer, type UnusedName } from './offer.js';
import { type NamesHere, offerWhatFits } from './what-fits.js';

export class CasewrightCompletion implements CompletionProvider {
    readonly completionOptions: CompletionOptions = { triggerCharacters: ['.', '"', ':'] };
    private takesSnippets = false;

    private readonly lexer: Lexer;
    private readonly names: VisibleNames;
    private readonly documents: LangiumDocuments;

    constructor({ parser, references, shared }: LangiumServices & CasewrightAddedServices) {
        this.lexer = parser.Lexer;
        this.names = references.VisibleNames;
        this.documents = shared.workspace.LangiumDocuments;
        shared.lsp.LanguageServer.onInitialize(({ capabilities }) => {
            this.takesSnippets = capabilities.textDocument?.completion?.completionItem?.snippetSupport === true;
        });
    }

    getCompletion(document: LangiumDocument, { position }: CompletionParams): CompletionList | undefined {
        const { textDocument } = document;
        const offset = textDocument.offsetAt(position);
        const cursor = readCursor(textDocument.getText().slice(0, offset), this.lexer);
        if (!cursor) {
            return undefined;
        }
        const replaced = cursor.number?.unit ?? cursor.openText ?? cursor.typed;
        const range: Range = { start: textDocument.positionAt(offset - replaced.length), end: position };
        const visible = [...new Map(this.visibleAt(document, cursor).map((name) => [name.name, name] as const)).values()];
        const here = this.namesHere(document, visible);
        const offer = new Offer(range, visible, this.unusedNames(document), this.takesSnippets);
        offerWhatFits(
            offer,
            cursor,
            kindOfBlocks(cursor.blocks, (name) => here.find(name)?.kind),
            here,
        );
        return { isIncomplete: false, items: offer.all };
    }

    /** What the library declares in modules that the document does not use. */
    private unusedNames({ parseResult, textDocument }: LangiumDocument): readonly UnusedName[] {
        const root = parseResult.value as Ast.File;
        const used = new Set(root.statements.map((statement) => (statement.$type === 'Use' ? statement.module : undefined)));
        const edits = new Map(
            libraryModules.map((module) => {
                const { offset, text } = insertionOfUse(root, textDocument.getText(), `use ${module}`);
                return [module, TextEdit.insert(textDocument.positionAt(offset), text)] as const;
            }),
        );
        return libraryNames().flatMap((name) => {
            const edit = used.has(name.module) ? undefined : edits.get(name.module);
            return edit ? [{ ...name, edit }] : [];
        });
    }

    /** The names that are visible in the innermost open block, the nearest last, so that it wins. */
    private visibleAt(document: LangiumDocument, { blocks, words }: Cursor): readonly DeclaredName[] {
        const root = document.parseResult.value;
        const brace = blocks.at(-1)?.offset;
        const node = brace === undefined || !root.$cstNode ? root : (CstUtils.findLeafNodeAtOffset(root.$cstNode, brace)?.astNode ?? root);
        const enclosing = blocks.map(({ head }) => nameBeingMade(head));
        const isOpen = ({ name, sort }: DeclaredName): boolean => sort === 'design' && enclosing.includes(name);
        return [...this.names.allAt(node)].filter((one) => one.name !== nameBeingMade(words) && !isOpen(one)).reverse();
    }

    private namesHere(document: LangiumDocument, visible: readonly DeclaredName[]): NamesHere {
        const find = (name: string): DeclaredName | undefined => visible.find((one) => one.name === name);
        return {
            find,
            members: (words) => this.members(words, find),
            parameters: (name) => {
                const design = find(name);
                const file = design?.sort === 'design' ? this.names.of(design.document) : undefined;
                const parameters = (design?.node as Ast.DesignDeclaration | undefined)?.parameters ?? [];
                return parameters.flatMap((parameter) => file?.nameOf(parameter) ?? []);
            },
            libraries: libraryModules,
            files: this.documents.all
                .filter(({ uri }) => uri.scheme === document.uri.scheme && uri.path !== document.uri.path)
                .map(({ uri }) => UriUtils.relative(UriUtils.dirname(document.uri), uri))
                .toArray()
                .sort((a, b) => a.split('/').length - b.split('/').length || (a < b ? -1 : 1)),
        };
    }

    /** `Unit[1].Tier.`: follows the names before the last dot. */
    private members(words: readonly string[], find: (name: string) => DeclaredName | undefined): ReturnType<NamesHere['members']> {
        const [first, ...rest] = chainBefore(words);
        let name = first === undefined ? undefined : find(first);
        for (const member of rest) {
            name = name && this.memberOf(name, member);
        }
        if (!name) {
            const isStage = Object.hasOwn(vocabulary.stagesOfParts, rest.at(-1) ?? '');
            return { declared: [], words: isStage ? sizesOfStages : [] };
        }
        const declared =
            name.sort === 'use'
                ? [...this.names.offeredBy(name.node as Ast.Use, this.names.of(name.document)).values()]
                : this.names.blocksOf(name).flatMap((block) => [...block.names.values()]);
        return { declared, words: membersOfName(name) ?? [] };
    }

    private memberOf(name: DeclaredName, member: string): DeclaredName | undefined {
        if (name.sort === 'use') {
            return this.names.offeredBy(name.node as Ast.Use, this.names.of(name.document)).get(member);
        }
        const found = this.names.blocksOf(name).flatMap((block) => block.names.get(member) ?? []);
        return found[0] && isOne(found[0]) ? found[0] : undefined;
    }
}

const sizesOfStages = ['length', 'width', 'thickness'];

/** A thing is not spoken of in its own head: the `Low` of `shelf Low at`. Nor does a case stand in itself. */
function nameBeingMade([first = '', second]: readonly string[]): string | undefined {
    return Object.hasOwn(vocabulary.partKinds, first) || Object.hasOwn(vocabulary.factKinds, first) || first === 'let' ? second : undefined;
}

/** The names of `Unit [ 1 ] . Tier .`: `Unit`, `Tier`. */
function chainBefore(words: readonly string[]): readonly string[] {
    const chain: string[] = [];
    let at = words.length - 1;
    while (at >= 0 && words[at] === '.') {
        at--;
        if (words[at] === ']') {
            at = words.lastIndexOf('[', at) - 1;
        }
        chain.unshift(words[at] ?? '');
        at--;
    }
    return chain;
}
