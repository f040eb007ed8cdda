// Hovers over words of the language: what they mean and how they are written. Knows the vocabulary and the words of statements.
import { vocabulary } from 'casewright-shared/casework';
import { type Rule, ruleNamed } from 'casewright-shared/rules';
import type * as Ast from '../../generated/ast.js';
import { isChoiceOf } from '../../scoping/choices.js';
import { rulePageUri } from '../rule-pages.js';
import { joiningWords, sentenceWords } from '../statement-words.js';
import { own, rowOf, rowOfOption } from '../vocabulary-at.js';
import type { WordAt } from '../word-at.js';
import { explained, notBuilt } from './markdown.js';

/** What a word of the language means where it stands; undefined for names and for words that need no explanation. */
export function wordText({ node, feature, text }: WordAt): string | undefined {
    switch (node.$type) {
        case 'Property':
            return feature === 'name' ? propertyText(text, rowOf(node as Ast.Property)) : joiningText(text);
        case 'Option':
            return feature === 'name' ? propertyText(text, rowOfOption(node as Ast.Option)) : undefined;
        case 'Step':
            return feature === 'kind' ? stepText(text) : joiningText(text);
        case 'Fact':
        case 'Recipe':
        case 'PartDeclaration':
        case 'DesignDeclaration':
            return feature === 'kind' ? kindText(text) : feature === 'family' ? familyText(node as Ast.Fact) : statementText(text);
        case 'EdgeStatement':
            return feature === 'edges' ? edgeText(text, node as Ast.EdgeStatement) : statementText(text);
        case 'Let':
        case 'Parameter':
            return feature === 'type' ? explained(text, own(vocabulary.types, text)?.doc) : statementText(text);
        case 'Reference':
            return choiceText(node as Ast.Reference) ?? referenceText(text);
        case 'RecipeReference':
            return formText(text);
        case 'MemberAccess':
            return memberText(text);
        case 'OverClause':
            return joiningText('over');
        case 'Every':
            return text === 'every' ? everyText(node as Ast.Every) : joiningText(text);
        case 'Allow':
            return feature === 'rule' ? ruleText(ruleNamed((node as Ast.Allow).rule)) : statementText(text);
        case 'Place':
        case 'RoomClause':
            return relationText(text) ?? joiningText(text);
        default:
            return statementText(text);
    }
}

function statementText(text: string): string | undefined {
    const word = sentenceWords.get(text) ?? joiningWords.get(text);
    return word && explained(text, word.doc, word.example);
}

function joiningText(text: string): string | undefined {
    const word = joiningWords.get(text);
    return word && explained(text, word.doc, word.example);
}

function propertyText(text: string, row: vocabulary.PropertyRow | undefined): string | undefined {
    return row && explained(text, row.doc + notBuilt(row), row.example);
}

function stepText(text: string): string | undefined {
    const step = own(vocabulary.stepKinds, text);
    return step && explained(text, step.doc + notBuilt(step), step.example);
}

function kindText(text: string): string | undefined {
    const kind = own(vocabulary.partKinds, text) ?? own(vocabulary.factKinds, text) ?? own(vocabulary.recipeKinds, text);
    return kind && explained(text, kind.doc + notBuilt(kind), kind.example);
}

function familyText({ kind, family }: Ast.Fact): string | undefined {
    const doc = own(own(vocabulary.factKinds, kind)?.families, family);
    return family === undefined || doc === undefined ? undefined : explained(family, doc);
}

function edgeText(text: string, { edges }: Ast.EdgeStatement): string | undefined {
    return edges?.includes(text) ? explained(text, `The ${text} edge of the part.`, `edge ${text} Lipped`) : undefined;
}

/** A word that stands where a name could: a kind, a face, a share, a function, a size. */
function referenceText(text: string): string | undefined {
    const builtIn = own(vocabulary.functions, text) ?? own(vocabulary.functionsOfCurves, text);
    if (builtIn) {
        return explained(builtIn.signature, builtIn.doc, builtIn.example);
    }
    const size = own(vocabulary.sizesOfParts, text);
    if (size) {
        return explained(text, size.doc);
    }
    const doc =
        own(vocabulary.stagesOfParts, text) ??
        own(vocabulary.placesOnParts, text) ??
        own(vocabulary.roomFaces, text) ??
        own(vocabulary.placeWords, text) ??
        own(vocabulary.shareWords, text) ??
        own(vocabulary.endWords, text);
    return doc === undefined ? kindText(text) : explained(text, doc);
}

/** `edge front bevelled`, where no edging is called so. */
function formText(text: string): string | undefined {
    const doc = own(vocabulary.frontForms, text);
    return doc === undefined ? undefined : explained(text, doc, `edge front ${text}`);
}

function everyText({ $container }: Ast.Every): string | undefined {
    return $container.$type === 'EveryStatement'
        ? statementText('every')
        : explained('every', 'All parts of a kind, or of a group.', 'join every shelf to every side with ShelfJoint');
}

/** `grain length`: a word that its property gives to choose from is explained by the property. */
function choiceText({ $container, target }: Ast.Reference): string | undefined {
    if ($container.$type !== 'Property' || !isChoiceOf($container.name, target?.$refText ?? '')) {
        return undefined;
    }
    return propertyText($container.name, rowOf($container));
}

/** `Floor.front`, `Tier[1].clear`, `Left.core` */
function memberText(text: string): string | undefined {
    const isFace = Object.values(vocabulary.partKinds).some(({ edges, faces }) => edges.includes(text) || faces.includes(text));
    return isFace && !own(vocabulary.sizesOfParts, text) ? explained(text, `The ${text} face or edge of a part.`) : referenceText(text);
}

function relationText(text: string): string | undefined {
    const doc = own(vocabulary.relations, text) ?? own(vocabulary.relations, `${text} of`);
    return doc === undefined ? undefined : explained(text, doc);
}

/** A rule in short, with the way to its page. */
function ruleText(rule: Rule | undefined): string | undefined {
    return (
        rule &&
        `**${rule.code} ${rule.name}** (${rule.severity})\n\n${rule.title}.\n\n${rule.what}\n\n[The whole page](${rulePageUri(rule.code)})`
    );
}
