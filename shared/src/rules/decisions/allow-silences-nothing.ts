import { defineRule } from '../define-rule.js';

const boards = `material Ply    : plywood { thickness 3/4in   sheet 48in x 96in   grain length }
material Walnut : lumber  { rough 4/4   planed 3/4in }
edging Lipped { band 1/8in of Walnut }
`;

export const allowSilencesNothing = defineRule({
    code: 'DES-004',
    name: 'allow-silences-nothing',
    severity: 'warning',
    phase: 'sizes',
    title: 'A warning is allowed that does not come',
    what: 'An `allow` names a rule that finds nothing on the parts it names.',
    why: 'Either the design has changed and the line is left over, or it names the wrong part and the warning is still there. Left in, it would hide the next one that comes.',
    mend: 'Take the line out, or name the part that is meant.',
    source: { kind: 'language', citation: 'Decisions give reasons' },
    fix: 'safe',
    examples: {
        bad: [
            {
                text: `${boards}
case Bookcase of Ply {
    width 30in   height 36in   depth 11in
    side Left, Right {
        edge top Lipped
        edge front Lipped
    }
    allow »end-grain-showing« on Left, Right because "it stands above eye level"
}
`,
            },
        ],
        good: [
            {
                text: `${boards}
case Bookcase of Ply {
    width 30in   height 36in   depth 11in
    side Left, Right {
        edge top Lipped
        edge front Lipped
    }
}
`,
            },
        ],
    },
});
