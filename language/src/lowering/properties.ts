// Properties against the table of what their owner may say. Knows the table's rows: no statement.
import { type Expression as DesignExpression, type Place, type Property, type Span, vocabulary } from 'casewright-shared/casework';
import type * as Ast from '../generated/ast.js';
import { isThrough, lowerPoints } from './curve-points.js';
import { isLooseWord, reportLooseWord, reportMaterialProperty } from './everyday-words.js';
import { lowerExpression, lowerPlaces } from './expressions.js';
import type { FileLowering } from './file-lowering.js';
import { reportStray } from './misplaced.js';
import { reportNotBuilt } from './not-built.js';
import { nextWord } from './source-text.js';
import { type Asking, describeShape, reportMisfit, takes } from './value-messages.js';
import { checked, lowerValue } from './values.js';
import { listWords, meantBy, nearestWord } from './words.js';

/** Who says something: `a material`, and what it may say. */
export interface Owner {
    readonly called: string;
    readonly table: vocabulary.Properties;
    /** What it can be `like`. */
    readonly kinds?: readonly string[];
    /** Other words that may begin a line here, for "did you mean". */
    readonly otherWords?: readonly string[];
}

/** Properties as they are read, in order, each once. */
export class PropertyCollector {
    readonly properties: Property[] = [];
    /** Stated, or probably meant by a misspelt one. */
    private readonly stated = new Map<string, Span>();

    /** Up to here a sentence goes on that is unknown or not built. */
    private sentenceEnd = 0;

    constructor(
        private readonly file: FileLowering,
        private readonly owner: Owner,
    ) {}

    /** Whether an offset is in a sentence that is unknown or not built, so that its words say nothing else. */
    isInSentence(offset: number): boolean {
        return offset < this.sentenceEnd;
    }

    /** Reads a property; gives back the clauses that do not belong to it but to its owner. */
    add(node: Ast.Property): readonly Ast.Clause[] {
        const { file, owner } = this;
        const name = node.name;
        if (!name) {
            return [];
        }
        const nameSpan = file.word(nameStart(file, node), name);
        if (nameSpan.start < this.sentenceEnd) {
            return [];
        }
        const row = Object.hasOwn(owner.table, name) ? owner.table[name]! : undefined;
        if (!row) {
            this.reportUnknown(node, name, nameSpan);
            this.sentenceEnd = file.endOfLine(nameSpan.start); // nobody knows what the rest of the line belongs to
            return [];
        }
        if (row.built === false) {
            reportNotBuilt(file, node, name, nameSpan);
            this.stated.set(name, nameSpan);
            if (row.sentence) {
                this.sentenceEnd = file.endOfLine(nameSpan.start);
            }
            return [];
        }
        const before = this.stated.get(name);
        if (before && !row.repeats) {
            this.reportTwice(name, nameSpan, before);
            return [];
        }
        this.stated.set(name, nameSpan);
        const clauses = node.clauses ?? [];
        const isPoints = isThrough(node) && takes(row.shape, 'points');
        const [own, others] = divideClauses(isPoints ? clauses.filter(({ $type }) => $type !== 'AtClause') : clauses, row);
        const property = this.lower(node, name, nameSpan, row, own);
        if (property) {
            this.properties.push(property);
        }
        return property
            ? others.filter(
                  (clause) => !(property.value?.is === 'worded' && clause.$type === 'InClause' && clause.target?.$type === 'Literal'),
              )
            : others;
    }

    private lower(
        node: Ast.Property,
        name: string,
        nameSpan: Span,
        row: vocabulary.PropertyRow,
        own: readonly Ast.Clause[],
    ): Property | undefined {
        const { file } = this;
        const span = file.span(node);
        const value = this.value(node, name, nameSpan, row);
        if (value === 'missing') {
            return undefined;
        }
        const at: Place[] = own.flatMap((clause) => (clause.$type === 'AtClause' ? lowerPlaces(file, clause.places, span) : []));
        const of = own.find((clause) => clause.$type === 'OfClause');
        const instead = own.find((clause) => clause.$type === 'ForClause');
        return {
            name,
            ...(value === undefined ? {} : { value }),
            at,
            ...(of ? { of: lowerExpression(file, of.target, span) } : {}),
            ...(instead ? { for: lowerExpression(file, instead.target, span) } : {}),
            properties: this.inBraces(node, name, row),
            span,
            nameSpan,
        };
    }

