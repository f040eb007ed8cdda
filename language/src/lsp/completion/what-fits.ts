// What fits at a cursor, by the words before it. Knows the order of words in statements, and which block the statement is in.
import { vocabulary } from 'casewright-shared/casework';
import { type Dimension, dimension } from 'casewright-shared/quantity';
import { rules } from 'casewright-shared/rules';
import { CompletionItemKind } from 'vscode-languageserver';
import type { DeclaredName } from '../../scoping/declared-name.js';
import { own, type Sayable, sayableOfKind, sayableOfStep } from '../vocabulary-at.js';
import { type BlockKind, sayableIn } from './block-kind.js';
import type { Cursor } from './cursor.js';
import type { Offer } from './offer.js';
import { connectives, propertiesNotSaid, relations } from './phrases.js';
import { offerBeginnings, offerSteps } from './statement-beginnings.js';
import { dimensionsOf, offerExpressions, offerUnits, offerValues } from './values.js';

/** What is known of names where the cursor stands. */
export interface NamesHere {
    /** What can follow the dot that the words end with. */
    members(words: readonly string[]): { readonly declared: readonly DeclaredName[]; readonly words: readonly string[] };
    find(name: string): DeclaredName | undefined;
    /** The parameters of the design that a call names. */
    parameters(name: string): readonly DeclaredName[];
    /** Libraries, and files as they would be written in quotes. */
    readonly files: readonly string[];
    readonly libraries: readonly string[];
}

const partSorts = ['part', 'opening'] as const;
const thingsPartsAreOf = ['material', ...Object.keys(vocabulary.partKinds).filter((kind) => vocabulary.partKinds[kind]?.design)];
const operators = new Set([
    '=',
    '+',
    '-',
    '*',
    '/',
    '±',
    '+/-',
    '<',
    '>',
    '<=',
    '>=',
    '!=',
    '(',
    '[',
    'if',
    'require',
    'then',
    'else',
    'and',
    'or',
    'not',
    '..',
]);

export function offerWhatFits(offer: Offer, cursor: Cursor, block: BlockKind, names: NamesHere): void {
    const words = cursor.words.filter((word) => word !== 'public' && word !== 'private');
    const statement = new StatementSoFar(words, block, names);
    const last = words.at(-1);
    if (cursor.openText !== undefined) {
        if (words[0] === 'use') {
            offer.plainWords(names.files, 'A file of designs.', CompletionItemKind.File);
        }
        return;
    }
    if (cursor.number) {
        offerUnits(offer, statement.dimensions);
        return;
    }
    if (last === undefined) {
        offerBeginnings(offer, block);
        return;
    }
    if (last === '.') {
        const members = names.members(words);
        for (const name of members.declared) {
            offer.name(name);
        }
        offerMembers(offer, members.words);
        return;
    }
    if (offerInCall(offer, words, names)) {
        return;
    }
    offerAfter(offer, last === ',' ? statement.governing : last, statement);
}

/** The statement that the cursor stands in, as far as it is written. */
class StatementSoFar {
    readonly first: string;

    constructor(
        readonly words: readonly string[],
        readonly block: BlockKind,
        readonly names: NamesHere,
    ) {
        this.first = words[0] ?? '';
    }

    /** The thing that the words of this statement speak of. */
    get sayable(): Sayable | undefined {
        if (Object.hasOwn(vocabulary.partKinds, this.first)) {
            return sayableOfKind(this.first);
        }
        if (this.first === 'every') {
            return sayableOfKind(this.kindSelected);
        }
        return this.step ? sayableOfStep(this.step) : sayableIn(this.block);
    }

    /** The kind of the parts that are spoken of. */
    get kind(): string | undefined {
        if (Object.hasOwn(vocabulary.partKinds, this.first)) {
            return this.first;
        }
        return this.first === 'every' ? this.kindSelected : this.block.is === 'part' ? this.block.kind : undefined;
    }

    private get kindSelected(): string | undefined {
        const [, second = ''] = this.words;
        return Object.hasOwn(vocabulary.partKinds, second) ? second : this.names.find(second)?.kind;
    }

    /** The step that is being written, in a recipe, on an edge or in a join. */
    get step(): string | undefined {
        const isWork = this.block.is === 'recipe' || this.words.includes('edge') || this.first === 'join';
        return isWork ? this.words.findLast((word) => Object.hasOwn(vocabulary.stepKinds, word)) : undefined;
    }

