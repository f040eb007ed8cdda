/**
 * The published tables that the library of species is checked against, kept apart from it: whoever changes a value there has to find it
 * here as well, beside the name of the table it stands in.
 */

type Column = number | undefined;
type Both = readonly [inchPound: Column, si: Column];

/** Wood at 12 % moisture. Each value twice: in inch-pound units, and that one converted to SI units and rounded. */
export interface PrintedWood {
    /** In the library. */
    readonly name: string;
    /** In the table. */
    readonly printed: string;
    readonly table: '5-3b' | '5-5b';
    readonly gravity: number;
    /** In 10^6 psi and GPa. */
    readonly elasticity: readonly [number, number];
    /** These four in psi and MPa. */
    readonly rupture: Both;
    readonly perpendicular: Both;
    readonly parallel: Both;
    readonly shear: Both;
    /** In lbf and N. */
    readonly hardness: Both;
    /** In lb/ft3 and kg/m3. */
    readonly density: readonly [number, number];
}

// biome-ignore format: one line for each line of the printed table
type MechanicalLine = readonly [
    name: string, printed: string, table: '5-3b' | '5-5b', gravity: number, moe: number, moeSI: number, mor: number, morSI: number,
    perp: Column, perpSI: Column, parallel: number, parallelSI: number, shear: number, shearSI: number, hardness: number, hardnessSI: number,
    density: number, densitySI: number,
];

/*
 * Wood Handbook FPL-GTR-282 (2021), Tables 5-3b and 5-5b. The columns in SI units are the inch-pound ones converted and rounded; the density
 * is Equation 4-14 (for Table 5-5b with the gravity brought to 12 % from memory of chapter 4).
 */
