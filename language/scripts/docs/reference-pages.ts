/** The reference of everything that can be declared and said, from the vocabulary of the language itself. */
import { vocabulary } from 'casewright-shared/casework';
import { describeDimension, units } from 'casewright-shared/quantity';
import { valueInWords } from './value-words.ts';

const { factKinds, partKinds, recipeKinds, stepKinds, sizesOfParts, stagesOfParts, placesOnParts } = vocabulary;
const { roomFaces, placeWords, relations, shareWords, endWords, frontForms, functions, functionsOfCurves, types } = vocabulary;

/** Pages by name; their titles link them from the first. */
export function referencePages(): ReadonlyMap<string, string> {
    return new Map([
        ['README.md', index()],
        ['things.md', thingsPage()],
        ['parts.md', partsPage()],
        ['edges-and-joints.md', recipesPage()],
        ['places-and-lists.md', placesPage()],
        ['values.md', valuesPage()],
    ]);
}

function page(title: string, ...blocks: readonly string[]): string {
    return `${[`# ${title}`, ...blocks].filter((block) => block !== '').join('\n\n')}\n`;
}

function index(): string {
    return page(
        'Reference',
        'Everything that can be declared, and everything that can be said of it. These pages are made from the table that the checker, the completion and the hovers use; `npm run docs` writes them anew.',
        [
            '- [Things](things.md): materials, species, goods, curves, fasteners, the shop, the project',
            '- [Parts](parts.md): cases, sides, shelves, backs and the rest; their edges, faces and sizes',
            '- [Edges and joints](edges-and-joints.md): what is done, step by step',
            '- [Places and lists](places-and-lists.md): where a part goes, and how a length is divided',
            '- [Values](values.md): units, functions, types',
            '- [Rules](../rules/README.md): what the checker looks for',
        ].join('\n'),
        `A property marked with * must be stated. ${laterNote}`,
    );
}

const laterNote = 'What is marked (later) is read, but this edition does not use it yet.';

// ---------------------------------------------------------------- things

function thingsPage(): string {
    return page(
        'Things',
        'What is: declared once, at the top of a file, and used by name. `like` copies another thing of its kind: `material ShopPly like WalnutPly { species Birch }`.',
        ...Object.entries(factKinds).flatMap(([name, kind]) => [
            `## ${name}${later(kind.built)}`,
            kind.doc,
            code(kind.example),
            kind.head ? `It is a curve \`of\` ${words(kind.head.of)} \`over\` ${words(kind.head.over)}.` : '',
            kind.single ? 'There is one of it, and it needs no name.' : '',
            kind.families
                ? `After a colon stands its family:\n\n${table(
                      ['family', ''],
                      Object.entries(kind.families).map(([family, doc]) => [tick(family), doc]),
                  )}`
                : '',
            propertiesTable(kind.properties),
        ]),
    );
}

// ---------------------------------------------------------------- parts

function partsPage(): string {
    return page(
        'Parts',
        'What is made. A part takes its size from its place; what can be said of it besides stands here.',
        ...Object.entries(partKinds).flatMap(([name, kind]) => [
            `## ${name}${later(kind.built)}`,
            kind.doc,
            code(kind.example),
            `Edges: ${words(kind.edges)}.${kind.faces.length > 0 ? ` Faces: ${words(kind.faces)}.` : ''}${kind.design ? ' It can be declared by itself, with parameters.' : ''}`,
            propertiesTable(kind.properties),
        ]),
        '## Sizes of parts',
        'Sizes can be used wherever a value is needed: `require Tier[1].clear >= 11in`. They are the finished ones where nothing else is said.',
        table(
            ['size', 'what it is'],
            Object.entries(sizesOfParts).map(([name, { doc }]) => [tick(name), doc]),
        ),
        'A stage stands before a size: `Tier[2].core.width`.',
        docTable('stage', stagesOfParts),
        docTable('place', placesOnParts),
    );
}

// ---------------------------------------------------------------- recipes

