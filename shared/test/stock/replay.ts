/** Cuts a layout again, piece by piece, and says what is wrong with it. Shares nothing with the search. */
import type { Piece, SheetJob, SheetLayout } from '../../src/stock/index.js';

const slack = 1e-6;

/** Each fault in a sentence; none for a layout that a saw can cut. */
export function faultsOf(job: SheetJob, layout: SheetLayout): string[] {
    const faults: string[] = [];
    const counted = job.blanks.map(() => 0);
    const used = job.stock.map(() => 0);
    for (const [index, { stock, whole }] of layout.sheets.entries()) {
        const size = job.stock[stock]!;
        used[stock]!++;
        if (Math.abs(whole.width - size.width) > slack || Math.abs(whole.height - size.height) > slack) {
            faults.push(`sheet ${index} is ${whole.width} x ${whole.height}, its stock ${size.width} x ${size.height}`);
        }
        cutUp(whole, `sheet ${index}`, 0);
    }
    function cutUp(piece: Piece, where: string, turns: number): void {
        if (piece.kind === 'blank') {
            const blank = job.blanks[piece.blank]!;
            counted[piece.blank]!++;
            const [width, height] = piece.turned ? [blank.height, blank.width] : [blank.width, blank.height];
            if (Math.abs(piece.width - width) > slack || Math.abs(piece.height - height) > slack)
                faults.push(`${where}: ${blank.id} has another size`);
            if (piece.turned && !blank.mayTurn) faults.push(`${where}: ${blank.id} lies across the grain`);
            const isTrimOnly = turns === (job.stages ?? Number.POSITIVE_INFINITY) + 1;
            if (turns > (job.stages ?? Number.POSITIVE_INFINITY) && !isTrimOnly) faults.push(`${where}: ${blank.id} takes ${turns} turns`);
        }
        if (piece.kind !== 'cut') return;
        const side = piece.along === 'width';
        let at = side ? piece.x : piece.y;
        const blanks = piece.pieces.filter(({ kind }) => kind !== 'offcut');
        if (turns + 1 > (job.stages ?? Number.POSITIVE_INFINITY) && blanks.length > 1)
            faults.push(`${where}: a trim parts ${blanks.length} blanks`);
        for (const [index, part] of piece.pieces.entries()) {
            const start = side ? part.x : part.y;
            if (Math.abs(start - at) > slack) faults.push(`${where}.${index} starts at ${start}, not after the kerf at ${at}`);
            const across = side ? part.height === piece.height && part.y === piece.y : part.width === piece.width && part.x === piece.x;
            if (!across) faults.push(`${where}.${index}: the cut does not go from edge to edge`);
            at = start + (side ? part.width : part.height) + job.kerf;
            cutUp(part, `${where}.${index}`, turns + 1);
        }
        const end = side ? piece.x + piece.width : piece.y + piece.height;
        // A last offcut thinner than the kerf is all sawdust.
        if (at - job.kerf > end + slack) faults.push(`${where}: its parts end at ${at - job.kerf}, beyond ${end}`);
    }
    job.blanks.forEach(({ id, count }, index) => {
        if (counted[index]! + layout.unplaced[index]! !== count)
            faults.push(`${id}: ${counted[index]} cut and ${layout.unplaced[index]} left over of ${count}`);
    });
    job.stock.forEach(({ id, count }, index) => {
        if (used[index]! > (count ?? Number.POSITIVE_INFINITY)) faults.push(`${id}: ${used[index]} used of ${count}`);
    });
    const cost = layout.sheets.reduce((sum, { stock }) => sum + job.stock[stock]!.cost, 0);
    if (Math.abs(cost - layout.cost) > slack * (1 + cost)) faults.push(`the sheets cost ${cost}, not ${layout.cost}`);
    if (layout.unplaced.every((count) => count === 0) && layout.cost < layout.leastCost - slack) faults.push('cheaper than the least cost');
    return faults;
}
