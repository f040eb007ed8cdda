/** Gives the command line its arguments, its folder and its streams. */
import { runCommandLine } from './command-line.js';
import { exitCode } from './exit-code.js';
import { paintFor } from './terminal.js';

// Whoever reads may stop reading, as `head` does: then there is nothing left to do.
process.stdout.on('error', (error: NodeJS.ErrnoException) => {
    if (error.code !== 'EPIPE') throw error;
    process.exit();
});

try {
    process.exitCode = await runCommandLine(process.argv.slice(2), {
        workingFolder: process.cwd(),
        write: (text) => process.stdout.write(text),
        tell: (text) => process.stderr.write(text),
        paint: paintFor(process.stdout, process.env),
    });
} catch (error) {
    process.stderr.write(
        `casewright: this is a mistake in the tool itself, not in the design\n${error instanceof Error ? error.stack : error}\n`,
    );
    process.exitCode = exitCode.couldNotRun;
}
