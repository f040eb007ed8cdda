// What describes a thing, gathered from its head and its body. Knows which phrase is which: no statement.
import {
    type Expression as DesignExpression,
    type EdgeStatement,
    type LeaveStatement,
    type OpeningDeclaration,
    type Phrases,
    type Place,
    type Span,
    vocabulary,
} from 'casewright-shared/casework';
import type * as Ast from '../generated/ast.js';
import { checkArguments } from './arguments.js';
import { lowerExpression, lowerPlaces } from './expressions.js';
import type { FileLowering } from './file-lowering.js';
import { reportStray } from './misplaced.js';
import { isBuilt } from './not-built.js';
import { type Owner, PropertyCollector } from './properties.js';
import { lowerTreatment } from './recipes.js';
import { nextWord } from './source-text.js';
import { declarationSpan, describeName, listKinds, reportUnknownName } from './unknown-names.js';

/** Mutable phrases. */
type Gathered = { -readonly [Key in keyof Phrases]: Phrases[Key] extends readonly (infer Item)[] ? Item[] : Phrases[Key] };

export class PhraseCollector {
    readonly phrases: Gathered;
    private readonly collector: PropertyCollector;
    private readonly stated = new Map<string, Span>();

    constructor(
        private readonly file: FileLowering,
        private readonly owner: Owner,
        /** What is put somewhere; a design by itself is not. */
        private readonly hasPlace: boolean,
    ) {
        this.collector = new PropertyCollector(file, owner);
        this.phrases = { at: [], openings: [], mirrored: false, properties: this.collector.properties, edges: [], leaves: [] };
    }

    /** Reads phrases in their order of writing. */
    addAll(phrases: readonly Ast.Phrase[]): void {
        for (let index = 0; index < phrases.length; index++) {
            const phrase = phrases[index]!;
            if (phrase.$type === 'Property') {
                this.addClauses(this.collector.add(phrase), phrases[index + 1]);
            } else if (this.collector.isInSentence(this.file.span(phrase).start)) {
                // its words belong to a sentence that is not built
            } else if (phrase.$type === 'EdgeStatement') {
                this.phrases.edges.push(this.lowerEdge(phrase));
            } else if (this.addClause(phrase, phrases[index + 1])) {
                index++;
            }
        }
    }

    private addClauses(clauses: readonly Ast.Clause[], after: Ast.Phrase | undefined): void {
        for (let index = 0; index < clauses.length; index++) {
            if (this.addClause(clauses[index]!, clauses[index + 1] ?? after)) {
                index++;
            }
        }
    }

    /** Reads a clause; whether it took the next one with it: `at left` and `of Floor`. */
    private addClause(clause: Ast.Clause, next: Ast.Phrase | undefined): boolean {
        const { file, phrases } = this;
        const span = file.span(clause);
        switch (clause.$type) {
            case 'AtClause':
                return this.addPlaces(clause, next, span);
            case 'OfClause':
                if (this.isFirst('of', span) && clause.target) {
                    phrases.of = this.lowerOf(clause.target, span);
                }
                return false;
            case 'InClause':
                this.addInside(clause.target, span);
                return false;
            case 'RoomClause':
                if (this.canBePlaced('above', span) && this.isFirst('above', span) && clause.target) {
                    phrases.room = {
                        relation: clause.relation as NonNullable<Phrases['room']>['relation'],
                        target: lowerExpression(file, clause.target, span),
                        span,
                    };
                }
                return false;
            case 'LikeClause':
                this.addLike(clause, span);
                return false;
            case 'WithClause':
                if (this.isFirst('with', span)) {
                    const joint = lowerTreatment(file, clause.treatment, 'joint');
                    if (joint) {
                        phrases.joint = joint;
                    }
                }
                return false;
            case 'AsClause':
                phrases.openings.push(...lowerOpenings(file, clause));
                return false;
            case 'MirroredClause':
                phrases.mirrored = true;
                return false;
            default:
                reportStray(file, clause, this.owner.called);
                return false;
        }
    }

    /** `in Bank`: the room a part is in. */
    addInside(target: Ast.Expression | undefined, span: Span): void {
        if (this.canBePlaced('in', span) && this.isFirst('in', span) && target) {
            this.phrases.inside = lowerExpression(this.file, target, span, { words: noWords, kinds: ['opening', 'case'] });
        }
    }

    addLeave(node: Ast.Leave): void {
        this.phrases.leaves.push(lowerLeave(this.file, node));
    }

