// Who sees which name: blocks outward, then the files that are used. Knows blocks and files: not what a name is used for.
import { type AstNode, type AstNodeLocator, AstUtils, type LangiumDocument } from 'langium';
import type { DesignDeclaration, Expression, Fact, MemberAccess, PartDeclaration, Use } from '../generated/ast.js';
import type { UsedFiles } from '../workspace/used-files.js';
import { type Block, baseReference } from './block.js';
import { DeclaredName } from './declared-name.js';
import { FileNames } from './file-names.js';

/** Two files that are used give one name to different things. */
export interface Clash {
    readonly use: Use;
    readonly name: DeclaredName;
    readonly known: DeclaredName;
}

const noBlocks: readonly Block[] = [];

interface NamesFromUse {
    readonly names: ReadonlyMap<string, DeclaredName>;
    readonly clashes: readonly Clash[];
}

export class VisibleNames {
    private readonly files = new WeakMap<AstNode, FileNames>();
    private readonly fromUse = new WeakMap<FileNames, NamesFromUse>();
    private readonly opened = new WeakMap<FileNames, Map<Block, readonly Block[]>>();
    private readonly lacking = new WeakMap<FileNames, boolean>();
    private readonly members = new WeakMap<FileNames, Map<DeclaredName, readonly Block[]>>();

    constructor(
        private readonly usedFiles: UsedFiles,
        private readonly locator: AstNodeLocator,
    ) {}

    /** The declarations of a file in its present state. */
    of(document: LangiumDocument): FileNames {
        const root = document.parseResult.value;
        let names = this.files.get(root);
        if (!names) {
            names = new FileNames(document, this.locator);
            this.files.set(root, names);
        }
        return names;
    }

    /** Forgets what a file took from others, because one of them has changed. */
    forget(document: LangiumDocument): void {
        const names = this.files.get(document.parseResult.value);
        if (names) {
            this.fromUse.delete(names);
            this.lacking.delete(names);
            this.opened.delete(names);
            this.members.delete(names);
        }
    }

    /** A document and all it uses, directly or not. */
    closure(document: LangiumDocument): LangiumDocument[] {
        return this.usedFiles.closure(document);
    }

    /** What a name means at a node: the innermost declaration that is visible there. Several where nothing says which. */
    lookup(name: string, at: AstNode): DeclaredName | readonly DeclaredName[] | undefined {
        const file = this.of(AstUtils.getDocument(at));
        return this.inBlocks(name, file.blockAround(at), file);
    }

    /** What a name means in the file of a document, outside all blocks. */
    atTop(name: string, file: FileNames): DeclaredName | undefined {
        return file.top.names.get(name) ?? this.used(file).names.get(name);
    }

    private inBlocks(name: string, from: Block | undefined, file: FileNames): DeclaredName | readonly DeclaredName[] | undefined {
        for (let block = from; block; block = block.outer) {
            const found = block.names.get(name) ?? this.inOpened(name, block, file);
            if (found) {
                return found.namesakes.length === 0 ? found : [found, ...found.namesakes];
            }
            const inside = block.namesInside.get(name);
            if (inside) {
                return inside.length === 1 ? inside[0] : inside;
            }
        }
        return this.used(file).names.get(name);
    }

    private inOpened(name: string, block: Block, file: FileNames): DeclaredName | undefined {
        for (const inner of this.openedBlocks(block, file)) {
            const found = inner === block ? undefined : inner.names.get(name);
            if (found) {
                return found;
            }
        }
        return undefined;
    }

    /** All names that are visible at a node, the nearest first. */
    *allAt(node: AstNode): Iterable<DeclaredName> {
        const file = this.of(AstUtils.getDocument(node));
        for (let block: Block | undefined = file.blockAround(node); block; block = block.outer) {
            yield* block.names.values();
            for (const inner of this.openedBlocks(block, file)) {
                yield* inner.names.values();
            }
            for (const inside of block.namesInside.values()) {
                yield* inside;
            }
        }
        yield* this.used(file).names.values();
    }

