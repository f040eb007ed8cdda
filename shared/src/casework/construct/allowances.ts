/** What an `allow` is about: parts, or whole cases with all that is in them. */
import type { AllowStatement, DeclarationId } from '../design/design.js';
import type { Allowance, Path } from '../model/casework.js';
import type { CaseBuild } from './case-build.js';
import type { Construction } from './construction.js';
import { evaluate } from './evaluate.js';
import type { Scope } from './scope.js';
import { selectParts } from './select.js';

/** In the braces of a case: `on` names parts of it, cases in it, or itself. */
export function allowanceInCase(construction: Construction, statement: AllowStatement, build: CaseBuild, scope: Scope): Allowance {
    const about: About = { parts: [], assemblies: [] };
    for (const selector of statement.on) {
        const named = selector.is === 'name' ? evaluate(construction, selector, scope) : undefined;
        if (named?.is === 'case') {
            about.assemblies.push(named.build.path);
            continue;
        }
        for (const part of selectParts(construction, selector, build, scope)) {
            if (part.nested) about.assemblies.push(part.nested.path);
            about.parts.push(part.path);
        }
    }
    return { ...said(statement), ...about, within: build.path };
}

/** At the top of a file: `on` names cases that are declared there. */
export function allowanceInFile(
    statement: AllowStatement,
    cases: readonly { readonly id: DeclarationId; readonly path: Path }[],
): Allowance {
    const ids = new Set(statement.on.flatMap((selector) => (selector.is === 'name' ? [selector.id] : [])));
    const assemblies = cases.filter(({ id }) => ids.has(id)).map(({ path }) => path);
    return { ...said(statement), parts: [], assemblies };
}

interface About {
    readonly parts: string[];
    readonly assemblies: string[];
}

function said({ rule, ruleSpan, span, because, on }: AllowStatement): Omit<Allowance, 'parts' | 'assemblies'> {
    return { rule, everywhere: on.length === 0, span, ruleSpan, ...(because === undefined ? {} : { because }) };
}
