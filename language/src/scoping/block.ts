// Blocks of a file and the names in them. Knows who sees what: nothing of other files, kinds or values.
import type { Reference as AstReference, Expression } from '../generated/ast.js';
import type { DeclaredName } from './declared-name.js';

/** The stretch of a file in which a name is visible: the file, a design, the braces of a part, `in Bank { ... }`. */
export class Block {
    /** Declared right here. */
    readonly names = new Map<string, DeclaredName>();
    /** Declared in blocks inside, such as `in Bank { ... }`; several where it does not say which is meant. */
    readonly namesInside = new Map<string, DeclaredName[]>();
    /** Blocks of `in X { ... }` statements that stand in here, by the name X. */
    readonly rooms = new Map<string, Block[]>();

    constructor(
        readonly outer: Block | undefined,
        /** Names from the top of the file, where the block is that of a declaration. */
        readonly path: string,
        /** The things whose parts are visible here: `in Bank`, the design after `of`, the part after `like`. */
        readonly opens: readonly string[] = [],
    ) {}

    addInside(name: DeclaredName): void {
        const known = this.namesInside.get(name.name);
        if (known) {
            known.push(name);
        } else {
            this.namesInside.set(name.name, [name]);
        }
    }
}

/** The names that a set of selectors speaks of: `Bank`, `Unit` of `every Unit`, `Unit` of `Unit[1]`. */
export function selectedNames(selectors: readonly (Expression | undefined)[]): string[] {
    return selectors.flatMap((selector) => baseName(selector) ?? []);
}

/** The name at the root of a selector or of a call: `Box` of `Box(face = Walnut)`. */
export function baseName(selector: Expression | undefined): string | undefined {
    return baseReference(selector)?.target?.$refText;
}

export function baseReference(selector: Expression | undefined): AstReference | undefined {
    let node = selector;
    while (node) {
        switch (node.$type) {
            case 'Reference':
                return node;
            case 'Every':
                node = node.target;
                break;
            case 'Index':
            case 'Call':
                node = node.receiver;
                break;
            default:
                return undefined;
        }
    }
    return undefined;
}