    /** The declaration further out in its file that a declaration takes out of sight. Names of other files may be hidden: they come and go. */
    hiddenBy(name: DeclaredName): DeclaredName | undefined {
        for (let block = name.block.outer; block; block = block.outer) {
            const found = block.names.get(name.name);
            if (found) {
                return found;
            }
        }
        return undefined;
    }

    /** Whether a file that should offer names cannot be read: nobody knows then which names are unknown. */
    lacksFiles(file: FileNames): boolean {
        const known = this.lacking.get(file);
        if (known !== undefined) {
            return known;
        }
        this.lacking.set(file, false); // for files that use each other
        const lacks = file.uses.some((use) => {
            const document = this.documentOf(use, file);
            return !use.name && (!document || this.lacksPassedOn(this.of(document)));
        });
        this.lacking.set(file, lacks);
        return lacks;
    }

    private lacksPassedOn(file: FileNames): boolean {
        return file.uses.some((use) => use.visibility === 'public') && this.lacksFiles(file);
    }

    /** The other files that are open or have been read. */
    otherFiles(file: FileNames): LangiumDocument[] {
        return this.usedFiles.known().filter((document) => document !== file.document);
    }

    documentOf(use: Use, file: FileNames): LangiumDocument | undefined {
        return this.usedFiles.documentOf(use, file.document);
    }

    /** What a file takes from the files it uses, and which names come from two of them. */
    used(file: FileNames): NamesFromUse {
        const known = this.fromUse.get(file);
        if (known) {
            return known;
        }
        const names = new Map<string, DeclaredName>();
        const clashes: Clash[] = [];
        for (const use of file.uses) {
            if (use.name) {
                continue;
            }
            for (const [name, declared] of this.offeredBy(use, file)) {
                const before = names.get(name);
                if (before === undefined) {
                    names.set(name, declared);
                } else if (before !== declared) {
                    clashes.push({ use, name: declared, known: before });
                }
            }
        }
        const result = { names, clashes };
        this.fromUse.set(file, result);
        return result;
    }

    /** The names that the file of a `use` offers: its public ones, and those it passes on. */
    offeredBy(use: Use, file: FileNames): ReadonlyMap<string, DeclaredName> {
        const document = this.usedFiles.documentOf(use, file.document);
        return document ? this.offered(this.of(document), new Set([file])) : new Map();
    }

    private offered(file: FileNames, visiting: Set<FileNames>): ReadonlyMap<string, DeclaredName> {
        const offered = new Map<string, DeclaredName>();
        for (const [name, declared] of file.top.names) {
            if (!declared.isPrivate) {
                offered.set(name, declared);
            }
        }
        visiting.add(file);
        for (const use of file.uses) {
            const document = use.visibility === 'public' && !use.name ? this.usedFiles.documentOf(use, file.document) : undefined;
            const next = document && this.of(document);
            if (next && !visiting.has(next)) {
                for (const [name, declared] of this.offered(next, visiting)) {
                    if (!offered.has(name)) {
                        offered.set(name, declared);
                    }
                }
            }
        }
        visiting.delete(file);
        return offered;
    }

    /** The declared thing that an expression stands for, if it is one: `Tier[2]`, `Right.Show`. */
    declaredBy(expression: Expression | undefined): DeclaredName | undefined {
        if (expression?.$type === 'MemberAccess') {
            const linked = expression.member?.$nodeDescription;
            return linked instanceof DeclaredName ? linked : this.member(expression);
        }
        const reference = baseReference(expression);
        const found = reference?.target && this.lookup(reference.target.$refText, reference);
        return found && isOne(found) ? found : undefined;
    }

    /** The part, opening or name of another file that `receiver.member` speaks of; undefined for sizes, faces and the like. */
    member(access: MemberAccess): DeclaredName | undefined {
        const name = access.member?.$refText;
        const receiver = name ? this.declaredBy(access.receiver) : undefined;
        if (!receiver) {
            return undefined;
        }
        if (receiver.sort === 'use') {
            return this.offeredBy(receiver.node as Use, this.of(receiver.document)).get(name);
        }
        return this.blocksOf(receiver)
            .map((block) => block.names.get(name))
            .find((found) => found !== undefined);
    }

