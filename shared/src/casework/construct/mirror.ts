/**
 * Mirrored cases. They are worked out as they are written, and shown in the mirror: each is turned over about the middle of its room.
 */
import type { Box } from '../../geometry/index.js';
import { boxBetween } from '../../geometry/index.js';
import type { FaceName } from '../model/casework.js';
import type { Measure } from '../model/measure.js';
import type { CaseBuild } from './case-build.js';
import { minus, numberOf, plus } from './measures.js';
import { noOne } from './room.js';

/** The way from where things were worked out to where they stand: over one middle or over several. */
export class Mirror {
    /** Sums of left and right of each case that is turned over, innermost first. */
    private readonly sums: readonly (Measure | undefined)[];

    constructor(build: CaseBuild) {
        const turned: CaseBuild[] = [];
        for (let one: CaseBuild | undefined = build; one; one = one.parent) if (one.mirrored) turned.push(one);
        this.sums = turned.map((one) => {
            const [left, right] = [one.room.face('left', noOne)?.measure, one.room.face('right', noOne)?.measure];
            return one.parent ? plus(left, right, { kind: 'between', about: ['the left', `the right of ${one.name}`] }) : right;
        });
    }

    /** Whether left has become right. */
    get isTurned(): boolean {
        return this.sums.length % 2 === 1;
    }

    /** Where something left to right stands. */
    place(measure: Measure | undefined): Measure | undefined {
        return this.sums.reduce((at, sum) => minus(sum, at, { kind: 'operation', about: ['in the mirror'] }), measure);
    }

    abscissa(x: number): number {
        return this.sums.reduce((at, sum) => numberOf(sum) - at, x);
    }

    box(box: Box): Box {
        if (this.sums.length === 0) return box;
        return boxBetween({ ...box.least, x: this.abscissa(box.most.x) }, { ...box.most, x: this.abscissa(box.least.x) });
    }

    face<Name extends FaceName>(face: Name): FaceName {
        if (!this.isTurned) return face;
        return face === 'left' ? 'right' : face === 'right' ? 'left' : face;
    }
}
