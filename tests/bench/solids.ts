/** Interference between the parts of a case of 200 parts, as `check` looks for it. */
import { openWorkspace } from 'casewright-language';
import { joineryOf } from 'casewright-shared/joinery';
import { solidsOf } from 'casewright-shared/solids';
import start from 'manifold-3d/manifold.js';
import type { Report } from './report.ts';
import { bestOf } from './timing.ts';

/** So many towers of ten parts side by side, let into one another, banded and rounded. */
const towers = 20;

const text = `edition 1
material Ply : plywood { thickness 3/4in   sheet 48in x 96in   grain length   density 40 lb/ft3 }
material Thin : plywood { thickness 1/4in   sheet 48in x 96in   grain length   density 40 lb/ft3 }
material Oak : lumber { rough 4/4   planed 3/4in   density 45 lb/ft3 }
edging Lipped { band 1/8in of Oak   round 1/16in }
joint Housed { dado 1/4in   screw #8 x 1 1/2in count 3 }
joint Screwed { screw #8 x 1 1/4in spacing 6in }

case Tower of Ply {
    side Left, Right { edge back rabbet 3/8in deep for back }
    top
    bottom at 4in
    shelf Tier[5] above bottom clear equal
    back of Thin
    every side, top, bottom, shelf { edge front Lipped }
    join top, bottom, every shelf to every side with Housed
    join back to every side, top, bottom, every shelf with Screwed
}

case Wall {
    width 600in   height 84in   depth 12in
    case Unit[${towers}] of Tower width equal
}
`;

export async function benchSolids(report: Report): Promise<void> {
    report.title('Parts as solids');
    const uri = 'memory:/bench/wall.case';
    const { casework } = await openWorkspace({ readFile: async () => text }).analyse(uri);
    const kernel = await start();
    kernel.setup();
    const joinery = joineryOf(casework);
    const solids = solidsOf(casework, joinery, kernel, { holes: 'left out' });
    if (solids.parts.size < 200) throw new Error(`the case of the benchmark has ${solids.parts.size} solids`);
    const best = await bestOf(3, {
        check: () => solidsOf(casework, joinery, kernel, { holes: 'left out' }),
        build: () => solidsOf(casework, joinery, kernel, { meetings: 'left out' }),
    });
    report.note(`${solids.parts.size} parts, ${joinery.features.length} cuts, ${solids.collisions.length} pairs in each other's way`);
    report.goal({ what: 'interference of a case of 200 parts', found: best.check, unit: 'ms', atMost: 2000 });
    report.note(`with every hole, for the model: ${Math.round(best.build)} ms`);
}
