import 'mocha/mocha.js';
import { runMocha } from './run-mocha.js';

/** Called by the extension host in the browser's worker. */
export async function run(): Promise<void> {
    mocha.setup({ ui: 'tdd', timeout: 60_000, reporter: 'dot', color: false });
    await import('./editor.js');
    await import('./commands.js');
    await runMocha(mocha);
}
