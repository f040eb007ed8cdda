/** The page of each rule, with what the tool really says of its bad examples. */
import { type Example, type Rule, readMarks, ruleIndex, rulePage, rulePageName, rules, type Said } from 'casewright-shared/rules';
import type { SolidKernel } from 'casewright-shared/solids';
import { openWorkspace } from '../../src/open-workspace.js';

const folder = 'file:///examples/';
const file = 'design.case';

/** Pages by name. */
export async function rulePages(loadKernel: () => Promise<SolidKernel>): Promise<ReadonlyMap<string, string>> {
    const pages = new Map([['README.md', ruleIndex()]]);
    for (const rule of rules) {
        const said = await Promise.all(rule.examples.bad.map((example) => sayOf(rule, example, loadKernel)));
        pages.set(rulePageName(rule), rulePage(rule, said));
    }
    return pages;
}

async function sayOf({ code, checkSolids }: Rule, example: Example, loadKernel: () => Promise<SolidKernel>): Promise<Said> {
    const files = new Map(Object.entries({ ...example.beside, [file]: readMarks(example).text }));
    const readFile = async (uri: string) => {
        const text = files.get(uri.slice(folder.length));
        if (text === undefined) throw new Error(`${uri} does not exist`);
        return text;
    };
    const analysis = await openWorkspace({ readFile }).analyse(folder + file);
    const findings = checkSolids ? await analysis.findingsOfSolids(loadKernel) : analysis.findings;
    const found = findings.find((finding) => finding.code === code);
    if (!found) throw new Error(`the bad example of ${code} is not flagged`);
    return { message: found.message, ...(found.hint === undefined ? {} : { hint: found.hint }) };
}
