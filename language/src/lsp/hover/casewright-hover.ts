// What an editor shows over a word: a value, a thing, or what the word means. Knows which of them a word stands for.
import type { LangiumDocument } from 'langium';
import type { HoverProvider } from 'langium/lsp';
import type { Hover, HoverParams } from 'vscode-languageserver';
import type { Analyses } from '../../analysis/analyses.js';
import type { Analysis } from '../../analysis/analysis.js';
import type * as Ast from '../../generated/ast.js';
import type { VisibleNames } from '../../scoping/visible-names.js';
import type { Occurrences } from '../occurrences.js';
import { indexBehind, Values } from '../values.js';
import { type WordAt, wordAt } from '../word-at.js';
import { declaredText } from './declared.js';
import { paragraphs } from './markdown.js';
import { measureText } from './measures.js';
import { useText } from './uses.js';
import { wordText } from './words.js';

export class CasewrightHover implements HoverProvider {
    private readonly values: Values;

    constructor(
        private readonly analyses: Analyses,
        private readonly names: VisibleNames,
        private readonly occurrences: Occurrences,
    ) {
        this.values = new Values(names);
    }

    getHoverContent(document: LangiumDocument, { position }: HoverParams): Hover | undefined {
        const word = wordAt(document, position);
        const text = word && this.textFor(word, this.analyses.of(document));
        return word && text ? { contents: { kind: 'markdown', value: text }, range: word.range } : undefined;
    }

    private textFor(word: WordAt, analysis: Analysis): string | undefined {
        if (word.node.$type === 'Use') {
            return useText(word.node as Ast.Use, this.names) ?? wordText(word);
        }
        const name = this.occurrences.declaredAt(word);
        const value = this.values.at(word, analysis);
        if (name) {
            return declaredText(name, analysis, { index: indexBehind(word.node), value });
        }
        return paragraphs(value && measureText(value, analysis), word.node.$type === 'Literal' ? undefined : wordText(word));
    }
}
