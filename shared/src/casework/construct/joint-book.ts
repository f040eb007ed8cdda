/**
 * Which joint holds between which parts of a case and of the cases in it. What the sentences mean is read once; whether two parts meet is
 * asked pair by pair, so that the size of one part waits only for the places of those it may be joined to.
 */
import type { Expression, JoinStatement } from '../design/design.js';
import type { CaseBuild } from './case-build.js';
import type { Construction } from './construction.js';
import { allParts, withDescendants } from './descendants.js';
import { type Meeting, makeJoint, meetingOf, type PlacedJoint, type Recipe, recipeOf, reportApart, type SaidJoint } from './joints.js';
import { axes } from './kinds.js';
import type { PlacedPart } from './placed-part.js';
import type { Scope } from './scope.js';
import { selectParts } from './select.js';

/** One pair of selectors of a `join`, and the parts they mean. */
interface Sentence extends SaidJoint {
    readonly left: ReadonlySet<PlacedPart>;
    readonly right: ReadonlySet<PlacedPart>;
    /** The words at which a pair is reported that does not meet: those that both selectors name. */
    readonly named: Expression | undefined;
    /** How narrowly it was said: the narrower of two joints of one pair holds. */
    readonly rank: number;
}

interface Candidate {
    readonly sentence: Sentence;
    readonly enters: PlacedPart;
    readonly receives: PlacedPart;
    readonly at: Meeting;
}

export class JointBook {
    private readonly sentences: readonly Sentence[];
    private readonly byPart = new Map<PlacedPart, Sentence[]>();
    /** The joints with which a part enters others, once they were asked for. */
    private readonly entering = new Map<PlacedPart, readonly PlacedJoint[]>();
    private readonly turns = new Map<PlacedJoint, number>();
    private readonly recipes = new Map<SaidJoint, Recipe>();

    /** Made when all parts are there. */
    constructor(
        private readonly construction: Construction,
        private readonly build: CaseBuild,
    ) {
        this.sentences = withDescendants(build).flatMap((one) => sentencesOf(construction, one));
        for (const sentence of this.sentences) {
            for (const part of new Set([...sentence.left, ...sentence.right])) {
                const known = this.byPart.get(part);
                if (known) known.push(sentence);
                else this.byPart.set(part, [sentence]);
            }
        }
    }

    /** All joints, in the order of the text. Reports what is named and does not meet. */
    all(): readonly PlacedJoint[] {
        const found = allParts(this.build).flatMap((part) => this.of(part));
        for (const sentence of this.sentences) this.reportApart(sentence);
        const turnOf = (joint: PlacedJoint): number => this.turns.get(joint) ?? -1;
        return found.sort((a, b) => turnOf(a) - turnOf(b));
    }

    /** The joints with which a part enters others: the narrower rule wins for each pair. */
    of(part: PlacedPart): readonly PlacedJoint[] {
        let joints = this.entering.get(part);
        if (!joints) {
            joints = this.findEntering(part);
            this.entering.set(part, joints);
        }
        return joints;
    }

    private findEntering(part: PlacedPart): readonly PlacedJoint[] {
        const winners = new Map<PlacedPart, Candidate>();
        for (const candidate of this.candidatesOf(part)) {
            const other = candidate.enters === part ? candidate.receives : candidate.enters;
            const before = winners.get(other);
            if (!before || candidate.sentence.rank > before.sentence.rank) winners.set(other, candidate);
            else if (candidate.sentence.rank === before.sentence.rank) this.reportTwice(before, candidate);
        }
        const joints = this.ownJoints(part).filter((joint) => !winners.has(joint.receives));
        for (const { sentence, enters, receives, at } of winners.values()) {
            if (enters !== part) continue;
            const joint = makeJoint(this.construction, sentence, this.recipe(sentence), { enters, receives, at });
            this.turns.set(joint, this.sentences.indexOf(sentence));
            joints.push(joint);
        }
        return joints;
    }

