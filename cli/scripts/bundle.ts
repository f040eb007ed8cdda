/** Bundles the command line into one file. */
import * as path from 'node:path';
import { build } from 'esbuild';

await build({
    absWorkingDir: path.resolve(import.meta.dirname, '..'),
    entryPoints: ['src/main.ts'],
    outfile: 'dist/casewright.mjs',
    bundle: true,
    platform: 'node',
    format: 'esm',
    target: 'node22',
    sourcemap: 'linked',
    logLevel: 'warning',
    banner: {
        // Some of the bundled packages are CommonJS and ask for Node's own modules with `require`, which an ES module does not have.
        js: "#!/usr/bin/env node\nimport { createRequire } from 'node:module';\nconst require = createRequire(import.meta.url);",
    },
}).catch(() => process.exit(1)); // what is wrong has been printed
