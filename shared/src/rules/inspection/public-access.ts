/** What the published standard of access asks of what the public comes to, in millimetres over the floor. */
import type { Assembly, Casework, Part } from '../../casework/index.js';
import { isSound, outermostCases } from './sound-parts.js';

const inch = 25.4;

/** Reach without anything in the way, forward or to the side (2010 ADA Standards, 308.2.1 and 308.3.1). */
export const reach = { from: 15 * inch, to: 48 * inch } as const;

/** What a cane does not find: over the one height and up to the other nothing stands out further than this (2010 ADA Standards, 307.2, from memory). */
export const standingOut = { above: 27 * inch, upTo: 80 * inch, most: 4 * inch } as const;

/** An outermost case that the public comes to, with all sound parts that stand in it. */
export interface PublicCase {
    readonly assembly: Assembly;
    readonly floor: number;
    readonly parts: readonly Part[];
}

/** The cases that the public comes to; none where the project does not say so. */
export function publicCases(casework: Casework): readonly PublicCase[] {
    if (!casework.project?.isAccessible) return [];
    const homes = outermostCases(casework.assemblies);
    const parts = new Map<string, Part[]>();
    for (const part of casework.parts.values()) {
        const home = homes.get(part.assembly) ?? part.assembly;
        const others = parts.get(home);
        if (others) others.push(part);
        else parts.set(home, [part]);
    }
    return casework.assemblies
        .filter(({ inside, count }) => inside === undefined && count > 0)
        .map((assembly) => ({
            assembly,
            floor: assembly.extent.least.z,
            parts: (parts.get(assembly.path) ?? []).filter(isSound),
        }));
}
