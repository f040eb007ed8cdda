// Reads the declarations of a file, once, without looking at values. Knows which statement makes which name visible where.
import { closestWords, vocabulary } from 'casewright-shared/casework';
import {
    type AstNode,
    type AstNodeDescription,
    type AstNodeLocator,
    type LangiumDocument,
    type LocalSymbols,
    type Stream,
    stream,
} from 'langium';
import type {
    Body,
    Clause,
    DesignDeclaration,
    Fact,
    File,
    If,
    Member,
    Part,
    PartDeclaration,
    Phrase,
    Property,
    Recipe,
    Statement,
    Use,
} from '../generated/ast.js';
import { Block, baseName, baseReference, selectedNames } from './block.js';
import { DeclaredName, type Sort } from './declared-name.js';

const propertyWords = new Set(
    [...Object.values(vocabulary.factKinds), ...Object.values(vocabulary.partKinds)].flatMap((kind) => Object.keys(kind.properties)),
);

/** The names of one state of a file. */
export class FileNames implements LocalSymbols {
    readonly top: Block;
    /** Which names stand twice in one block. */
    readonly repeated: { readonly first: DeclaredName; readonly again: DeclaredName }[] = [];
    readonly uses: Use[] = [];
    /** Names that a misspelt line seems to declare: nobody should hear that they are unknown. */
    readonly lost = new Set<string>();
    /** Whether a misspelt line seems to use a file: `sue "shop.case"`. */
    lacksUse = false;
    /** Kinds of declarations that have no name yet: it may be any that is not known. */
    readonly nameless = new Set<string>();
    readonly all: DeclaredName[] = [];
    private readonly blocks = new Map<AstNode, Block>();
    private readonly byNode = new Map<AstNode, DeclaredName>();
    private readonly paths = new Set<string>();
    /** The last number that was given to a namesake, by the path they share. */
    private readonly lastAgain = new Map<string, number>();
    /** Which branch of which `if` is being read, innermost last. */
    private branches: readonly { readonly of: If; readonly side: number }[] = [];
    private readonly branchOf = new Map<DeclaredName, FileNames['branches']>();

    constructor(
        readonly document: LangiumDocument,
        private readonly locator: AstNodeLocator,
    ) {
        const file = document.parseResult.value as File;
        this.top = this.open(file, undefined, '');
        for (const statement of file.statements ?? []) {
            this.readStatement(statement, this.top);
        }
    }

    blockOf(node: AstNode): Block | undefined {
        return this.blocks.get(node);
    }

    nameOf(node: AstNode): DeclaredName | undefined {
        return this.byNode.get(node);
    }

    /** The innermost block around a node. */
    blockAround(node: AstNode): Block {
        for (let around: AstNode | undefined = node; around; around = around.$container) {
            const block = this.blocks.get(around);
            if (block) {
                return block;
            }
        }
        return this.top;
    }

    has(node: AstNode): boolean {
        return this.blocks.has(node);
    }

    getStream(node: AstNode): Stream<AstNodeDescription> {
        return stream(this.blocks.get(node)?.names.values() ?? []);
    }

    private open(node: AstNode, outer: Block | undefined, path: string, opens?: readonly string[]): Block {
        const block = new Block(outer, path, opens);
        this.blocks.set(node, block);
        return block;
    }

    private declare(
        block: Block,
        node: AstNode,
        name: string | undefined,
        sort: Sort,
        kind: string,
        isPrivate = false,
        isUnnamed = false,
    ): DeclaredName | undefined {
        if (!name) {
            return undefined;
        }
        const known = block.names.get(name);
        const exclusive = known !== undefined && this.isInOtherBranch(known);
        const declared = new DeclaredName(
            node,
            name,
            sort,
            kind,
            this.pathFor(block, name, exclusive),
            this.document,
            this.locator,
            isPrivate,
            isUnnamed,
            block,
        );
        this.byNode.set(node, declared);
        this.all.push(declared);
        if (this.branches.length > 0) {
            this.branchOf.set(declared, this.branches);
        }
        if (!known) {
            block.names.set(name, declared);
        } else if (isUnnamed && known.isUnnamed && !exclusive) {
            known.namesakes.push(declared);
        } else if (!exclusive) {
            this.repeated.push({ first: known, again: declared });
        }
        return declared;
    }

