// `receiver.member` where the member is no declared part: edges, faces, sizes. Knows the vocabulary of parts.
import { type Expression as DesignExpression, type Span, vocabulary } from 'casewright-shared/casework';
import type * as Ast from '../generated/ast.js';
import { DeclaredName } from '../scoping/declared-name.js';
import type { FileLowering } from './file-lowering.js';
import { declarationSpan, describeName } from './unknown-names.js';
import { listWords, nearestWord } from './words.js';

const sizesOfStage = ['length', 'width', 'thickness'];
const sizesOfRoom = ['width', 'height', 'depth'];
const ofParts = [
    ...Object.keys(vocabulary.sizesOfParts),
    ...Object.keys(vocabulary.stagesOfParts),
    ...Object.keys(vocabulary.placesOnParts),
];
const ofRooms = [...sizesOfRoom, ...Object.keys(vocabulary.roomFaces)];

/** Whether the receiver can have the member; if not, it is reported. What is only known by computing is let through. */
export function checkMember(file: FileLowering, node: Ast.MemberAccess, receiver: DesignExpression, member: string, span: Span): boolean {
    const name = declaredBefore(node.receiver);
    const known = name ? membersOfName(name) : isStage(receiver) ? sizesOfStage : undefined;
    if (!known || known.includes(member) || file.isLost(member)) {
        return true;
    }
    const declared = file.visible.membersAt(node).map((one) => one.name);
    const near = nearestWord(member, [...declared, ...known]);
    const subject = name ? `\`${name.name}\` is ${describeName(name)}: it` : 'a size of a part';
    file.report('NAM-009', span, {
        message: `${subject} has no \`${member}\`${near ? `; did you mean \`${near}\`?` : ''}`,
        hint: `it has ${listWords([...declared, ...known], 'and', 16)}`,
        found: `\`${member}\``,
        needed: 'a part in it, one of its faces or edges, or a size',
        ...(near ? { fix: { title: `write \`${near}\``, span, text: near, safe: false } } : {}),
        ...(name ? { related: [{ span: declarationSpan(file, name), message: `\`${name.name}\` is declared here` }] } : {}),
    });
    return false;
}

function isStage(receiver: DesignExpression): boolean {
    return receiver.is === 'member' && receiver.id === undefined && receiver.member in vocabulary.stagesOfParts;
}

/** The declaration that what stands before the dot refers to. */
function declaredBefore(receiver: Ast.Expression): DeclaredName | undefined {
    switch (receiver?.$type) {
        case 'Reference':
            return asDeclared(receiver.target?.$nodeDescription);
        case 'MemberAccess':
            return asDeclared(receiver.member?.$nodeDescription);
        case 'Index':
            return declaredBefore(receiver.receiver);
        default:
            return undefined;
    }
}

function asDeclared(description: unknown): DeclaredName | undefined {
    return description instanceof DeclaredName ? description : undefined;
}

/** What can follow the dot after a declared name, besides the parts in it; undefined where only computing can tell. */
export function membersOfName(name: DeclaredName): readonly string[] | undefined {
    switch (name.sort) {
        case 'part': {
            const kind = vocabulary.partKinds[name.kind];
            return kind && [...kind.edges, ...kind.faces, ...ofParts];
        }
        case 'opening':
        case 'design':
        case 'build':
            return ofRooms;
        case 'fact':
            return name.kind === 'curve'
                ? Object.keys(vocabulary.functionsOfCurves)
                : Object.keys(vocabulary.factKinds[name.kind]?.properties ?? {});
        case 'recipe':
        case 'use':
            return [];
        default:
            return undefined;
    }
}
