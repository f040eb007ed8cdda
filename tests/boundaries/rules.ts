import { isBuiltin } from 'node:module';
import type { Import } from './imports.js';

/** A boundary: what may not be imported where, and what to do instead. */
export interface BoundaryRule {
    readonly title: string;
    readonly advice: string;
    forbids(found: Import): boolean;
    /** Imports that the rule must catch: importing file and imported words. */
    readonly caught: readonly (readonly [from: string, specifier: string])[];
    /** Imports that look alike and are allowed. */
    readonly allowed: readonly (readonly [from: string, specifier: string])[];
}

/** For each area of shared/src the areas that it may import. */
const SHARED_LAYERS: Readonly<Record<string, readonly string[]>> = {
    quantity: [],
    materials: ['quantity'],
    geometry: ['quantity'],
    casework: ['quantity', 'materials', 'geometry'],
    joinery: ['quantity', 'materials', 'geometry', 'casework'],
    strength: ['quantity', 'materials', 'geometry', 'casework', 'joinery'],
    solids: ['quantity', 'materials', 'geometry', 'casework', 'joinery', 'strength'],
    rules: ['quantity', 'materials', 'geometry', 'casework', 'joinery', 'strength', 'solids', 'cost'],
    stock: ['quantity', 'materials', 'geometry'],
    cost: ['quantity'],
    drawing: ['quantity', 'materials', 'geometry', 'casework'],
    documents: ['quantity', 'materials', 'geometry', 'casework', 'joinery', 'rules', 'strength', 'solids', 'stock', 'cost', 'drawing'],
    writers: ['quantity', 'geometry', 'drawing', 'documents'],
    output: [],
};

/** For each package the packages of this project that it may import. */
const PACKAGE_LAYERS: Readonly<Record<string, readonly string[]>> = {
    shared: [],
    language: ['shared'],
    extension: ['shared', 'language'],
    cli: ['shared', 'language'],
};

const NODE_ENTRIES = [
    'language/src/server/main-node.ts',
    'language/src/server/main-node-prepared.ts',
    'language/src/server/node-services.ts',
    'extension/src/desktop.ts',
];