    /** `then` and `else` of one `if` may name a thing alike: only one of them is built. */
    private isInOtherBranch(known: DeclaredName): boolean {
        const there = this.branchOf.get(known) ?? [];
        return this.branches.some((here) => there.some((other) => other.of === here.of && other.side !== here.side));
    }

    private pathFor(block: Block, name: string, shared: boolean): string {
        const plain = block.path === '' ? name : `${block.path}.${name}`;
        let path = plain;
        if (!shared) {
            // Each search goes on where the last one for the name ended, or a thousand namesakes would take half a million looks.
            let again = this.lastAgain.get(plain) ?? 1;
            while (this.paths.has(path)) {
                path = `${plain}~${++again}`;
            }
            this.lastAgain.set(plain, again);
        }
        this.paths.add(path);
        return path;
    }

    private readStatement(statement: Statement | Member | Phrase | undefined, block: Block): void {
        switch (statement?.$type) {
            case undefined:
                return;
            case 'Use':
                this.uses.push(statement);
                this.declare(block, statement, statement.name, 'use', 'use', true);
                return;
            case 'Let':
                this.declare(block, statement, statement.name, 'let', 'let', statement.visibility === 'private');
                return;
            case 'Fact':
                this.readFact(statement, block);
                return;
            case 'Recipe':
                this.noteNameless(statement);
                this.declare(block, statement, statement.name, 'recipe', statement.kind, statement.visibility === 'private');
                return;
            case 'DesignDeclaration': {
                this.noteNameless(statement);
                const declared = this.declare(
                    block,
                    statement,
                    statement.name,
                    'design',
                    statement.kind,
                    statement.visibility === 'private',
                );
                const inner = this.open(statement, block, declared?.declarationPath ?? '', openedBy(statement.phrases, statement.body));
                for (const parameter of statement.parameters ?? []) {
                    this.declare(inner, parameter, parameter.name, 'parameter', 'parameter');
                }
                this.readMembers(statement.body, inner);
                return;
            }
            case 'PartDeclaration':
                this.readPart(statement, block);
                return;
            case 'InStatement': {
                const opened = selectedNames(statement.selectors ?? []);
                const inner = this.open(statement.body ?? statement, block, pathIn(block, opened[0]), opened);
                for (const name of opened) {
                    addRoom(block, name, inner);
                }
                this.readMembers(statement.body, inner);
                this.passOutward(inner, block);
                return;
            }
            case 'Repeat': {
                const inner = this.open(statement, block, block.path);
                if (statement.index) {
                    this.declare(inner, statement.index, statement.index.name, 'index', 'index');
                }
                this.readMembers(statement.body, inner);
                this.passOutward(inner, block);
                return;
            }
            case 'If':
                this.readBranches(statement, statement, 0, block);
                return;
            case 'Build':
                this.declare(block, statement, statement.name, 'build', 'build');
                return;
            case 'Property':
                this.noteLostName(statement);
                this.readOpenings(statement.clauses, block);
                return;
            case 'AsClause':
                this.readOpenings([statement], block);
                return;
            case 'StrayBlock':
                this.readMembers(statement.body, block);
                return;
            default:
                return;
        }
    }

    private readFact(fact: Fact, block: Block): void {
        const isKnown = fact.kind in vocabulary.factKinds;
        if (fact.kind && !isKnown) {
            this.lost.add(fact.kind);
            this.lacksUse ||= fact.title?.text?.endsWith('.case') ?? false;
        }
        this.noteNameless(fact);
        const declared = this.declare(block, fact, fact.name, 'fact', fact.kind, fact.visibility === 'private');
        if (fact.body) {
            const inner = this.open(fact.body, block, declared?.declarationPath ?? (isKnown ? fact.kind : ''));
            this.readMembers(fact.body, inner);
            this.passOutward(inner, block);
        }
    }

    private readMembers(body: Body | undefined, block: Block): void {
        for (const member of body?.members ?? []) {
            this.readStatement(member, block);
        }
    }

    private readBranches(whole: If, branch: If, side: number, block: Block): void {
        const around = this.branches;
        this.branches = [...around, { of: whole, side }];
        this.readMembers(branch.then, block);
        this.branches = [...around, { of: whole, side: side + 1 }];
        this.readMembers(branch.otherwise, block);
        this.branches = around;
        if (branch.otherwiseIf) {
            this.readBranches(whole, branch.otherwiseIf, side + 1, block);
        }
    }

