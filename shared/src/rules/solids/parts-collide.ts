import { boxSize } from '../../geometry/index.js';
import { defineRule } from '../define-rule.js';
import { speakerFor } from '../inspection/speaker.js';

export const partsCollide = defineRule({
    code: 'SOL-001',
    name: 'parts-collide',
    severity: 'error',
    phase: 'project',
    title: 'Two parts are in each other’s way as they are really shaped',
    what: 'Every part is made as a solid with its bands and nosings, its curves and bevels, and all that its joints and edges cut, and no two of them may then be in one place. This looks closer than the check between two keystrokes, which knows parts by their boxes and fronts: a nosing that hangs below its shelf, or a strip that covers the end of a slot, is seen here alone. It is found by `check` and `build` on the command line.',
    why: 'Only one of the two can be there. On the bench it shows when the case is put together dry, after everything has been cut.',
    mend: 'Cut room for the one in the other, let the one stop before it, or move one of them: of a nosing that hangs into what stands below, lower that or make the nosing less high.',
    source: {
        kind: 'physics',
        citation: 'Two solids cannot fill one space',
        value: 'what both claim is thicker than 0.01 mm on the average: less than that no shop tool can see',
    },
    fix: 'none',
    follows: ['PLC-001', 'PLC-002', 'PLC-003', 'PLC-004'],
    examples: {
        bad: [
            {
                note: 'The nosing is an inch high and hangs 1/4in below its shelf. The divider under it stands right up to the shelf, and as far forward.',
                text: `material Ply : plywood { thickness 3/4in   sheet 48in x 96in   grain length }
material Oak : lumber { rough 4/4   planed 3/4in }
edging Nosed { nosing 3/4in of Oak { high 1in } }

case Bookcase of Ply {
    width 36in   height 40in   depth 11in
    side Left, Right
    shelf Low at 10in
    shelf High at 30in { edge front Nosed }
    divider »Post« above Low clear equal
    join every shelf to every side with { glue }
    join Post to Low, High with { glue }
}
`,
            },
        ],
        good: [
            {
                note: 'The divider stands as far back as the nosing is thick.',
                text: `material Ply : plywood { thickness 3/4in   sheet 48in x 96in   grain length }
material Oak : lumber { rough 4/4   planed 3/4in }
edging Nosed { nosing 3/4in of Oak { high 1in } }

case Bookcase of Ply {
    width 36in   height 40in   depth 11in
    side Left, Right
    shelf Low at 10in
    shelf High at 30in { edge front Nosed }
    divider Post above Low clear equal { edge front at 3/4in behind High.front }
    join every shelf to every side with { glue }
    join Post to Low, High with { glue }
}
`,
            },
        ],
    },
    checkSolids(casework, { collisions }, report) {
        const speaker = speakerFor(casework);
        for (const { parts, extent } of collisions) {
            const [other, part] = parts.map((path) => casework.parts.get(path));
            if (!part || !other) continue;
            const isOfOneCase = part.assembly === other.assembly;
            const names = isOfOneCase ? [part.name, other.name] : [part.path, other.path];
            const [name = '', otherName = ''] = names.map((one) => `\`${one}\``);
            const { x, y, z } = boxSize(extent);
            const room = [x, y, z].map((size) => speaker.millimetres(size)).join(' x ');
            report({
                span: part.nameSpan,
                message: `${name} and ${otherName} are in each other’s way once they are cut and banded`,
                hint: `look where the two meet: a nosing or a band that stands over its board, a slot that is too short, a front that is further out`,
                found: `both are within ${room} (width x depth x height)`,
                needed: 'one of them there, or room cut for it in the other',
                part: part.path,
                concerns: [other.path],
                related: [{ span: other.nameSpan, message: `${otherName} is here` }],
            });
        }
    },
});
