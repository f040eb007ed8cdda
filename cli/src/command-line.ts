/** The commands, their arguments and their help. */
import { Command, CommanderError, Option } from 'commander';
import { oneOf, someOf } from './choices.js';
import { type BuildOptions, build, formatNames, kindNames, paperNames } from './commands/build.js';
import { type CheckOptions, check, checkFormats } from './commands/check.js';
import { explain } from './commands/explain.js';
import { type FormatOptions, format } from './commands/format.js';
import { why } from './commands/why.js';
import { CouldNotRun } from './could-not-run.js';
import { readDate } from './date.js';
import { type ExitCode, exitCode } from './exit-code.js';
import { readSpacing } from './spacing.js';
import { type Terminal, tellCouldNotRun } from './terminal.js';
import { version } from './version.js';

const closing = `
Exit codes: 0 done and no error found, 1 errors found, 2 could not run.

Examples:
    casewright check kiln-lane.case
    casewright build kiln-lane.case --only cut-list --format csv
    casewright why kiln-lane.case 'PotteryCase.Tier[2].depth'`;

/**
 * Runs a command.
 * @param args what stands after the name of the program
 * @returns the exit code; never throws on account of what the user asked for
 */
export async function runCommandLine(args: readonly string[], terminal: Terminal): Promise<ExitCode> {
    let ended: ExitCode = exitCode.sound;
    const program = commandLine(terminal, (code) => {
        ended = code;
    });
    try {
        await program.parseAsync(args, { from: 'user' });
        return ended;
    } catch (error) {
        if (error instanceof CommanderError) return error.exitCode === 0 ? exitCode.sound : exitCode.couldNotRun; // it has been told
        if (!(error instanceof CouldNotRun)) throw error;
        tellCouldNotRun(error, terminal);
        return exitCode.couldNotRun;
    }
}

function commandLine(terminal: Terminal, end: (code: ExitCode) => void): Command {
    const program = new Command('casewright')
        .description('Checks designs of casework that are written in .case files, and writes the documents of the shop.')
        .version(version, '--version', 'show the version')
        .helpOption('--help', 'show what there is')
        .helpCommand(false)
        .addHelpText('after', closing)
        .showHelpAfterError('    `casewright --help` shows what there is')
        .configureOutput({
            writeOut: (text) => terminal.write(text),
            writeErr: (text) => terminal.tell(text),
            outputError: (text, write) => write(inOurStyle(text)),
        })
        .exitOverride();
    addCheck(program, terminal, end);
    addBuild(program, terminal, end);
    addWhy(program, terminal, end);
    addFormat(program, terminal, end);
    addExplain(program, terminal, end);
    addLanguageServer(program);
    return program;
}

/** A message of the library that reads the arguments, written as all our messages are. */
function inOurStyle(message: string): string {
    return message
        .replace(/^error: /, 'casewright: ')
        .replaceAll("'", '`')
        .replace(/^\(Did you mean (.*)\?\)$/m, '    did you mean `$1`?');
}

type AddCommand = (program: Command, terminal: Terminal, end: (code: ExitCode) => void) => void;

const addCheck: AddCommand = (program, terminal, end) => {
    program
        .command('check')
        .summary('find what is wrong with designs')
        .description('Finds what is wrong with designs and shows it at the words that cause it.')
        .argument('<FILE...>', 'designs, each with all that it uses')
        .addOption(
            new Option('--format <FORMAT>', 'text for people, json for programs, sarif for services that show findings beside a change')
                .argParser(oneOf(checkFormats, 'a format of findings'))
                .default('text'),
        )
        .action(async (files: string[], options: CheckOptions) => end(await check(files, options, terminal)));
};

const addBuild: AddCommand = (program, terminal, end) => {
    program
        .command('build')
        .summary('write the documents that the shop works from')
        .description('Writes the documents that the shop works from. Where the design has errors it writes nothing and shows them.')
        .argument('<FILE>', 'the design')
        .option('--out <DIR>', 'the folder to write to (default: out/NAME beside the design)')
        .addOption(
            new Option('--only <KIND,...>', `some of the documents: ${kindNames.join(', ')} (default: all)`).argParser(
                someOf(kindNames, 'a document'),
            ),
        )
        .addOption(
            new Option('--format <EXT,...>', `some of the formats: ${formatNames.join(', ')} (default: all)`).argParser(
                someOf(formatNames, 'a format of documents'),
            ),
        )
        .addOption(
            new Option('--units <UNIT>', 'print sizes in inches (in) or millimetres (mm) (default: as the project says)').argParser(
                oneOf(['in', 'mm'], 'a system of units'),
            ),
        )
        .addOption(
            new Option(
                '--paper <PAPER>',
                `what templates are tiled onto: ${paperNames.join(', ')} (default: letter for inches, a4 for mm)`,
            ).argParser(oneOf(paperNames, 'a size of paper')),
        )
        .addOption(
            new Option(
                '--spacing <LENGTH>',
                'from one offset of a curve to the next, such as 2in or 50mm (default: 2in for inches, 50mm for mm)',
            ).argParser(readSpacing),
        )
        .addOption(
            new Option('--date <DATE>', 'the date of a quote, such as 2026-12-01 (default: a quote without one)').argParser(readDate),
        )
        .action(async (file: string, options: BuildOptions) => end(await build(file, options, terminal)));
};

const addWhy: AddCommand = (program, terminal, end) => {
    program
        .command('why')
        .summary('say where a size comes from')
        .description('Says where a size comes from, step by step down to what is written, and who ran through whom.')
        .argument('<FILE>', 'the design')
        .argument('<PATH>', 'the size, such as PotteryCase.Tier[2].depth')
        .action(async (file: string, path: string) => end(await why(file, path, terminal)));
};

const addFormat: AddCommand = (program, terminal, end) => {
    program
        .command('format')
        .summary('lay designs out as the editor does')
        .description('Lays designs out as the editor does: columns, blanks, one spelling of measures. Order, words and comments stay.')
        .argument('<FILE...>', 'designs; the files that they use stay as they are')
        .option('--check', 'change nothing, and end with exit code 1 if something would change', false)
        .action(async (files: string[], options: FormatOptions) => end(await format(files, options, terminal)));
};

const addExplain: AddCommand = (program, terminal, end) => {
    program
        .command('explain')
        .summary('explain a rule, or list all rules')
        .description('Explains a rule: what is flagged, why, what to do, and where it comes from. Without a code it lists all rules.')
        .argument('[CODE]', 'the code or the name of a rule')
        .action((code: string | undefined) => end(explain(code, terminal)));
};

function addLanguageServer(program: Command): void {
    program
        .command('language-server')
        .summary('serve any editor')
        .description('The language server for any editor.')
        .requiredOption('--stdio', 'speak over standard input and output')
        .action(async () => {
            await import('casewright-language/node'); // reads the way to the client from the arguments, and serves until it leaves
        });
}
