import * as path from 'node:path';

/** The root of the checkout. */
export const ROOT = path.resolve(import.meta.dirname, '../..');

/** The packaged extension, as a user installs it. */
export const VSIX = path.join(ROOT, 'extension/out/casewright.vsix');

/** Where the tests write: bundles of the suite and screenshots. Ignored by git. */
export const OUT = path.join(ROOT, 'tests/out');

/** The suite, bundled for either extension host. */
export const SUITE = { desktop: path.join(OUT, 'suite/desktop.cjs'), web: path.join(OUT, 'suite/web.js') };
