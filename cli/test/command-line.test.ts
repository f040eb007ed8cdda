import { describe, expect, it } from 'vitest';
import { bookcase, mistaken, withWarning } from './designs.js';
import { shell } from './shell.js';

/** A file of each kind that a command may be given. */
const files = { 'sound.case': bookcase, 'warned.case': withWarning, 'wrong.case': mistaken, 'none.case': 'let x = 1in\n', 'notes.txt': '' };

describe('exit codes', () => {
    it.each([
        [0, 'check sound.case'],
        [0, 'check warned.case'],
        [1, 'check wrong.case'],
        [1, 'check sound.case wrong.case'],
        [2, 'check wrong.case missing.case'],
        [2, 'check notes.txt'],
        [2, 'check .'],
        [2, 'check'],
        [2, 'check --format yaml sound.case'],
        [0, 'build sound.case'],
        [0, 'build warned.case'],
        [1, 'build wrong.case'],
        [2, 'build none.case'],
        [2, 'build missing.case'],
        [2, 'build sound.case --out notes.txt'],
        [2, 'build sound.case --out notes.txt/here'],
        [2, 'build sound.case --out='],
        [2, 'build sound.case --only drawing'],
        [2, 'build sound.case --only model --format csv'],
        [2, 'build sound.case --format docx'],
        [2, 'build sound.case --units cm'],
        [2, 'build sound.case warned.case'],
        [0, 'why sound.case Low.length'],
        [1, 'why wrong.case Bookcase.width'],
        [2, 'why sound.case Low.lenght'],
        [2, 'why sound.case'],
        [0, 'format --check none.case'],
        [2, 'format missing.case'],
        [0, 'explain'],
        [0, 'explain NAM-001'],
        [2, 'explain NAM-999'],
        [2, 'language-server'],
        [2, 'compare sound.case wrong.case'],
        [2, ''],
        [0, '--version'],
        [0, '--help'],
        [0, 'check --help'],
    ])('%i: casewright %s', async (exitCode, line) => {
        const { run } = await shell(files);
        const ran = await run(...line.split(' ').filter((word) => word !== ''));
        expect(ran, ran.out + ran.told).toMatchObject({ exitCode });
        if (exitCode === 2) expect(ran.told).not.toBe('');
        else expect(ran.out).not.toBe('');
    });
});

describe('a wrong argument is told', () => {
    const hint = '    `casewright --help` shows what there is\n';
    it.each([
        ['chek a.case', `casewright: unknown command \`chek\`\n    did you mean \`check\`?\n${hint}`],
        ['check --fromat json a.case', `casewright: unknown option \`--fromat\`\n    did you mean \`--format\`?\n${hint}`],
        [
            'check --format jsn a.case',
            'casewright: `jsn` is not a format of findings\n    did you mean `json`?\n    there is `text`, `json` and `sarif`\n',
        ],
        ['check --format= a.case', 'casewright: a format of findings is missing\n    there is `text`, `json` and `sarif`\n'],
        [
            'build --only cutlist,model a.case',
            'casewright: `cutlist` is not a document\n    did you mean `cut-list`?\n    there is `cut-list`, `materials`, `sheets`, `joinery`, `curves`, `fairness`, `offsets`, `templates`, `cauls`, `strength`, `boards`, `purchase`, `costing`, `quote` and `model`\n',
        ],
        [
            'build --format csv, a.case',
            'casewright: a format of documents is missing\n    there is `md`, `csv`, `json`, `pdf`, `svg`, `dxf` and `glb`\n',
        ],
        [
            'build --paper a5 a.case',
            'casewright: `a5` is not a size of paper\n    did you mean `a4`?\n    there is `a4`, `a3`, `a2`, `a1`, `a0`, `letter`, `legal` and `tabloid`\n',
        ],
        [
            'build --date 1/12/2026 a.case',
            'casewright: `1/12/2026` is no date\n    write year, month and day, such as `--date 2026-12-01`\n',
        ],
        [
            'build --date 2026-02-30 a.case',
            'casewright: there is no 2026-02-30 in the calendar\n    write year, month and day, such as `--date 2026-12-01`\n',
        ],
        ['build --spacing 2 a.case', 'casewright: `2` has no unit\n    write `--spacing 2in` or `--spacing 2mm`\n'],
        [
            'build --spacing 0in a.case',
            'casewright: a spacing of offsets is more than zero, and `0in` is zero\n    write a length with its unit, such as `--spacing 2in` or `--spacing 50mm`\n',
        ],
        [
            'build --spacing=-2in a.case',
            'casewright: a spacing of offsets is more than zero, and `-2in` is below zero\n    write a length with its unit, such as `--spacing 2in` or `--spacing 50mm`\n',
        ],
        [
            'build --spacing 2lb a.case',
            'casewright: `2lb` is not a length\n    write a length with its unit, such as `--spacing 2in` or `--spacing 50mm`\n',
        ],
        [
            'build --spacing= a.case',
            'casewright: a spacing of offsets is missing\n    write a length with its unit, such as `--spacing 2in` or `--spacing 50mm`\n',
        ],
        [
            'build --spacing 2inn a.case',
            'casewright: `2inn` is no spacing of offsets: `inn` is not a unit\n    write a length with its unit, such as `--spacing 2in` or `--spacing 50mm`\n',
        ],
        ['build --spacing 2inch a.case', 'casewright: `2inch` is no spacing of offsets: `inch` is not a unit\n    did you mean `2in`?\n'],
        ['build --spacing 0.1mm a.case', 'casewright: offsets every `0.1mm` are too near together to be marked\n    1mm is the least\n'],
        ['build --only model --format csv a.case', 'casewright: `model` does not come as `csv`\n    it comes as `json` and `glb`\n'],
        ['why a.case', `casewright: missing required argument \`PATH\`\n${hint}`],
    ])('casewright %s', async (line, told) => {
        const { run } = await shell();
        expect(await run(...line.split(' '))).toEqual({ exitCode: 2, out: '', told });
    });
});

it('the help names every command and the exit codes', async () => {
    const { run } = await shell();
    const { out } = await run('--help');
    for (const command of ['check', 'build', 'why', 'format', 'explain', 'language-server'])
        expect(out).toMatch(new RegExp(`^ +${command} `, 'm'));
    expect(out).toContain('Exit codes: 0 done and no error found, 1 errors found, 2 could not run.');
});
