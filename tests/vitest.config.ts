import { fileURLToPath } from 'node:url';
import { defineConfig } from 'vitest/config';

export default defineConfig({
    root: fileURLToPath(new URL('..', import.meta.url)),
    test: {
        include: ['{shared,language,cli,extension}/test/**/*.test.ts', 'tests/**/*.test.ts'],
        exclude: ['**/node_modules/**', 'tests/workbench/**', 'tests/out/**'],
        testTimeout: 20_000,
    },
});
