/** The calculation of how a case stands: what tips it, and what an anchor has to hold. */

import type { Path } from '../../casework/index.js';
import { real } from '../../quantity/index.js';
import { anchorPull, type CaseStability, type Standing, stabilityTests, standardGravity, tippingPush } from '../../strength/index.js';
import { namesInWords } from '../part-names.js';
import { digits, type Figure, judged, type Step, sayFigure, type Units } from './worked.js';

const statics = 'statics of a rigid body about the line in front that it stands on';
const pushSource = 'ASTM F2057-23, 9.2.2: level force at a hand-hold no higher than 56in, level floor';
const climbSource = 'ASTM F2057-23, 9.2.3 and 8.2.3: weight on a front edge, rear raised by a block';
const notAsked = 'not asked of it: ';

export function standingSteps(found: CaseStability, units: Units, nameOf: (path: Path) => string): readonly Step[] {
    const { assembly, loadedWorst, worstLoads, footing } = found;
    return [
        { symbol: 'b', what: 'It stands on the floor, from back to front', result: units.length(footing), source: 'the design' },
        ...weightSteps(found.empty, '', units),
        ...(worstLoads.length === 0
            ? []
            : [
                  {
                      what: `Loaded the worst way: only ${namesInWords(worstLoads.map(({ path }) => nameOf(path)))} carrying`,
                      source: 'loads are added from above as long as each makes it lean over sooner',
                  },
                  ...weightSteps(loadedWorst, ' loaded', units),
              ]),
        ...pushSteps(found, units),
        ...climbSteps(found, units, nameOf),
        ...(assembly.anchor ? anchorSteps(found, units) : []),
    ];
}

/** Its mass, where the middle of it lies, and the angle at which it goes over. */
function weightSteps({ mass, behindLine, middle, angle }: Standing, loaded: string, units: Units): readonly Step[] {
    const [d, h] = [units.length(behindLine), units.length(middle.z)];
    return [
        { symbol: `W${loaded}`, what: `Mass${loaded}`, result: units.mass(mass), source: 'density of its materials, and what it carries' },
        { symbol: `d${loaded}`, what: 'Middle of the mass, behind the front line', formula: 'sum of m y / sum of m', result: d },
        { symbol: `h${loaded}`, what: 'Middle of the mass, over the floor', formula: 'sum of m z / sum of m', result: h },
        {
            symbol: `tip${loaded}`,
            what: 'Leans so far before it goes over',
            formula: 'atan(d / h)',
            figures: `atan(${digits(d.value)} / ${digits(h.value)})`,
            result: degrees(angle),
            source: statics,
        },
    ];
}

function degrees(radians: number): Figure {
    return { value: (radians * 180) / Math.PI, unit: 'degrees' };
}

/** The standing that a level push tips sooner. */
function weaker({ empty, loadedWorst, pushHeight, floorLean }: CaseStability): Standing {
    return tippingPush(loadedWorst, pushHeight, floorLean) < tippingPush(empty, pushHeight, floorLean) ? loadedWorst : empty;
}

function pushSteps(found: CaseStability, units: Units): readonly Step[] {
    const { push, pushHeight, tilt, footing, floorLean } = found;
    const standing = weaker(found);
    const loaded = standing === found.empty ? '' : ' loaded';
    const asked = units.force(stabilityTests.push.force);
    const weight = units.force(standing.mass * standardGravity);
    const [d, height, h] = [units.length(standing.behindLine), units.length(pushHeight), units.length(standing.middle.z)];
    const onFloor: Pick<Step, 'formula' | 'figures'> =
        floorLean === 0
            ? {
                  formula: `W${loaded} d${loaded} / ${digits(height.value)}`,
                  figures: `${sayFigure(weight)} × ${digits(d.value)} / ${digits(height.value)}`,
              }
            : {
                  formula: `W${loaded} (d${loaded} cos floor - h${loaded} sin floor) / ${digits(height.value)}`,
                  figures: `${sayFigure(weight)} × (${digits(d.value)} cos floor - ${digits(h.value)} sin floor) / ${digits(height.value)}`,
              };
    return [
        ...(floorLean === 0
            ? []
            : [
                  {
                      symbol: 'floor',
                      what: 'It leans forward on the floor that the project states',
                      formula: 'atan(slope) + asin(carpet / b)',
                      result: degrees(floorLean),
                      source: 'the design',
                  },
              ]),
        {
            symbol: 'P',
            what: `A level push at ${sayFigure(height)} tips it`,
            ...onFloor,
            result: units.force(push),
            source: statics,
        },
        {
            symbol: 'P min',
            what: 'It is to stand',
            result: asked,
            source: pushSource,
            ...verdictOf(found, push >= stabilityTests.push.force, judged('tipping by a level push', units.force(push), asked, 'asked')),
        },
        {
            symbol: 'lean',
            what: `It leans when its back is raised ${sayFigure(units.length(stabilityTests.climb.block))}, as by a carpet`,
            formula: 'asin(block / b)',
            figures: `asin(${digits(units.length(stabilityTests.climb.block).value)} / ${digits(units.length(footing).value)})`,
            result: degrees(tilt),
            source: climbSource,
        },
        {
            symbol: 'P lean',
            what: 'Leaning so, the push that tips it',
            formula: `W${loaded} (d${loaded} cos lean - h${loaded} sin lean) / ${digits(height.value)}`,
            result: units.force(tippingPush(standing, pushHeight, tilt)),
            source: statics,
        },
    ];
}

