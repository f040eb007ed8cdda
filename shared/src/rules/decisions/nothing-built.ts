import { defineRule } from '../define-rule.js';

export const nothingBuilt = defineRule({
    code: 'DES-005',
    name: 'nothing-built',
    severity: 'warning',
    phase: 'project',
    title: 'The project builds nothing',
    what: 'A file has a project, and the project says `build` of nothing.',
    why: 'There is nothing to cut, so the cut list is empty and nothing is checked.',
    mend: 'Say what is built: `build 2 PotteryCase`. A file without a project builds each of its cases once.',
    source: { kind: 'language', citation: 'Projects' },
    fix: 'none',
    fromAbsence: true,
    examples: {
        bad: [
            {
                text: `material Ply : plywood { thickness 3/4in   sheet 48in x 96in   grain length }

»project« "Hall bookcase" { client "A. Example" }

case Bookcase of Ply {
    width 30in   height 36in   depth 11in
    side Left, Right
}
`,
            },
        ],
        good: [
            {
                text: `material Ply : plywood { thickness 3/4in   sheet 48in x 96in   grain length }

project "Hall bookcase" {
    client "A. Example"
    build 1 Bookcase
}

case Bookcase of Ply {
    width 30in   height 36in   depth 11in
    side Left, Right
}
`,
            },
        ],
    },
    check({ design: { project, cases } }, report) {
        if (!project || project.builds.length > 0) return;
        const [first] = cases;
        report({
            span: project.nameSpan,
            message: `${project.title === undefined ? 'the project' : `\`${project.title}\``} builds nothing`,
            hint: first ? `say what is built, such as \`build 1 ${first.name}\`` : 'declare a case, and say `build` and its name',
        });
    },
});
