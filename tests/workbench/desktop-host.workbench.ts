import * as path from 'node:path';
import { afterAll } from 'vitest';
import { startWorkbench } from './code-server.js';
import { describeHost } from './extension-host.js';
import { ROOT, SUITE, VSIX } from './paths.js';

const workbench = await startWorkbench({ vsix: VSIX });
afterAll(() => workbench.stop());

// The extension is the installed one; what the protocol calls the extension under development is an empty stand-in.
const url = workbench.workbenchUrl({
    payload: [
        ['extensionDevelopmentPath', workbench.remote(path.join(ROOT, 'tests/workbench/empty-extension'))],
        ['extensionTestsPath', workbench.remote(SUITE.desktop)],
    ],
});
await describeHost('installed extension in the desktop host', url);
