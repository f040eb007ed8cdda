// Which sizes the words under a cursor have or are. Knows what names and expressions have become: not how a size is explained.
import { type Measure, type NamedSize, type Path, sizesAt } from 'casewright-shared/casework';
import type { LangiumDocument } from 'langium';
import type { Position } from 'vscode-languageserver';
import type { Analysis } from '../../analysis/analysis.js';
import type { DeclaredName } from '../../scoping/declared-name.js';
import type { VisibleNames } from '../../scoping/visible-names.js';
import { builtCasesOf, fileOf, insertedCasesOf, openingsOf, partsOf, thingOf } from '../declared-things.js';
import type { Occurrences } from '../occurrences.js';
import { indexBehind, isKindOfStatement, Values } from '../values.js';
import { type WordAt, wordAt } from '../word-at.js';

/** A size that is found at a cursor. */
export interface FoundSize {
    /** Its path, or the words that it is the value of. */
    readonly name: string;
    readonly measure: Measure;
    /** Whether it can be found again by its name: a value that has none is found by its place. */
    readonly isNamed: boolean;
}

export class SizesAt {
    private readonly values: Values;

    constructor(
        names: VisibleNames,
        private readonly occurrences: Occurrences,
    ) {
        this.values = new Values(names);
    }

    /** The sizes at a cursor; none where nothing there has or is a size. */
    of(document: LangiumDocument, position: Position, analysis: Analysis): readonly FoundSize[] {
        const word = wordAt(document, position);
        if (!word || word.node.$type === 'Use') {
            return [];
        }
        const name = this.occurrences.declaredAt(word);
        const owned = name ? sizesOfName(name, word, analysis) : sizesOfStatement(word, analysis);
        if (owned.length > 0) {
            return owned.map(({ path, measure }) => ({ name: path, measure, isNamed: true }));
        }
        const measure = this.values.at(word, analysis) ?? (name && valueOfName(name, analysis));
        return measure ? [{ name: wordsOf(word), measure, isNamed: false }] : [];
    }

    /** The parts that the words at a cursor name, or that the statement there has become. */
    partsOf(document: LangiumDocument, position: Position, analysis: Analysis): readonly Path[] {
        const word = wordAt(document, position);
        const name = word && this.occurrences.declaredAt(word);
        if (name) {
            return name.sort === 'part' ? partsOf(name, analysis, indexBehind(word.node)).map(({ path }) => path) : [];
        }
        return word ? partsOfStatement(word, analysis) : [];
    }
}

function sizesOfName(name: DeclaredName, word: WordAt, analysis: Analysis): readonly NamedSize[] {
    return pathsOf(name, word, analysis).flatMap((path) => sizesAt(analysis.casework, path));
}

function pathsOf(name: DeclaredName, word: WordAt, analysis: Analysis): readonly string[] {
    switch (name.sort) {
        case 'part': {
            const parts = partsOf(name, analysis, indexBehind(word.node));
            return (parts.length > 0 ? parts : insertedCasesOf(name, analysis)).map(({ path }) => path);
        }
        case 'design':
        case 'build':
            return builtCasesOf(name, analysis).map(({ path }) => path);
        case 'opening':
            return openingsOf(name, analysis).map(({ path }) => path);
        case 'fact': {
            const thing = thingOf(name, analysis);
            return thing ? [thing.name] : [];
        }
        default:
            return [];
    }
}

/** At `shelf` in `shelf Floor, Crown` the sizes of both. */
function sizesOfStatement(word: WordAt, analysis: Analysis): readonly NamedSize[] {
    return partsOfStatement(word, analysis).flatMap((path) => sizesAt(analysis.casework, path));
}

function partsOfStatement({ node }: WordAt, { casework, design }: Analysis): readonly Path[] {
    if (!isKindOfStatement(node)) {
        return [];
    }
    const parts = [...casework.parts.values()].filter(({ span }) => span.file === design.file && span.start === node.$cstNode?.offset);
    return parts.map(({ path }) => path);
}

/** The value of a `let` or a parameter where it is declared. */
function valueOfName(name: DeclaredName, analysis: Analysis): Measure | undefined {
    const segment = name.nameSegment;
    const file = fileOf(name, analysis);
    return segment && file !== undefined ? analysis.valueAt({ file, start: segment.offset, end: segment.end }) : undefined;
}

/** The words that are explained: a property by its name, a name or an expression as it is written. */
function wordsOf({ node, text }: WordAt): string {
    const isExpression = node.$type === 'MemberAccess' || node.$type === 'Index' || node.$type === 'Binary' || node.$type === 'Call';
    return isExpression ? (node.$cstNode?.text ?? text).replace(/\s+/g, ' ') : text;
}
