/** What the names of a design stand for in one place of one build: parameters, lets, indices, parts, openings, curves. */
import type { DeclarationId } from '../design/design.js';
import type { CaseBuild } from './case-build.js';
import type { Value } from './value.js';

export class Scope {
    private readonly bindings = new Map<DeclarationId, () => Value | undefined>();

    constructor(
        readonly parent: Scope | undefined,
        /** The case whose room and curves the names of this place speak of. */
        readonly build: CaseBuild | undefined = parent?.build,
        /** Names of a case that is entered here; they are nearer than those around. */
        private readonly entered?: Scope,
    ) {}

    bind(id: DeclarationId, value: () => Value | undefined): void {
        this.bindings.set(id, value);
    }

    lookup(id: DeclarationId): (() => Value | undefined) | undefined {
        return this.bindings.get(id) ?? this.entered?.lookup(id) ?? this.parent?.lookup(id);
    }
}
