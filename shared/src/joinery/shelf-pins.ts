/** Rows of holes for the pins on which a shelf lies. */
import type { Thing } from '../casework/index.js';
import { real } from '../quantity/index.js';
import { placeOfSide, spanOf, wayOf } from './axes.js';
import { atEachPlace, hole, inwards, type StepMaker } from './bench.js';
import { millimetres } from './layout.js';

/** How wide and how deep the hole of a bought pin is, in millimetres; undefined where it does not say. */
function holeOf(thing: Thing | undefined): { readonly wide: number; readonly deep: number } | undefined {
    const said = thing?.properties.get('hole');
    if (said?.is !== 'measures') return undefined;
    const size = (word: string) => {
        const measure = said.measures[said.words.indexOf(word)];
        return measure && real.toNumber(measure.quantity.value);
    };
    const [wide, deep] = [size('wide'), size('deep')];
    return wide === undefined || deep === undefined ? undefined : { wide, deep };
}

/** The pins stand under the shelf, so that it lies on them where it is drawn; more holes are bored above and below at the pitch. */
export const makeShelfPins: StepMaker = (bench, step, cause) => {
    const { enters, receives, contact, things } = bench;
    const size = holeOf(step.on === undefined ? undefined : things.get(step.on));
    if (!size || step.count === undefined) return undefined; // it rests on something that wants no hole
    if (enters.directions.thickness !== 'z' || contact.axis === 'z') return 'bores holes beside a shelf, and here nothing lies';
    const [up, down, pitch] = [step.up ?? 0, step.down ?? 0, millimetres(step.lengths?.pitch)];
    if (pitch === undefined && up + down > 0) return 'has more holes `up` or `down`, and does not say their `pitch`';
    const direction = inwards(contact);
    const surface = placeOfSide(receives.box, contact.sideOfReceiving);
    const { from: underside } = spanOf(enters.box, 'z');
    const { axis } = wayOf(contact.sideOfReceiving);
    // its pitch runs up and down, not along the joint
    return atEachPlace(bench, { ...step, lengths: {} }, (on) => {
        const middle = { ...on, [axis]: surface, z: underside - size.wide / 2 };
        const thing = step.on === undefined ? {} : { thing: step.on };
        const fastener = bench.place({
            kind: 'shelf pin',
            cause,
            ...thing,
            head: middle,
            direction,
            length: size.deep,
            shank: size.wide,
            passes: [],
        });
        for (let row = -down; row <= up; row++) {
            const start = { ...middle, z: middle.z + row * (pitch ?? 0) };
            const bore = { start, direction, diameter: size.wide, length: size.deep };
            bench.cut(hole('pin hole', receives, contact.sideOfReceiving, cause, bore, row === 0 ? fastener : undefined));
        }
    });
};
