import { fileURLToPath } from 'node:url';
import { defineConfig } from 'vitest/config';

const root = fileURLToPath(new URL('..', import.meta.url));

export default defineConfig({
    test: {
        reporters: ['default', './tests/scripts/closing-line-reporter.ts'],
        projects: [
            {
                root,
                test: {
                    name: 'fast',
                    include: ['{shared,language,cli,extension}/test/**/*.test.ts', 'tests/**/*.test.ts'],
                    exclude: ['**/node_modules/**', 'tests/out/**', 'tests/protocol/prepared/**'],
                    // a server that a test starts leaves nothing behind
                    env: { CASEWRIGHT_CACHE: 'off' },
                    testTimeout: 60_000,
                    hookTimeout: 60_000,
                    // On two cores the default would be one worker, and then vitest runs a group 0 last.
                    maxWorkers: '100%',
                    sequence: { groupOrder: 1 },
                },
            },
            {
                root,
                test: {
                    name: 'prepared',
                    include: ['tests/protocol/{stdio,requests}.test.ts', 'tests/protocol/prepared/*.test.ts'],
                    globalSetup: ['tests/protocol/prepared/prepare.ts'],
                    testTimeout: 60_000,
                    hookTimeout: 60_000,
                    env: { CASEWRIGHT_CACHE: fileURLToPath(new URL('out/prepared-start', import.meta.url)) },
                    // after the rest: it prepares the server that it starts, and that must not be bundled meanwhile
                    sequence: { groupOrder: 2 },
                },
            },
            {
                root,
                test: {
                    name: 'workbench',
                    include: ['tests/workbench/*.workbench.ts'],
                    globalSetup: ['tests/workbench/prepare.ts'],
                    testTimeout: 120_000,
                    hookTimeout: 120_000,
                    // One browser and one workbench at a time, and after the rest: each of them fills two cores.
                    maxWorkers: 1,
                    sequence: { groupOrder: 3 },
                },
            },
        ],
    },
});
