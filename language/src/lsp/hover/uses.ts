// Hovers over `use`: what the file or the library offers. Knows names across files.

import { AstUtils } from 'langium';
import type * as Ast from '../../generated/ast.js';
import type { VisibleNames } from '../../scoping/visible-names.js';
import { paragraphs } from './markdown.js';

/** How many names of a kind are listed. */
const mostNames = 12;

/** The names that a used file offers, by their kinds. */
export function useText(use: Ast.Use, names: VisibleNames): string | undefined {
    const byKind = new Map<string, string[]>();
    for (const [name, { kind }] of names.offeredBy(use, names.of(AstUtils.getDocument(use)))) {
        byKind.set(kind, [...(byKind.get(kind) ?? []), `\`${name}\``]);
    }
    const lines = [...byKind].map(([kind, found]) => {
        const more = found.length > mostNames ? ` and ${found.length - mostNames} more` : '';
        return `- ${kind}: ${found.slice(0, mostNames).join(', ')}${more}`;
    });
    return lines.length === 0 ? undefined : paragraphs(`**${use.module ?? use.path}** offers`, lines.join('\n'));
}
