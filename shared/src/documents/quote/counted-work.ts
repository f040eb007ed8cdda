/** How often each operation of the shop is done for all that is built: counted from layouts, pieces, cuts and surfaces, not estimated. */
import type { Casework } from '../../casework/index.js';
import type { OperationName } from '../../cost/index.js';
import { type FeatureKind, joineryOf } from '../../joinery/index.js';
import { real } from '../../quantity/index.js';
import { curvedFront } from '../../strength/index.js';
import { laidOutBoards } from '../boards/laid-out-boards.js';
import { onlyBuilt } from '../only-built.js';
import { finishedAreas } from '../purchase/finished-area.js';
import { cuttingSequence } from '../sheets/cutting-sequence.js';
import { laidOutSheets } from '../sheets/laid-out-sheets.js';

/** By operation: a number, millimetres, or square millimetres. */
export type CountedWork = Readonly<Record<OperationName, number>>;

/** The operation by which each cut is made; a tongue is what others leave, and the hole of a screw is bored where it is driven. */
const operationOf: Readonly<Partial<Record<FeatureKind, OperationName>>> = {
    dado: 'slot',
    groove: 'slot',
    rabbet: 'slot',
    notch: 'slot',
    shoulder: 'slot',
    mitre: 'slot',
    'spline slot': 'slot',
    mortise: 'slot',
    'biscuit slot': 'biscuit',
    pocket: 'pocket',
    'dowel hole': 'hole',
    'pin hole': 'hole',
};

const driven: ReadonlySet<string> = new Set(['screw', 'pocket screw', 'panel screw', 'nail', 'pin', 'bolt']);

export function countedWork(evaluated: Casework): CountedWork {
    const { parts, pieces } = onlyBuilt(evaluated);
    const work: Record<OperationName, number> = { ...nothing };
    for (const { layout } of laidOutSheets(evaluated)) {
        work.sheet += layout.sheets.length;
        for (const { whole } of layout.sheets) work.cut += cutsIn(whole);
    }
    for (const { layout } of laidOutBoards(evaluated).laidOut) {
        work.board += layout.sheets.length;
        for (const { whole } of layout.sheets) work.cut += cutsIn(whole);
    }
    for (const part of parts.values()) {
        work.part += part.quantity;
        if (part.layers.length > 1) work.lamination += part.quantity;
        if (!part.bent && curvedFront(evaluated, part)?.isAlong) work.template += part.quantity;
    }
    for (const { role, finished, quantity } of pieces) {
        if (role !== 'band' && role !== 'nosing') continue;
        work.band += (finished.length ? real.toNumber(finished.length.quantity.value) : 0) * quantity;
    }
    countJoinery(evaluated, parts, work);
    for (const { finish, area } of finishedAreas(evaluated)) {
        for (const step of evaluated.finishes?.get(finish)?.steps ?? []) {
            if (step.does === 'sand') work.sand += area;
            else work.coat += area * step.count;
        }
    }
    return work;
}

const nothing: CountedWork = {
    sheet: 0,
    cut: 0,
    board: 0,
    lamination: 0,
    template: 0,
    band: 0,
    slot: 0,
    biscuit: 0,
    pocket: 0,
    hole: 0,
    screw: 0,
    part: 0,
    sand: 0,
    coat: 0,
};

function cutsIn(whole: Parameters<typeof cuttingSequence>[0]): number {
    return cuttingSequence(whole).reduce((sum, { times }) => sum + times, 0);
}

function countJoinery(evaluated: Casework, parts: Casework['parts'], work: Record<OperationName, number>): void {
    const { features, fasteners } = joineryOf(evaluated);
    for (const { does, part } of features) {
        const operation = operationOf[does];
        if (operation) work[operation] += parts.get(part)?.quantity ?? 0;
    }
    for (const { kind, passes } of fasteners) {
        if (driven.has(kind)) work.screw += Math.max(0, ...passes.map(({ part }) => parts.get(part)?.quantity ?? 0));
    }
}
