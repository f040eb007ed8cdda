import { expect, test } from 'vitest';
import { documentKinds } from '../../src/documents/index.js';
import { writeDocument } from '../../src/writers/index.js';
import { joint, material, part, piece, size } from './casework-builder.js';
import { options } from './options.js';
import { bookcase } from './sample-casework.js';

/** The bookcase, and a bench that the file declares and the project does not build. */
const [assembly] = bookcase.assemblies;
const seat = part({
    path: 'Bench.Seat',
    kind: 'shelf',
    quantity: 0,
    size: size('30in', '10in', '1in'),
    along: ['x', 'y', 'z'],
    at: [0, 0, 0],
});
const leg = part({
    path: 'Bench.Leg',
    kind: 'side',
    quantity: 0,
    size: size('16in', '10in', '1in'),
    along: ['z', 'y', 'x'],
    at: [0, 0, 0],
});
const withBench = {
    ...bookcase,
    assemblies: [...bookcase.assemblies, { ...assembly!, path: 'Bench', name: 'Bench', count: 0 }],
    parts: new Map([...bookcase.parts, [seat.path, seat], [leg.path, leg]]),
    pieces: [
        ...bookcase.pieces,
        piece({
            part: seat.path,
            role: 'solid',
            name: 'Seat',
            material: material('Walnut'),
            quantity: 0,
            finished: size('30in', '10in', '1in'),
        }),
    ],
    openings: new Map([...bookcase.openings, ['Bench.Under', { ...[...bookcase.openings.values()][0]!, path: 'Bench.Under' }]]),
    joints: [...bookcase.joints, joint('Bench.Seat', 'Bench.Leg', 'Pegged', { does: 'dowel', count: 4 })],
};

// a scene wants solids, which are made of whole designs: tests/casework/solids.test.ts
test.each(documentKinds.flatMap((kind) => kind.formats.filter((format) => format !== 'glb').map((format) => ({ kind, format }))))(
    '$kind.kind as $format: what is not built is left out',
    async ({ kind, format }) => {
        const [some, all] = [withBench, bookcase].map((casework) => kind.make(casework, options));
        expect(some && (await writeDocument(some, format))).toEqual(all && (await writeDocument(all, format)));
    },
);