    private readPart(statement: PartDeclaration, block: Block): void {
        const isPrivate = statement.visibility === 'private';
        const parts = statement.parts ?? [];
        const [first] =
            parts.length > 0
                ? parts.map((part) => this.declare(block, part, part.name, 'part', statement.kind, isPrivate))
                : [this.declare(block, statement, statement.kind, 'part', statement.kind, isPrivate, true)];
        const path = first?.declarationPath ?? pathIn(block, statement.kind);
        const inside = this.readIndices(statement, parts, block, path);
        for (const phrase of statement.phrases ?? []) {
            this.readOpenings(phrase.$type === 'Property' ? phrase.clauses : [phrase], block);
        }
        if (statement.body) {
            const inner = this.open(statement.body, inside, path, openedBy(statement.phrases, statement.body));
            for (const member of statement.body.members ?? []) {
                if (member.$type === 'Property' || member.$type === 'AsClause') {
                    this.readStatement(member, block);
                } else {
                    this.readStatement(member, inner);
                }
            }
            this.passOutward(inner, block);
        }
    }

    /** `shelf Tier[i of 4]`: the index is visible in the whole statement. */
    private readIndices(statement: PartDeclaration, parts: readonly Part[], block: Block, path: string): Block {
        if (!parts.some((part) => part.index)) {
            return block;
        }
        const inner = this.open(statement, block, path);
        for (const part of parts) {
            if (part.index) {
                this.declare(inner, part.index, part.index.name, 'index', 'index');
            }
        }
        return inner;
    }

    private readOpenings(phrases: readonly (Clause | Phrase)[] | undefined, block: Block): void {
        for (const phrase of phrases ?? []) {
            if (phrase.$type === 'AsClause') {
                for (const opening of phrase.names ?? []) {
                    this.declare(block, opening, opening.name, 'opening', 'opening');
                }
            }
        }
    }

    /** What `in` and `repeat` blocks and parts declare can be named from outside them too, unless it is called by its kind only. */
    private passOutward(inner: Block, outer: Block): void {
        for (const name of inner.names.values()) {
            if (name.sort !== 'index' && !name.isUnnamed) {
                outer.addInside(name);
            }
        }
        for (const names of inner.namesInside.values()) {
            for (const name of names) {
                outer.addInside(name);
            }
        }
        for (const [name, rooms] of inner.rooms) {
            for (const room of rooms) {
                addRoom(outer, name, room);
            }
        }
    }

    private noteNameless({ kind, name }: Fact | Recipe | DesignDeclaration): void {
        if (kind && !name && !vocabulary.factKinds[kind]?.single) {
            this.nameless.add(kind);
            this.lost.add(kind);
        }
    }

    /** `shelv Tier[4] at 17in` reads as a property of an unknown name; so does `Tier at 17in`, and `kcik of Walnut`. */
    private noteLostName(property: Property): void {
        if (!property.name || propertyWords.has(property.name)) {
            return;
        }
        this.lost.add(property.name);
        for (const kind of closestWords(property.name, Object.keys(vocabulary.partKinds))) {
            this.lost.add(kind);
        }
        const value = property.value;
        for (const item of value?.$type === 'List' ? value.items : [value]) {
            const name = baseReference(item)?.target?.$refText;
            if (name) {
                this.lost.add(name);
            }
        }
    }
}

function pathIn(block: Block, name: string | undefined): string {
    return name === undefined ? block.path : block.path === '' ? name : `${block.path}.${name}`;
}

function addRoom(block: Block, name: string, room: Block): void {
    const rooms = block.rooms.get(name);
    if (rooms) {
        rooms.push(room);
    } else {
        block.rooms.set(name, [room]);
    }
}

/** `case Unit of Box`, `side Show like Wall`: their parts are visible in the braces. */
function openedBy(phrases: readonly Phrase[] | undefined, body: Body | undefined): string[] {
    const opened: string[] = [];
    for (const phrase of [...(phrases ?? []), ...(body?.members ?? [])]) {
        const name =
            phrase.$type === 'OfClause' ? baseName(phrase.target) : phrase.$type === 'LikeClause' ? phrase.target?.$refText : undefined;
        if (name) {
            opened.push(name);
        }
    }
    return opened;
}
