// What to say of a name that names nothing. Knows what is visible and what was probably meant.
import { type Span, vocabulary } from 'casewright-shared/casework';
import type { AstNode } from 'langium';
import type { File, Let, Parameter, Use } from '../generated/ast.js';
import type { DeclaredName } from '../scoping/declared-name.js';
import { insertionOfUse } from '../scoping/place-for-use.js';
import { isOne } from '../scoping/visible-names.js';
import { type LibraryName, libraryModule, libraryNames } from '../workspace/library.js';
import type { FileLowering } from './file-lowering.js';
import { listWords, meantBy, nearestWord } from './words.js';

/** What a declared thing is called in a sentence: `a material`, `goods`, `a shelf`. */
export function describeName(name: DeclaredName): string {
    switch (name.sort) {
        case 'fact':
            return vocabulary.factKinds[name.kind]?.called ?? 'a thing of an unknown kind';
        case 'recipe':
            return vocabulary.recipeKinds[name.kind as vocabulary.RecipeKindName]?.called ?? 'a recipe';
        case 'design':
        case 'part':
            return vocabulary.partKinds[name.kind]?.called ?? 'a part';
        case 'index':
        case 'opening':
            return `an ${name.sort}`;
        case 'use':
            return 'a file that is used';
        case 'let':
            return 'a value';
        default:
            return `a ${name.sort}`;
    }
}

/** Reports a name that nothing visible has; unless the line that should declare it is broken, which has been reported. */
export function reportUnknownName(
    file: FileLowering,
    name: string,
    at: AstNode,
    span: Span,
    kinds?: readonly string[],
    words: readonly string[] = [],
): void {
    if (file.isLost(name) || kinds?.some((kind) => file.names.nameless.has(kind))) {
        return;
    }
    const dot = name.indexOf('.');
    if (dot >= 0) {
        reportUnknownInFile(file, name.slice(0, dot), name.slice(dot + 1), at, span);
        return;
    }
    const found = file.visible.lookup(name, at);
    if (found && !isOne(found)) {
        reportSeveral(file, name, found, span);
        return;
    }
    const hidden = hiddenBehindUse(file, name);
    if (hidden) {
        reportHidden(file, hidden, span);
        return;
    }
    if (file.lacksFiles) {
        return;
    }
    const inLibrary = libraryNames().filter(({ kind }) => !kinds || kinds.includes(kind));
    const unused = inLibrary.find((one) => one.name === name);
    if (unused) {
        reportNotUsed(file, name, unused.module, `use ${unused.module}`, span);
        return;
    }
    const plural = Object.keys(vocabulary.partKinds).find((kind) => name === `${kind}s` || meantBy(name) === kind);
    if (plural !== undefined && kinds?.includes(plural)) {
        reportPlural(file, name, plural, span);
        return;
    }
    const visible = [...new Set(file.visible.allAt(at))];
    const fitting = kinds ? visible.filter((one) => fits(one, kinds)) : visible;
    const near =
        nearestWord(name, [...fitting.map((one) => one.name), ...words]) ??
        nearestWord(
            name,
            visible.map((one) => one.name),
        );
    const unusedNear = near ? undefined : nearInLibrary(name, inLibrary);
    if (unusedNear) {
        reportUnusedNear(file, name, unusedNear, span);
        return;
    }
    const known = visible.find((one) => one.name === near);
    const needed = kinds ? listKinds(kinds) : 'a name that is declared';
    file.report('NAM-001', span, {
        message: near ? `nothing is called \`${name}\`; did you mean \`${near}\`?` : `nothing is called \`${name}\` here`,
        found: `\`${name}\``,
        needed,
        ...(near ? { fix: { title: `write \`${near}\``, span, text: near, safe: false } } : { hint: whatThereIs(fitting) }),
        ...(known && near ? { related: [{ span: declarationSpan(file, known), message: `\`${near}\` is declared here` }] } : {}),
    });
}

/** `join Floor to sides` */
function reportPlural(file: FileLowering, name: string, kind: string, span: Span): void {
    file.report('NAM-001', span, {
        message: `nothing is called \`${name}\` here; did you mean \`every ${kind}\`?`,
        found: `\`${name}\``,
        needed: 'a part, or all of a kind',
        fix: { title: `write \`every ${kind}\``, span, text: `every ${kind}`, safe: false },
    });
}

function nearInLibrary(name: string, inLibrary: readonly LibraryName[]): LibraryName | undefined {
    const near = nearestWord(
        name,
        inLibrary.map((one) => one.name),
    );
    return inLibrary.find((one) => one.name === near);
}

function reportUnusedNear(file: FileLowering, name: string, near: LibraryName, span: Span): void {
    const use = `use ${near.module}`;
    const { offset, text } = insertionOfUse(file.names.document.parseResult.value as File, file.text, use);
    file.report('NAM-001', span, {
        message: `nothing is called \`${name}\`; did you mean \`${near.name}\` of ${near.module}, which this file does not use?`,
        hint: `write \`${near.name}\`, and add the line \`${use}\``,
        found: `\`${name}\``,
        needed: 'a name that is declared here or in a file that is used here',
        fix: {
            title: `write \`${near.name}\`, and add \`${use}\``,
            span,
            text: near.name,
            also: [{ span: file.between(offset, offset), text }],
            safe: false,
        },
    });
}

/** What could have been named: the nearest first, what comes from the library last. */
function whatThereIs(fitting: readonly DeclaredName[]): string {
    const isFromLibrary = (one: DeclaredName) => libraryModule(one.documentUri) !== undefined;
    const ordered = [...fitting.filter((one) => !isFromLibrary(one)), ...fitting.filter(isFromLibrary)];
    const names = [...new Set(ordered.map((one) => one.name))];
    return names.length > 0 ? `there is ${listWords(names, 'and', 8)}` : 'declare it, or `use` the file that does';
}