function recipesPage(): string {
    return page(
        'Edges and joints',
        'A recipe says what is done, in the order of work. It has a name and is used by it, or it is written in place: `edge front { band 1/8in of Walnut  round 1/8in }`.',
        ...Object.entries(recipeKinds).flatMap(([name, kind]) => [`## ${name}${later(kind.built)}`, kind.doc, code(kind.example)]),
        '## Steps',
        ...Object.entries(stepKinds).flatMap(([name, step]) => [
            `### ${name}${later(step.built)}`,
            `${step.doc} Stands in ${step.in.map((recipe) => `${recipe === 'edging' ? 'an' : 'a'} ${recipe}`).join(' or ')}.`,
            code(step.example),
            step.value ? `After it stands ${valueInWords(step.value)}.` : '',
            propertiesTable(step.options),
        ]),
    );
}

// ---------------------------------------------------------------- places

function placesPage(): string {
    return page(
        'Places and lists',
        'A place is a distance, a way, and what it is measured from: `at 1/2in below top`. A bare distance is from the bottom, the left or the back of the room that the part is in.',
        '## Ways',
        docTable('way', relations),
        '## What a place is measured from',
        'A part (its face that is turned this way), a face or an edge (`Floor.upper`), a curve (then a parallel one), a face of the room, or one of these words.',
        docTable('word', { ...roomFaces, ...placeWords }),
        '## Lists that divide a length',
        'Lengths, and bare numbers that are shares of what the lengths leave: `clear 14in, rest, 14in`, `height from top 5in, 1, 1`.',
        docTable('word', shareWords),
        '## Where on a part a step is done',
        'Edges, faces, and these words: `gap 1mm at each end`, `tight at back`.',
        docTable('word', endWords),
        '## How a front edge meets a curve',
        'Of a lying board under a curve over the height, or of an upright under one over the width: `edge front bevelled`. A lying board is square where nothing is said, an upright bevelled.',
        docTable('word', frontForms),
    );
}

// ---------------------------------------------------------------- values

function valuesPage(): string {
    return page(
        'Values',
        'Every measure carries its unit; a bare number is a count, a ratio or a share. Written lengths are exact, and only curves, roots and angles make them approximate.',
        '## Units',
        table(
            ['unit', 'called', 'measures'],
            units.map(({ symbols, name, dimension }) => [words(symbols), name, describeDimension(dimension)]),
        ),
        'Units are combined with `/` and a power: `lb/ft2`, `kg/m`.',
        '## Functions',
        ...functionBlocks(functions),
        '## Functions of curves',
        ...functionBlocks(functionsOfCurves),
        '## Types',
        'After the colon of a parameter or a `let`: `case Bookcase(width: Length = 40in)`.',
        table(
            ['type', 'what it is'],
            Object.entries(types).map(([name, { doc }]) => [tick(name), doc]),
        ),
    );
}

function functionBlocks(of: Readonly<Record<string, vocabulary.BuiltInFunction>>): string[] {
    return [
        table(
            ['function', '', 'example'],
            Object.values(of).map(({ signature, doc, example }) => [tick(signature), doc, tick(example)]),
        ),
    ];
}

// ---------------------------------------------------------------- tables

function propertiesTable(properties: vocabulary.Properties): string {
    const rows = Object.entries(properties).map(([name, { doc, example, shape, required, built }]) => [
        `${tick(name)}${required ? ' *' : ''}${later(built)}`,
        doc,
        valueInWords(shape),
        tick(example),
    ]);
    return table(['property', 'what it says', 'value', 'example'], rows);
}

function docTable(head: string, rows: Readonly<Record<string, string>>): string {
    return table(
        [head, ''],
        Object.entries(rows).map(([word, doc]) => [tick(word), doc]),
    );
}

/** Nothing where there are no rows. */
function table(head: readonly string[], rows: readonly (readonly string[])[]): string {
    if (rows.length === 0) return '';
    const line = (cells: readonly string[]) => `| ${cells.map((cell) => cell.replaceAll('|', '\\|')).join(' | ')} |`;
    return [line(head), `|${'---|'.repeat(head.length)}`, ...rows.map(line)].join('\n');
}

function code(example: string): string {
    return `\`\`\`case\n${example}\n\`\`\``;
}

function words(of: readonly string[]): string {
    return of.map(tick).join(', ');
}

function tick(word: string): string {
    return `\`${word}\``;
}

function later(built: false | undefined): string {
    return built === false ? ' (later)' : '';
}
