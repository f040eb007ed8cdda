import Mocha from 'mocha';
import { runMocha } from './run-mocha.js';

/** Called by the extension host: by the workbench tests here, and by VS Code under `npm run test:electron`. */
export async function run(): Promise<void> {
    const mocha = new Mocha({ ui: 'tdd', timeout: 60_000, reporter: 'dot', color: false });
    mocha.suite.emit('pre-require', globalThis, '', mocha);
    await import('./editor.js');
    await import('./commands.js');
    await runMocha(mocha);
}
