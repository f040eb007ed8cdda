// Statements of a file that were lowered before and would come out the same. Knows what one statement can see of others: not what it says.
import type { DeclarationId, Span } from 'casewright-shared/casework';
import type { AstNode } from 'langium';
import type * as Ast from '../generated/ast.js';
import { isObject, isPlain, isSpan, move, statesTolerance } from './carried-over.js';
import type { FileLowering } from './file-lowering.js';
import type { LoweredStatement } from './lowered-statement.js';

/** All that statements of a file can see beside those whose names they use: what is declared at its top, and the files it uses. */
interface Surroundings {
    readonly names: string;
    readonly files: readonly AstNode[];
}

interface Known {
    readonly lowered: LoweredStatement;
    /** Where the statement began when its spans were last right. */
    offset: number;
    readonly hasTolerance: boolean;
    readonly doc: string | undefined;
    readonly used: readonly DeclarationId[];
    /** The other statements of the file whose names it uses. */
    readonly seen: ReadonlyMap<string, Ast.Statement | undefined>;
    readonly surroundings: Surroundings;
}

/** What was lowered of the statements of files, for as long as their nodes live: an edit keeps those that it leaves alone. */
export class KnownStatements {
    /** By what the file is called, which is in all spans and ids. */
    private readonly known = new WeakMap<Ast.Statement, Map<string, Known>>();

    of(statement: Ast.Statement, label: string): Known | undefined {
        return this.known.get(statement)?.get(label);
    }

    remember(statement: Ast.Statement, label: string, known: Known): void {
        let byLabel = this.known.get(statement);
        if (!byLabel) {
            byLabel = new Map();
            this.known.set(statement, byLabel);
        }
        byLabel.set(label, known);
    }
}

/** The statements of one state of a file, each lowered or known. */
export class StatementsOfFile {
    private readonly surroundings: Surroundings;
    private readonly byName = new Map<string, Ast.Statement>();
    private readonly isSame = new Map<Ast.Statement, boolean>();

    constructor(
        private readonly file: FileLowering,
        private readonly known: KnownStatements,
        files: readonly AstNode[],
    ) {
        const names: string[] = [];
        for (const name of file.names.all) {
            if (name.declarationPath.includes('.')) continue;
            names.push(`${name.declarationPath} ${name.name} ${name.sort} ${name.kind} ${name.isPrivate} ${name.isUnnamed}`);
            this.byName.set(name.declarationPath, statementOf(name.node));
        }
        this.surroundings = { names: names.join('\n'), files };
    }

    /** What a statement comes to: as it was before where nothing that it sees has changed, else lowered anew. */
    lowered(statement: Ast.Statement, lower: () => LoweredStatement | undefined): LoweredStatement | undefined {
        const known = this.known.of(statement, this.file.label);
        const offset = statement.$cstNode?.offset ?? 0;
        if (known && this.isStillSo(statement) && this.isMoved(known, offset)) {
            for (const id of known.used) this.file.used.add(id);
            return known.lowered;
        }
        const { result, used, isFlawless } = this.file.during(lower);
        if (result && isFlawless) this.remember(statement, result, used);
        return result;
    }

    /** Moves what is known to where the statement stands now; a source of deviation is known by its place, so that cannot be moved. */
    private isMoved(known: Known, offset: number): boolean {
        const by = offset - known.offset;
        if (by === 0) return true;
        if (known.hasTolerance) return false;
        move(known.lowered, by, new Set());
        known.offset = offset;
        return true;
    }

    private isStillSo(statement: Ast.Statement): boolean {
        const before = this.isSame.get(statement);
        if (before !== undefined) return before;
        this.isSame.set(statement, false); // those that see one another are never taken to be the same
        const known = this.known.of(statement, this.file.label);
        const isSame =
            known !== undefined &&
            this.hasSameSurroundings(known) &&
            known.doc === this.file.doc(statement.$cstNode?.offset ?? 0).doc &&
            [...known.seen].every(([name, seen]) => seen !== undefined && this.byName.get(name) === seen && this.isStillSo(seen));
        this.isSame.set(statement, isSame);
        return isSame;
    }

    private hasSameSurroundings({ surroundings: { names, files } }: Known): boolean {
        const now = this.surroundings;
        return names === now.names && files.length === now.files.length && files.every((one, index) => one === now.files[index]);
    }

    private remember(statement: Ast.Statement, lowered: LoweredStatement, used: ReadonlySet<DeclarationId>): void {
        const { file } = this;
        const { offset = 0, end = 0 } = statement.$cstNode ?? {};
        if (!staysWithin(lowered, { file: file.label, start: offset, end })) return;
        const own = `${file.label}#`;
        const seen = new Map<string, Ast.Statement | undefined>();
        for (const id of used) {
            const [name = ''] = id.startsWith(own) ? id.slice(own.length).split('.') : [];
            const other = this.byName.get(name);
            if (id.startsWith(own) && other !== statement) seen.set(name, other);
        }
        const { doc } = file.doc(offset);
        const hasTolerance = statesTolerance(lowered);
        const { surroundings } = this;
        this.known.remember(statement, file.label, { lowered, offset, hasTolerance, doc, used: [...used], seen, surroundings });
    }
}

/** The statement of the file that a node is in. */
function statementOf(node: AstNode): Ast.Statement {
    let at = node;
    while (at.$container && at.$container.$type !== 'File') at = at.$container;
    return at as Ast.Statement;
}

/** Whether all places in what was lowered are in one stretch, with which they move. */
function staysWithin(value: unknown, stretch: Span): boolean {
    if (!isObject(value)) return true;
    if (isSpan(value)) return value.file === stretch.file && value.start >= stretch.start && value.end <= stretch.end;
    return !(Array.isArray(value) || isPlain(value)) || Object.values(value).every((one) => staysWithin(one, stretch));
}
