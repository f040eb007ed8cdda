/** What the building of one case asks of, and leaves in, what all cases of a construction share. */
import type { DeviationSource } from '../../quantity/index.js';
import type { DeclarationId } from '../design/design.js';

export interface Asked {
    /** Things and values of files, in the order of asking. */
    readonly declarations: ReadonlySet<DeclarationId>;
    readonly deviations: ReadonlyMap<string, DeviationSource>;
    readonly partCount: number;
    readonly turnCount: number;
}

/** Written to while the case is built. */
export class Recording implements Asked {
    readonly declarations = new Set<DeclarationId>();
    readonly deviations = new Map<string, DeviationSource>();
    partCount = 0;
    turnCount = 0;
}