    /** All declared members of what stands before the dot. */
    membersAt(access: MemberAccess): DeclaredName[] {
        const receiver = this.declaredBy(access.receiver);
        if (!receiver) {
            return [];
        }
        return receiver.sort === 'use'
            ? [...this.offeredBy(receiver.node as Use, this.of(receiver.document)).values()]
            : this.blocksOf(receiver).flatMap((block) => [...block.names.values()]);
    }

    /** `shop.Lipped` where the grammar has one word for both. */
    memberNamed(receiver: string, member: string, at: AstNode): DeclaredName | undefined {
        const found = this.lookup(receiver, at);
        return found && isOne(found) && found.sort === 'use'
            ? this.offeredBy(found.node as Use, this.of(found.document)).get(member)
            : undefined;
    }

    /** The blocks whose names are members of a thing: its braces, its design, what it is like, and the `in` blocks that speak of it. */
    blocksOf(thing: DeclaredName): readonly Block[] {
        const file = this.of(thing.document);
        let known = this.members.get(file);
        if (!known) {
            known = new Map();
            this.members.set(file, known);
        }
        const before = known.get(thing);
        if (before) {
            return before;
        }
        known.set(thing, []); // for a thing that is made of itself
        const blocks = [...this.ownBlocks(thing, file)];
        known.set(thing, blocks);
        return blocks;
    }

    private *ownBlocks(thing: DeclaredName, file: FileNames): Iterable<Block> {
        const block = file.blockAround(thing.node.$container ?? thing.node);
        switch (thing.sort) {
            case 'design': {
                const own = file.blockOf(thing.node);
                if (own) {
                    yield own;
                    yield* this.openedBlocks(own, file);
                }
                return;
            }
            case 'fact': {
                const body = (thing.node as Fact).body;
                const own = body && file.blockOf(body);
                if (own) {
                    yield own;
                }
                return;
            }
            case 'part': {
                const statement = (thing.isUnnamed ? thing.node : thing.node.$container) as PartDeclaration;
                const own = statement.body && file.blockOf(statement.body);
                if (own) {
                    yield own;
                    yield* this.openedBlocks(own, file);
                } else {
                    yield* this.headBlocks(statement, file);
                }
                yield* roomsOf(thing.name, block);
                return;
            }
            case 'opening':
                yield* roomsOf(thing.name, block);
                return;
            case 'build': {
                const design = this.atTop((thing.node as { design?: { $refText: string } }).design?.$refText ?? '', file);
                yield* design ? this.blocksOf(design) : [];
                return;
            }
            default:
                return;
        }
    }

    /** The blocks of what a block opens: the design after `of`, the room after `in`. */
    private openedBlocks(block: Block, file: FileNames): readonly Block[] {
        if (block.opens.length === 0) {
            return noBlocks;
        }
        let known = this.opened.get(file);
        if (!known) {
            known = new Map();
            this.opened.set(file, known);
        }
        const before = known.get(block);
        if (before) {
            return before;
        }
        known.set(block, noBlocks); // for a thing that is made of itself
        const blocks = block.opens.flatMap((opened) => {
            const thing = this.inBlocks(opened, block.outer, file);
            return thing && isOne(thing) ? this.blocksOf(thing) : [];
        });
        known.set(block, blocks);
        return blocks;
    }

    private *headBlocks(statement: PartDeclaration | DesignDeclaration, file: FileNames): Iterable<Block> {
        for (const phrase of statement.phrases ?? []) {
            const name =
                phrase.$type === 'OfClause'
                    ? baseReference(phrase.target)?.target?.$refText
                    : phrase.$type === 'LikeClause'
                      ? phrase.target?.$refText
                      : undefined;
            const thing = name === undefined ? undefined : this.inBlocks(name, file.blockAround(statement), file);
            yield* thing && isOne(thing) ? this.blocksOf(thing) : [];
        }
    }
}

function* roomsOf(name: string, from: Block): Iterable<Block> {
    for (let block: Block | undefined = from; block; block = block.outer) {
        const rooms = block.rooms.get(name);
        if (rooms) {
            yield* rooms;
            return;
        }
    }
}

/** Whether a lookup found one thing, and not several. */
export function isOne(found: DeclaredName | readonly DeclaredName[]): found is DeclaredName {
    return !Array.isArray(found);
}
