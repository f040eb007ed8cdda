// What may begin a line, by the block it is in. Knows whole statements as snippets, and the vocabulary.
import { vocabulary } from 'casewright-shared/casework';
import { CompletionItemKind } from 'vscode-languageserver';
import { sentenceWords } from '../statement-words.js';
import { type BlockKind, sayableIn } from './block-kind.js';
import type { Offer } from './offer.js';
import { connectives, propertiesNotSaid } from './phrases.js';

/** Whole parts, as they usually stand in a case. In `< >` stands what is to be filled in, and `<|>` is where the cursor ends. */
const partSnippets: Readonly<Record<string, string>> = {
    case: 'case <Unit> of <Design>',
    side: 'side <Left>, <Right> of <Material>',
    divider: 'divider <Post> at <middle>',
    top: 'top of <Material>',
    bottom: 'bottom at <4in>',
    shelf: 'shelf <Name> at <12in>',
    back: 'back of <Material>',
    kick: 'kick at <2 1/2in> behind <Floor>.front',
    rail: 'rail <Name> at <top> height <4in>',
    stretcher: 'stretcher <Name> at <front> depth <4in>',
    filler: 'filler <Name> at <left> width <1in>',
    panel: 'panel <Name> at <front> height <6in>',
    layer: 'layer <Outer> of <Material>',
};

const caseSnippet = [
    'case <Bookcase> of <Material> {',
    '    width  <30in>',
    '    height <36in>',
    '    depth  <12in>',
    '',
    '    side Left, Right',
    '    <|>',
    '}',
].join('\n');

const factSnippets: Readonly<Record<string, string>> = {
    material: 'material <Name> like <HardwoodPlywood> { thickness <3/4in>   actual <0.720in ± 0.010in> }',
    goods: 'goods <Name> { size <9in> wide <6in> deep <7in> high   mass <2lb> }',
    curve: 'curve <Sweep> of depth over <height> {\n    from <17in> at bottom\n    to   <12in> at top\n    bow  out <1in>\n}',
    project: 'project "<Title>" {\n    client "<Name>"\n    build  <1> <Case>\n}',
    shop: 'shop {\n    kerf <1/8in>\n    <|>\n}',
};

const recipeSnippets: Readonly<Record<string, string>> = {
    edging: 'edging <Lipped> { band <1/8in> of <Material> }',
    joint: 'joint <Fixed> { screw <#8 x 1 1/4in>   spacing <5in>   glue }',
};

const sentenceSnippets: Readonly<Record<string, string>> = {
    use: 'use "<shop.case>"',
    let: 'let <name> = <1/8in>',
    edition: 'edition 1',
    edge: 'edge <front> <Edging>',
    every: 'every <shelf> { <|> }',
    join: 'join <every shelf> to <every side> with <Joint>',
    hold: 'hold <Goods> on <Shelf>',
    load: 'load <25 lb/ft2> on <Shelf>',
    require: 'require <Shelf.clear> >= <11in> because "<reason>"',
    allow: 'allow <rule> on <Part> because "<reason>"',
    build: 'build <1> <Case>',
    leave: 'leave <top> <4in> for <Part>',
    repeat: 'repeat <i> in 1..<4> {\n    <|>\n}',
    if: 'if <width> > <36in> {\n    <|>\n}',
};

const ofFile = ['use', 'let', 'every', 'require', 'allow', 'private', 'public', 'edition'];
const ofCase = ['edge', 'every', 'join', 'hold', 'load', 'require', 'allow', 'leave', 'let', 'repeat', 'if'];

export function offerBeginnings(offer: Offer, block: BlockKind): void {
    switch (block.is) {
        case 'file':
            offerThings(offer, vocabulary.factKinds);
            offer.snippet('case', caseSnippet, vocabulary.partKinds.case!, 1);
            offerSentences(offer, ofFile);
            return;
        case 'part':
            offerInPart(offer, block);
            return;
        case 'fact':
            propertiesNotSaid(offer, sayableIn(block), []);
            if (vocabulary.factKinds[block.kind]?.builds) {
                offerSentences(offer, ['build']);
            }
            return;
        case 'recipe':
            offerSteps(offer, block.kind);
            return;
        case 'properties':
            propertiesNotSaid(offer, block.of, []);
            return;
    }
}

function offerInPart(offer: Offer, block: Extract<BlockKind, { is: 'part' }>): void {
    propertiesNotSaid(offer, sayableIn(block), []);
    const isCase = vocabulary.partKinds[block.kind]?.lies === 'assembly';
    if (isCase) {
        for (const [kind, row] of Object.entries(vocabulary.partKinds)) {
            if (row.built !== false && kind !== 'layer') {
                offer.snippet(kind, partSnippets[kind] ?? kind, row, 1);
            }
        }
        offerThings(offer, { curve: vocabulary.factKinds.curve! });
        offerSentences(offer, ofCase);
    } else {
        offer.snippet('layer', partSnippets.layer ?? 'layer', vocabulary.partKinds.layer!, 2);
        offerSentences(offer, ['edge', 'leave']);
    }
    connectives(offer, 'at', 'of', 'in', 'like');
}

function offerThings(offer: Offer, kinds: Readonly<Record<string, vocabulary.FactKind>>): void {
    for (const [kind, row] of Object.entries(kinds)) {
        if (row.built !== false) {
            offer.snippet(kind, factSnippets[kind] ?? `${kind} <Name> { <|> }`, row, 1);
        }
    }
    for (const [kind, row] of Object.entries(vocabulary.recipeKinds)) {
        if (row.built !== false) {
            offer.snippet(kind, recipeSnippets[kind] ?? kind, row, 1);
        }
    }
}

function offerSentences(offer: Offer, words: readonly string[]): void {
    for (const word of words) {
        const row = sentenceWords.get(word);
        const snippet = sentenceSnippets[word];
        if (row && snippet) {
            offer.snippet(word, snippet, row);
        } else if (row) {
            offer.word(word, row);
        }
    }
}

/** The steps that make sense in a recipe. */
export function offerSteps(offer: Offer, recipe: vocabulary.RecipeKindName): void {
    for (const [step, row] of Object.entries(vocabulary.stepKinds)) {
        if (row.built !== false && row.in.includes(recipe)) {
            offer.word(step, row, CompletionItemKind.Function, 1);
        }
    }
}
