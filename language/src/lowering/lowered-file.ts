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
import type * as Ast from '../generated/ast.js';
import { lowerEveryStatement } from './bodies.js';
import { lowerLet, lowerRecipe } from './declarations.js';
import { lowerDesignDeclaration } from './designs.js';
import { lowerFact } from './facts.js';
import type { FileLowering } from './file-lowering.js';
import { reportMisplaced } from './misplaced.js';
import { checkNames, checkUses } from './names-of-file.js';
import { lowerAllow, lowerRequire } from './sentences.js';

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

export function lowerFile(file: FileLowering): LoweredFile {
    const root = file.names.document.parseResult.value as Ast.File;
    const whole = new WholeFile(file);
    checkEdition(file, root);
    checkUses(file);
    checkNames(file);
    for (const statement of root.statements ?? []) {
        whole.add(statement);
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

    add(statement: Ast.Statement | undefined): void {
        const { file } = this;
        switch (statement?.$type) {
            case 'Let':
                this.declare(lowerLet(file, statement));
                return;
            case 'Recipe':
                this.declare(lowerRecipe(file, statement));
                return;
            case 'Fact':
                this.addFact(lowerFact(file, statement));
                return;
            case 'DesignDeclaration': {
                const design = lowerDesignDeclaration(file, statement);
                this.declare(design);
                if (design) {
                    this.cases.push(design);
                }
                return;
            }
            case 'EveryStatement': {
                const every = lowerEveryStatement(file, statement);
                if (every) {
                    this.defaults.push(every);
                }
                return;
            }
            case 'Require':
                this.requirements.push(lowerRequire(file, statement));
                return;
            case 'Allow': {
                const allow = lowerAllow(file, statement);
                if (allow) {
                    this.allowances.push(allow);
                }
                return;
            }
            case 'PartDeclaration':
                reportMisplaced(
                    file,
                    statement,
                    statement.kind,
                    `a \`${statement.kind}\` stands in a case`,
                    'put it in the braces of a `case`',
                );
                return;
            case 'Join':
            case 'If':
            case 'Repeat':
            case 'InStatement': {
                const word = statement.$type === 'InStatement' ? 'in' : statement.$type.toLowerCase();
                reportMisplaced(file, statement, word, `\`${word}\` stands in a case`, 'put it in the braces of a `case`');
                return;
            }
            default:
                return;
        }
    }

    private declare(declaration: Declaration | undefined): void {
        if (declaration) {
            this.declarations.push(declaration);
        }
    }

    private addFact(fact: FactDeclaration | undefined): void {
        this.declare(fact);
        if (fact?.kind !== 'project' && fact?.kind !== 'shop') {
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
