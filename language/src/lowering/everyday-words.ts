// Words of the trade that are no properties, and what the language says in their place. Knows statements around a property.
import { type Span, vocabulary } from 'casewright-shared/casework';
import type * as Ast from '../generated/ast.js';
import { looseWords } from '../parser/loose-words.js';
import type { FileLowering } from './file-lowering.js';

/** `material Ply` in a part or a case: said with `of`, or said already. */
export function reportMaterialProperty(file: FileLowering, node: Ast.Property, called: string, nameSpan: Span): void {
    const material = node.value ? textOf(file, node.value) : '...';
    const said = clauseAround(node);
    if (!said) {
        file.report('PRP-001', nameSpan, {
            message: `${called} has no \`material\`: what it is made of is said by \`of ${material}\``,
            found: '`material`',
            needed: '`of`',
            fix: { title: 'write `of`', span: nameSpan, text: 'of', safe: false },
        });
        return;
    }
    const before = textOf(file, said.target);
    file.report('PRP-001', nameSpan, {
        message: `${called} has no \`material\`: what it is made of is said by \`of ${before}\` already`,
        hint: before === material ? 'take this out' : `take this out, or write \`of ${material}\` there`,
        found: '`material`',
        needed: before === material ? 'nothing more' : 'one material',
        related: [{ span: file.span(said), message: `the material is said here` }],
        ...(before === material
            ? { fix: { title: `take out \`material ${material}\``, span: wholeLine(file, file.span(node)), text: '', safe: false } }
            : {}),
    });
}

/** `adjustable shelf Low at 20in`: whether a word before the kind of a part says that it can be moved. */
export function isLooseWord(name: string, node: Ast.Property): boolean {
    const kind = node.value?.$type === 'Reference' ? node.value.target?.$refText : undefined;
    return looseWords.has(name) && kind !== undefined && Object.hasOwn(vocabulary.partKinds, kind);
}

/** That a part can be moved or taken out is no property of the part: the joint says so. */
export function reportLooseWord(file: FileLowering, node: Ast.Property, name: string, nameSpan: Span): void {
    const kind = node.value ? textOf(file, node.value) : 'shelf';
    const { start, end } = node.value ? file.span(node.value) : nameSpan;
    const part = /^[ \t]+([A-Z]\w*)/.exec(file.text.slice(end))?.[1] ?? `every ${kind}`;
    file.report('PRP-001', nameSpan, {
        message: `no \`${kind}\` is declared \`${name}\`: that it can be moved is said by its joint`,
        hint: `write \`${kind}\` without \`${name}\`, and \`join ${part} to every side with { rest on ...   loose }\``,
        found: `\`${name}\``,
        needed: `\`${kind}\``,
        fix: { title: `take out \`${name}\``, span: file.between(nameSpan.start, start), text: '', safe: false },
    });
}

/** The `of` of the thing that a property stands in. */
function clauseAround({ $container: body }: Ast.Property): Ast.OfClause | undefined {
    if (body.$type !== 'Body') {
        return undefined;
    }
    const { $container: owner } = body;
    const phrases = owner.$type === 'DesignDeclaration' || owner.$type === 'PartDeclaration' ? owner.phrases : [];
    return [...phrases, ...body.members].find((one): one is Ast.OfClause => one?.$type === 'OfClause');
}

function textOf(file: FileLowering, node: Ast.Expression): string {
    const { start, end } = file.span(node);
    return file.text.slice(start, end).trim();
}

/** A statement with its line, if it stands alone on it. */
function wholeLine(file: FileLowering, { start, end }: Span): Span {
    const { text } = file;
    const from = text.lastIndexOf('\n', start - 1) + 1;
    const to = text.indexOf('\n', end) < 0 ? text.length : text.indexOf('\n', end) + 1;
    const isAlone = text.slice(from, start).trim() === '' && text.slice(end, to).trim() === '';
    return isAlone ? file.between(from, to) : file.between(start, end);
}