    private value(node: Ast.Property, name: string, nameSpan: Span, row: vocabulary.PropertyRow): DesignExpression | undefined | 'missing' {
        const { file } = this;
        const asking = { name, example: row.example, shape: row.shape };
        if (isThrough(node) && takes(row.shape, 'points')) {
            return checked(file, asking, lowerPoints(file, node), node);
        }
        if (node.value && node.extra) {
            const word: DesignExpression = {
                is: 'word',
                word: node.value.$type === 'Reference' ? (node.value.target?.$refText ?? '') : '',
                span: file.span(node.value),
            };
            const value = lowerExpression(file, node.extra, nameSpan);
            return checked(file, asking, { is: 'worded', word, value, span: file.between(word.span.start, value.span.end) }, node);
        }
        if (row.shape.is === 'text' && node.value?.$type === 'Reference' && !node.value.target?.ref) {
            return this.textWithoutQuotes(asking, file.span(node.value).start);
        }
        if (node.value) {
            const value = lowerValue(file, asking, node.value, nameSpan);
            return this.isSharedOut(name, value) ? this.reportSharedSize(name, nameSpan, value) : value;
        }
        const inwards = takes(row.shape, 'worded') ? node.clauses?.find((clause) => clause.$type === 'InClause') : undefined;
        if (inwards?.target) {
            const value = lowerExpression(file, inwards.target, nameSpan);
            const span = file.span(inwards);
            return checked(
                file,
                asking,
                {
                    is: 'worded',
                    word: { is: 'word', word: 'in', span: file.word(span.start, 'in') },
                    value,
                    span,
                },
                node,
            );
        }
        if (needsNoValue(row.shape) || (node.body && row.shape.is === 'block')) {
            return undefined;
        }
        file.report('PRP-002', nameSpan, {
            message: `\`${name}\` needs a value: ${describeShape(row.shape)}`,
            hint: `write it so: \`${row.example}\``,
            found: `\`${name}\` alone`,
            needed: describeShape(row.shape),
        });
        return 'missing';
    }

    /** `client Kiln Lane Pottery`: all its words are meant, and none of them begins another property. */
    private textWithoutQuotes(asking: Asking, start: number): DesignExpression {
        const words = /^[^\s;{}]+(?: +[A-Z0-9&][^\s;{}]*)*/.exec(this.file.text.slice(start))?.[0] ?? '';
        const span = this.file.word(start, words);
        this.sentenceEnd = span.end;
        reportMisfit(this.file, asking, { is: 'word', word: words, span });
        return { is: 'broken', span };
    }

    /** `divider Post[2] width equal`: boards share out what is clear between them, and cases share out a room. */
    private isSharedOut(name: string, value: DesignExpression): boolean {
        const lies = this.owner.kinds?.map((kind) => vocabulary.partKinds[kind]?.lies)[0];
        const isBoard = lies !== undefined && lies !== 'assembly' && Object.hasOwn(this.owner.table, 'clear');
        const isShare = (one: DesignExpression) => one.is === 'word' && Object.hasOwn(vocabulary.shareWords, one.word);
        return isBoard && name !== 'clear' && (value.is === 'list' ? value.items.some(isShare) : isShare(value));
    }

    private reportSharedSize(name: string, nameSpan: Span, value: DesignExpression): DesignExpression {
        const { file, owner } = this;
        const shares = file.text.slice(value.span.start, value.span.end);
        file.report('PLC-006', file.between(nameSpan.start, value.span.end), {
            message: `the \`${name}\` of ${owner.called} is one length; what is shared out is the openings between them`,
            hint: `write \`clear ${shares}\``,
            found: `\`${name} ${shares}\``,
            needed: `\`clear ${shares}\`, or one length`,
            fix: { title: `write \`clear\``, span: nameSpan, text: 'clear', safe: false },
        });
        return { is: 'broken', span: value.span };
    }

    private inBraces(node: Ast.Property, name: string, row: vocabulary.PropertyRow): readonly Property[] {
        const { file } = this;
        if (!node.body) {
            return [];
        }
        const table = row.shape.is === 'block' || row.shape.is === 'newName' ? row.shape.properties : undefined;
        if (!table) {
            const span = file.span(node.body);
            file.report('TXT-001', file.between(span.start, span.start + 1), {
                message: `nothing stands in braces after \`${name}\``,
                hint: `write it so: \`${row.example}\``,
                found: '`{`',
                needed: 'the end of the line',
            });
            return [];
        }
        return lowerProperties(file, { called: `\`${name}\``, table }, node.body.members ?? []);
    }

