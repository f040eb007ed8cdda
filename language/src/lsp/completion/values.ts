// What may stand for a value, by the shape that is asked for. Knows shapes.
import { vocabulary } from 'casewright-shared/casework';
import { type Dimension, dimension, type Unit, units, usualUnit } from 'casewright-shared/quantity';
import { CompletionItemKind } from 'vscode-languageserver';
import type { Offer } from './offer.js';

/** Values of a property, a step or an option. `example` is how it is written, with its name. */
export function offerValues(offer: Offer, shape: vocabulary.Shape, name: string, example: string): void {
    switch (shape.is) {
        case 'choice':
            offer.plainWords(shape.of, `A choice of \`${name}\`.`);
            return;
        case 'thing':
            offer.names({ kinds: shape.kinds });
            offer.names({ sorts: ['parameter', 'let'] }, 2);
            return;
        case 'truth':
            offer.plainWords(['yes', 'no'], `\`${name}\`, or not.`);
            return;
        case 'shares':
            offer.words(vocabulary.shareWords, CompletionItemKind.EnumMember, 1);
            offerNumbers(offer, name, example);
            return;
        case 'worded':
            offer.plainWords(shape.words, `Which way: \`${example}\`.`);
            return;
        case 'points':
            offer.plainWords(shape.words, `Depths, each at its place: \`${example}\`.`);
            return;
        case 'block':
            offer.snippet('{ }', '{ <|> }', { doc: `What is said of \`${name}\`.`, example });
            return;
        case 'list':
            offerValues(offer, shape.of, name, example);
            return;
        case 'either':
            for (const one of shape.of) {
                offerValues(offer, one, name, example);
            }
            return;
        case 'both':
        case 'newName':
        case 'nothing':
            return;
        default:
            offerNumbers(offer, name, example);
    }
}

function offerNumbers(offer: Offer, name: string, example: string): void {
    offer.names({ sorts: ['let', 'parameter', 'index'] });
    offer.names({ sorts: ['part'] }, 3);
    const value = example.startsWith(`${name} `) ? example.slice(name.length + 1) : '';
    if (value !== '') {
        offer.example(value, `As in \`${example}\`.`);
    }
}

/** Everything that can be computed with. */
export function offerExpressions(offer: Offer): void {
    offer.names({ sorts: ['let', 'parameter', 'index'] });
    offer.names({ sorts: ['part', 'opening', 'use'], kinds: ['curve'] }, 2);
    for (const [name, { doc, example }] of Object.entries(vocabulary.functions)) {
        offer.word(name, { doc, example }, CompletionItemKind.Function, 3);
    }
    offer.words(
        { width: 'The width of the case.', height: 'The height of the case.', depth: 'The depth of the case.' },
        CompletionItemKind.Property,
        2,
    );
}

/** Units for a number of one of some dimensions; others could still be meant in an expression. */
export function offerUnits(offer: Offer, wanted: readonly Dimension[]): void {
    const isWanted = ({ dimension: of }: Unit): boolean => wanted.includes(of);
    const usual = wanted.flatMap((of) => [usualUnit(of, 'inch'), usualUnit(of, 'mm')]).filter((unit) => unit !== undefined);
    for (const unit of new Set([...usual, ...units.filter(isWanted)])) {
        offer.unit(unit);
    }
}

/** The dimensions that a shape asks for; undefined where it asks for none in particular. */
export function dimensionsOf(shape: vocabulary.Shape | undefined): readonly Dimension[] | undefined {
    switch (shape?.is) {
        case 'quantity':
        case 'sizes':
        case 'dimensions':
        case 'interval':
            return [dimension[shape.dimension]];
        case 'points':
        case 'shares':
            return [dimension.length];
        case 'count':
            return [];
        case 'list':
            return dimensionsOf(shape.of);
        case 'worded':
            return dimensionsOf(shape.value);
        case 'either':
            return [...new Set(shape.of.flatMap((one) => dimensionsOf(one) ?? []))];
        default:
            return undefined;
    }
}
