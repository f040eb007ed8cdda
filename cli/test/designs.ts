/** Invented designs for the tests of the command line. */

/** A small case that is sound. */
export const bookcase = `material Ply : plywood { thickness 3/4in   actual 0.72in ± 0.01in   sheet 48in x 96in   grain length }

project "Hall bookcase" {
    client "A. Example"
    build 1 Bookcase
}

case Bookcase of Ply {
    width 30in   height 36in   depth 11in   anchor 30in high
    side Left, Right
    shelf Low at 12in
    join Low to every side with { glue }
}
`;

/** The same with two mistakes: a width without a unit, and a material that is not there. */
export const mistaken = bookcase.replace('width 30in', 'width 30').replace('shelf Low', 'shelf Low of Pyl');

/** The same with a warning: a material that nothing is made of. */
export const withWarning = bookcase.replace(
    '\nproject',
    'material Spare : plywood { thickness 1/2in   sheet 48in x 96in   grain length }\n\nproject',
);

/** The same without a joint, where the reason for that stands beside it. */
export const allowing = bookcase.replace(
    'join Low to every side with { glue }',
    'allow touching-without-joint on Low because "it rests on pins"',
);

/** The same with a swept front. */
export const swept = bookcase
    .replace('depth 11in', 'depth Sweep')
    .replace('    side Left', '    curve Sweep of depth over height { from 14in at bottom; to 11in at top; bow out 1in }\n    side Left');
