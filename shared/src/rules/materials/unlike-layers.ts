import type { Casework, Layer, Thing } from '../../casework/index.js';
import { defineRule } from '../define-rule.js';
import { materialOf, speciesOf } from '../inspection/material.js';

const woods = `species Birch : hardwood { source "this example" }
species BlackWalnut : hardwood { source "this example" }
material ShopPly   : plywood { species Birch         thickness 3/4in   sheet 48in x 96in   grain length }
material WalnutPly : plywood { species BlackWalnut   thickness 3/4in   sheet 48in x 96in   grain length }
`;

export const unlikeLayers = defineRule({
    code: 'MAT-002',
    name: 'unlike-layers',
    severity: 'warning',
    phase: 'sizes',
    title: 'The layers of a board are not alike from both faces inwards',
    what: 'A laminated board has other wood, or another sort of panel, on one side of its middle than at the same place on the other side.',
    why: 'The two sides take up and give off moisture differently, and the board cups. Alike from both faces inwards, the two pulls cancel.',
    mend: 'Make the layers mirror images of each other. Where it is meant, as when the outer layer stands against a wall, say so: `allow unlike-layers on Wall because "screwed to the wall"`.',
    source: {
        kind: 'handbook',
        citation: 'Wood Handbook FPL-GTR-282, balanced construction of plywood and overlaid panels (from memory)',
    },
    fix: 'none',
    follows: ['PLC-002'],
    examples: {
        bad: [
            {
                text: `${woods}
case Stand {
    width 30in   height 36in   depth 11in
    side Left, Right {
        layer Outer of ShopPly
        layer »Inner« of WalnutPly
    }
}
`,
            },
        ],
        good: [
            {
                text: `${woods}
case Stand {
    width 30in   height 36in   depth 11in
    side Left, Right of WalnutPly layers 2
    shelf Low at 12in of ShopPly
    join Low to every side with { glue }
}
`,
            },
            {
                note: 'The outer layer stands against a wall, and the reason is written down.',
                text: `${woods}
case Stand {
    width 30in   height 36in   depth 11in
    side Left, Right {
        layer Outer of ShopPly
        layer Inner of WalnutPly
    }
    allow unlike-layers on Left, Right because "both stand against a wall and are screwed to it"
}
`,
            },
        ],
    },
    check(casework, report) {
        for (const part of casework.parts.values()) {
            const pair = unlikePair(casework, part.layers);
            if (!pair) continue;
            const { layer, opposite } = pair;
            report({
                span: layer.span,
                part: part.path,
                message: `\`${part.name}\` has ${layer.says} where the other side has ${opposite.says}: it will cup`,
                hint: `make both of one material, or write \`allow unlike-layers on ${part.name} because "..."\``,
                found: layer.says,
                needed: opposite.says,
                related: [{ span: opposite.span, message: 'the layer opposite' }],
            });
        }
    },
});

interface SaidLayer {
    readonly span: Layer['span'];
    readonly says: string;
}

/** The first two layers, from the faces inwards, that are not alike; unknown materials are like anything. */
function unlikePair(casework: Casework, layers: readonly Layer[]): { readonly layer: SaidLayer; readonly opposite: SaidLayer } | undefined {
    for (let outer = 0; outer < layers.length - 1 - outer; outer++) {
        const [a, b] = [layers[outer]!, layers[layers.length - 1 - outer]!];
        const [one, other] = [materialOf(casework, a.material), materialOf(casework, b.material)];
        if (!one || !other || isAlike(casework, one, other)) continue;
        return { layer: { span: b.span, says: `\`${other.name}\`` }, opposite: { span: a.span, says: `\`${one.name}\`` } };
    }
    return undefined;
}

function isAlike(casework: Casework, one: Thing, other: Thing): boolean {
    return one.family === other.family && speciesOf(casework, one)?.id === speciesOf(casework, other)?.id;
}