/** The boundaries of the project's code (of `src` folders, that is, not of tests and scripts). */
export const boundaryRules: readonly BoundaryRule[] = [
    {
        title: 'packages depend one way: cli and extension on language, language on shared',
        advice: 'move what both need down into the package that the importing one may use, or pass it in as an argument',
        forbids: ({ from, target }) => {
            const [importing, imported] = [packageOf(from), packageOf(target)];
            return imported !== undefined && imported !== importing && !PACKAGE_LAYERS[importing ?? '']?.includes(imported);
        },
        caught: [
            ['shared/src/rules/fit.ts', 'casewright-language'],
            ['language/src/index.ts', '../../cli/src/main.js'],
        ],
        allowed: [['language/src/index.ts', 'casewright-shared/quantity']],
    },
    {
        title: 'another package is entered by its name, never by a path into its folder',
        advice: "import what the package exports, such as `casewright-shared/quantity`; if it is missing there, export it from that area's index.ts",
        forbids: ({ from, specifier, target }) => specifier.startsWith('.') && packageOf(target) !== packageOf(from),
        caught: [['language/src/index.ts', '../../shared/src/quantity/index.js']],
        allowed: [['language/src/index.ts', './parser/casewright-lexer.js']],
    },
    {
        title: 'areas of shared depend one way: quantity, geometry, casework, joinery, then rules and the like, documents, writers',
        advice:
            'an area uses only those before it: move what is needed to the lower one, or let the upper one pass it in ' +
            '(a writer gets tables and sheets, never a case)',
        forbids: ({ from, target }) => {
            const [importing, imported] = [sharedAreaOf(from), sharedAreaOf(target)];
            return (
                importing !== undefined && imported !== undefined && imported !== importing && !SHARED_LAYERS[importing]?.includes(imported)
            );
        },
        caught: [
            ['shared/src/writers/csv.ts', '../casework/index.js'],
            ['shared/src/quantity/unit.ts', '../geometry/index.js'],
            ['shared/src/casework/part.ts', '../rules/index.js'],
            ['shared/src/unheard-of/part.ts', '../quantity/index.js'],
        ],
        allowed: [
            ['shared/src/documents/cut-list.ts', '../casework/index.js'],
            ['shared/src/casework/part.ts', '../quantity/index.js'],
        ],
    },
    {
        title: 'another area of shared is entered by its index.ts',
        advice: "import from the other area's index.ts and export there what is missing, so that an area can change inside without breaking others",
        forbids: ({ from, target }) => {
            const [importing, imported] = [sharedAreaOf(from), sharedAreaOf(target)];
            return (
                importing !== undefined && imported !== importing && imported !== undefined && target !== `shared/src/${imported}/index.ts`
            );
        },
        caught: [['shared/src/casework/part.ts', '../quantity/rational.js']],
        allowed: [
            ['shared/src/quantity/unit.ts', './rational.js'],
            ['shared/src/casework/part.ts', '../quantity/index.js'],
        ],
    },
    {
        title: 'shared knows nothing of the text, the editor or the terminal',
        advice: 'shared gets plain values: let language/ turn syntax into them and findings into diagnostics, and cli/ read arguments',
        forbids: ({ from, specifier }) =>
            packageOf(from) === 'shared' && /^(langium|chevrotain|commander|vscode($|-|\/))/.test(specifier.replace(/^@[^/]+\//, '')),
        caught: [
            ['shared/src/casework/part.ts', 'langium'],
            ['shared/src/rules/fit.ts', 'vscode-languageserver-types'],
        ],
        allowed: [['language/src/index.ts', 'langium']],
    },
    {
        title: 'shared, language and what the extension runs in a browser use no module of Node',
        advice: 'files, time and chance come in as arguments from cli/ or from a desktop entry; main-node*.ts, node-services.ts and desktop.ts are the only doors to Node',
        forbids: ({ from, specifier }) =>
            packageOf(from) !== 'cli' && !NODE_ENTRIES.includes(from) && (isBuiltin(specifier) || specifier.endsWith('/node')),
        caught: [
            ['shared/src/writers/csv.ts', 'node:fs'],
            ['language/src/index.ts', 'path'],
            ['language/src/server/main-browser.ts', 'langium/node'],
            ['extension/src/web.ts', 'vscode-languageclient/node'],
        ],
        allowed: [
            ['language/src/server/main-node.ts', 'langium/node'],
            ['cli/src/main.ts', 'node:fs'],
        ],
    },
    {
        title: 'the kernel of solids is loaded by the program that needs it',
        advice:
            'shared is handed the kernel and says in solids/kernel.ts what it is (`import type`), so that nothing that starts has to read it; ' +
            'load it with `import()` where the disk is known',
        forbids: ({ from, specifier }) =>
            /^manifold-3d($|\/)/.test(specifier) && packageOf(from) === 'shared' && from !== 'shared/src/solids/kernel.ts',
        caught: [['shared/src/solids/part-solid.ts', 'manifold-3d/manifold.js']],
        allowed: [['shared/src/solids/kernel.ts', 'manifold-3d/manifold.js']],
    },
    {
        title: 'only the extension knows the editor it runs in',
        advice: 'answer through the language server protocol in language/, so that every editor gets it; only extension/ may call VS Code itself',
        forbids: ({ from, specifier }) => packageOf(from) !== 'extension' && /^vscode($|\/|-languageclient)/.test(specifier),
        caught: [['language/src/server/services.ts', 'vscode']],
        allowed: [
            ['extension/src/web.ts', 'vscode'],
            ['language/src/server/main-node.ts', 'vscode-languageserver/node'],
        ],
    },
    {
        title: 'what is delivered imports no tests and no scripts',
        advice: 'move what the product needs out of the test or script into a src folder',
        forbids: ({ target }) => target !== undefined && !/^[^/]+\/(src|package\.json)/.test(target),
        caught: [
            ['shared/src/casework/part.ts', '../../test/casework/samples.js'],
            ['cli/src/main.ts', '../../tests/scripts/check.js'],
            ['language/src/index.ts', '../scripts/write-pages.js'],
        ],
        allowed: [['cli/src/main.ts', 'casewright-language']],
    },
];

function packageOf(file: string | undefined): string | undefined {
    return file?.split('/')[0];
}

function sharedAreaOf(file: string | undefined): string | undefined {
    return file?.startsWith('shared/src/') ? file.split('/')[2] : undefined;
}