/** Whether a name may stand for a thing of one of these kinds. */
function fits(name: DeclaredName, kinds: readonly string[]): boolean {
    const type = name.sort === 'let' || name.sort === 'parameter' ? (name.node as Let | Parameter).type : undefined;
    return kinds.includes(name.kind) || (vocabulary.types[type ?? '']?.kinds?.some((kind) => kinds.includes(kind)) ?? false);
}

/** `a material or a case` */
export function listKinds(kinds: readonly string[]): string {
    const built = kinds.filter((kind) => vocabulary.partKinds[kind]?.built !== false && vocabulary.factKinds[kind]?.built !== false);
    const called = (built.length > 0 ? built : kinds).map(
        (kind) =>
            vocabulary.factKinds[kind]?.called ??
            vocabulary.partKinds[kind]?.called ??
            vocabulary.recipeKinds[kind as vocabulary.RecipeKindName]?.called ??
            kind,
    );
    if (called.length > 4) {
        return 'a part';
    }
    const last = called.pop() ?? '';
    return called.length === 0 ? last : `${called.join(', ')} or ${last}`;
}

function reportSeveral(file: FileLowering, name: string, found: readonly DeclaredName[], span: Span): void {
    if (found.every((one) => one.isUnnamed)) {
        file.report('NAM-001', span, {
            message: `there are ${found.length} parts called \`${name}\` by their kind, and nothing says which is meant`,
            hint: `give each a name, such as \`${name} Lower\``,
            found: `${found.length} parts without a name`,
            needed: 'the name of one of them',
            related: found.map((one) => ({ span: declarationSpan(file, one), message: `one \`${name}\` stands here` })),
        });
        return;
    }
    const paths = found.map((one) => one.declarationPath.split('.').slice(-2).join('.'));
    file.report('NAM-001', span, {
        message: `\`${name}\` is declared ${found.length} times further in, and nothing says which is meant`,
        hint: `say where it is: ${listWords(paths)}`,
        found: `${found.length} things called \`${name}\``,
        needed: 'one of them',
        related: found.map((one) => ({ span: declarationSpan(file, one), message: `one \`${name}\` is declared here` })),
    });
}

/** `shop.Lipped` of which one word or the other is unknown. */
function reportUnknownInFile(file: FileLowering, receiver: string, member: string, at: AstNode, span: Span): void {
    const used = file.visible.lookup(receiver, at);
    if (!used || !isOne(used) || used.sort !== 'use') {
        file.report('NAM-001', file.word(span.start, receiver), {
            message: `no file is used as \`${receiver}\``,
            hint: `name it where it is used: \`use "${receiver}.case" as ${receiver}\``,
            found: `\`${receiver}\``,
            needed: 'the name of a file that is used',
        });
        return;
    }
    const offered = [...file.visible.offeredBy(used.node as Use, file.names).keys()];
    const near = nearestWord(member, offered);
    const memberSpan = file.between(span.end - member.length, span.end);
    file.report('NAM-009', memberSpan, {
        message: `\`${receiver}\` declares no \`${member}\`${near ? `; did you mean \`${near}\`?` : ''}`,
        found: `\`${member}\``,
        needed: 'a public name of that file',
        ...(near
            ? { fix: { title: `write \`${near}\``, span: memberSpan, text: near, safe: false } }
            : { hint: `it declares ${listWords(offered, 'and', 8)}` }),
    });
}

/** A name that a used file has, but does not show to this one. */
function hiddenBehindUse(
    file: FileLowering,
    name: string,
): { readonly name: DeclaredName; readonly isPrivate: boolean; readonly through: string } | undefined {
    for (const document of file.visible.closure(file.names.document).slice(1)) {
        const declared = file.visible.of(document).top.names.get(name);
        if (declared && declared.sort !== 'use') {
            return { name: declared, isPrivate: declared.isPrivate, through: file.labelFor(document) };
        }
    }
    return undefined;
}

function reportHidden(
    file: FileLowering,
    { name, isPrivate, through }: { name: DeclaredName; isPrivate: boolean; through: string },
    span: Span,
): void {
    const related = [{ span: declarationSpan(file, name), message: `\`${name.name}\` is declared here` }];
    if (isPrivate) {
        file.report('NAM-005', span, {
            message: `\`${name.name}\` is private to ${through}`,
            hint: `take the word \`private\` away there, or declare one of your own`,
            found: `the private name \`${name.name}\``,
            needed: 'a name that its file lets others use',
            related,
        });
        return;
    }
    const module = libraryModule(name.documentUri);
    reportNotUsed(file, name.name, module ?? through, module ? `use ${module}` : `use "${through}"`, span, related);
}

function reportNotUsed(
    file: FileLowering,
    name: string,
    through: string,
    use: string,
    span: Span,
    related: { readonly span: Span; readonly message: string }[] = [],
): void {
    const { offset, text } = insertionOfUse(file.names.document.parseResult.value as File, file.text, use);
    file.report('NAM-001', span, {
        message: `\`${name}\` is declared in ${through}, which this file does not use itself`,
        hint: `add the line \`${use}\``,
        found: `\`${name}\``,
        needed: 'a name that is declared here or in a file that is used here',
        fix: { title: `add \`${use}\``, span: file.between(offset, offset), text, safe: true },
        related,
    });
}

/** The name where it is declared, in whichever file. */
export function declarationSpan(file: FileLowering, name: DeclaredName): Span {
    const segment = name.nameSegment ?? name.selectionSegment;
    return { file: file.labelFor(name.document), start: segment?.offset ?? 0, end: segment?.end ?? 0 };
}
