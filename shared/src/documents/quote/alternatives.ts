/** What the same project costs of other things: each alternative is built anew, since another board is seldom just as thick. */
import { type Alternative, type Casework, construct, withAlternative } from '../../casework/index.js';
import { thingName } from '../../strength/index.js';
import { type Costing, costingOf } from './costing.js';

export interface AlternativeCosting {
    readonly name: string;
    readonly of: Alternative;
    /** `CherryPly for WalnutPly, Cherry for Walnut` */
    readonly takes: string;
    /** Undefined where it cannot be built as it is. */
    readonly costing: Costing | undefined;
}

const known = new WeakMap<Casework, readonly AlternativeCosting[]>();

/** In the order of the text. Computed once for each casework: layouts are searched for again. */
export function alternativeCostings(evaluated: Casework): readonly AlternativeCosting[] {
    let found = known.get(evaluated);
    if (!found) {
        found = (evaluated.project?.alternatives ?? []).map((alternative) => costingOfAlternative(evaluated, alternative));
        known.set(evaluated, found);
    }
    return found;
}

function costingOfAlternative(evaluated: Casework, alternative: Alternative): AlternativeCosting {
    const { name, takes } = alternative;
    const casework = construct(withAlternative(evaluated.design, alternative));
    const isSound = casework.problems.length <= evaluated.problems.length && (casework.unplaced?.size ?? 0) === 0;
    return {
        name,
        of: alternative,
        takes: takes.map(({ taken, instead }) => `${declaredName(evaluated, taken)} for ${declaredName(evaluated, instead)}`).join(', '),
        costing: isSound ? costingOf(casework) : undefined,
    };
}

function declaredName(casework: Casework, id: string): string {
    return casework.design.declarations.get(id)?.name ?? thingName(casework, id);
}
