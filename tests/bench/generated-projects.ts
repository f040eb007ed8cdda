/** Projects made for benchmarks: designs like the example, each with sizes of its own, in three shapes. */

export interface GeneratedFile {
    readonly uri: string;
    readonly text: string;
}

const folder = 'memory:/bench';
/** The shop file that every design uses. */
const shopLines = `edition 1
use casewright.species
use casewright.panels
material Face like HardwoodPlywood { species BlackWalnut   thickness 3/4in   actual 0.720in ± 0.010in }
material Thin like Face { thickness 1/4in   actual 0.205in ± 0.010in }
material Core like FibreboardThreeQuarter { price 41 USD per sheet }
material Strips : lumber { species BlackWalnut   rough 4/4   planed 3/4in }
edging Lipped { band 1/8in of Strips   round 1/16in }
edging Nosed { nosing 3/4in of Strips { high 1in }   round 1/8in }
joint Shelved { biscuit #20 count 2 inset 2 1/2in   glue }
joint Screwed { screw #8 x 1 1/4in   spacing 6in }
`;

/** One case of about 30 lines; every number depends on its own, so that no two are alike. */
function designText(number: number): string {
    const eighths = number % 64;
    return `
/// Case ${number} of a long row.
case Case${number}(tiers: Count = ${3 + (number % 4)}) {
    width  ${30 + (number % 12)} ${(eighths % 7) + 1}/8in
    height ${60 + (number % 20)}in
    depth  Sweep

    curve Sweep of depth over height {
        from ${15 + (number % 4)} 1/2in at bottom
        to   ${10 + (number % 3)}in at top
        bow  out ${(eighths % 5) + 3}/8in
    }

    let reveal = 1/16in * ${(number % 3) + 1}

    side Left, Right of Face layers 2 {
        edge top   Lipped
        edge front Lipped
        edge back  rabbet 1/2in deep for back
    }
    every shelf { of Core   edge front Nosed }
    shelf Floor at 4in
    shelf Crown at 1/2in + reveal below top
    shelf Tier[tiers] above Floor clear equal
    kick of Strips at 2 1/2in behind Floor.front
    back of Thin

    join every shelf to every side with Shelved
    join kick to Floor, every side with Screwed
    join back to every side, every shelf with Screwed
    require Tier[1].clear >= 6in because "case ${number} holds something"
}
`;
}

const linesOfDesign = designText(1).split('\n').length - 1;

/** A file of about so many lines that uses the shop file. */
function fileOf(name: string, lines: number, first: number): GeneratedFile {
    const count = Math.max(1, Math.round(lines / linesOfDesign));
    const designs = Array.from({ length: count }, (_, index) => designText(first + index));
    return { uri: `${folder}/${name}.case`, text: `edition 1\nuse "shop.case"\n${designs.join('')}` };
}

const shop: GeneratedFile = { uri: `${folder}/shop.case`, text: shopLines };

export function oneLargeFile(lines: number): readonly GeneratedFile[] {
    return [shop, fileOf('large', lines, 1)];
}

export function manySmallFiles(lines: number): readonly GeneratedFile[] {
    const count = Math.round(lines / linesOfDesign);
    return [shop, ...Array.from({ length: count }, (_, index) => fileOf(`small${index}`, linesOfDesign, index + 1))];
}

/** Files of very different length: half the lines in a few, the rest in many. */
export function mixedFiles(lines: number): readonly GeneratedFile[] {
    const large = Array.from({ length: 4 }, (_, index) => fileOf(`long${index}`, lines / 8, index * 1000 + 1));
    const small = Array.from({ length: Math.round(lines / 2 / 60) }, (_, index) => fileOf(`short${index}`, 60, index * 2 + 1));
    return [shop, ...large, ...small];
}

/** A text in which a size of the case in the middle changes at each edit, and all behind it moves. */
export function halfwayEdits(text: string): readonly string[] {
    const half = text.indexOf('height ', text.length / 2) + 'height '.length;
    return ['7', '70', '70.5'].map((height) => `${text.slice(0, half)}${height}${text.slice(text.indexOf('in', half))}`);
}

export function lineCount(files: readonly GeneratedFile[]): number {
    return files.reduce((sum, { text }) => sum + text.split('\n').length, 0);
}
