// What a project builds. Knows counts, designs and arguments.
import { type BuildStatement, vocabulary } from 'casewright-shared/casework';
import type * as Ast from '../generated/ast.js';
import { checkArguments } from './arguments.js';
import { lowerCount } from './counts.js';
import { lowerArguments } from './expressions.js';
import type { FileLowering } from './file-lowering.js';
import { isBuilt } from './not-built.js';
import { declarationSpan, describeName, reportUnknownName } from './unknown-names.js';

export function lowerBuild(file: FileLowering, node: Ast.Build): BuildStatement[] {
    const span = file.span(node);
    const text = node.design?.$refText;
    const count = lowerCount(file, node.count);
    if (!text) {
        return [];
    }
    const at = file.spanOfCst(node.design.$refNode);
    const design = file.target(node.design);
    if (!design) {
        reportUnknownName(
            file,
            text,
            node,
            at,
            Object.keys(vocabulary.partKinds).filter((kind) => vocabulary.partKinds[kind]?.design),
        );
        return [];
    }
    if (!isBuilt(file, design)) {
        return [];
    }
    if (design.sort !== 'design') {
        file.report('NAM-007', at, {
            message: `\`${text}\` is ${describeName(design)}; a case is needed here`,
            hint: 'name a case that is declared by itself',
            found: describeName(design),
            needed: 'a case',
            related: [{ span: declarationSpan(file, design), message: `\`${text}\` is declared here` }],
        });
        return [];
    }
    const given = lowerArguments(file, node.arguments);
    checkArguments(file, design, given);
    return [
        {
            count,
            design: file.id(design),
            arguments: given,
            mirrored: node.mirrored !== undefined,
            ...(node.name === undefined ? {} : { name: node.name }),
            span,
        },
    ];
}