    /** The row of the property, step or option that a value is being written for. */
    get row(): { readonly shape: vocabulary.Shape; readonly name: string; readonly example: string } | undefined {
        for (let at = this.words.length - 1; at >= 0; at--) {
            const word = this.words[at]!;
            const row = own(this.sayable?.properties, word);
            if (row) {
                return { shape: row.shape, name: word, example: row.example };
            }
            const step = this.step === word ? own(vocabulary.stepKinds, word) : undefined;
            if (step?.value) {
                return { shape: step.value, name: word, example: step.example };
            }
        }
        return undefined;
    }

    /** Of which dimensions a number may be here; none for a count. */
    get dimensions(): readonly Dimension[] {
        return this.first === 'load' ? loads : (dimensionsOf(this.row?.shape) ?? [dimension.length]);
    }

    /** The word that says what the items of a list are: `edge` of `edge top, front`. */
    get governing(): string {
        return this.words.findLast((word) => governs.has(word) || own(this.sayable?.properties, word) !== undefined) ?? this.first;
    }
}
const loads = [dimension.areaLoad, dimension.lineLoad, dimension.mass, dimension.force];
const governs = new Set(['edge', 'of', 'on', 'to', 'join', 'every', 'except', 'in', 'at', 'as', 'leave']);

function offerAfter(offer: Offer, last: string, statement: StatementSoFar): void {
    const { words, first, block, names } = statement;
    switch (last) {
        case 'use':
            offer.plainWords(names.libraries, 'A library that comes with Casewright.', CompletionItemKind.Module);
            offer.plainWords(
                names.files.map((file) => `"${file}"`),
                'A file of designs.',
                CompletionItemKind.File,
            );
            return;
        case 'of':
            offerAfterOf(offer, statement);
            return;
        case 'over':
            offer.plainWords(['height', 'width'], 'Along what the curve runs.');
            return;
        case 'like':
            offer.names(Object.hasOwn(vocabulary.factKinds, first) ? { kinds: [first] } : { kinds: [statement.kind ?? ''], sorts: [] });
            return;
        case 'with':
            offer.names({ kinds: ['joint'] });
            offerSteps(offer, 'joint');
            return;
        case 'edge':
            offer.plainWords(
                own(vocabulary.partKinds, statement.kind)?.edges ?? [],
                `An edge of ${statement.sayable?.called ?? 'the part'}.`,
            );
            return;
        case 'every':
        case 'except':
        case 'join':
        case 'to':
        case 'on':
            offerSelectors(offer, last, statement);
            return;
        case 'in':
            offer.names({ sorts: ['opening'] });
            offer.names({ sorts: ['part'] }, 2);
            offer.word('every', { doc: 'Every opening of a group.', example: 'in every Bay' });
            return;
        case 'for':
            offer.names({ sorts: [...partSorts] });
            return;
        case 'hold':
            offer.names({ kinds: ['goods'] });
            return;
        case 'build':
            offer.names({ sorts: ['design'] });
            return;
        case 'leave':
            offer.words(vocabulary.roomFaces, CompletionItemKind.EnumMember, 1);
            return;
        case 'allow':
            for (const { code, name, title, severity } of rules) {
                if (severity !== 'error') {
                    offer.word(name, { doc: `${code}: ${title}.` }, CompletionItemKind.EnumMember, 1);
                }
            }
            return;
        case 'at':
        case 'above':
        case 'below':
        case 'before':
        case 'behind':
        case 'past':
            offerPlaces(offer);
            return;
        case ':':
            offerTypes(offer, statement);
            return;
    }
    if (operators.has(last)) {
        offerExpressions(offer);
        return;
    }
    const row = statement.row;
    if (row?.name === last) {
        offerValues(offer, row.shape, row.name, row.example);
        return;
    }
    if (block.is === 'recipe') {
        offerSteps(offer, block.kind);
        propertiesNotSaid(offer, statement.sayable, words);
        connectives(offer, 'of', 'for');
        return;
    }
    const edge = words.lastIndexOf('edge');
    if (edge >= 0 && edge === words.length - 2) {
        offer.names({ kinds: ['edging'] });
        offerSteps(offer, 'edging');
        if (last === 'front') {
            offer.words(vocabulary.frontForms, CompletionItemKind.EnumMember, 2);
        }
        connectives(offer, 'at');
        return;
    }
    offerGoingOn(offer, statement);
}

