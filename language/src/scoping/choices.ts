// Which words a property takes. Knows the vocabulary: no files, no syntax.
import { vocabulary } from 'casewright-shared/casework';

const choices = new Map<string, Set<string>>();

function collect(properties: vocabulary.Properties): void {
    for (const [name, row] of Object.entries(properties)) {
        const words = choices.get(name) ?? new Set();
        addWords(row.shape, words);
        if (words.size > 0) {
            choices.set(name, words);
        }
    }
}

function addWords(shape: vocabulary.Shape, words: Set<string>): void {
    switch (shape.is) {
        case 'choice':
            for (const word of shape.of) {
                words.add(word);
            }
            return;
        case 'worded':
        case 'points':
            for (const word of shape.words) {
                words.add(word);
            }
            return;
        case 'shares':
            for (const word of Object.keys(vocabulary.shareWords)) {
                words.add(word);
            }
            return;
        case 'list':
            addWords(shape.of, words);
            return;
        case 'either':
            for (const one of shape.of) {
                addWords(one, words);
            }
            return;
        case 'block':
        case 'newName':
            collect(shape.properties);
            return;
        default:
            return;
    }
}

for (const kind of [
    ...Object.values(vocabulary.factKinds),
    ...Object.values(vocabulary.partKinds),
    ...Object.values(vocabulary.stepKinds),
]) {
    collect('properties' in kind ? kind.properties : kind.options);
}

/** Whether some property of this name takes this word, so that it is no name there. */
export function isChoiceOf(property: string, word: string): boolean {
    return choices.get(property)?.has(word) ?? false;
}

/** Properties that give a name instead of using one: `clamp Spring`. */
export const namingProperties: ReadonlySet<string> = new Set(
    Object.values(vocabulary.factKinds).flatMap((kind) =>
        Object.entries(kind.properties).flatMap(([name, row]) => (row.shape.is === 'newName' ? [name] : [])),
    ),
);

/** Every word that the language knows by itself and that may stand where a value is read. */
export const wordsOfValues: ReadonlySet<string> = new Set([
    ...[...choices.values()].flatMap((words) => [...words]),
    ...Object.values(vocabulary.partKinds).flatMap((kind) => [...kind.edges, ...kind.faces]),
    ...Object.keys(vocabulary.partKinds),
    ...Object.keys(vocabulary.stepKinds),
    ...Object.keys(vocabulary.sizesOfParts),
    ...Object.keys(vocabulary.stagesOfParts),
    ...Object.keys(vocabulary.placesOnParts),
    ...Object.keys(vocabulary.roomFaces),
    ...Object.keys(vocabulary.placeWords),
    ...Object.keys(vocabulary.shareWords),
    ...Object.keys(vocabulary.reserveWords),
    ...Object.keys(vocabulary.endWords),
    ...Object.keys(vocabulary.functions),
]);
