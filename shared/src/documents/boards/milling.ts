/** What milling takes off: what the shop says, or what is usual. All in millimetres. */
import type { Casework } from '../../casework/index.js';
import { dimension } from '../../quantity/index.js';
import { measureProperty } from '../../strength/index.js';
import { inMillimetres } from '../sheets/sheet-jobs.js';

export interface Milling {
    /** Left on the length of a board that is planed; its ends are cut square last. */
    readonly long: number;
    /** Left on the width of a strip that is jointed on both edges. */
    readonly wide: number;
    /** Taken off each face, and off a sawn face of a strip. */
    readonly face: number;
    /** Cut off each end of a rough board, for checks and for what a planer snipes. */
    readonly boardEnd: number;
    /** Taken off each edge of a rough board to make it straight. */
    readonly boardEdge: number;
    /** Thinner strips are not ripped between blade and fence. */
    readonly thinRip: number;
}

/**
 * Usual figures: length 1 to 2 in, width 1/4 to 1/2 in a jointed strip, 1/16 to 1/8 in a face, snipe of 2 to 4 in at each end (common practice, no source;
 * the least of each range). The edge of a board and the thin rip: common practice, no source.
 */
const usual = {
    in: { millLong: 25.4, millWide: 6.35, millFace: 1.5875, boardEnd: 50.8, boardEdge: 3.175, thinRip: 6.35 },
    mm: { millLong: 25, millWide: 6, millFace: 1.5, boardEnd: 50, boardEdge: 3, thinRip: 6 },
} as const;

export function millingOf({ shop, project }: Casework): Milling {
    const figures = usual[project?.units ?? 'in'];
    const figure = (name: keyof typeof figures): number => {
        const stated = measureProperty(shop.thing, name, dimension.length);
        return stated ? inMillimetres(stated) : figures[name];
    };
    return {
        long: figure('millLong'),
        wide: figure('millWide'),
        face: figure('millFace'),
        boardEnd: figure('boardEnd'),
        boardEdge: figure('boardEdge'),
        thinRip: figure('thinRip'),
    };
}
