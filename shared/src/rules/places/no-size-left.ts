import type { Axis, FaceName, Measure, Part } from '../../casework/index.js';
import { defineRule } from '../define-rule.js';
import { isSomething } from '../inspection/sound-parts.js';
import { type Speaker, speakerFor } from '../inspection/speaker.js';
import type { Found } from '../rule.js';

export const noSizeLeft = defineRule({
    code: 'PLC-002',
    name: 'no-size-left',
    severity: 'error',
    phase: 'sizes',
    title: 'Nothing is left of the part',
    what: 'A size of a part or of a case comes out as zero or less: what stands on both sides of it takes all the room, or its bands take all of its core. Or a band, a cut, a joint or a load is given a size that is not above zero.',
    why: 'There is nothing to cut.',
    mend: 'Give it more room. The message says between what it runs; `casewright why` shows how the size came about.',
    source: { kind: 'physics', citation: 'A size is more than nothing', value: 'more than 0.01 mm' },
    fix: 'none',
    examples: {
        bad: [
            {
                note: 'The upper face of the floor is at 3/4in and the board is 3/4in thick: there is no room for a kick under it.',
                text: `material Ply : plywood { thickness 3/4in   sheet 48in x 96in   grain length }

case Bookcase of Ply {
    width 30in   height 36in   depth 11in
    side Left, Right
    shelf Floor at 3/4in
    »kick« below Floor at 2 1/2in behind Floor.front
    join every shelf to every side with { glue }
}
`,
            },
            {
                note: 'A size has no direction.',
                text: `material Ply   : plywood { thickness 3/4in   sheet 48in x 96in   grain length }
material Maple : lumber  { rough 4/4   planed 3/4in }
edging Lipped { band »-1/8in« of Maple }

case Bookcase of Ply {
    width 30in   height 36in   depth 11in
    side Left, Right { edge front Lipped }
    shelf Low at 12in
    join Low to every side with { glue }
}
`,
            },
        ],
        good: [
            {
                text: `material Ply : plywood { thickness 3/4in   sheet 48in x 96in   grain length }

case Bookcase of Ply {
    width 30in   height 36in   depth 11in
    side Left, Right
    shelf Floor at 4in
    kick below Floor at 2 1/2in behind Floor.front
    join every shelf to every side with { glue }
    join kick to Floor, every side with { glue }
}
`,
            },
        ],
    },
    check(casework, report) {
        const speaker = speakerFor(casework);
        for (const part of casework.parts.values()) {
            const found = emptyPart(part, speaker) ?? emptyCore(part, speaker);
            if (found) report(found);
        }
    },
});

const sizeAlong: Readonly<Record<Axis, string>> = { x: 'width', y: 'depth', z: 'height' };
const facesAlong: Readonly<Record<Axis, readonly [FaceName, FaceName]>> = {
    x: ['left', 'right'],
    y: ['back', 'front'],
    z: ['bottom', 'top'],
};
const directions = ['length', 'width', 'thickness'] as const;

function isNothing(measure: Measure | undefined): measure is Measure {
    return measure !== undefined && !isSomething(measure);
}

function emptyPart(part: Part, speaker: Speaker): Found | undefined {
    for (const direction of directions) {
        const size = part.sizes.finished[direction];
        if (!isNothing(size)) continue;
        const axis = part.directions[direction];
        const found = speaker.measure(size);
        return {
            span: part.nameSpan,
            part: part.path,
            message: `nothing is left of \`${part.name}\`: its ${sizeAlong[axis]} comes out as ${found}${between(part, axis)}`,
            hint: `make more room for it, or move it`,
            found,
            needed: 'more than nothing',
        };
    }
    return undefined;
}

/** Between what it runs, as far as that is known. */
function between(part: Part, axis: Axis): string {
    const [from, to] = facesAlong[axis].map((face) => part.bounds[face]?.name);
    const isBetween = from && to && from !== 'its size' && to !== 'its size';
    return isBetween ? `, between \`${from}\` and \`${to}\`` : '';
}

function emptyCore(part: Part, speaker: Speaker): Found | undefined {
    for (const direction of directions) {
        const size = part.sizes.core[direction];
        const whole = part.sizes.finished[direction];
        if (!isNothing(size) || !whole) continue;
        return {
            span: part.nameSpan,
            part: part.path,
            message: `nothing is left of \`${part.name}\` inside its bands: they take ${takenOff(part.edges, speaker)} of its ${speaker.measure(whole)}`,
            hint: 'take thinner bands, or make the part larger',
            found: speaker.measure(size),
            needed: 'more than nothing',
        };
    }
    return undefined;
}

function takenOff(edges: Part['edges'], speaker: Speaker): string {
    const taken = edges.flatMap(({ takesOff }) => (takesOff && isSomething(takesOff) ? [speaker.measure(takesOff)] : []));
    return taken.join(' and ');
}
