/** What an expression amounts to. Unknown is undefined. */
import { describeDimension } from '../../quantity/index.js';
import type { DesignDeclaration, FactDeclaration, RecipeDeclaration } from '../design/design.js';
import type { Axis, Stage } from '../model/casework.js';
import type { Measure } from '../model/measure.js';
import type { CaseBuild } from './case-build.js';
import type { FrontLine } from './front-line.js';
import type { PlacedPart } from './placed-part.js';
import type { Room, Spot } from './room.js';

export type Value =
    | { readonly is: 'measure'; readonly measure: Measure }
    | { readonly is: 'truth'; readonly value: boolean }
    | { readonly is: 'text'; readonly text: string }
    | { readonly is: 'word'; readonly word: string }
    | { readonly is: 'tradeSize'; readonly text: string }
    | { readonly is: 'thing'; readonly declaration: FactDeclaration | RecipeDeclaration | DesignDeclaration }
    | { readonly is: 'parts'; readonly parts: readonly PlacedPart[]; readonly name: string }
    /** A face or edge: a place on an axis. */
    | {
          readonly is: 'face';
          readonly axis: Axis;
          readonly end: 'lo' | 'hi';
          readonly spot: () => Spot | undefined;
          readonly name: string;
          readonly part?: PlacedPart;
      }
    | { readonly is: 'stage'; readonly part: PlacedPart; readonly stage: Stage }
    | { readonly is: 'opening'; readonly room: Room }
    | { readonly is: 'case'; readonly build: CaseBuild }
    | { readonly is: 'curve'; readonly law: FrontLine }
    | { readonly is: 'range'; readonly first: Measure; readonly last: Measure };

/** What a value is, in words for messages. */
export function describeValue(value: Value): string {
    switch (value.is) {
        case 'measure':
            return describeDimension(value.measure.quantity.dimension);
        case 'truth':
            return 'yes or no';
        case 'text':
            return 'a text';
        case 'word':
            return `the word \`${value.word}\``;
        case 'tradeSize':
            return `the trade size ${value.text}`;
        case 'thing':
            return `the ${value.declaration.kind} \`${value.declaration.name}\``;
        case 'parts':
            if (value.parts.length === 0) return `\`${value.name}\`, which has no parts here,`;
            return value.parts.length === 1 ? `the part \`${value.name}\`` : `the group \`${value.name}\` of ${value.parts.length} parts`;
        case 'face':
            return `the face \`${value.name}\``;
        case 'stage':
            return `\`${value.part.name}.${value.stage}\`, which is three sizes,`;
        case 'opening':
            return `the opening \`${value.room.name}\``;
        case 'case':
            return `the case \`${value.build.name}\``;
        case 'curve':
            return value.law.over === 'both' ? `\`${value.law.name}\`, two curves together,` : `the curve \`${value.law.name}\``;
        case 'range':
            return 'a range';
    }
}