    private reportUnknown(node: Ast.Property, name: string, nameSpan: Span): void {
        const { file, owner } = this;
        const own = Object.keys(owner.table);
        const near = nearestWord(name, own);
        const kind = nearestWord(name, owner.otherWords ?? []);
        if (kind && !near && looksLikeStatement(node)) {
            file.report('PRP-006', nameSpan, {
                message: `nothing is called \`${name}\`; did you mean \`${kind}\`?`,
                found: `\`${name}\``,
                needed: 'a kind of part, or a word that begins a sentence',
                fix: { title: `write \`${kind}\``, span: nameSpan, text: kind, safe: false },
            });
            return;
        }
        if (near) {
            this.stated.set(near, nameSpan);
        }
        if (name === 'material' && this.isOfSomething()) {
            reportMaterialProperty(file, node, owner.called, nameSpan);
            return;
        }
        if (isLooseWord(name, node)) {
            reportLooseWord(file, node, name, nameSpan);
            return;
        }
        const clause = meantBy(name);
        if (!near && clause !== undefined && clauseWords.has(clause)) {
            this.reportClause(name, clause, nameSpan);
            return;
        }
        const isThing = Object.hasOwn(vocabulary.factKinds, name) || Object.hasOwn(vocabulary.recipeKinds, name);
        const known = own.length === 0 ? `${owner.called} has no properties` : `${owner.called} has ${listWords(own, 'and')}`;
        file.report('PRP-001', nameSpan, {
            message: `${owner.called} has no \`${name}\`${near ? `; did you mean \`${near}\`?` : ''}`,
            found: `\`${name}\``,
            needed: listWords(own, 'or', 40),
            ...(near
                ? { fix: { title: `write \`${near}\``, span: nameSpan, text: near, safe: false } }
                : { hint: isThing ? `a \`${name}\` is declared by itself, at the top of the file` : known }),
        });
    }

    /** Whether its owner is made of a material: a part or a case. */
    private isOfSomething(): boolean {
        return this.owner.kinds?.some((kind) => Object.hasOwn(vocabulary.partKinds, kind)) ?? false;
    }

    /** `at 10in under top`: a clause that begins with another word. */
    private reportClause(name: string, clause: string, nameSpan: Span): void {
        this.file.report('PRP-001', nameSpan, {
            message: `${this.owner.called} has no \`${name}\`; did you mean \`${clause}\`?`,
            found: `\`${name}\``,
            needed: `\`${clause}\``,
            fix: { title: `write \`${clause}\``, span: nameSpan, text: clause, safe: false },
        });
    }

    private reportTwice(name: string, span: Span, before: Span): void {
        this.file.report('PRP-003', span, {
            message: `\`${name}\` is stated twice`,
            hint: 'keep one of the two',
            found: `\`${name}\` for the second time`,
            needed: `\`${name}\` once`,
            related: [{ span: before, message: `\`${name}\` is stated here first` }],
        });
    }

    /** Reports what must be said and is not. */
    checkRequired(at: Span, name: string): void {
        for (const [property, row] of Object.entries(this.owner.table)) {
            if (row.required && !this.stated.has(property)) {
                this.file.report('PRP-004', at, {
                    message: `${name} needs \`${property}\``,
                    hint: `add it, such as \`${row.example}\``,
                    found: `${name} without \`${property}\``,
                    needed: `\`${property}\`: ${describeShape(row.shape)}`,
                });
            }
        }
    }
}

/** The properties in a block in which nothing else may stand. */
export function lowerProperties(file: FileLowering, owner: Owner, members: readonly Ast.Member[]): readonly Property[] {
    const collector = new PropertyCollector(file, owner);
    for (const member of members) {
        if (member.$type === 'Property') {
            for (const clause of collector.add(member)) {
                reportStray(file, clause, owner.called);
            }
        } else {
            reportStray(file, member, owner.called);
        }
    }
    return collector.properties;
}

/** Of `7 layers of Veneer` the name is the second word. */
function nameStart(file: FileLowering, node: Ast.Property): number {
    const start = file.span(node).start;
    const value = node.value?.$cstNode;
    return value && value.offset <= start ? nextWord(file.text, value.end) : start;
}

function needsNoValue(shape: vocabulary.Shape): boolean {
    return shape.is === 'nothing' || shape.is === 'truth';
}

/** `shelv Tier[4] at 17in`: a name, and then more, is rather a part than a property. */
function looksLikeStatement({ body, clauses, value }: Ast.Property): boolean {
    const first = value?.$type === 'List' ? value.items[0] : value;
    return (
        body !== undefined || (clauses?.length ?? 0) > 0 || first === undefined || first.$type === 'Reference' || first.$type === 'Index'
    );
}

/** Words that begin a clause, and that a word of everyday speech may stand for. */
const clauseWords: ReadonlySet<string> = new Set(['above', 'below', 'in', 'of']);

const clauseWord: Readonly<Record<string, vocabulary.ClauseWord>> = {
    AtClause: 'at',
    OfClause: 'of',
    ForClause: 'for',
    OnClause: 'on',
    FromClause: 'from',
};

function divideClauses(clauses: readonly Ast.Clause[], row: vocabulary.PropertyRow): [Ast.Clause[], Ast.Clause[]] {
    const own: Ast.Clause[] = [];
    const others: Ast.Clause[] = [];
    for (const clause of clauses) {
        const word = clauseWord[clause.$type];
        (word !== undefined && row.clauses?.includes(word) ? own : others).push(clause);
    }
    return [own, others];
}
