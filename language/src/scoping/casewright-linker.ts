// Links names to declarations. Knows which words of a statement are names at all: messages about unknown ones are not made here.
//
// A word that names no declaration (`front`, `equal`, a name with a typing error) is resolved to nothing and is no linking error:
// only the lowering knows what could stand in its place, and reports what cannot.
import { vocabulary } from 'casewright-shared/casework';
import {
    type AstNode,
    type AstNodeDescription,
    AstUtils,
    DefaultLinker,
    type LangiumCoreServices,
    type LangiumDocument,
    type LinkingError,
    type ReferenceInfo,
} from 'langium';
import type { Reference as AstReference, MemberAccess } from '../generated/ast.js';
import { isChoiceOf, namingProperties } from './choices.js';
import type { DeclaredName } from './declared-name.js';
import { isOne, type VisibleNames } from './visible-names.js';

/** Stands for "resolved, and there is nothing": neither a node nor an error, so Langium does not try again. */
const noDeclaration = {} as LinkingError;

/** What Langium keeps in a reference. */
interface Resolvable {
    _ref?: AstNode | LinkingError | undefined;
    _nodeDescription?: AstNodeDescription;
    $refText: string;
}

export class CasewrightLinker extends DefaultLinker {
    constructor(
        services: LangiumCoreServices,
        private readonly names: VisibleNames,
    ) {
        super(services);
    }

    /**
     * One walk over plain properties, without recursion: streams of nodes and references cost more than the linking itself. What is
     * found last is linked first, so that `a.b` is known when `a.b.c` is asked for.
     */
    override async link(document: LangiumDocument): Promise<void> {
        const found = referencesIn(document.parseResult.value);
        for (let index = found.length - 1; index >= 0; index--) {
            const { reference, container, property } = found[index]!;
            if (reference._ref === undefined) {
                const name = this.find(reference.$refText, container, property);
                reference._ref = name?.node ?? noDeclaration;
                if (name) {
                    reference._nodeDescription = name;
                }
            }
        }
        document.references = found.map(({ reference }) => reference as unknown as ReferenceInfo['reference']);
    }

    override unlink(document: LangiumDocument): void {
        super.unlink(document);
        this.names.forget(document);
    }

    /** Also for references that are followed before their document is linked. */
    protected override getLinkedNode({ reference, container, property }: ReferenceInfo): {
        node?: AstNode;
        descr?: AstNodeDescription;
        error?: LinkingError;
    } {
        const found = this.find(reference.$refText, container, property);
        return found ? { node: found.node, descr: found } : { error: noDeclaration };
    }

    override getCandidate(info: ReferenceInfo): AstNodeDescription | LinkingError {
        return this.find(info.reference.$refText, info.container, info.property) ?? this.createLinkingError(info);
    }

    private find(name: string, container: AstNode, property: string): DeclaredName | undefined {
        if (property === 'member') {
            return this.names.member(container as MemberAccess);
        }
        if (container.$type === 'Reference' && isWordHere(name, container as AstReference)) {
            return undefined;
        }
        const dot = name.indexOf('.');
        if (dot >= 0) {
            return this.names.memberNamed(name.slice(0, dot), name.slice(dot + 1), container);
        }
        const found = this.names.lookup(name, container);
        if (found === undefined || !isOne(found)) {
            return undefined;
        }
        return found.isUnnamed && isInside(container, found.node) && isPlace(container) ? undefined : found;
    }
}

interface FoundReference {
    readonly reference: Resolvable;
    readonly container: AstNode;
    readonly property: string;
}

/** All references under a node, in no particular order but that outer ones come before inner ones. */
function referencesIn(root: AstNode): FoundReference[] {
    const found: FoundReference[] = [];
    const open: AstNode[] = [root];
    for (let node = open.pop(); node; node = open.pop()) {
        const properties = node as unknown as Record<string, unknown>;
        for (const property in properties) {
            if (property.charCodeAt(0) === 36 /* $ */) {
                continue;
            }
            const value = properties[property];
            if (typeof value !== 'object' || value === null) {
                continue;
            }
            if (Array.isArray(value)) {
                for (const item of value) {
                    if (typeof item === 'object' && item !== null) {
                        open.push(item as AstNode);
                    }
                }
            } else if ('$refText' in value) {
                found.push({ reference: value as Resolvable, container: node, property });
            } else {
                open.push(value as AstNode);
            }
        }
    }
    return found;
}

/** Where a word of the language goes before a declared name. */
function isWordHere(name: string, reference: AstReference): boolean {
    const container = reference.$container;
    switch (container.$type) {
        case 'Every':
            return container.target === reference && name in vocabulary.partKinds;
        case 'Call':
            return container.receiver === reference && name in vocabulary.functions;
        case 'Property':
            return isChoiceOf(container.name, name) || (container.value === reference && namingProperties.has(container.name));
        case 'List':
            return container.$container.$type === 'Property' && isChoiceOf(container.$container.name, name);
        default:
            return false;
    }
}

/** `bottom at bottom`: a part cannot be placed by itself, so the word is the face of the room. */
function isInside(node: AstNode, part: AstNode): boolean {
    return AstUtils.hasContainerOfType(node, (around) => around === part);
}

function isPlace(reference: AstNode): boolean {
    return reference.$container?.$type === 'Place';
}
