/** A derivation in words: one short sentence a step, in the words of the trade. */
import type { Derivation } from '../model/measure.js';

const signs: Readonly<Record<string, string>> = {
    '+': 'the sum',
    '-': 'the difference',
    '*': 'the product',
    '/': 'the quotient',
    '±': 'with a tolerance',
};

export function sentenceOf(why: Derivation): string {
    const [first = '', second = '', third = ''] = why.about;
    switch (why.kind) {
        case 'literal':
            return 'written';
        case 'property':
            return `${first} of ${second}`;
        case 'default':
            return `${first}, not stated: ${second}`;
        case 'parameter':
            return `the parameter ${first}`;
        case 'let':
            return `let ${first}`;
        case 'index':
            return `the index ${first}`;
        case 'operation':
            return operation(why.about);
        case 'face':
            return second === 'the text' || second === 'the middle' ? first : faceWords(first, second);
        case 'between':
            return `from ${first} to ${second}`;
        case 'stops':
            return `stops at ${first}: ${second} is written before it, so it runs through`;
        case 'share':
            return third === '' ? `${first} shares` : second === '1' ? third : `one of ${second} shares of ${third}`;
        case 'thickness':
            return first === '1' ? `one piece of ${second}` : `${first} layers of ${second}`;
        case 'curve':
            return `the curve ${first} at ${second}`;
        case 'joint':
            return first === 'both ends' ? 'what the joints at its ends add' : second ? `${first} ${second}` : `the ${first} of the joint`;
        case 'edge':
            return `${first} on ${second}`;
        case 'stage':
            return `${first} ${second} of ${third}`;
        case 'reserve':
            return second === '' ? `room kept for ${first}` : `the ${second} for ${first}`;
        case 'measured':
            return second === third ? `${first}: ${second}` : `${first}: from ${second} to ${third}`;
    }
}

function operation(about: readonly string[]): string {
    const [what = '', of] = about;
    if (signs[what] !== undefined) return of ? `${what === '-' ? 'back from' : 'on from'} ${of}` : signs[what];
    if (what === 'both ends') return 'at both ends';
    if (what === 'half') return 'half of it';
    return what;
}

/** `the upper face of Tier[1]`, `the front of PotteryCase` */
function faceWords(face: string, owner: string): string {
    const isFace = face === 'upper' || face === 'lower' || face === 'inner' || face === 'outer';
    return `the ${face}${isFace ? ' face' : ''} of ${owner}`;
}
