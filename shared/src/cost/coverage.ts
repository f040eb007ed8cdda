/**
 * How much of a coating goes on a surface. All lengths are in one unit, areas and volumes in its powers.
 *
 * A coat is as thick as it is laid on; its volume solids stay, the rest dries away: dry film = wet film x solids. Of what leaves a gun
 * only the share that it transfers lands on the work. Both are arithmetic of volumes, not of any one product.
 */

/** How thick one coat is while wet: as stated, or from how thick it dries. Undefined where neither says it. */
export function wetFilm({
    wet,
    dry,
    solids,
}: {
    readonly wet?: number;
    readonly dry?: number;
    readonly solids?: number;
}): number | undefined {
    if (wet !== undefined) return wet;
    return dry === undefined || solids === undefined || solids <= 0 ? undefined : dry / solids;
}

/** How thick a wet film is once it is dry. */
export function dryFilm(wet: number, solids: number): number {
    return wet * solids;
}

/**
 * The area that a volume covers with one coat: an area by a volume.
 * @param transfer the share of what is sprayed that stays on the work, above zero; 1 for a brush
 */
export function coverage(wet: number, transfer: number): number {
    return transfer / wet;
}

/** The volume that so many coats on an area take. */
export function liquidFor(area: number, coats: number, wet: number, transfer: number): number {
    return (area * coats) / coverage(wet, transfer);
}
