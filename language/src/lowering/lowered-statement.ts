// One statement of a file, lowered. Knows which statements stand in a file: not what they say, and nothing of the others.
import type { AllowStatement, Declaration, EveryStatement, Statement } from 'casewright-shared/casework';
import type * as Ast from '../generated/ast.js';
import { lowerEveryStatement } from './bodies.js';
import { lowerLet, lowerRecipe } from './declarations.js';
import { lowerDesignDeclaration } from './designs.js';
import { lowerFact } from './facts.js';
import type { FileLowering } from './file-lowering.js';
import { reportMisplaced } from './misplaced.js';
import { lowerAllow, lowerRequire } from './sentences.js';

/** What a statement adds to its file. */
export interface LoweredStatement {
    readonly declaration?: Declaration | undefined;
    readonly every?: EveryStatement | undefined;
    readonly requirement?: Extract<Statement, { is: 'require' }>;
    readonly allowance?: AllowStatement | undefined;
}

/** Undefined where a statement says nothing that a file can hold; that is reported. */
export function lowerStatementOfFile(file: FileLowering, statement: Ast.Statement): LoweredStatement | undefined {
    switch (statement.$type) {
        case 'Let':
            return { declaration: lowerLet(file, statement) };
        case 'Recipe':
            return { declaration: lowerRecipe(file, statement) };
        case 'Fact':
            return { declaration: lowerFact(file, statement) };
        case 'DesignDeclaration':
            return { declaration: lowerDesignDeclaration(file, statement) };
        case 'EveryStatement':
            return { every: lowerEveryStatement(file, statement) };
        case 'Require':
            return { requirement: lowerRequire(file, statement) };
        case 'Allow':
            return { allowance: lowerAllow(file, statement) };
        case 'PartDeclaration':
            reportMisplaced(
                file,
                statement,
                statement.kind,
                `a \`${statement.kind}\` stands in a case`,
                'put it in the braces of a `case`',
            );
            return undefined;
        case 'Join':
        case 'If':
        case 'Repeat':
        case 'InStatement': {
            const word = statement.$type === 'InStatement' ? 'in' : statement.$type.toLowerCase();
            reportMisplaced(file, statement, word, `\`${word}\` stands in a case`, 'put it in the braces of a `case`');
            return undefined;
        }
        default:
            return undefined;
    }
}
