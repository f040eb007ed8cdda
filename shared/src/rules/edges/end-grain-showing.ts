import type { Edge, EdgeName, Part } from '../../casework/index.js';
import { defineRule } from '../define-rule.js';
import { covers } from '../inspection/edge-steps.js';

const boards = `material Ply    : plywood { thickness 3/4in   sheet 48in x 96in   grain length }
material Walnut : lumber  { rough 4/4   planed 3/4in }
edging Lipped { band 1/8in of Walnut }
`;

export const endGrainShowing = defineRule({
    code: 'EDG-003',
    name: 'end-grain-showing',
    severity: 'warning',
    phase: 'sizes',
    title: 'The end of a band will show at the front',
    what: 'The front edge of a part is banded before an edge beside it. Edges are worked in the order in which they are written, so the later band runs over the end of the front one, and its own end shows at the front.',
    why: 'End grain takes more stain and finish than the band beside it, and shows as a dark square at the most seen corner of the piece.',
    mend: 'Write the edge beside it first: top, then front. The front band then covers the end of the top band.',
    source: { kind: 'shop practice', citation: 'common practice, no source', value: 'the top edge is banded before the front edge' },
    fix: 'none',
    examples: {
        bad: [
            {
                text: `${boards}
case Bookcase of Ply {
    width 30in   height 36in   depth 11in
    side Left, Right {
        edge front Lipped
        »edge top Lipped«
    }
}
`,
            },
        ],
        good: [
            {
                text: `${boards}
case Bookcase of Ply {
    width 30in   height 36in   depth 11in
    side Left, Right {
        edge top Lipped
        edge front Lipped
    }
}
`,
            },
        ],
    },
    check(casework, report) {
        for (const part of casework.parts.values()) {
            const front = part.edges.findIndex((edge) => edge.name === 'front' && isCovered(edge));
            if (front < 0) continue;
            const first = part.edges[front]!;
            for (const edge of part.edges.slice(front + 1)) {
                if (!isCovered(edge) || !meetsFront(part, edge.name)) continue;
                report({
                    span: edge.span,
                    part: part.path,
                    message: `the ${edge.name} edge of \`${part.name}\` is banded after its front edge, so the end of that band shows at the front`,
                    hint: `write \`edge ${edge.name}\` before \`edge front\`: the front band then covers the end`,
                    found: `front, then ${edge.name}`,
                    needed: `${edge.name}, then front`,
                    related: [{ span: first.span, message: 'the front edge, worked before it' }],
                });
            }
        }
    },
});

function isCovered({ steps }: Edge): boolean {
    return steps.some(covers);
}

/** The edges at the ends of the front edge: all but the back and the front itself. */
function meetsFront({ directions }: Part, name: EdgeName): boolean {
    const along = directions.thickness === 'z' ? ['left', 'right'] : ['top', 'bottom'];
    return along.includes(name);
}
