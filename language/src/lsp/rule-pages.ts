// The pages of the rules as documents that are no files. Knows their URIs and texts.
import { ruleNamed, rulePage } from 'casewright-shared/rules';
import { URI } from 'langium';

const scheme = 'casewright';

/** `casewright:/rules/EDG-003.md`: works in every editor that can ask the server for texts, with or without a network. */
export function rulePageUri(code: string): string {
    return URI.from({ scheme, path: `/rules/${code}.md` }).toString();
}

/** The page that a URI names; undefined if it is none. */
export function rulePageText({ path }: URI): string | undefined {
    const rule = ruleNamed(/^\/rules\/(.+)\.md$/.exec(path)?.[1] ?? '');
    return rule && rulePage(rule);
}
