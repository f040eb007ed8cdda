/** Colours that tell woods and other materials apart in a picture. Our own choice by eye; nothing is worked out from them. */
import type { Thing } from '../casework/index.js';
import type { SceneMaterial } from './scene.js';

/** By a word in the name of the species or of the material, the first that fits; as a screen is told them. */
const colours: readonly (readonly [words: RegExp, colour: string])[] = [
    [/walnut/i, '#6b4a35'],
    [/cherry/i, '#a8623f'],
    [/mahogany|sapele/i, '#7d4030'],
    [/teak|iroko/i, '#a0713f'],
    [/red ?oak/i, '#c39a73'],
    [/oak/i, '#c2a06b'],
    [/beech/i, '#d0a77d'],
    [/birch/i, '#dcc49b'],
    [/maple|sycamore/i, '#e3cda6'],
    [/ash/i, '#d9c4a0'],
    [/poplar|tulip/i, '#c5bb8c'],
    [/alder/i, '#b98a5f'],
    [/elm|chestnut|hickory/i, '#b08a5e'],
    [/fir|larch|hemlock/i, '#cf9f68'],
    [/pine|spruce|cedar/i, '#dcb77d'],
    [/fibre|fiber|mdf|hardboard/i, '#a88d6d'],
    [/particle|chip/i, '#b89c76'],
    [/glass|mirror/i, '#b9d3d0'],
    [/steel|alumin|zinc/i, '#a7abad'],
    [/brass|bronze/i, '#b5974f'],
    [/ply/i, '#d3b98d'],
];

/** Of what no word tells. */
const someWood = '#c8a77c';

/** How a material looks, and what is of none that is known. */
export function lookOf(material: Thing | undefined): SceneMaterial {
    const species = material?.properties.get('species');
    const speciesName = species?.is === 'thing' ? species.name : '';
    const said = [speciesName, material?.name ?? '', material?.family ?? ''];
    const found = said.map((name) => colours.find(([words]) => words.test(name))).find((one) => one !== undefined);
    const isMetal = /steel|alumin|zinc|brass|bronze/i.test(material?.name ?? '');
    return {
        name: material?.name ?? 'no material',
        colour: inProportionToLight(found?.[1] ?? someWood),
        roughness: isMetal ? 0.4 : 0.75,
        metal: isMetal ? 1 : 0,
    };
}

/** A colour of a screen as shares of light (IEC 61966-2-1, sRGB). */
function inProportionToLight(colour: string): SceneMaterial['colour'] {
    const light = (from: number) => {
        const share = Number.parseInt(colour.slice(from, from + 2), 16) / 255;
        return share <= 0.04045 ? share / 12.92 : ((share + 0.055) / 1.055) ** 2.4;
    };
    return [light(1), light(3), light(5)];
}