// biome-ignore format: one line for each line of the printed table
const mechanicalLines: readonly MechanicalLine[] = [
    ['RedAlder', 'Alder, red', '5-3b', 0.41, 1.38, 9.5, 9800, 68, 440, 3.0, 5820, 40.1, 1080, 7.4, 590, 2620, 28.7, 459],
    ['WhiteAsh', 'Ash, white', '5-3b', 0.60, 1.74, 12.0, 15400, 106, 1160, 8.0, 7410, 51.1, 1910, 13.2, 1320, 5870, 42.0, 672],
    ['Basswood', 'Basswood, American', '5-3b', 0.37, 1.46, 10.1, 8700, 60, 370, 2.6, 4730, 32.6, 990, 6.8, 410, 1820, 25.9, 414],
    ['Beech', 'Beech, American', '5-3b', 0.64, 1.72, 11.9, 14900, 103, 1010, 7.0, 7300, 50.3, 2010, 13.9, 1300, 5780, 44.7, 717],
    ['PaperBirch', 'Birch, paper', '5-3b', 0.55, 1.59, 11.0, 12300, 85, 600, 4.1, 5690, 39.2, 1210, 8.3, 910, 4050, 38.5, 616],
    ['YellowBirch', 'Birch, yellow', '5-3b', 0.62, 2.01, 13.9, 16600, 114, 970, 6.7, 8170, 56.3, 1880, 13.0, 1260, 5600, 43.4, 694],
    ['Butternut', 'Butternut', '5-3b', 0.38, 1.18, 8.1, 8100, 56, 460, 3.2, 5110, 35.2, 1170, 8.1, 490, 2180, 26.6, 426],
    ['Cherry', 'Cherry, black', '5-3b', 0.50, 1.49, 10.3, 12300, 85, 690, 4.8, 7110, 49.0, 1700, 11.7, 950, 4230, 35.0, 560],
    ['AmericanElm', 'Elm, American', '5-3b', 0.50, 1.34, 9.2, 11800, 81, 690, 4.8, 5520, 38.1, 1510, 10.4, 830, 3690, 35.0, 560],
    ['Pecan', 'Hickory, pecan', '5-3b', 0.66, 1.73, 11.9, 13700, 94, 1720, 11.9, 7850, 54.1, 2080, 14.3, 1820, 8100, 46.1, 739],
    ['Hickory', 'Hickory, shagbark', '5-3b', 0.72, 2.16, 14.9, 20200, 139, 1760, 12.1, 9210, 63.5, 2430, 16.8, 1880, 8360, 50.3, 806],
    ['BigleafMaple', 'Maple, bigleaf', '5-3b', 0.48, 1.45, 10.0, 10700, 74, 750, 5.2, 5950, 41.0, 1730, 11.9, 850, 3780, 33.6, 538],
    ['SoftMaple', 'Maple, red (soft)', '5-3b', 0.54, 1.64, 11.3, 13400, 92, 1000, 6.9, 6540, 45.1, 1850, 12.8, 950, 4230, 37.8, 605],
    ['SilverMaple', 'Maple, silver (soft)', '5-3b', 0.47, 1.14, 7.9, 8900, 61, 740, 5.1, 5220, 36.0, 1480, 10.2, 700, 3110, 32.9, 526],
    ['HardMaple', 'Maple, sugar (hard)', '5-3b', 0.63, 1.83, 12.6, 15800, 109, 1470, 10.1, 7830, 54.0, 2330, 16.1, 1450, 6450, 44.1, 706],
    ['RedOak', 'Oak, northern red', '5-3b', 0.63, 1.82, 12.5, 14300, 99, 1010, 7.0, 6760, 46.6, 1780, 12.3, 1290, 5740, 44.1, 706],
    ['SouthernRedOak', 'Oak, southern red', '5-3b', 0.59, 1.49, 10.3, 10900, 75, 870, 6.0, 6090, 42.0, 1390, 9.6, 1060, 4720, 41.3, 661],
    ['WhiteOak', 'Oak, white', '5-3b', 0.68, 1.78, 12.3, 15200, 105, 1070, 7.4, 7440, 51.3, 2000, 13.8, 1360, 6050, 47.5, 762],
    ['Sweetgum', 'Sweetgum', '5-3b', 0.52, 1.64, 11.3, 12500, 86, 620, 4.3, 6320, 43.6, 1600, 11.0, 850, 3780, 36.4, 582],
    ['Sycamore', 'Sycamore, American', '5-3b', 0.49, 1.42, 9.8, 10000, 69, 700, 4.8, 5380, 37.1, 1470, 10.1, 770, 3430, 34.3, 549],
    ['BlackWalnut', 'Walnut, black', '5-3b', 0.55, 1.68, 11.6, 14600, 101, 1010, 7.0, 7580, 52.3, 1370, 9.4, 1010, 4490, 38.5, 616],
    ['YellowPoplar', 'Yellow-poplar', '5-3b', 0.42, 1.58, 10.9, 10100, 70, 500, 3.4, 5540, 38.2, 1190, 8.2, 540, 2400, 29.4, 470],
    ['Baldcypress', 'Baldcypress', '5-3b', 0.46, 1.44, 9.9, 10600, 73, 730, 5.0, 6360, 43.9, 1000, 6.9, 510, 2270, 32.2, 515],
    ['WesternRedcedar', 'Cedar, western redcedar', '5-3b', 0.32, 1.11, 7.7, 7500, 52, 460, 3.2, 4560, 31.4, 990, 6.8, 350, 1560, 22.4, 358],
    ['YellowCedar', 'Cedar, yellow', '5-3b', 0.44, 1.42, 9.8, 11100, 77, 620, 4.3, 6310, 43.5, 1130, 7.8, 580, 2580, 30.8, 493],
    ['DouglasFir', 'Douglas-fir, coast', '5-3b', 0.48, 1.95, 13.4, 12400, 85, 800, 5.5, 7230, 49.8, 1130, 7.8, 710, 3160, 33.6, 538],
    ['InteriorDouglasFir', 'Douglas-fir, interior north', '5-3b', 0.48, 1.79, 12.3, 13100, 90, 770, 5.3, 6900, 47.6, 1400, 9.7, 600, 2670, 33.6, 538],
    ['WesternHemlock', 'Hemlock, western', '5-3b', 0.45, 1.63, 11.2, 11300, 78, 550, 3.8, 7200, 49.6, 1290, 8.9, 540, 2400, 31.5, 504],
    ['EasternWhitePine', 'Pine, eastern white', '5-3b', 0.35, 1.24, 8.5, 8600, 59, 440, 3.0, 4800, 33.1, 900, 6.2, 380, 1690, 24.5, 392],
    ['LoblollyPine', 'Pine, loblolly', '5-3b', 0.51, 1.79, 12.3, 12800, 88, 790, 5.4, 7130, 49.2, 1390, 9.6, 690, 3070, 35.7, 571],
    ['PonderosaPine', 'Pine, ponderosa', '5-3b', 0.40, 1.29, 8.9, 9400, 65, 580, 4.0, 5320, 36.7, 1130, 7.8, 460, 2050, 28.0, 448],
    ['SugarPine', 'Pine, sugar', '5-3b', 0.36, 1.19, 8.2, 8200, 57, 500, 3.4, 4460, 30.8, 1130, 7.8, 380, 1690, 25.2, 403],
    ['WesternWhitePine', 'Pine, western white', '5-3b', 0.38, 1.46, 10.1, 9700, 67, 470, 3.2, 5040, 34.7, 1040, 7.2, 420, 1870, 26.6, 426],
    ['Redwood', 'Redwood, old-growth', '5-3b', 0.40, 1.34, 9.2, 10000, 69, 700, 4.8, 6150, 42.4, 940, 6.5, 480, 2140, 28.0, 448],
    ['SitkaSpruce', 'Spruce, Sitka', '5-3b', 0.40, 1.57, 10.8, 10200, 70, 580, 4.0, 5610, 38.7, 1150, 7.9, 510, 2270, 28.0, 448],
    ['WhiteSpruce', 'Spruce, white', '5-3b', 0.36, 1.43, 9.9, 9400, 65, 430, 3.0, 5180, 35.7, 970, 6.7, 410, 1820, 25.2, 403],
    ['AfricanMahogany', 'Mahogany, African (Khaya)', '5-5b', 0.42, 1.40, 9.7, 10700, 74, undefined, undefined, 6460, 44.5, 1500, 10.3, 830, 3690, 31.5, 504],
    ['TrueMahogany', 'Mahogany, true (Swietenia)', '5-5b', 0.45, 1.50, 10.3, 11500, 79, undefined, undefined, 6780, 46.7, 1230, 8.5, 800, 3560, 33.9, 543],
    ['Okoume', 'Okoume', '5-5b', 0.33, 1.14, 7.9, 7400, 51, undefined, undefined, 3970, 27.4, 970, 6.7, 380, 1690, 24.4, 390],
    ['Sapele', 'Sapele', '5-5b', 0.55, 1.82, 12.5, 15300, 105, undefined, undefined, 8160, 56.3, 2260, 15.6, 1510, 6720, 42.1, 675],
    ['SpanishCedar', 'Spanish-cedar', '5-5b', 0.41, 1.44, 9.9, 11500, 79, undefined, undefined, 6210, 42.8, 1100, 7.6, 600, 2670, 30.7, 491],
    ['Teak', 'Teak', '5-5b', 0.55, 1.55, 10.7, 14600, 101, undefined, undefined, 8410, 58.0, 1890, 13.0, 1000, 4450, 42.1, 675],
];

