// A case that is declared by itself. Knows its head: what stands in its braces is told elsewhere.
import { type DesignDeclaration, vocabulary } from 'casewright-shared/casework';
import type * as Ast from '../generated/ast.js';
import { lowerBody, wordsOfBodies } from './bodies.js';
import { lowerParameter } from './declarations.js';
import type { FileLowering } from './file-lowering.js';
import { headOf } from './heads.js';
import { isBuiltKind, reportNotBuilt } from './not-built.js';
import { PhraseCollector } from './phrases.js';
import type { Owner } from './properties.js';

export function lowerDesignDeclaration(file: FileLowering, node: Ast.DesignDeclaration): DesignDeclaration | undefined {
    const head = headOf(file, node, node.kind ?? '');
    const kind = vocabulary.partKinds[node.kind];
    if (!kind || !isBuiltKind(node.kind)) {
        reportNotBuilt(file, node, node.kind, head.kindSpan);
        return undefined;
    }
    const name = file.names.nameOf(node);
    const parameters = (node.parameters ?? []).flatMap((parameter) => lowerParameter(file, parameter));
    const owner: Owner = { called: kind.called, table: kind.properties, otherWords: wordsOfBodies, kinds: [node.kind] };
    const collector = new PhraseCollector(file, owner, false);
    collector.addAll(node.phrases ?? []);
    const statements = lowerBody(file, node.body?.members, collector);
    return (
        name && {
            is: 'design',
            id: file.id(name),
            name: name.name,
            kind: node.kind,
            parameters,
            phrases: collector.phrases,
            statements,
            span: head.span,
            nameSpan: head.nameSpan,
            ...head.doc,
            ...head.private,
        }
    );
}