    private addPlaces(clause: Ast.AtClause, next: Ast.Phrase | undefined, span: Span): boolean {
        const { file } = this;
        if (!this.canBePlaced('at', span) || !this.isFirst('at', span)) {
            return false;
        }
        const places = lowerPlaces(file, clause.places, span);
        const last = places.at(-1);
        const way = last && wayWithout(last);
        if (way && next?.$type === 'OfClause' && next.target && this.isPlaceOf(way, next.target)) {
            const target = lowerExpression(file, next.target, span);
            const at = file.between(last.span.start, file.span(next).end);
            this.phrases.at.push(...places.slice(0, -1), { relation: `${way} of`, target, span: at });
            return true;
        }
        this.phrases.at.push(...places);
        return false;
    }

    /** Whether `left of X` is a way and a face, and not `left`, and a material. */
    private isPlaceOf(way: 'left' | 'right', target: Ast.Expression): boolean {
        if (target.$type === 'MemberAccess') {
            return true;
        }
        const name = this.file.visible.declaredBy(target);
        if (!name) {
            return target.$type === 'Reference' && target.target?.$refText in vocabulary.roomFaces;
        }
        if (name.sort === 'let' || (name.sort === 'parameter' && (name.node as Ast.Parameter).type === undefined)) {
            const span = this.file.span(target);
            this.file.report('PLC-001', span, {
                message: `\`at ${way} of ${name.name}\` can be read in two ways: a place beside \`${name.name}\`, or a part at the ${way} that is made of it`,
                hint: `write \`of ${name.name} at ${way}\` for the material, or name a part for the place`,
                found: describeName(name),
                needed: 'a part or a material',
                related: [{ span: declarationSpan(this.file, name), message: `\`${name.name}\` is declared here` }],
            });
            return false;
        }
        return name.sort === 'part' || name.sort === 'opening' || name.sort === 'build' || name.kind === 'curve';
    }

    private lowerOf(target: Ast.Expression, span: Span): DesignExpression {
        return lowerExpressionOfThing(this.file, target, span, ofWhat);
    }

    private addLike(clause: Ast.LikeClause, span: Span): void {
        const like = this.isFirst('like', span) ? lowerLike(this.file, clause, span, this.owner.kinds ?? []) : undefined;
        if (like) {
            this.phrases.like = like;
        }
    }

    private lowerEdge(node: Ast.EdgeStatement): EdgeStatement {
        const { file } = this;
        const span = file.span(node);
        const edges = wordsAfter(file, span.start + 'edge'.length, node.edges ?? []);
        const form = this.formOf(node, edges);
        if (form) {
            return { edges, form, span };
        }
        const treatment = lowerTreatment(file, node.treatment, 'edging');
        if (treatment && this.owner.kinds?.some((kind) => vocabulary.partKinds[kind]?.lies === 'assembly')) {
            file.report('NAM-013', file.word(span.start, 'edge'), {
                message: `${this.owner.called} has no wood of its own: its edges are those of its parts`,
                hint: 'say it of the parts, such as `every side { edge front ... }`',
                found: 'work on an edge of a case',
                needed: 'a part that has this edge',
            });
        }
        return {
            edges,
            ...(node.clause ? { at: lowerPlaces(file, node.clause.places, span) } : {}),
            ...(treatment ? { treatment } : {}),
            span,
        };
    }

    /** `edge front bevelled`, unless an edging is called so. */
    private formOf({ treatment }: Ast.EdgeStatement, edges: EdgeStatement['edges']): EdgeStatement['form'] {
        if (treatment?.$type !== 'RecipeReference' || this.file.target(treatment.recipe)) {
            return undefined;
        }
        const word = treatment.recipe?.$refText;
        if (word !== 'square' && word !== 'bevelled') {
            return undefined;
        }
        const other = edges.find(({ name }) => name !== 'front');
        if (other) {
            this.file.report('PRP-005', other.span, {
                message: `only a front edge meets a curve, so only that is \`${word}\`; the ${other.name} edge is sawn as it lies`,
                hint: `say it of the front edge: \`edge front ${word}\``,
                found: `\`${other.name}\``,
                needed: '`front`',
            });
        }
        return word;
    }

    private canBePlaced(word: string, span: Span): boolean {
        if (!this.hasPlace) {
            this.file.report('NAM-013', this.file.word(span.start, this.file.text.slice(span.start, span.end).split(/\s/)[0] ?? word), {
                message: `${this.owner.called} that is declared by itself is put somewhere only where it is used`,
                hint: 'say it of the part that is made of it',
                found: `\`${word}\``,
                needed: 'a size, a material, or parts',
            });
        }
        return this.hasPlace;
    }

    private isFirst(word: string, span: Span): boolean {
        const before = this.stated.get(word);
        if (before) {
            this.file.report('PRP-003', span, {
                message: `\`${word}\` is stated twice`,
                hint: 'keep one of the two',
                found: `\`${word}\` for the second time`,
                needed: `\`${word}\` once`,
                related: [{ span: before, message: `\`${word}\` is stated here first` }],
            });
            return false;
        }
        this.stated.set(word, span);
        return true;
    }
}

