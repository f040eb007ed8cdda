import type { Carried } from '../../strength/index.js';
import type { Speaker } from './speaker.js';

/** `60in wide, 84in high, 24in deep in one piece` */
export function carriedInWords({ width, height, depth }: Carried, speaker: Speaker): string {
    return `${speaker.millimetres(width)} wide, ${speaker.millimetres(height)} high, ${speaker.millimetres(depth)} deep in one piece`;
}
