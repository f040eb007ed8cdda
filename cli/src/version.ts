/** The version of the tool. */
import { readFileSync } from 'node:fs';

/** As the package says it, which lies one folder above the sources and above the bundle alike. */
export const version: string = JSON.parse(readFileSync(new URL('../package.json', import.meta.url), 'utf8')).version;
