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
        // Some of the bundled packages are CommonJS and ask for Node's own modules with `require`, which an ES module does not have;
        // others import `createRequire` under its own name, so that this is another.
        js: "#!/usr/bin/env node\nimport { createRequire as requireFrom } from 'node:module';\nconst require = requireFrom(import.meta.url);",
    },
}).catch(() => process.exit(1)); // what is wrong has been printed
