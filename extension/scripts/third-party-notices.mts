import { readdir, readFile } from 'node:fs/promises';
import * as path from 'node:path';
import type { Metafile } from 'esbuild';

/**
 * The licences of all packages of other authors that ended up in the bundles, as one text.
 * Fails where a bundled package brings no licence text and names no author of whom to say it, or has one that this project may not ship.
 */
export async function thirdPartyNotices(bundles: readonly Metafile[], folder: string): Promise<string> {
    const packages = new Set<string>();
    for (const input of bundles.flatMap((bundle) => Object.keys(bundle.inputs))) {
        const found = /^.*\/?node_modules\/(?:@[^/]+\/)?[^/]+/.exec(input)?.[0];
        if (found !== undefined) {
            packages.add(found);
        }
    }
    const notices = await Promise.all([...packages].map((found) => notice(path.resolve(folder, found))));
    return `# Third-party notices\n\nCasewright contains the packages below.\n\n${notices.sort().join('\n')}`;
}

/** All permissive; the last is that of minimatch, which the language client brings. */
const PERMITTED_LICENCES = ['MIT', 'ISC', 'Apache-2.0', 'BSD-2-Clause', 'BSD-3-Clause', '0BSD', 'BlueOak-1.0.0'];

async function notice(packageFolder: string): Promise<string> {
    const { name, version, license, author } = JSON.parse(await readFile(path.join(packageFolder, 'package.json'), 'utf8'));
    if (!PERMITTED_LICENCES.includes(license)) {
        throw new Error(`${name} is bundled, but its licence is ${license}; permitted are ${PERMITTED_LICENCES.join(', ')}`);
    }
    const file = (await readdir(packageFolder)).find((entry) => /^licen[cs]e/i.test(entry));
    const text = file === undefined ? await mitLicenceOf(name, license, author) : await readFile(path.join(packageFolder, file), 'utf8');
    return `## ${name} ${version} (${license})\n\n\`\`\`\n${text.replaceAll('\r\n', '\n').trim()}\n\`\`\`\n`;
}

/** The MIT licence as this project has it, which is the same for all but the holder of the copyright: for a package that only names it. */
async function mitLicenceOf(name: string, license: string, author: string | { name?: string } | undefined): Promise<string> {
    const holder = typeof author === 'string' ? author : author?.name;
    if (license !== 'MIT' || holder === undefined) {
        throw new Error(`${name} is bundled, but brings no licence text`);
    }
    const own = await readFile(path.resolve(import.meta.dirname, '../../LICENSE'), 'utf8');
    return own.replace(/^Copyright .*$/m, `Copyright (c) ${holder}`);
}