/** After a finished value: what else may be said in the same line. */
function offerGoingOn(offer: Offer, statement: StatementSoFar): void {
    const { first, words } = statement;
    const before = words.at(-1) ?? '';
    if (/^[0-9]/.test(before) && (first === 'build' || first === 'hold')) {
        offer.names(first === 'build' ? { sorts: ['design'] } : { kinds: ['goods'] });
        return;
    }
    if (/^[0-9]/.test(before) && words.includes('at')) {
        relations(offer);
    }
    switch (first) {
        case 'join':
            connectives(offer, words.includes('to') ? 'with' : 'to');
            return;
        case 'hold':
        case 'load':
        case 'allow':
            connectives(offer, words.includes('on') ? 'because' : 'on');
            return;
        case 'require':
            connectives(offer, 'because');
            return;
        case 'use':
            connectives(offer, 'as');
            return;
    }
    if (Object.hasOwn(vocabulary.factKinds, first)) {
        connectives(offer, ...(first === 'curve' ? (['of', 'over'] as const) : (['like'] as const)));
        return;
    }
    const isNewName = words.length === 1 && Object.hasOwn(vocabulary.partKinds, first);
    propertiesNotSaid(offer, statement.sayable, words, isNewName ? 2 : 1);
    connectives(offer, 'at', 'of', 'in', 'like', 'with', 'as');
    offer.words({ above: vocabulary.relations.above ?? '', below: vocabulary.relations.below ?? '' });
}

function offerAfterOf(offer: Offer, { first, block, step }: StatementSoFar): void {
    if (first === 'curve') {
        offer.plainWords(['depth'], 'What the curve says at every place.');
        return;
    }
    offer.names({ kinds: block.is === 'recipe' || step ? ['material'] : thingsPartsAreOf });
    offer.names({ sorts: ['parameter'] }, 2);
}

function offerSelectors(offer: Offer, last: string, { first, words }: StatementSoFar): void {
    if (last === 'on' && words.includes('with')) {
        offer.plainWords(['site'], 'The joint is made where the case will stand.');
        return;
    }
    offer.names({ sorts: [...partSorts] });
    if (last === 'every' || last === 'except') {
        for (const [kind, row] of Object.entries(vocabulary.partKinds)) {
            if (row.built !== false) {
                offer.word(kind, row, CompletionItemKind.Class, last === 'every' ? 1 : 2);
            }
        }
        return;
    }
    offer.word('every', { doc: 'All parts of a kind, or of a group.', example: 'every shelf' }, CompletionItemKind.Keyword, 1);
    if (last === 'to' && first !== 'join') {
        offerExpressions(offer);
    }
}

function offerPlaces(offer: Offer): void {
    offer.words(vocabulary.roomFaces, CompletionItemKind.EnumMember, 1);
    offer.words(vocabulary.placeWords, CompletionItemKind.EnumMember, 2);
    offer.names({ sorts: [...partSorts, 'let', 'parameter', 'index'], kinds: ['curve'] });
    offer.words({ above: vocabulary.relations.above ?? '', below: vocabulary.relations.below ?? '' }, CompletionItemKind.Keyword, 3);
}

function offerTypes(offer: Offer, { first }: StatementSoFar): void {
    const families = own(vocabulary.factKinds, first)?.families;
    if (families) {
        offer.words(families, CompletionItemKind.Class, 1);
    } else {
        offer.words(vocabulary.types, CompletionItemKind.Class, 1);
    }
}

function offerMembers(offer: Offer, words: readonly string[]): void {
    for (const word of words) {
        const size = own(vocabulary.sizesOfParts, word);
        const doc =
            size?.doc ??
            own(vocabulary.functionsOfCurves, word)?.doc ??
            own(vocabulary.stagesOfParts, word) ??
            own(vocabulary.placesOnParts, word) ??
            `The ${word} face or edge.`;
        offer.word(word, { doc }, size ? CompletionItemKind.Property : CompletionItemKind.EnumMember, size ? 1 : 2);
    }
}

/** Between the brackets of `Dovetailed(face = Walnut)` and of `min(a, b)`. */
function offerInCall(offer: Offer, words: readonly string[], names: NamesHere): boolean {
    const last = words.at(-1);
    if (last !== '(' && last !== ',') {
        return false;
    }
    let depth = 0;
    for (let at = words.length - 1; at >= 0; at--) {
        depth += words[at] === ')' ? 1 : words[at] === '(' ? -1 : 0;
        if (depth < 0) {
            const called = words[at - 1] ?? '';
            for (const parameter of names.parameters(called)) {
                offer.snippet(parameter.name, `${parameter.name} = <|>`, { doc: `A parameter of \`${called}\`.` }, 1);
            }
            offerExpressions(offer);
            return true;
        }
    }
    return false;
}
