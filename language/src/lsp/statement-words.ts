// What the words mean that make statements of names and values. Knows the language as it is explained to a person: no grammar.

export interface StatementWord {
    /** One sentence. */
    readonly doc: string;
    /** A line that uses it. */
    readonly example: string;
}

/** Words that begin a statement which is neither a thing nor a property. */
export const sentenceWords: ReadonlyMap<string, StatementWord> = new Map([
    ['use', { doc: 'Makes the names of another file, or of a library, known here.', example: 'use "shop.case"' }],
    ['let', { doc: 'Gives a value a name.', example: 'let reveal = 1/8in' }],
    ['edition', { doc: 'The edition of the language that the file is written in.', example: 'edition 1' }],
    [
        'edge',
        { doc: 'Treats an edge of a part, or places it. Edges are worked in the order of their lines.', example: 'edge front Lipped' },
    ],
    [
        'every',
        { doc: 'Says something of all parts of a kind, or of a group, at once.', example: 'every shelf { of Mdf   edge front Nosed }' },
    ],
    [
        'join',
        {
            doc: 'Joins parts where they touch. Joins are made in the order of their lines.',
            example: 'join every shelf to every side with ShelfJoint',
        },
    ],
    ['hold', { doc: 'Goods that stand on a part.', example: 'hold Teapot on Tier[1], Tier[2]' }],
    ['load', { doc: 'A load that a part carries.', example: 'load 25 lb/ft2 on Floor' }],
    [
        'require',
        {
            doc: 'A check of the designer: it holds, fails, or holds only as drawn.',
            example: 'require Tier[1].clear >= 11in because "a teapot and a hand"',
        },
    ],
    [
        'allow',
        {
            doc: 'Silences a warning in one place; the reason is printed with the documents.',
            example: 'allow shelf-order on Crown because "drawn so by the client"',
        },
    ],
    ['build', { doc: 'How many of a case are built.', example: 'build 2 PotteryCase' }],
    ['leave', { doc: 'Keeps room at a face for something that comes later.', example: 'leave top 4in for Light' }],
    ['repeat', { doc: 'The lines in its braces, once for each number.', example: 'repeat i in 1..4 { shelf Row at i * 12in }' }],
    ['if', { doc: 'The lines in its braces, if the condition holds.', example: 'if height > 6ft { shelf Middle at middle }' }],
    ['private', { doc: 'Hides a name from other files.', example: 'private material Offcut like Ply' }],
    ['public', { doc: 'Passes the names of a used file on to the files that use this one.', example: 'public use "shop.case"' }],
]);

/** Words that join names and values to what stands before them. */
export const joiningWords: ReadonlyMap<string, StatementWord> = new Map([
    ['at', { doc: 'Where a part, or one of its edges, is: a distance, a way, a face.', example: 'shelf Crown at 1/2in below top' }],
    ['of', { doc: 'What it is made of: a material, or a design.', example: 'side Left, Right of WalnutPly' }],
    ['in', { doc: 'The opening or the part that it is in.', example: 'shelf Low in LeftBay at 12in' }],
    ['to', { doc: 'The parts that receive the joint, or the end of a range.', example: 'join kick to Floor with Fixed' }],
    ['with', { doc: 'The joint, by its name or by its steps.', example: 'join kick to Floor with { glue }' }],
    ['on', { doc: 'The part that something stands on, or that is meant.', example: 'hold Bowl on Tier[3]' }],
    ['for', { doc: 'The part that something is made for.', example: 'edge back rabbet 1/2in deep for back' }],
    [
        'like',
        {
            doc: 'Takes over everything that another thing says; what is said here goes before it.',
            example: 'material Thin like WalnutPly { thickness 1/4in }',
        },
    ],
    ['as', { doc: 'Names what comes of it: openings, a build, a used file.', example: 'divider Post clear equal as LeftBay, RightBay' }],
    ['over', { doc: 'Along what a curve runs: height, or width.', example: 'curve Sweep of depth over height' }],
    ['from', { doc: 'Where something begins.', example: 'from 17 1/2in at bottom' }],
    ['mirrored', { doc: 'The same with left and right exchanged.', example: 'build 1 ShowCase mirrored as Left' }],
    ['because', { doc: 'The reason, in quotes. It is printed.', example: 'because "a teapot and a hand"' }],
    ['except', { doc: 'Those that are not meant.', example: 'every shelf except Crown' }],
    ['per', { doc: 'The unit that a price is for.', example: 'price 118 USD per sheet' }],
    ['then', { doc: 'The value if the condition holds.', example: 'if width > 36in then 3 else 2' }],
    ['else', { doc: 'What holds if the condition does not.', example: 'if width > 36in then 3 else 2' }],
    ['each', { doc: 'Each of the ends or edges that are named.', example: 'trim 1/4in each edge' }],
    ['middle', { doc: 'Half way between the ends of the room.', example: 'divider Post at middle' }],
    ['and', { doc: 'Both conditions hold.', example: 'if width > 36in and height > 6ft { top }' }],
    ['or', { doc: 'One of the conditions holds, or both.', example: 'if width > 36in or height > 6ft { top }' }],
    ['not', { doc: 'The condition does not hold.', example: 'if not tall { top }' }],
]);
