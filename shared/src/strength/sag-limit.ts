/** How much a shelf may sag. */
import type { Casework } from '../casework/index.js';
import { real } from '../quantity/index.js';

export interface SagLimit {
    /** Of its span. */
    readonly share: number;
    readonly source: string;
}

/** Industry-standard greatest deflection of casework shelves, at once. */
const published: SagLimit = { share: 1 / 144, source: 'Architectural Woodwork Standards, 2nd edition (2014), section 10: L/144' };

/** What the eye sees along a straight front: 1/32in in a foot. Common practice, no source. */
export const visibleSag = 1 / 384;

/** The limit that the project states, or the published one. */
export function sagLimitOf({ project }: Casework): SagLimit {
    const share = project?.sag ? real.toNumber(project.sag.quantity.value) : 0;
    return share > 0 ? { share, source: 'as the project says' } : published;
}
