/** Every page that is made from the language itself, by its path in `docs`. */
import type { SolidKernel } from 'casewright-shared/solids';
import { referencePages } from './reference-pages.ts';
import { rulePages } from './rule-pages.ts';

/** The folders that hold such pages and nothing else. */
export const folders = ['rules', 'reference'];

/** @param loadKernel loads the kernel of solids, at which some of the rules look */
export async function allPages(loadKernel: () => Promise<SolidKernel>): Promise<ReadonlyMap<string, string>> {
    const inFolder = (folder: string, pages: ReadonlyMap<string, string>) =>
        [...pages].map(([name, text]) => [`${folder}/${name}`, text] as const);
    return new Map([...inFolder('rules', await rulePages(loadKernel)), ...inFolder('reference', referencePages())]);
}
