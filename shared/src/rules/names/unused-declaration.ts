import type { Casework, Declaration, DeclarationId } from '../../casework/index.js';
import { defineRule } from '../define-rule.js';

const bought = 'material Ply : plywood { thickness 3/4in   sheet 48in x 96in   grain length }';

export const unusedDeclaration = defineRule({
    code: 'NAM-006',
    name: 'unused-declaration',
    severity: 'warning',
    phase: 'sizes',
    title: 'Something is declared and never used',
    what: 'A material, an edging, a joint, goods, a curve, a `let` or a parameter is declared, and nothing speaks of it. Names inside a case are always looked at. Names at the top of a file are looked at if the file has a project or the name is `private`: any other file may be there for others to use. Parts are never unused: they are built.',
    why: 'It is often the trace of a slip: the shelf was to be `of` this material, the edge was to get this edging. A parameter that nothing asks for changes nothing when it is set.',
    mend: 'Use it where it was meant to be used, or take it out.',
    source: { kind: 'language', citation: 'Names and what they are for' },
    fix: 'none',
    fromAbsence: true,
    examples: {
        bad: [
            {
                note: 'The front edges were to be lipped; no edge says so.',
                text: `${bought}

project "Hall bookcase" { build 1 Bookcase }

edging »Lipped« { band 1/8in of Ply }

case Bookcase of Ply {
    width 30in   height 36in   depth 11in
    side Left, Right
}
`,
            },
            {
                text: `${bought}

case Bookcase of Ply {
    width 30in   height 36in   depth 11in
    let »low« = 12in
    side Left, Right
    shelf Low at 14in
    join Low to every side with { glue }
}
`,
            },
        ],
        good: [
            {
                text: `${bought}

project "Hall bookcase" { build 1 Bookcase }

edging Lipped { band 1/8in of Ply }

case Bookcase of Ply {
    width 30in   height 36in   depth 11in
    side Left, Right { edge front Lipped }
}
`,
            },
        ],
    },
    check(casework, report) {
        for (const declaration of casework.design.declarations.values()) {
            if (!isJudged(declaration, casework) || casework.design.used.has(declaration.id)) continue;
            const called = `\`${declaration.name}\``;
            report({
                span: declaration.nameSpan,
                message: declaration.is === 'design' ? `${called} is never built` : `${called} is never used`,
                hint:
                    declaration.is === 'design'
                        ? `build it in the project, such as \`build 1 ${declaration.name}\`, or take it out`
                        : 'use it, or take it out',
            });
        }
    },
});

function isJudged(declaration: Declaration, { design }: Casework): boolean {
    if (declaration.nameSpan.file !== design.file) return false;
    switch (declaration.is) {
        case 'fact':
            return !speaksForItself.has(declaration.kind) && (isInside(declaration.id) || isClosed(declaration));
        case 'recipe':
        case 'let':
            return isInside(declaration.id) || isClosed(declaration);
        case 'design':
            // What a project builds nothing of is a matter of the project as a whole, and reported there.
            return !isInside(declaration.id) && isClosed(declaration) && (!design.project || design.project.builds.length > 0);
        case 'parameter':
            return true;
        default:
            return false;
    }

    function isClosed({ private: isPrivate }: Declaration): boolean {
        return design.project !== undefined || isPrivate === true;
    }
}

/** The project, the shop and what belongs to them are there without being named; fasteners and offcuts are found by their size. */
const speaksForItself: ReadonlySet<string> = new Set(['project', 'shop', 'site', 'route', 'fastener', 'offcut']);

/** Whether a declaration stands inside another: `kiln-lane.case#PotteryCase.Sweep`. */
function isInside(id: DeclarationId): boolean {
    return id.slice(id.indexOf('#') + 1).includes('.');
}
