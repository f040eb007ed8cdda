#!/usr/bin/env -S node --max-semi-space-size=64
/**
 * The program: looks at the Node that it runs in, and only then loads the rest. Its first line gives Node more room for what lives
 * shortly, as nearly all does that is made at a keystroke: it is thrown away in one sweep, and not copied about before.
 */
import * as modules from 'node:module';
import { exitCode } from './exit-code.js';
import { preparedStart } from './prepared-server.js';

const oldestNode = 22;
if (Number.parseInt(process.versions.node, 10) < oldestNode) {
    process.stderr.write(`casewright: this needs Node ${oldestNode} or newer, and runs in Node ${process.versions.node}\n`);
    process.exitCode = exitCode.couldNotRun;
} else {
    const given = process.argv.slice(2);
    // An editor waits for the language server: it starts without all that reads commands and writes documents.
    const prepared =
        given.join(' ') === 'language-server --stdio'
            ? preparedStart(new URL('parts/prepared-server.cjs', import.meta.url), given)
            : undefined;
    prepared?.continueAsPrepared();
    // What one start has compiled the next need not: Node keeps it in its folder for temporary files.
    modules.enableCompileCache?.();
    await (prepared ? import('casewright-language/node') : import('./program.js'));
    prepared?.prepareNext();
}