function climbSteps(found: CaseStability, units: Units, nameOf: (path: Path) => string): readonly Step[] {
    const { climb } = found;
    if (!climb) return [];
    const [edge, height] = [units.length(-climb.behindLine), units.length(climb.height)];
    const where = `${sayFigure(units.length(Math.abs(climb.behindLine)))} ${climb.behindLine > 0 ? 'behind' : 'past'}`;
    const mass = units.force(stabilityTests.climb.mass * standardGravity);
    const [turns, holds] = [units.moment(climb.overturning), units.moment(climb.holding)];
    return [
        {
            symbol: 'T',
            what: `${sayFigure(units.mass(stabilityTests.climb.mass))} on the front edge of ${nameOf(climb.shelf.path)}, ${sayFigure(height)} up and ${where} the front line, turns it forward`,
            formula: 'w (height sin lean + past cos lean)',
            figures: `${sayFigure(mass)} × (${digits(height.value)} sin lean + ${digits(edge.value)} cos lean)`,
            result: turns,
            source: climbSource,
        },
        {
            symbol: 'H',
            what: 'Its own weight, empty, holds it',
            formula: 'W (d cos lean - h sin lean)',
            result: holds,
            source: statics,
            ...verdictOf(found, climb.overturning < climb.holding, judged('tipping by someone on a front edge', turns, holds)),
        },
    ];
}

/** A case that is anchored, or too low or light for the published tests, is not asked to stand them by itself. */
function verdictOf(
    { assembly, outOfScope }: CaseStability,
    holds: boolean,
    what: NonNullable<Step['judged']>,
): Pick<Step, 'verdict' | 'judged'> {
    const why = assembly.anchor ? 'it is anchored' : 'it is under 27in high or under 30 lb';
    if (assembly.anchor || outOfScope)
        return { verdict: holds ? 'holds' : 'to be noted', judged: { ...what, what: `${what.what} (${notAsked}${why})` } };
    return { verdict: holds ? 'holds' : 'fails', judged: what };
}

function anchorSteps(found: CaseStability, units: Units): readonly Step[] {
    const { assembly, pushHeight, climb } = found;
    const height = assembly.anchor ? real.toNumber(assembly.anchor.quantity.value) : 0;
    if (!(height > 0)) return [];
    const standing = weaker(found);
    const push = { force: stabilityTests.push.force, height: pushHeight };
    const pull = anchorPull(standing, push, height);
    const [at, high] = [units.length(height), units.length(pushHeight)];
    const weight = units.force(standing.mass * standardGravity);
    const fromClimb = climb ? Math.max(0, climb.overturning - climb.holding) / height : 0;
    const whole = stabilityTests.push.force * pushHeight;
    return [
        { symbol: 'a', what: 'Anchored to the wall, over the floor', result: at, source: 'the design' },
        {
            symbol: 'A1',
            what: 'The anchor has to hold against that push, with the weight of the case to help',
            formula: 'max of 0 and (P min height - W d) / a',
            figures: `(${digits(units.force(push.force).value)} × ${digits(high.value)} - ${digits(weight.value)} × ${digits(units.length(standing.behindLine).value)}) / ${digits(at.value)}`,
            result: units.force(pull),
            source: statics,
        },
        {
            symbol: 'A2',
            what: 'Against someone on a front edge',
            formula: 'max of 0 and (T - H) / a',
            result: units.force(fromClimb),
            source: statics,
        },
        {
            symbol: 'A',
            what: 'Against that push by itself, for a case that only leans on its anchors',
            formula: 'P min height / a',
            figures: `${digits(units.force(push.force).value)} × ${digits(high.value)} / ${digits(at.value)}`,
            result: units.force(whole / height),
            source: statics,
            verdict: 'to be noted',
            judged: {
                what: 'pull on the anchor',
                figures: `${sayFigure(units.force(Math.max(pull, fromClimb)))} with its weight to help, ${sayFigure(units.force(whole / height))} without`,
            },
        },
    ];
}
