import { Command } from 'commander';

/** Exit code for a command that could not run at all; 1 is for errors found in a design. */
const COULD_NOT_RUN = 2;

const program = new Command('casewright')
    .description('checks designs of casework written in .case files and writes the documents of the shop')
    .exitOverride(({ exitCode }) => process.exit(exitCode === 0 ? 0 : COULD_NOT_RUN));

program
    .command('language-server')
    .description('the language server for any editor')
    .requiredOption('--stdio', 'speak over standard input and output')
    .action(async () => {
        await import('casewright-language/node'); // reads the way to the client from the arguments, and serves until it leaves
    });

await program.parseAsync();
