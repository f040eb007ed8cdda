/** `why FILE PATH`: where a size comes from. */
import { type Analysis, explainSag, explainSize } from 'casewright-language';
import { closestWords, type LookUp, lookUp, type Measure } from 'casewright-shared/casework';
import { plural } from 'casewright-shared/rules';
import { CouldNotRun } from '../could-not-run.js';
import { type ExitCode, exitCode } from '../exit-code.js';
import { findingAsText } from '../findings/as-text.js';
import { countFound } from '../findings/count.js';
import { foundIn } from '../findings/found.js';
import { shownUri } from '../paths.js';
import { Designs } from '../reading/designs.js';
import type { Terminal } from '../terminal.js';
import { visibleText } from '../visible-text.js';

/**
 * Explains a size of a design.
 * @param path such as `PotteryCase.Tier[2].depth`
 * @throws CouldNotRun if there is no such size
 */
export async function why(file: string, path: string, terminal: Terminal): Promise<ExitCode> {
    const analysis = await new Designs(terminal.workingFolder).analyse(file);
    if (path.endsWith(sagEnding)) return tellSag(analysis, file, path, terminal);
    const found = lookUp(analysis.casework, path);
    const errors = foundIn([analysis], terminal.workingFolder).filter(({ record }) => record.severity === 'error');
    if (found.ok) {
        terminal.write(explanation(found.path, found.measure, analysis, terminal));
        if (errors.length > 0)
            terminal.tell(`the design has ${plural(countFound(errors).error, 'error')}: \`casewright check\` shows them\n`);
        return exitCode.sound;
    }
    if ('unknown' in found) {
        terminal.write(errors.map((error) => `${findingAsText(error, terminal.paint)}\n`).join(''));
        terminal.tell(`\`${found.reached}\` is not known: see what is wrong with the design\n`);
        return exitCode.errorsFound;
    }
    throw noSuchSize(found, file, countFound(errors).error);
}

const sagEnding = '.sag';

/** @throws CouldNotRun if there is no such part, or it carries nothing */
function tellSag(analysis: Analysis, file: string, path: string, terminal: Terminal): ExitCode {
    const ofPart = path.slice(0, -sagEnding.length);
    const found = lookUp(analysis.casework, `${ofPart}.length`);
    if ('missing' in found) throw noSuchSize({ ...found, missing: found.missing.replace(/\.length$/, '') }, file, 0);
    const part = found.ok ? found.path.slice(0, found.path.lastIndexOf('.')) : ofPart;
    const explained = explainSag(part, analysis);
    if (!explained)
        throw new CouldNotRun(`\`${part}\` has no \`sag\`: nothing is said to lie on it, or too little is known of it`, [
            `say what it carries: \`load 20 lb/ft2 on ${part.slice(part.indexOf('.') + 1)}\``,
        ]);
    terminal.write(`${terminal.paint('strong', explained.headline)}\n\n${visibleText(explained.steps)}\n`);
    return exitCode.sound;
}

function explanation(path: string, measure: Measure, analysis: Analysis, { workingFolder, paint }: Terminal): string {
    const { headline, tolerance, steps } = explainSize(path, measure, analysis, ({ uri }) => shownUri(workingFolder, uri));
    return `${paint('strong', headline)}${tolerance ? `\n${tolerance}` : ''}\n\n${visibleText(steps)}\n`;
}

function noSuchSize({ reached, missing, known }: Extract<LookUp, { readonly missing: string }>, file: string, errors: number): CouldNotRun {
    const [first = ''] = missing.split('.');
    const [closest] = closestWords(first, known);
    const there = `there is ${known.map((name) => `\`${name}\``).join(', ')}`;
    if (missing === '') return new CouldNotRun(`\`${reached}\` is a thing, not a size: ask for one of its sizes`, [there]);
    return new CouldNotRun(`${reached === '' ? `\`${file}\`` : `\`${reached}\``} has no \`${missing}\``, [
        ...(closest === undefined ? [] : [`did you mean \`${closest}\`?`]),
        there,
        ...(errors === 0
            ? []
            : [`parts may be missing because the design has ${plural(errors, 'error')}: \`casewright check\` shows them`]),
    ]);
}
