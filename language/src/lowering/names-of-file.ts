// What is wrong with names where they are declared or used from elsewhere. Knows tables of names: no values.
import { type Span, vocabulary } from 'casewright-shared/casework';
import { unitWords } from 'casewright-shared/quantity';
import type * as Ast from '../generated/ast.js';
import type { DeclaredName } from '../scoping/declared-name.js';
import { libraryModules } from '../workspace/library.js';
import type { FileLowering } from './file-lowering.js';
import { nextWord } from './source-text.js';
import { declarationSpan, describeName } from './unknown-names.js';
import { listWords, nearestWord } from './words.js';

const units = new Set(unitWords);

export function checkNames(file: FileLowering): void {
    for (const { first, again } of file.names.repeated) {
        const span = declarationSpan(file, again);
        file.report('NAM-002', span, {
            message: `\`${again.name}\` is declared twice`,
            hint: 'give one of the two another name',
            found: `${describeName(again)} called \`${again.name}\``,
            needed: 'a name that is free',
            related: [{ span: declarationSpan(file, first), message: `\`${first.name}\` is declared here first` }],
        });
    }
    for (const name of file.names.all) {
        if (!name.isUnnamed) {
            checkWord(file, name);
            checkHiding(file, name);
        }
    }
    checkClashes(file);
}

function checkWord(file: FileLowering, name: DeclaredName): void {
    const isUnit = units.has(name.name);
    const isStep = name.sort === 'recipe' && Object.hasOwn(vocabulary.stepKinds, name.name);
    if (!isUnit && !isStep) {
        return;
    }
    file.report('NAM-008', declarationSpan(file, name), {
        message: isUnit
            ? `\`${name.name}\` is a unit, so nothing else can be called so`
            : `\`${name.name}\` is a step, so a recipe cannot be called so`,
        hint: isUnit
            ? `after a number it would be read as the unit: choose another name`
            : 'where the recipe is used, the step would be read: choose another name',
        found: `\`${name.name}\``,
        needed: isUnit ? 'a name that is no unit' : 'a name that is no step',
    });
}

/** Inside a block a name may not stand for something else than outside it. */
function checkHiding(file: FileLowering, name: DeclaredName): void {
    const hidden = file.visible.hiddenBy(name);
    if (!hidden || hidden.isUnnamed) {
        return;
    }
    const isMadeOfIt = name.sort === 'part' && hidden.kind === 'material';
    file.report('NAM-011', declarationSpan(file, name), {
        message: `\`${name.name}\` hides ${describeName(hidden)} of the same name that is declared further out`,
        hint: isMadeOfIt
            ? `if the ${name.kind} is made of it, write \`of ${name.name}\`; else give one of the two another name`
            : 'give one of the two another name',
        found: `two things called \`${name.name}\``,
        needed: 'a name that is free here',
        related: [{ span: declarationSpan(file, hidden), message: `the other \`${name.name}\` is declared here` }],
    });
}

function checkClashes(file: FileLowering): void {
    const byUse = new Map<Ast.Use, { name: DeclaredName; known: DeclaredName }[]>();
    for (const { use, name, known } of file.visible.used(file.names).clashes) {
        byUse.set(use, [...(byUse.get(use) ?? []), { name, known }]);
    }
    for (const [use, clashes] of byUse) {
        const [first] = clashes;
        const names = listWords(
            clashes.map(({ name }) => name.name),
            'and',
            4,
        );
        const alias = nameForUse(use);
        const named = `${file.text.slice(use.$cstNode?.offset ?? 0, targetSpan(file, use).end)} as ${alias}`;
        const other = first ? file.labelFor(first.known.document) : '';
        file.report('NAM-012', targetSpan(file, use), {
            message: `${names} ${clashes.length === 1 ? 'is' : 'are'} declared in ${other} too, which this file also uses`,
            hint: `say which is meant with a name for the file: \`${named}\`, and write \`${alias}.${first?.name.name ?? ''}\``,
            found: `${names} from two files`,
            needed: 'each name from one file',
            related: clashes.slice(0, 4).flatMap(({ name, known }) => [
                { span: declarationSpan(file, name), message: `\`${name.name}\` is declared here` },
                { span: declarationSpan(file, known), message: `and here` },
            ]),
        });
    }
}

/** A name that a file may be used by: `shop` for `"shop.case"`, `panels` for `casewright.panels`. */
function nameForUse({ module, path = '' }: Ast.Use): string {
    const last =
        module?.split('.').at(-1) ??
        path
            .split('/')
            .at(-1)
            ?.replace(/\.case$/, '') ??
        '';
    const word = last.replace(/[^A-Za-z0-9_]/g, '').replace(/^[0-9]+/, '');
    return word === '' ? 'other' : word;
}

/** Where a `use` says what it uses. */
export function targetSpan(file: FileLowering, use: Ast.Use): Span {
    const span = file.span(use);
    const word = nextWord(file.text, file.text.indexOf('use', span.start) + 'use'.length);
    const quoted = file.text[word] === '"';
    const end = quoted ? file.text.indexOf('"', word + 1) + 1 : word + (use.module?.length ?? 0);
    return file.between(word, end > word && end <= span.end ? end : span.end);
}

/** Reports a `use` whose file is not there. */
export function checkUses(file: FileLowering): void {
    const seen = new Map<string, Span>();
    for (const use of file.names.uses) {
        const span = targetSpan(file, use);
        const what = use.module ?? use.path ?? '';
        const before = seen.get(what);
        if (before && what !== '') {
            file.report('NAM-002', span, {
                message: `${what} is used twice`,
                hint: 'keep one of the two lines',
                found: `${what} for the second time`,
                needed: 'each file once',
                related: [{ span: before, message: 'it is used here first' }],
            });
            continue;
        }
        seen.set(what, span);
        if (file.visible.documentOf(use, file.names)) {
            continue;
        }
        if (use.module !== undefined) {
            const near = nearestWord(use.module, libraryModules);
            file.report('NAM-003', span, {
                message: `no library is called \`${use.module}\`${near ? `; did you mean \`${near}\`?` : ''}`,
                found: `\`${use.module}\``,
                needed: `a library, or a file in quotes`,
                ...(near
                    ? { fix: { title: `write \`${near}\``, span, text: near, safe: false } }
                    : { hint: `there is ${listWords(libraryModules, 'and')}` }),
            });
        } else if (use.path !== undefined) {
            const files = file.visible.otherFiles(file.names).map((document) => file.labelFor(document));
            const near = nearestWord(use.path, files);
            const whatIsWrong = use.path.endsWith('.case')
                ? 'a path counts from the folder of this file'
                : 'the name of a file of designs ends in `.case`';
            const hint = near ? `did you mean \`"${near}"\`?` : whatIsWrong;
            file.report('NAM-003', span, {
                message: `there is no file \`${use.path}\` that can be read`,
                hint,
                found: `"${use.path}"`,
                needed: 'a file that is there',
            });
        }
    }
}
