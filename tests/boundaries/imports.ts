import { readdirSync, readFileSync } from 'node:fs';
import * as path from 'node:path';
import { parseSync } from 'oxc-parser';

/** The root of the checkout. */
export const ROOT = path.resolve(import.meta.dirname, '../..');

/** One import as it is written, also of types alone, with what it leads to. */
export interface Import {
    /** The importing file, from the root. */
    readonly from: string;
    readonly line: number;
    /** The words between the quotes. */
    readonly specifier: string;
    /** The imported file from the root; undefined for a package of other authors or a module of the platform. */
    readonly target: string | undefined;
}

/** All imports of all source files below these folders of the checkout. */
export function readImports(folders: readonly string[]): Import[] {
    return folders.flatMap(sourceFiles).flatMap((file) => importsOf(file, readFileSync(path.join(ROOT, file), 'utf8')));
}

/** An import by this file of these words, as `readImports` would give it. */
export function importFrom(from: string, specifier: string, line = 1): Import {
    return { from, line, specifier, target: resolve(from, specifier) };
}

function sourceFiles(folder: string): string[] {
    return readdirSync(path.join(ROOT, folder), { recursive: true, withFileTypes: true })
        .filter((entry) => entry.isFile() && /\.m?ts$/.test(entry.name))
        .map((entry) => path.relative(ROOT, path.join(entry.parentPath, entry.name)))
        .sort();
}

function importsOf(file: string, text: string): Import[] {
    const { module, errors } = parseSync(file, text);
    if (errors.length > 0) {
        throw new Error(`${file} cannot be read: ${errors[0]?.message}`);
    }
    const found = [
        ...module.staticImports.map(({ moduleRequest }) => ({ specifier: moduleRequest.value, at: moduleRequest.start })),
        ...module.staticExports
            .flatMap(({ entries }) => entries.map((entry) => entry.moduleRequest))
            .filter((moduleRequest) => moduleRequest !== null)
            .map((moduleRequest) => ({ specifier: moduleRequest.value, at: moduleRequest.start })),
        ...module.dynamicImports.map(({ moduleRequest }) => ({
            specifier: text.slice(moduleRequest.start + 1, moduleRequest.end - 1),
            at: moduleRequest.start,
        })),
    ];
    return found.map(({ specifier, at }) => importFrom(file, specifier, text.slice(0, at).split('\n').length));
}

const OWN_PACKAGES: Readonly<Record<string, string>> = {
    'casewright-shared': 'shared',
    'casewright-language': 'language',
    'casewright-cli': 'cli',
    casewright: 'extension',
};

function resolve(from: string, specifier: string): string | undefined {
    if (specifier.startsWith('.')) {
        return path.join(path.dirname(from), specifier).replace(/\.(m?)js$/, '.$1ts');
    }
    const [packageName = '', ...inside] = specifier.split('/');
    const folder = OWN_PACKAGES[packageName];
    if (folder === undefined) {
        return undefined;
    }
    const { exports } = JSON.parse(readFileSync(path.join(ROOT, folder, 'package.json'), 'utf8'));
    const exported: string | undefined = exports?.[['.', ...inside].join('/')];
    return exported === undefined ? folder : path.join(folder, exported);
}
