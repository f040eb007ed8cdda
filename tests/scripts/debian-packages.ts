/**
 * The Debian packages that the tests drive: a browser, a second editor, and readers of PDF and DXF. Does nothing where they are installed already;
 * elsewhere than on Debian as root it says what to install.
 */
import { execFileSync } from 'node:child_process';
import { existsSync } from 'node:fs';

const programs = {
    chromium: '/usr/bin/chromium',
    neovim: '/usr/bin/nvim',
    'poppler-utils': '/usr/bin/pdftoppm',
    'python3-ezdxf': '/usr/lib/python3/dist-packages/ezdxf',
};
const missing = Object.entries(programs)
    .filter(([, program]) => !existsSync(program))
    .map(([debianPackage]) => debianPackage);

if (missing.length > 0) {
    if (process.getuid?.() !== 0 || !existsSync('/usr/bin/apt-get')) {
        console.error(`the tests need ${missing.join(' and ')}; install with: apt-get install ${missing.join(' ')}`);
        process.exit(1);
    }
    console.error(`installing ${missing.join(' and ')}`);
    aptGet('update');
    aptGet('install', '-y', '--no-install-recommends', ...missing);
}

function aptGet(...args: string[]): void {
    execFileSync('apt-get', ['-qq', ...args], {
        stdio: ['ignore', 'ignore', 'inherit'],
        env: { ...process.env, DEBIAN_FRONTEND: 'noninteractive' },
    });
}