const noWords: ReadonlySet<string> = new Set();
const ofWhat = ['material', ...Object.entries(vocabulary.partKinds).flatMap(([name, kind]) => (kind.design ? [name] : []))];

/** The name of a thing, or a design with its arguments: `WalnutPly`, `Dovetailed(face = Walnut)`. */
function lowerExpressionOfThing(file: FileLowering, node: Ast.Expression, around: Span, kinds: readonly string[]): DesignExpression {
    const value = lowerExpression(file, node, around, { words: noWords, kinds });
    const named = value.is === 'call' ? value.receiver : value;
    const name = named.is === 'name' ? file.nameOf(named.id) : undefined;
    if (value.is === 'call' && name?.sort === 'design') {
        checkArguments(file, name, value.arguments);
    }
    if (!name || name.sort === 'let' || name.sort === 'parameter' || kinds.includes(name.kind)) {
        if (name?.sort === 'part') {
            return reportNoMaterial(file, named, name, value.span);
        }
        return named.is === 'name' || named.is === 'broken' || named.is === 'conditional' || named.is === 'member'
            ? value
            : reportNoMaterial(file, named, undefined, value.span);
    }
    return reportNoMaterial(file, named, name, value.span);
}

function reportNoMaterial(
    file: FileLowering,
    at: DesignExpression,
    name: ReturnType<FileLowering['nameOf']>,
    span: Span,
): DesignExpression {
    const found = name ? `\`${name.name}\`, ${describeName(name)}` : `\`${file.text.slice(at.span.start, at.span.end)}\``;
    if (name?.sort === 'part' && file.visible.hiddenBy(name)?.kind === 'material') {
        return { is: 'broken', span }; // `back Ply`, where `back of Ply` was meant: it is reported that the one name hides the other
    }
    file.report('NAM-007', at.span, {
        message: name
            ? `\`${name.name}\` is ${describeName(name)}; a part is made of a material or of a case`
            : `${found} stands where a material is needed`,
        hint:
            name?.sort === 'part'
                ? `a place at \`${name.name}\` is said with a way, such as \`at 1in above ${name.name}\`; after \`of\` stands a material`
                : 'name a material, such as `of WalnutPly`, or a case that is declared by itself',
        found,
        needed: 'a material or a case',
        ...(name ? { related: [{ span: declarationSpan(file, name), message: `\`${name.name}\` is declared here` }] } : {}),
    });
    return { is: 'broken', span };
}

/** The `like` of a part or a fact. */
export function lowerLike(file: FileLowering, clause: Ast.LikeClause, span: Span, kinds: readonly string[]): Phrases['like'] {
    const text = clause.target?.$refText;
    if (!text) {
        return undefined;
    }
    const value = file.target(clause.target);
    if (!value) {
        reportUnknownName(file, text, clause, file.spanOfCst(clause.target.$refNode), kinds);
        return undefined;
    }
    if (!isBuilt(file, value)) {
        return undefined;
    }
    if (!kinds.includes(value.kind)) {
        const at = file.spanOfCst(clause.target.$refNode);
        file.report('NAM-007', at, {
            message: `\`${text}\` is ${describeName(value)}; it can only be like ${listKinds(kinds)}`,
            hint: `name ${listKinds(kinds)}`,
            found: `\`${text}\`, ${describeName(value)}`,
            needed: listKinds(kinds),
            related: [{ span: declarationSpan(file, value), message: `\`${text}\` is declared here` }],
        });
        return undefined;
    }
    return { id: file.id(value), span };
}

function lowerOpenings(file: FileLowering, clause: Ast.AsClause): OpeningDeclaration[] {
    return (clause.names ?? []).flatMap((opening) => {
        const name = file.names.nameOf(opening);
        if (!name) {
            return [];
        }
        const span = file.span(opening);
        return [{ is: 'opening' as const, id: file.id(name), name: name.name, span, nameSpan: span }];
    });
}

function lowerLeave(file: FileLowering, node: Ast.Leave): LeaveStatement {
    const span = file.span(node);
    return {
        faces: wordsAfter(file, span.start + 'leave'.length, node.faces ?? []),
        ...(node.size === undefined ? {} : { size: lowerExpression(file, node.size, span) }),
        for: lowerExpression(file, node.target, span),
        span,
    };
}

/** Words of a list, each with its place in the text. */
function wordsAfter(file: FileLowering, from: number, words: readonly string[]): { name: string; span: Span }[] {
    let at = from;
    return words.map((name) => {
        const start = nextWord(file.text, at);
        at = start + name.length;
        return { name, span: file.word(start, name) };
    });
}

function wayWithout(place: Place): 'left' | 'right' | undefined {
    const { distance } = place;
    return place.relation === undefined && distance?.is === 'word' && (distance.word === 'left' || distance.word === 'right')
        ? distance.word
        : undefined;
}