export const mechanicalTable: readonly PrintedWood[] = mechanicalLines.map((line) => ({
    name: line[0],
    printed: line[1],
    table: line[2],
    gravity: line[3],
    elasticity: [line[4], line[5]],
    rupture: [line[6], line[7]],
    perpendicular: [line[8], line[9]],
    parallel: [line[10], line[11]],
    shear: [line[12], line[13]],
    hardness: [line[14], line[15]],
    density: [line[16], line[17]],
}));

/** How a wood moves. */
export interface PrintedMovement {
    readonly name: string;
    /** Shrinkage from green to ovendry, in percent. */
    readonly radial: number;
    readonly tangential: number;
    readonly volumetric: number;
    /** Change for 1 % of moisture, part in one, where it is known. */
    readonly change: { readonly radial: number; readonly tangential: number } | undefined;
    /** Whether the change is that of the species or of the group it is sold in. */
    readonly changeOf: 'species' | 'group';
    /** The moisture at which shrinkage starts, in percent. */
    readonly start: 22 | 30;
}

type MovementLine = readonly [string, number, number, number, Column, Column, 'species' | 'group', 22 | 30];

/*
 * Wood Handbook FPL-GTR-190 (2010), Table 4-3 (4-4 for imported woods) and Table 13-5, part of them from memory as the library says.
 */
