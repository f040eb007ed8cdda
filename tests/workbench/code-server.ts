import { type ChildProcess, spawn, spawnSync } from 'node:child_process';
import { mkdir, mkdtemp, rm, writeFile } from 'node:fs/promises';
import { type AddressInfo, createServer } from 'node:net';
import { tmpdir } from 'node:os';
import * as path from 'node:path';
import { createWorkspace } from './editor-workspace.js';
import { installWorkbench, type Workbench } from './install-workbench.js';

/** Settings that keep everything but the tested extension quiet. */
const SETTINGS = {
    'workbench.startupEditor': 'none',
    'workbench.tips.enabled': false,
    'workbench.welcomePage.experimentalOnboarding': false,
    'workbench.secondarySideBar.defaultVisibility': 'hidden',
    'workbench.enableExperiments': false,
    'chat.disableAIFeatures': true,
    'telemetry.telemetryLevel': 'off',
    'update.mode': 'none',
    'extensions.autoCheckUpdates': false,
    'extensions.autoUpdate': false,
    'extensions.ignoreRecommendations': true,
    'git.enabled': false,
    'files.watcherExclude': { '**': true },
    'files.autoSave': 'off',
    'editor.hover.delay': 100,
    'editor.hover.above': false,
    'window.restoreWindows': 'none',
    'json.schemaDownload.enable': false,
};

/** A workbench that is being served. */
export interface WorkbenchServer {
    /** Address without a path. */
    readonly url: string;
    /** A copy of the examples of its own, which a test may change. */
    readonly folder: string;
    /** The address of the workbench on its folder, with what the web workbench reads from its payload. */
    workbenchUrl(page?: { openFile?: string; payload?: readonly (readonly [string, string])[] }): string;
    /** The address under which the workbench knows a file of this machine. */
    remote(file: string): string;
    /** What the server has printed so far. */
    log(): string;
    stop(): Promise<void>;
}

/** How a folder that nobody has said to trust is opened: in Restricted Mode, without asking. */
const UNTRUSTED = {
    'security.workspace.trust.enabled': true,
    'security.workspace.trust.startupPrompt': 'never',
    'security.workspace.trust.emptyWindow': false,
};

interface WorkbenchOptions {
    readonly vsix?: string;
    readonly isTrusted?: boolean;
    readonly showsMessages?: boolean;
}

/**
 * Serves the workbench from a fresh profile.
 * @param vsix a packaged extension that is installed in it first
 * @param isTrusted whether the folder is trusted; in Restricted Mode otherwise
 * @param showsMessages whether messages pop up; then no suite can be run
 */
export async function startWorkbench({ vsix, isTrusted = true, showsMessages = false }: WorkbenchOptions = {}): Promise<WorkbenchServer> {
    const workbench = await installWorkbench();
    const home = await createProfile(isTrusted ? { 'security.workspace.trust.enabled': false } : UNTRUSTED);
    const folder = await createWorkspace();
    const environment = cleanEnvironment(home);
    if (vsix !== undefined) {
        installExtension(workbench, home, environment, vsix);
    }
    const authority = `127.0.0.1:${await freePort()}`;
    const running = launch(workbench, { home, environment, authority, isTrusted, showsMessages });
    await untilHealthy(running, authority);
    const remote = (file: string) => `vscode-remote://${authority}${file}`;
    return {
        url: `http://${authority}`,
        folder,
        remote,
        log: running.log,
        workbenchUrl({ openFile, payload = [] } = {}) {
            const entries = [['skipWelcome', 'true'], ['skipReleaseNotes', 'true'], ...payload];
            if (openFile !== undefined) {
                entries.push(['openFile', remote(path.join(folder, openFile))]);
            }
            return `http://${authority}/?folder=${encodeURIComponent(folder)}&payload=${encodeURIComponent(JSON.stringify(entries))}`;
        },
        async stop() {
            await running.stop();
            for (const written of [home, folder]) {
                await rm(written, { recursive: true, force: true, maxRetries: 5 });
            }
        },
    };
}

async function createProfile(trust: object): Promise<string> {
    const home = await mkdtemp(path.join(tmpdir(), 'casewright-workbench-'));
    await mkdir(path.join(home, 'data/User'), { recursive: true });
    await mkdir(path.join(home, 'extensions'));
    await writeFile(path.join(home, 'data/User/settings.json'), JSON.stringify({ ...SETTINGS, ...trust }));
    await writeFile(path.join(home, 'config.yaml'), ''); // without one the server would write to the user's own folder
    return home;
}