    private candidatesOf(part: PlacedPart): readonly Candidate[] {
        const found: Candidate[] = [];
        for (const sentence of this.byPart.get(part) ?? []) {
            const { left, right } = sentence;
            const consider = (other: PlacedPart): void => {
                if (other === part) return;
                const mayEnter = left.has(part) && right.has(other);
                // where either may enter the other it is the one that was written later, and so fits against the first
                const isEntering = mayEnter && (part.order > other.order || !(left.has(other) && right.has(part)));
                const [enters, receives] = isEntering ? [part, other] : [other, part];
                const at = meetingOf(this.construction, enters, receives);
                if (at) found.push({ sentence, enters, receives, at });
            };
            if (left.has(part)) for (const other of right) consider(other);
            if (right.has(part)) for (const other of left) if (!(left.has(part) && right.has(other))) consider(other);
        }
        return found;
    }

    private recipe(said: SaidJoint): Recipe {
        let recipe = this.recipes.get(said);
        if (!recipe) {
            recipe = recipeOf(this.construction, said);
            this.recipes.set(said, recipe);
        }
        return recipe;
    }

    /** `shelf Tier with Pinned`: joined so to whatever it runs up to, where no sentence says otherwise. */
    private ownJoints(part: PlacedPart): PlacedJoint[] {
        const said = part.description.value?.joint;
        const extents = part.extents.value;
        if (!said || !extents) return [];
        const paths = new Set(axes.flatMap((axis) => [extents[axis].lo.bound.part, extents[axis].hi.bound.part]));
        const joint: SaidJoint = { treatment: said.said, onSite: false, span: said.said.span, scope: said.scope };
        return part.build.parts
            .filter((other) => paths.has(other.path))
            .map((receives) => {
                const at = meetingOf(this.construction, part, receives);
                return makeJoint(this.construction, joint, this.recipe(joint), { enters: part, receives, at });
            });
    }

    private reportTwice(before: Candidate, again: Candidate): void {
        if (before.sentence.span === again.sentence.span) return;
        const { enters, receives } = again;
        this.construction.report('PRP-003', {
            span: again.sentence.span,
            message: `\`${enters.name}\` is joined to \`${receives.name}\` twice, and neither rule is narrower`,
            hint: 'name the pair in one of them, or take it out with `except`',
            related: [{ span: before.sentence.span, message: 'the other joint' }],
        });
    }

    private reportApart({ left, right, named }: Sentence): void {
        if (!named) return;
        const [only] = left;
        if (only && left.size === 1 && right.size === 1 && right.has(only)) {
            this.construction.report('NAM-007', {
                span: named.span,
                message: `\`${only.name}\` cannot be joined to itself`,
                hint: 'name the part that it is joined to',
                found: `\`${only.name}\` on both sides`,
                needed: 'two parts',
            });
        }
        for (const a of left)
            for (const b of right) if (a !== b && !meetingOf(this.construction, a, b)) reportApart(this.construction, a, b, named);
    }
}

function sentencesOf(construction: Construction, build: CaseBuild): readonly Sentence[] {
    return build.sentences.flatMap(({ statement, scope }) =>
        statement.is === 'join' && statement.joint ? pairsOfSelectors(construction, statement, statement.joint, build, scope) : [],
    );
}

function pairsOfSelectors(
    construction: Construction,
    statement: JoinStatement,
    treatment: SaidJoint['treatment'],
    build: CaseBuild,
    scope: Scope,
): readonly Sentence[] {
    const { onSite, span } = statement;
    return statement.left.flatMap((left) =>
        statement.right.map((right) => ({
            treatment,
            onSite,
            span,
            scope,
            left: new Set(selectParts(construction, left, build, scope)),
            right: new Set(selectParts(construction, right, build, scope)),
            named: left.is !== 'every' && right.is !== 'every' ? right : undefined,
            rank: widthOf(left) + widthOf(right),
        })),
    );
}

/** As for `every` that describes parts: 3 by name, 2 by kind within something, 1 by kind. */
function widthOf(selector: Expression): number {
    if (selector.is !== 'every' || selector.kind === undefined) return 3;
    return selector.within ? 2 : 1;
}
