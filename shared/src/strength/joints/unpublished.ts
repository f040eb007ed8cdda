/** Ways of holding for which no design value is published that a shop's own work would keep. */
import type { Joint } from '../../casework/index.js';
import type { Hold } from './hold.js';

const noneIsPublished = 'no design value is published for it';

const steps: Readonly<Record<string, readonly [what: string, because: string]>> = {
    glue: ['glue', 'no design value is published for a glue line that is made in a shop'],
    biscuit: ['biscuits', noneIsPublished],
    dowel: ['glued dowels', noneIsPublished],
    looseTenon: ['loose tenons', noneIsPublished],
    tongue: ['the tongue', noneIsPublished],
    lap: ['the lap', noneIsPublished],
    spline: ['the spline', noneIsPublished],
    bolt: ['bolts', 'what they carry is not worked out here'],
};

/** What of a joint holds without a figure, once for each sort. */
export function unpublishedSteps({ steps: said }: Joint): readonly Hold[] {
    return [...new Set(said.map(({ does }) => does))].flatMap((does): readonly Hold[] => {
        const known = steps[does];
        return known ? [{ is: 'unpublished', what: known[0], because: known[1] }] : [];
    });
}
