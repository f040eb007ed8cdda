/** The version of the tool. */
import about from '../package.json' with { type: 'json' };

/** As the package says it. */
export const version: string = about.version;
