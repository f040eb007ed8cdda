// What may be said in an open block, by the words before its brace. Knows the vocabulary and how heads begin.
import { vocabulary } from 'casewright-shared/casework';
import { own, type Sayable, sayableInBraces, sayableOfKind, sayableOfStep } from '../vocabulary-at.js';
import type { OpenBlock } from './cursor.js';

export type BlockKind =
    | { readonly is: 'file' }
    /** A case or a part: its properties, its edges, and for a case the parts in it. */
    | { readonly is: 'part'; readonly kind: string }
    | { readonly is: 'fact'; readonly kind: string }
    | { readonly is: 'recipe'; readonly kind: vocabulary.RecipeKindName }
    /** The braces of a property or of a step. */
    | { readonly is: 'properties'; readonly of: Sayable };

const visibility = new Set(['public', 'private']);

export function kindOfBlocks(blocks: readonly OpenBlock[], kindOfPart: (name: string) => string | undefined): BlockKind {
    return blocks.reduce<BlockKind>((around, { head }) => kindOfHead(head, around, kindOfPart), { is: 'file' });
}

function kindOfHead(head: readonly string[], around: BlockKind, kindOfPart: (name: string) => string | undefined): BlockKind {
    const words = head.filter((word) => !visibility.has(word));
    const [first = '', second = ''] = words;
    const last = words.at(-1) ?? '';
    if (last === 'with') {
        return { is: 'recipe', kind: 'joint' };
    }
    const step = words.findLast((word) => Object.hasOwn(vocabulary.stepKinds, word));
    if (step !== undefined && (around.is === 'recipe' || words.includes('edge') || words.includes('with'))) {
        const of = sayableOfStep(step);
        return of ? { is: 'properties', of } : around;
    }
    if (words.at(-2) === 'edge') {
        return { is: 'recipe', kind: 'edging' };
    }
    const property = propertyWithBraces(words, around);
    if (property) {
        return { is: 'properties', of: property };
    }
    if (first === 'every') {
        return { is: 'part', kind: own(vocabulary.partKinds, second) ? second : (kindOfPart(second) ?? '') };
    }
    if (Object.hasOwn(vocabulary.recipeKinds, first)) {
        return { is: 'recipe', kind: first as vocabulary.RecipeKindName };
    }
    if (Object.hasOwn(vocabulary.partKinds, first)) {
        return { is: 'part', kind: first };
    }
    if (Object.hasOwn(vocabulary.factKinds, first)) {
        return { is: 'fact', kind: first };
    }
    // `in`, `if`, `else`, `repeat`: what may be said around them may be said in them.
    return around;
}

/** `route {`, `clamp Spring {` */
function propertyWithBraces(words: readonly string[], around: BlockKind): Sayable | undefined {
    const properties = sayableIn(around)?.properties;
    for (const name of words.slice(-2)) {
        const row = own(properties, name);
        const inside = row && sayableInBraces(name, row.shape);
        if (inside) {
            return inside;
        }
    }
    return undefined;
}

/** The properties that may be said in a block. */
export function sayableIn(block: BlockKind): Sayable | undefined {
    switch (block.is) {
        case 'part':
        case 'fact':
            return sayableOfKind(block.kind);
        case 'properties':
            return block.of;
        default:
            return undefined;
    }
}
