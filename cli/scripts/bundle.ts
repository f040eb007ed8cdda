/** Bundles the command line into one file. `--watch` goes on bundling at each change. */
import * as path from 'node:path';
import { type BuildOptions, build, context } from 'esbuild';

const options: BuildOptions = {
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
};

if (process.argv.includes('--watch')) {
    await (await context({ ...options, logLevel: 'info' })).watch();
} else {
    await build(options);
}
