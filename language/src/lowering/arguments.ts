// What a design is given for its parameters. Knows names of parameters: no values.
import type { Argument, Span } from 'casewright-shared/casework';
import type * as Ast from '../generated/ast.js';
import type { DeclaredName } from '../scoping/declared-name.js';
import type { FileLowering } from './file-lowering.js';
import { declarationSpan } from './unknown-names.js';
import { listWords, nearestWord } from './words.js';

/** Reports arguments that the design has no parameter for. */
export function checkArguments(file: FileLowering, design: DeclaredName, given: readonly Argument[]): void {
    const parameters = ((design.node as Ast.DesignDeclaration).parameters ?? []).map((parameter) => parameter.name);
    const seen = new Map<string, Span>();
    for (const { name, span } of given) {
        if (name === undefined) {
            continue;
        }
        const at = file.word(span.start, name);
        const before = seen.get(name);
        if (before) {
            file.report('PRP-003', at, {
                message: `\`${name}\` is given twice`,
                hint: 'keep one of the two',
                related: [{ span: before, message: `\`${name}\` is given here first` }],
            });
        }
        seen.set(name, at);
        if (parameters.includes(name)) {
            continue;
        }
        const near = nearestWord(name, parameters);
        file.report('NAM-009', at, {
            message: `\`${design.name}\` has no parameter \`${name}\`${near ? `; did you mean \`${near}\`?` : ''}`,
            found: `\`${name}\``,
            needed: parameters.length > 0 ? listWords(parameters) : 'no arguments',
            ...(near
                ? { fix: { title: `write \`${near}\``, span: at, text: near, safe: false } }
                : { hint: parameters.length > 0 ? `it has ${listWords(parameters, 'and')}` : 'it has none' }),
            related: [{ span: declarationSpan(file, design), message: `\`${design.name}\` is declared here` }],
        });
    }
}
