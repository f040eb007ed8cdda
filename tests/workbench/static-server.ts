import { createReadStream } from 'node:fs';
import { stat } from 'node:fs/promises';
import { createServer } from 'node:http';
import type { AddressInfo } from 'node:net';
import * as path from 'node:path';

const CONTENT_TYPES: Readonly<Record<string, string>> = {
    '.js': 'text/javascript',
    '.cjs': 'text/javascript',
    '.json': 'application/json',
    '.md': 'text/markdown',
};

/** A running file server on the loopback address. */
export interface StaticServer {
    readonly port: number;
    close(): void;
}

/** Serves folders read-only: `{ '/extension': folder }`. The first prefix that fits an address answers it. */
export async function serveFolders(folders: Readonly<Record<string, string>>): Promise<StaticServer> {
    const server = createServer(async (request, response) => {
        const file = fileFor(request.url ?? '/', folders);
        const found = file === undefined ? undefined : await stat(file).catch(() => undefined);
        if (file === undefined || !found?.isFile()) {
            response.writeHead(404).end();
            return;
        }
        response.writeHead(200, {
            'Access-Control-Allow-Origin': '*',
            'Cache-Control': 'no-cache',
            'Content-Type': CONTENT_TYPES[path.extname(file)] ?? 'application/octet-stream',
            'Content-Length': found.size,
        });
        createReadStream(file).pipe(response);
    });
    await new Promise<void>((resolve, reject) => {
        server.once('error', reject);
        server.listen(0, '127.0.0.1', resolve);
    });
    return {
        port: (server.address() as AddressInfo).port,
        close: () => {
            server.close();
            server.closeAllConnections();
        },
    };
}

function fileFor(url: string, folders: Readonly<Record<string, string>>): string | undefined {
    const requested = decodeURIComponent(new URL(url, 'http://localhost').pathname);
    for (const [prefix, folder] of Object.entries(folders)) {
        if (requested.startsWith(`${prefix}/`)) {
            return path.join(folder, path.normalize(requested.slice(prefix.length)));
        }
    }
    return undefined;
}
