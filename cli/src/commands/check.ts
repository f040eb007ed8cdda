/** `check FILE...`: all findings. */
import { CouldNotRun } from '../could-not-run.js';
import { type ExitCode, exitCode } from '../exit-code.js';
import { findingsAsJson } from '../findings/as-json.js';
import { findingsAsSarif } from '../findings/as-sarif.js';
import { findingsAsText } from '../findings/as-text.js';
import { countFound } from '../findings/count.js';
import { type FoundInText, foundWithSolids } from '../findings/found.js';
import { Designs } from '../reading/designs.js';
import { type Terminal, tellCouldNotRun } from '../terminal.js';
import { version } from '../version.js';

export const checkFormats = ['text', 'json', 'sarif'] as const;

export interface CheckOptions {
    readonly format: (typeof checkFormats)[number];
}

/** Checks designs. A file that cannot be read does not keep the others from being checked. */
export async function check(files: readonly string[], { format }: CheckOptions, terminal: Terminal): Promise<ExitCode> {
    const designs = new Designs(terminal.workingFolder);
    const analyses = [];
    let isUnreadable = false;
    for (const file of files) {
        try {
            analyses.push(await designs.analyse(file));
        } catch (error) {
            if (!(error instanceof CouldNotRun)) throw error;
            tellCouldNotRun(error, terminal);
            isUnreadable = true;
        }
    }
    const found = await foundWithSolids(analyses, terminal.workingFolder);
    designs.tellOfUnreadable(terminal);
    if (analyses.length > 0) terminal.write(report(found, format, terminal, analyses.length));
    if (isUnreadable) return exitCode.couldNotRun;
    return countFound(found).error > 0 ? exitCode.errorsFound : exitCode.sound;
}

function report(found: readonly FoundInText[], format: CheckOptions['format'], terminal: Terminal, files: number): string {
    switch (format) {
        case 'text':
            return findingsAsText(found, files, terminal.paint);
        case 'json':
            return findingsAsJson(found);
        case 'sarif':
            return findingsAsSarif(found, version, terminal.workingFolder);
    }
}
