import * as path from 'node:path';
import { afterAll } from 'vitest';
import { startWorkbench } from './code-server.js';
import { describeHost } from './extension-host.js';
import { OUT, ROOT } from './paths.js';
import { serveFolders } from './static-server.js';

const workbench = await startWorkbench();
const files = await serveFolders({ '/extension/suite': path.join(OUT, 'suite'), '/extension': path.join(ROOT, 'extension') });
afterAll(async () => {
    await workbench.stop();
    files.close();
});

// The worker host starts no worker for an extension that it reads from the remote machine, so this one comes over HTTP; through
// the proxy of the workbench, since its content policy allows no other origin.
const address = (file: string) => {
    const { host, pathname } = new URL(`${workbench.url}/proxy/${files.port}${file}`);
    return { scheme: 'http', authority: host, path: pathname };
};
await describeHost('extension in the web worker host', workbench.workbenchUrl(), {
    extensions: [address('/extension')],
    extensionTestsPath: address('/extension/suite/web.js'), // the host runs only a suite that lies within an extension under development
});