function profileArguments(home: string): string[] {
    return [
        '--config',
        path.join(home, 'config.yaml'),
        '--user-data-dir',
        path.join(home, 'data'),
        '--extensions-dir',
        path.join(home, 'extensions'),
    ];
}

function cleanEnvironment(home: string): NodeJS.ProcessEnv {
    const kept = Object.entries(process.env).filter(
        ([name]) => !/^(VSCODE_|CODE_SERVER_|VITEST|PORT$|PASSWORD$|NODE_OPTIONS$|NODE_ENV$)/.test(name),
    );
    return {
        ...Object.fromEntries(kept),
        HOME: home,
        XDG_CONFIG_HOME: home,
        XDG_DATA_HOME: home,
        EXTENSIONS_GALLERY: '{"serviceUrl":""}', // no gallery: nothing leaves the machine
    };
}

function installExtension(workbench: Workbench, home: string, environment: NodeJS.ProcessEnv, vsix: string): void {
    const installed = spawnSync(workbench.node, [workbench.entry, ...profileArguments(home), '--install-extension', vsix, '--force'], {
        env: environment,
        encoding: 'utf8',
    });
    if (installed.status !== 0) {
        throw new Error(`${vsix} could not be installed (${installed.status}): ${installed.stdout}${installed.stderr}`);
    }
}

interface RunningServer {
    readonly child: ChildProcess;
    log(): string;
    stop(): Promise<void>;
}

interface Launch {
    readonly home: string;
    readonly environment: NodeJS.ProcessEnv;
    readonly authority: string;
    readonly isTrusted: boolean;
    readonly showsMessages: boolean;
}

function launch(workbench: Workbench, { home, environment, authority, isTrusted, showsMessages }: Launch): RunningServer {
    const child = spawn(
        workbench.node,
        [
            workbench.entry,
            ...profileArguments(home),
            '--bind-addr',
            authority,
            '--auth',
            'none',
            '--disable-telemetry',
            '--disable-update-check',
            ...(isTrusted ? ['--disable-workspace-trust'] : []),
            '--disable-getting-started-override',
            '--ignore-last-opened',
            '--idle-timeout-seconds',
            '120',
            // Without it the workbench silently ignores extensionDevelopmentPath and extensionTestsPath; with it no message pops up.
            ...(showsMessages ? [] : ['--vscode-option', 'enable-smoke-test-driver']),
        ],
        { env: environment, stdio: ['ignore', 'pipe', 'pipe'], detached: true },
    );
    // A process group of its own, so that the extension hosts end with it; nothing may outlive the test.
    const kill = () => {
        try {
            process.kill(-(child.pid as number), 'SIGKILL');
        } catch {
            // It has ended.
        }
    };
    process.once('exit', kill);
    let log = '';
    child.stdout.on('data', (data) => {
        log += data;
    });
    child.stderr.on('data', (data) => {
        log += data;
    });
    return {
        child,
        log: () => log,
        async stop() {
            if (child.exitCode === null) {
                const ended = new Promise((resolve) => child.once('exit', resolve));
                process.kill(-(child.pid as number), 'SIGTERM');
                await Promise.race([ended, pause(5_000)]);
            }
            kill();
            process.off('exit', kill);
        },
    };
}

async function untilHealthy(server: RunningServer, authority: string): Promise<void> {
    const deadline = Date.now() + 60_000;
    for (;;) {
        if (server.child.exitCode !== null) {
            throw new Error(`the workbench ended with ${server.child.exitCode}\n${server.log()}`);
        }
        const answer = await fetch(`http://${authority}/healthz`).catch(() => undefined);
        if (answer?.ok) {
            return;
        }
        if (Date.now() > deadline) {
            await server.stop();
            throw new Error(`the workbench is not up after a minute\n${server.log()}`);
        }
        await pause(100);
    }
}

function freePort(): Promise<number> {
    return new Promise((resolve, reject) => {
        const probe = createServer();
        probe.once('error', reject);
        probe.listen(0, '127.0.0.1', () => {
            const { port } = probe.address() as AddressInfo;
            probe.close(() => resolve(port));
        });
    });
}

function pause(milliseconds: number): Promise<void> {
    return new Promise((resolve) => {
        setTimeout(resolve, milliseconds).unref();
    });
}
