/** The calculation of what is carried in one piece: what it weighs, and whether it goes in by the declared way. */
import {
    type Carried,
    liftOfCase,
    longestRoundCorner,
    mustBeLaid,
    recommendedWeight,
    roundCorner,
    throughDoorway,
    tiltDiagonal,
    type Way,
} from '../../strength/index.js';
import { digits, judged, type Step, sayFigure, type Units } from './worked.js';

const route = 'the route of the project';

export function carryingSteps(piece: Carried, way: Way, lift: number | undefined, units: Units): readonly Step[] {
    const { width, height, depth } = piece;
    return [
        {
            what: 'Wide, high and deep in one piece',
            figures: [width, height, depth].map((size) => sayFigure(units.length(size))).join(' x '),
            source: 'the design',
        },
        ...liftSteps(piece, lift, units),
        ...doorwaySteps(piece, way, units),
        ...tiltSteps(piece, way, units),
        ...cornerSteps(piece, way, units),
    ];
}

function liftSteps({ mass }: Carried, lift: number | undefined, units: Units): readonly Step[] {
    if (mass === undefined)
        return [
            {
                what: 'Mass',
                figures: 'the density of one of its materials is not known',
                verdict: 'not known',
                judged: { what: 'mass', figures: 'not known' },
            },
        ];
    const whole = units.mass(mass);
    const { horizontal, vertical, distance, coupling } = liftOfCase;
    const people = lift === undefined ? undefined : Math.ceil(mass / lift);
    return [
        { symbol: 'W', what: 'Mass of its boards, without hardware and packing', result: whole, source: 'density of its materials' },
        ...(lift === undefined || people === undefined
            ? []
            : [
                  {
                      what: `People, at ${sayFigure(units.mass(lift))} each`,
                      formula: 'W / lift, rounded up',
                      figures: `${digits(whole.value)} / ${digits(units.mass(lift).value)}`,
                      result: { value: people, unit: people === 1 ? 'person' : 'people' },
                      source: 'the shop',
                      verdict: 'to be noted' as const,
                      judged: {
                          what: 'mass in one piece',
                          figures: `${sayFigure(whole)}, ${people} ${people === 1 ? 'person' : 'people'} at ${sayFigure(units.mass(lift))}`,
                      },
                  },
              ]),
        {
            symbol: 'RWL',
            what: `One person, from the floor to the hips, hands ${horizontal} cm in front of the ankles`,
            formula: '23 kg HM VM DM AM FM CM',
            figures: `23 × 25 / ${horizontal} × (1 - 0.003 × ${75 - vertical}) × (0.82 + 4.5 / ${distance}) × 1 × 1 × ${coupling} kg`,
            result: units.mass(recommendedWeight(liftOfCase)),
            source: 'revised lifting equation, DHHS (NIOSH) publication 94-110; the best case of one person is 23 kg, 51 lb',
        },
    ];
}

function doorwaySteps(piece: Carried, { doorways }: Way, units: Units): readonly Step[] {
    return doorways.map((door): Step => {
        const attitude = throughDoorway(piece, door);
        const opening = `${sayFigure(units.length(door.width))} x ${sayFigure(units.length(door.height))}`;
        const how = attitude
            ? `${attitude.how}: ${sayFigure(units.length(attitude.width))} wide and ${sayFigure(units.length(attitude.height))} high`
            : 'in no attitude square to it';
        return {
            what: `Through the doorway of ${opening}`,
            figures: how,
            source: route,
            verdict: attitude ? 'holds' : 'fails',
            judged: { what: `through the doorway of ${opening}`, figures: how },
        };
    });
}

function tiltSteps(piece: Carried, way: Way, units: Units): readonly Step[] {
    if (way.ceiling === undefined) return [];
    const [diagonal, ceiling] = [units.length(tiltDiagonal(piece)), units.length(way.ceiling)];
    const [height, depth] = [units.length(piece.height), units.length(piece.depth)];
    const stands = tiltDiagonal(piece) <= way.ceiling;
    return [
        {
            symbol: 't',
            what: 'Tilted up from its back it reaches',
            formula: 'root of (h^2 + d^2)',
            figures: `root of (${digits(height.value)}^2 + ${digits(depth.value)}^2)`,
            result: diagonal,
        },
        {
            what: `Under the ceiling${mustBeLaid(piece, way) ? '; it has to come in lying' : '; it may also come in upright'}`,
            result: ceiling,
            source: route,
            verdict: stands ? 'holds' : mustBeLaid(piece, way) ? 'fails' : 'to be noted',
            judged: judged('tilting up', diagonal, ceiling, 'ceiling'),
        },
    ];
}

function cornerSteps(piece: Carried, { corners, ceiling }: Way, units: Units): readonly Step[] {
    return corners.flatMap(([a, b]): readonly Step[] => {
        const attitude = roundCorner(piece, [a, b], ceiling);
        const halls = `${sayFigure(units.length(a))} and ${sayFigure(units.length(b))}`;
        if (!attitude) {
            const figures = 'in no attitude, carried level';
            return [
                {
                    what: `Round the corner of ${halls}`,
                    figures,
                    source: route,
                    verdict: 'fails',
                    judged: { what: `round the corner of ${halls}`, figures },
                },
            ];
        }
        const [longest, length] = [units.length(longestRoundCorner(a, b, attitude.width)), units.length(attitude.length)];
        return [
            {
                symbol: 'L',
                what: `Round the corner of ${halls}, ${attitude.how}, ${sayFigure(units.length(attitude.width))} wide, it may be so long`,
                formula: 'least of a / sin + b / cos - w / (sin cos)',
                result: longest,
                source: route,
            },
            {
                what: 'It is so long',
                result: length,
                verdict: 'holds',
                judged: judged(`round the corner of ${halls}, ${attitude.how}`, length, longest),
            },
        ];
    });
}
