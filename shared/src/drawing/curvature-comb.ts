/**
 * The curvature comb of a line: teeth across it, as long as it is bent there. A fair line has a comb whose tips make a fair line too; a
 * bump, a flat spot or a jump, which the eye cannot see on the line, stands out in it.
 */
import {
    add,
    type Curve,
    type CurveFeature,
    distance,
    type Point,
    polylineRuns,
    runMiddle,
    scale,
    subtract,
    surveyOf,
} from '../geometry/index.js';
import type { Drawing, DrawnLine, DrawnText, LineRole } from './drawing.js';
import { runsBetween } from './stretch.js';
import { wrapped } from './wrapped-text.js';

export interface CombWords {
    /** `Sweep: depth over height` */
    readonly title: string;
    readonly over: 'height' | 'width';
    /** Between two places that are named, in millimetres. */
    readonly spacing: number;
    /** `24in` */
    say(millimetres: number): string;
    /** `395in`, or `straight` */
    sayRadius(millimetres: number): string;
    /** `flat spot` */
    sayFeature(feature: CurveFeature): string;
    /** Sentences that stand under the comb. */
    readonly notes: readonly string[];
}

/** What a line may take along and across on a sheet of letter paper or A4 with the words around it, in millimetres. */
const room = { along: 185, across: 60 } as const;
const longestTooth = 40;
const teeth = 120;
const small = 2.5;
const large = 4;
/** From one line of the small text to the next. */
const lineHeight = 4.5;
/** Letters of the small text on a line of the page. */
const lineOfText = 84;

/** The comb on a page, at the scale it says. */
export function combDrawing(curve: Curve, words: CombWords): Drawing {
    const comb = new Comb(curve, words);
    comb.drawLine();
    comb.drawTeeth();
    comb.nameThePlaces();
    comb.nameTheFeatures();
    comb.writeAround();
    return { title: `Fairness: ${words.title}`, lines: comb.lines, texts: comb.texts };
}

class Comb {
    readonly lines: DrawnLine[] = [];
    readonly texts: DrawnText[] = [];
    private readonly factor: number;
    private readonly toothOfBend: number;
    private readonly least: number;

    constructor(
        private readonly curve: Curve,
        private readonly words: CombWords,
    ) {
        const { from, to } = curve.span;
        const depths = curve.sample((to - from) / 1000).map(({ y }) => y);
        this.least = Math.min(...depths);
        this.factor = Math.min(1, room.along / (to - from), room.across / Math.max(...depths.map((depth) => depth - this.least), 1));
        const bend = 1 / curve.leastRadius().radius;
        this.toothOfBend = bend > 0 ? longestTooth / bend : 0;
    }

    private get stands(): boolean {
        return this.words.over === 'height';
    }

    /** A line over the height stands, its front to the right; one over the width lies, its front to the viewer. */
    private place({ x, y }: Point): Point {
        const along = (x - this.curve.span.from) * this.factor;
        const across = (y - this.least) * this.factor;
        return this.stands ? { x: across, y: along } : { x: along, y: -across };
    }

    private draw(role: LineRole, points: readonly Point[]): void {
        this.lines.push({ role, runs: polylineRuns(points), closed: false });
    }

    private write(text: string, at: Point, anchor: DrawnText['anchor'], height = small, turned = false): void {
        this.texts.push({ text, at, height, anchor, turned });
    }

    drawLine(): void {
        const { from, to } = this.curve.span;
        // Changing along for across, or turning across round, is a reflection: what turned left turns right.
        const runs = runsBetween(this.curve, from, to).map((run) => ({
            from: this.place(run.from),
            to: this.place(run.to),
            bulge: -run.bulge,
        }));
        this.lines.push({ role: 'curve', runs, closed: false });
    }

    /** Teeth between each two breaks, so that a jump shows as a step of their tips. */
    drawTeeth(): void {
        const { breaks, length } = this.curve;
        const stops = [0, ...breaks, length];
        for (let index = 0; index + 1 < stops.length; index++) {
            const [from, to] = [stops[index]!, stops[index + 1]!];
            const count = Math.max(2, Math.round((teeth * (to - from)) / length));
            const tips: Point[] = [];
            for (let tooth = 0; tooth <= count; tooth++) {
                // on the near side of a break, where the bend is still that of this stretch
                const along = tooth === count ? to - (to - from) * 1e-9 : from + ((to - from) * tooth) / count;
                const root = this.place(this.curve.pointAt(along));
                const tip = this.tipAt(along);
                tips.push(tip);
                if (distance(root, tip) > 0.05) this.draw('comb', [root, tip]);
            }
            this.draw('envelope', tips);
        }
    }

