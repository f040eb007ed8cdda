/** Every page that is made from the language itself, by its path in `docs`. */
import { referencePages } from './reference-pages.ts';
import { rulePages } from './rule-pages.ts';

/** The folders that hold such pages and nothing else. */
export const folders = ['rules', 'reference'];

export async function allPages(): Promise<ReadonlyMap<string, string>> {
    const inFolder = (folder: string, pages: ReadonlyMap<string, string>) =>
        [...pages].map(([name, text]) => [`${folder}/${name}`, text] as const);
    return new Map([...inFolder('rules', await rulePages()), ...inFolder('reference', referencePages())]);
}
