/** A file system that keeps files in memory, as an extension may bring one: for designs that lie on no disk. */
import * as vscode from 'vscode';

export class MemoryFiles implements vscode.FileSystemProvider {
    private readonly entries = new Map<string, Uint8Array | 'folder'>([['/', 'folder']]);
    private readonly changes = new vscode.EventEmitter<vscode.FileChangeEvent[]>();
    readonly onDidChangeFile = this.changes.event;

    watch(): vscode.Disposable {
        return new vscode.Disposable(() => {});
    }

    stat(uri: vscode.Uri): vscode.FileStat {
        const found = this.entry(uri);
        const type = found === 'folder' ? vscode.FileType.Directory : vscode.FileType.File;
        return { type, ctime: 0, mtime: 0, size: found.length };
    }

    readDirectory(uri: vscode.Uri): [string, vscode.FileType][] {
        this.entry(uri);
        const inside = `${uri.path.replace(/\/$/, '')}/`;
        return [...this.entries]
            .filter(([path]) => path.startsWith(inside) && path !== inside && !path.slice(inside.length).includes('/'))
            .map(([path, entry]) => [path.slice(inside.length), entry === 'folder' ? vscode.FileType.Directory : vscode.FileType.File]);
    }

    readFile(uri: vscode.Uri): Uint8Array {
        const found = this.entry(uri);
        if (found === 'folder') {
            throw vscode.FileSystemError.FileIsADirectory(uri);
        }
        return found;
    }

    createDirectory(uri: vscode.Uri): void {
        this.entries.set(uri.path, 'folder');
    }

    writeFile(uri: vscode.Uri, content: Uint8Array): void {
        this.entries.set(uri.path, content);
    }

    delete(uri: vscode.Uri): void {
        this.entry(uri);
        this.entries.delete(uri.path);
    }

    rename(from: vscode.Uri, to: vscode.Uri): void {
        this.entries.set(to.path, this.entry(from));
        this.entries.delete(from.path);
    }

    private entry(uri: vscode.Uri): Uint8Array | 'folder' {
        const found = this.entries.get(uri.path);
        if (found === undefined) {
            throw vscode.FileSystemError.FileNotFound(uri);
        }
        return found;
    }
}
