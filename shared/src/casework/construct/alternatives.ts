/** The same project built of other things: which are taken for which. */
import type { Declaration, Design, Expression, FactDeclaration, Property } from '../design/design.js';
import type { Alternative } from '../model/casework.js';
import type { Construction } from './construction.js';

export function alternativesOf(construction: Construction, project: FactDeclaration): readonly Alternative[] {
    return project.properties.flatMap((property) => {
        const { name, value, properties, span } = property;
        if (name !== 'alternative' || value?.is !== 'word') return [];
        const takes = properties.flatMap((take) => takeOf(construction, take) ?? []);
        return [{ name: value.word, takes, span }];
    });
}

function takeOf(construction: Construction, { name, value, for: instead, span }: Property): Alternative['takes'][number] | undefined {
    if (name !== 'take' || !value) return undefined;
    const [taken, other] = [declared(construction, value), declared(construction, instead)];
    if (!instead) {
        construction.report('PRP-004', {
            span,
            message: '`take` does not say for what',
            hint: 'write it so: `take Oak for Walnut`',
            found: '`take` without `for`',
            needed: '`for` and a thing of the same kind',
        });
    } else if (taken && other && taken.kind !== other.kind) {
        construction.report('NAM-007', {
            span: instead.span,
            message: `\`${taken.name}\` is a ${taken.kind}, and \`${other.name}\` a ${other.kind}: one cannot be taken for the other`,
            found: `a ${other.kind}`,
            needed: `a ${taken.kind}`,
        });
    } else if (taken && other) {
        if (taken.is === 'fact') construction.things.thing(taken.id); // so that it can be spoken of
        return { taken: taken.id, instead: other.id };
    }
    return undefined;
}

function declared({ design }: Construction, expression: Expression | undefined) {
    const declaration = expression?.is === 'name' ? design.declarations.get(expression.id) : undefined;
    return declaration?.is === 'fact' || declaration?.is === 'recipe' ? declaration : undefined;
}

/**
 * The design in which what is declared for one thing stands for another. What copies from the other goes on copying from it as it was.
 * Its project has no further alternatives.
 */
export function withAlternative(design: Design, { takes }: Alternative): Design {
    const declarations = new Map(design.declarations);
    for (const { taken, instead } of takes) {
        const [one, other] = [design.declarations.get(taken), design.declarations.get(instead)];
        if (!one || !other) continue;
        const aside = `${instead} as declared`;
        for (const [id, copy] of declarations) {
            if (copy.is !== 'fact' || copy.like !== instead) continue;
            declarations.set(id, { ...copy, like: aside });
            if (other.is === 'fact') declarations.set(aside, { ...other, id: aside });
        }
        const copied = declarations.get(taken);
        if (copied) declarations.set(instead, { ...copied, id: instead });
        changeRack(declarations, taken, instead);
    }
    const { project } = design;
    if (!project) return { ...design, declarations };
    const alone = { ...project, properties: project.properties.filter(({ name }) => name !== 'alternative') };
    return { ...design, declarations: declarations.set(project.id, alone), project: alone };
}

/** What stands on the rack stays what it is: offcuts of the one serve now where the other stood, and those of the other do not. */
function changeRack(declarations: Map<string, Declaration>, taken: string, instead: string): void {
    for (const [id, offcut] of declarations) {
        if (offcut.is !== 'fact' || offcut.kind !== 'offcut') continue;
        const isOf = (material: string) =>
            offcut.properties.some(({ name, value }) => name === 'material' && value?.is === 'name' && value.id === material);
        if (isOf(instead)) declarations.delete(id);
        if (!isOf(taken)) continue;
        const properties = offcut.properties.map((property) =>
            property.name === 'material' && property.value?.is === 'name'
                ? { ...property, value: { ...property.value, id: instead } }
                : property,
        );
        declarations.set(id, { ...offcut, properties });
    }
}
