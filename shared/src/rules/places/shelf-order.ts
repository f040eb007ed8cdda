import type { Part, Path } from '../../casework/index.js';
import { tolerance } from '../../geometry/index.js';
import { defineRule } from '../define-rule.js';
import { isSound } from '../inspection/sound-parts.js';
import { speakerFor } from '../inspection/speaker.js';

export const shelfOrder = defineRule({
    code: 'PLC-005',
    name: 'shelf-order',
    severity: 'warning',
    phase: 'sizes',
    title: 'The shelves of a group do not rise with their numbers',
    what: 'A shelf of a group lies lower than the one before it in the count.',
    why: 'The tool and everybody in the shop counts shelves from the bottom up. `Tier[1]` on the cut list is looked for at the bottom; its depth, its load and its holes belong to the shelf at the top.',
    mend: 'Place them from the bottom up; with an index, let the height grow with it: `shelf Tier[i of 3] at 4in + i * 8in`.',
    source: { kind: 'shop practice', citation: 'common practice, no source', value: 'shelves are counted from the bottom up' },
    fix: 'none',
    follows: ['PLC-002', 'PLC-003', 'PLC-004'],
    examples: {
        bad: [
            {
                text: `material Ply : plywood { thickness 3/4in   sheet 48in x 96in   grain length }

case Bookcase of Ply {
    width 30in   height 36in   depth 11in
    side Left, Right
    shelf »Tier«[i of 3] at 34in - i * 8in
    join every shelf to every side with { glue }
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
    shelf Tier[i of 3] at 2in + i * 8in
    join every shelf to every side with { glue }
}
`,
            },
        ],
    },
    check(casework, report) {
        const speaker = speakerFor(casework);
        const before = new Map<Path, Part>();
        for (const part of casework.parts.values()) {
            const group = groupOf(part);
            if (group === undefined || !isSound(part)) continue;
            const lower = before.get(group);
            before.set(group, part);
            if (!lower || part.box.most.z >= lower.box.most.z - tolerance.fit) continue;
            const found = height(part);
            const passed = height(lower);
            report({
                span: part.nameSpan,
                part: part.path,
                message: `\`${part.name}\` lies at ${found}, below \`${lower.name}\` at ${passed}: the shelves of a group are counted from the bottom up`,
                hint: 'place the lowest shelf first',
                found,
                needed: `above ${passed}`,
            });
        }

        function height({ faces, box }: Part): string {
            return faces.top ? speaker.measure(faces.top) : speaker.millimetres(box.most.z);
        }
    },
});

/** The path of the group that a shelf is counted in: `Bookcase.Tier` for `Bookcase.Tier[2]`. */
function groupOf({ kind, path }: Part): Path | undefined {
    const bracket = path.lastIndexOf('[');
    return kind === 'shelf' && path.endsWith(']') ? path.slice(0, bracket) : undefined;
}
