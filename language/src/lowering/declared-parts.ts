// The names of a part statement: `side Left, Right`, `shelf Tier[i of 4]`, `back`. Knows names and their places: nothing of the parts.
import type { PartDeclaration, Span } from 'casewright-shared/casework';
import type * as Ast from '../generated/ast.js';
import { lowerExpression } from './expressions.js';
import type { FileLowering } from './file-lowering.js';

/** One declaration for each name; a part without a name is called by its kind. */
export function declaredParts(file: FileLowering, node: Ast.PartDeclaration, span: Span, kindSpan: Span): PartDeclaration[] {
    const isPrivate = node.visibility === 'private' ? { private: true as const } : {};
    const doc = file.doc(span.start);
    if (!node.parts?.length) {
        const name = file.names.nameOf(node);
        return name
            ? [
                  {
                      is: 'part',
                      id: file.id(name),
                      name: name.name,
                      kind: node.kind,
                      unnamed: true,
                      span,
                      nameSpan: kindSpan,
                      ...doc,
                      ...isPrivate,
                  },
              ]
            : [];
    }
    return node.parts.flatMap((part) => {
        const name = file.names.nameOf(part);
        if (!name) {
            return [];
        }
        const whole = file.span(part);
        const nameSpan = file.word(whole.start, name.name);
        const index = part.index && file.names.nameOf(part.index);
        const indexSpan = file.span(part.index ?? part);
        const declaration: PartDeclaration = {
            is: 'part',
            id: file.id(name),
            name: name.name,
            kind: node.kind,
            unnamed: false,
            span: whole,
            nameSpan,
            ...(part.count === undefined ? {} : { count: lowerExpression(file, part.count, whole) }),
            ...(index ? { index: { is: 'index', id: file.id(index), name: index.name, span: indexSpan, nameSpan: indexSpan } } : {}),
            ...doc,
            ...isPrivate,
        };
        return [declaration];
    });
}