    /** Out over a belly, and to the other side of the line in a hollow. */
    private tipAt(along: number): Point {
        const tangent = this.curve.tangentAt(along);
        const outward = this.stands ? { x: tangent.x, y: -tangent.y } : { x: -tangent.y, y: -tangent.x };
        return add(this.place(this.curve.pointAt(along)), scale(outward, -this.curve.curvatureAt(along) * this.toothOfBend));
    }

    /** Places on the side of the line where there are no teeth, as many as there is room for. */
    nameThePlaces(): void {
        const { from, to } = this.curve.span;
        const { spacing, say, sayRadius } = this.words;
        const step = spacing * Math.ceil((this.stands ? 6 : 12) / (spacing * this.factor));
        const count = Math.floor((to - from) / step - 0.4) + 1;
        const places = [...Array.from({ length: count }, (_, index) => from + index * step), to];
        for (const x of places) {
            const at = this.place({ x, y: this.curve.valueAt(x).value });
            const bend = this.curve.curvatureAt(this.curve.distanceAt(x));
            const radius = sayRadius(1 / Math.abs(bend));
            const text = `${say(x)}: ${radius === 'straight' ? radius : `R ${radius}`}`;
            const toothless = bend * this.toothOfBend > 0.5 ? 1 : -1;
            const way = [toothless, -toothless].find((side) => this.isClear(at, side, text));
            if (way === undefined) continue;
            if (this.stands) {
                this.draw('dimension', [at, add(at, { x: way * 3, y: 0 })]);
                this.write(text, add(at, { x: way * 4, y: -small / 2 }), way > 0 ? 'start' : 'end');
            } else {
                this.draw('dimension', [at, add(at, { x: 0, y: -way * 3 })]);
                this.write(text, add(at, { x: small / 2, y: -way * 4 }), way > 0 ? 'end' : 'start', small, true);
            }
        }
    }

    /** Whether no tooth, of this bend or of one beside it, goes through a text that stands beside a place of the line, out (1) or in (-1). */
    private isClear(at: Point, side: number, text: string): boolean {
        const reach = 4 + text.length * small * 0.75;
        return !this.lines.some(({ role, runs }) => {
            const [tooth] = runs;
            if (role !== 'comb' || !tooth) return false;
            return [0.25, 0.5, 0.75, 1].some((share) => {
                const { x, y } = add(tooth.from, scale(subtract(tooth.to, tooth.from), share));
                const [out, along] = this.stands ? [side * (x - at.x), y - at.y] : [side * (at.y - y), x - at.x];
                return out > 2 && out < reach && Math.abs(along) < small;
            });
        });
    }

    /** What the eye or the hand would find, on the outer side of the comb. */
    nameTheFeatures(): void {
        for (const feature of surveyOf(this.curve)) {
            const at = this.place(feature.point);
            const out = this.stands ? { x: longestTooth + 6, y: 0 } : { x: 0, y: -longestTooth - 6 };
            const end = add(at, out);
            this.draw('dimension', [at, end]);
            const text = `${this.words.sayFeature(feature)} ${this.words.say(feature.point.x)}`;
            if (this.stands) this.write(text, add(end, { x: 1.5, y: -small / 2 }), 'start');
            else this.write(text, add(end, { x: small / 2, y: -1.5 }), 'end', small, true);
        }
    }

    writeAround(): void {
        const points = this.lines.flatMap(({ runs }) => runs.flatMap((run) => [run.from, runMiddle(run), run.to]));
        const left = Math.min(...points.map(({ x }) => x)) - (this.stands ? 32 : 4);
        const top = Math.max(...points.map(({ y }) => y)) + (this.stands ? 8 : 34);
        const bottom = Math.min(...points.map(({ y }) => y)) - (this.stands ? 10 : 34);
        const legend = [
            'Wide line: the curve. Teeth across it are as long as it is bent there, out over a belly, in over a hollow.',
            `Scale of the line 1 : ${(1 / this.factor).toFixed(2)}. The longest tooth stands for the least radius, ${this.words.sayRadius(this.curve.leastRadius().radius)}.`,
        ].flatMap((line) => wrapped(line, lineOfText));
        const head = top + legend.length * lineHeight;
        this.write(this.words.title, { x: left, y: head + 3 }, 'start', large);
        this.writeLines(legend, { x: left, y: head - lineHeight });
        this.writeLines(
            this.words.notes.flatMap((note) => wrapped(note, lineOfText)),
            { x: left, y: bottom },
        );
    }

    private writeLines(lines: readonly string[], from: Point): void {
        for (const [index, line] of lines.entries()) this.write(line, { x: from.x, y: from.y - index * lineHeight }, 'start');
    }
}
