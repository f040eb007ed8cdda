// One file, lowered. Knows the statements of a file: of other files only what names of theirs it refers to.
import type {
    AllowStatement,
    Declaration,
    DeclarationId,
    DesignDeclaration,
    EveryStatement,
    FactDeclaration,
    Problem,
    Statement,
} from 'casewright-shared/casework';
import type { AstNode } from 'langium';
import type * as Ast from '../generated/ast.js';
import type { FileLowering } from './file-lowering.js';
import { type KnownStatements, StatementsOfFile } from './known-statements.js';
import { type LoweredStatement, lowerStatementOfFile } from './lowered-statement.js';
import { checkNames, checkUses } from './names-of-file.js';

export interface LoweredFile {
    readonly label: string;
    readonly declarations: readonly Declaration[];
    readonly cases: readonly DesignDeclaration[];
    readonly defaults: readonly EveryStatement[];
    readonly requirements: readonly Extract<Statement, { is: 'require' }>[];
    readonly allowances: readonly AllowStatement[];
    readonly project: FactDeclaration | undefined;
    readonly shop: FactDeclaration | undefined;
    readonly used: ReadonlySet<DeclarationId>;
    readonly problems: readonly Problem[];
}

/**
 * @param known what was lowered before of statements that stand in the text still
 * @param files the syntax trees of the files that it uses
 */
export function lowerFile(file: FileLowering, known: KnownStatements, files: readonly AstNode[]): LoweredFile {
    const root = file.names.document.parseResult.value as Ast.File;
    const whole = new WholeFile(file);
    const statements = new StatementsOfFile(file, known, files);
    checkEdition(file, root);
    checkUses(file);
    checkNames(file);
    for (const statement of root.statements ?? []) {
        if (statement) whole.add(statements.lowered(statement, () => lowerStatementOfFile(file, statement)));
    }
    return { ...whole.lowered, label: file.label, used: file.used, problems: file.problems };
}

class WholeFile {
    private readonly declarations: Declaration[] = [];
    private readonly cases: DesignDeclaration[] = [];
    private readonly defaults: EveryStatement[] = [];
    private readonly requirements: Extract<Statement, { is: 'require' }>[] = [];
    private readonly allowances: AllowStatement[] = [];
    private project: FactDeclaration | undefined;
    private shop: FactDeclaration | undefined;

    constructor(private readonly file: FileLowering) {}

    get lowered() {
        const { declarations, cases, defaults, requirements, allowances, project, shop } = this;
        return { declarations, cases, defaults, requirements, allowances, project, shop };
    }

    add({ declaration, every, requirement, allowance }: LoweredStatement = {}): void {
        if (declaration) this.declarations.push(declaration);
        if (declaration?.is === 'design') this.cases.push(declaration);
        if (declaration?.is === 'fact') this.addFact(declaration);
        if (every) this.defaults.push(every);
        if (requirement) this.requirements.push(requirement);
        if (allowance) this.allowances.push(allowance);
    }

    private addFact(fact: FactDeclaration): void {
        if (fact.kind !== 'project' && fact.kind !== 'shop') {
            return;
        }
        const before = this[fact.kind];
        if (before) {
            this.file.report('PRP-003', fact.nameSpan, {
                message: `\`${fact.kind}\` is stated twice in this file`,
                hint: 'make one of the two',
                found: `\`${fact.kind}\` for the second time`,
                needed: `\`${fact.kind}\` once`,
                related: [{ span: before.nameSpan, message: `the first \`${fact.kind}\` stands here` }],
            });
        } else {
            this[fact.kind] = fact;
        }
    }
}

function checkEdition(file: FileLowering, root: Ast.File): void {
    const edition = root.edition;
    if (edition && edition.text !== '1') {
        file.report('PRP-005', file.span(edition), {
            message: `there is no edition ${edition.text} of the language yet`,
            hint: 'write `edition 1`',
            found: edition.text,
            needed: '1',
        });
    }
}
