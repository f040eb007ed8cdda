// Keeps the analysis of each file for as long as it is true. Knows states of documents: nothing of what is found in them.
import { BuiltBefore } from 'casewright-shared/casework';
import { type AstNode, DocumentState, type LangiumDocument } from 'langium';
import type { Lowering } from '../lowering/lowering.js';
import type { UsedFiles } from '../workspace/used-files.js';
import { Analysis } from './analysis.js';

interface Kept {
    /** The syntax trees of the file and of all it uses: each edit of one of them makes a new tree. */
    readonly trees: readonly AstNode[];
    readonly analysis: Analysis;
}

export class Analyses {
    private readonly kept = new WeakMap<LangiumDocument, Kept>();
    private readonly built = new WeakMap<LangiumDocument, BuiltBefore>();

    constructor(
        private readonly lowering: Lowering,
        private readonly usedFiles: UsedFiles,
    ) {}

    /** The analysis of a file as it and all it uses stand now. The file must be linked. */
    of(document: LangiumDocument): Analysis {
        const closure = this.usedFiles.closure(document);
        const trees = closure.map((one) => one.parseResult.value);
        const known = this.kept.get(document);
        if (known && isSame(known.trees, trees)) {
            return known.analysis;
        }
        const before = this.built.get(document) ?? new BuiltBefore();
        this.built.set(document, before);
        const analysis = new Analysis(document, this.lowering.lowerDesign(document), closure, before);
        // While a build is under way a name may still lead to a tree that is gone.
        if (closure.every(({ state }) => state >= DocumentState.Linked)) {
            this.kept.set(document, { trees, analysis });
        }
        return analysis;
    }
}

function isSame(some: readonly AstNode[], others: readonly AstNode[]): boolean {
    return some.length === others.length && some.every((tree, index) => tree === others[index]);
}