// biome-ignore format: one line for each line of the printed table
const movementLines: readonly MovementLine[] = [
    ['RedAlder', 4.4, 7.3, 12.6, 0.00151, 0.00256, 'species', 30],
    ['WhiteAsh', 4.9, 7.8, 13.3, 0.00169, 0.00274, 'species', 30],
    ['Basswood', 6.6, 9.3, 15.8, 0.00230, 0.00330, 'species', 30],
    ['Beech', 5.5, 11.9, 17.2, 0.00190, 0.00431, 'species', 30],
    ['YellowBirch', 7.3, 9.5, 16.8, 0.00256, 0.00338, 'species', 30],
    ['Butternut', 3.4, 6.4, 10.6, 0.00116, 0.00223, 'species', 30],
    ['Cherry', 3.7, 7.1, 11.5, 0.00126, 0.00248, 'species', 30],
    ['Pecan', 4.9, 8.9, 13.6, 0.00169, 0.00315, 'species', 30],
    ['Hickory', 7.0, 10.5, 16.7, 0.00259, 0.00411, 'group', 30],
    ['SoftMaple', 4.0, 8.2, 12.6, 0.00137, 0.00289, 'species', 30],
    ['SilverMaple', 3.0, 7.2, 12.0, 0.00102, 0.00252, 'species', 30],
    ['HardMaple', 4.8, 9.9, 14.7, 0.00165, 0.00353, 'species', 30],
    ['RedOak', 4.0, 8.6, 13.7, 0.00158, 0.00369, 'group', 30],
    ['WhiteOak', 5.6, 10.5, 16.3, 0.00180, 0.00365, 'group', 30],
    ['Sweetgum', 5.3, 10.2, 15.8, 0.00183, 0.00365, 'species', 30],
    ['Sycamore', 5.0, 8.4, 14.1, 0.00172, 0.00296, 'species', 30],
    ['BlackWalnut', 5.5, 7.8, 12.8, 0.00190, 0.00274, 'species', 30],
    ['YellowPoplar', 4.6, 8.2, 12.7, 0.00158, 0.00289, 'species', 30],
    ['DouglasFir', 4.8, 7.6, 12.4, 0.00165, 0.00267, 'species', 30],
    ['EasternWhitePine', 2.1, 6.1, 8.2, 0.00071, 0.00212, 'species', 30],
    ['PonderosaPine', 3.9, 6.2, 9.7, 0.00133, 0.00216, 'species', 30],
    ['SitkaSpruce', 4.3, 7.5, 11.5, 0.00148, 0.00263, 'species', 30],
    ['WesternRedcedar', 2.4, 5.0, 6.8, 0.00111, 0.00234, 'species', 22],
    ['Redwood', 2.6, 4.4, 6.8, 0.00120, 0.00205, 'species', 22],
    ['TrueMahogany', 3.0, 4.1, 7.8, undefined, undefined, 'species', 30],
    ['AfricanMahogany', 2.5, 4.5, 8.8, undefined, undefined, 'species', 30],
    ['Sapele', 4.6, 7.4, 14.0, undefined, undefined, 'species', 30],
    ['Teak', 2.5, 5.8, 7.0, undefined, undefined, 'species', 30],
];

export const movementTable: readonly PrintedMovement[] = movementLines.map(
    ([name, radial, tangential, volumetric, radialChange, tangentialChange, changeOf, start]) => ({
        name,
        radial,
        tangential,
        volumetric,
        change:
            radialChange === undefined || tangentialChange === undefined
                ? undefined
                : { radial: radialChange, tangential: tangentialChange },
        changeOf,
        start,
    }),
);
