/** `explain CODE`: the page of a rule; `explain`: the catalogue of all. */
import { closestWords } from 'casewright-shared/casework';
import { explainRule, listRules, rules } from 'casewright-shared/rules';
import { CouldNotRun } from '../could-not-run.js';
import { type ExitCode, exitCode } from '../exit-code.js';
import type { Terminal } from '../terminal.js';

/**
 * Shows the page of a rule by its code or name, or the list of all rules.
 * @throws CouldNotRun if no rule is called so
 */
export function explain(asked: string | undefined, terminal: Terminal): ExitCode {
    const page = asked === undefined ? listRules() : (explainRule(asked.toUpperCase()) ?? explainRule(asked.toLowerCase()));
    if (page === undefined) throw noSuchRule(asked ?? '');
    terminal.write(page);
    return exitCode.sound;
}

function noSuchRule(asked: string): CouldNotRun {
    const known = rules.flatMap(({ code, name }) => [code, name]);
    const [closest] = closestWords(asked, known);
    return new CouldNotRun(`no rule is called \`${asked}\``, [
        ...(closest === undefined ? [] : [`did you mean \`${closest}\`?`]),
        '`casewright explain` lists all rules',
    ]);
}
