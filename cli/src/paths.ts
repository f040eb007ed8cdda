/** Paths as they are shown and stored: the same on every operating system. */
import * as path from 'node:path';
import { fileURLToPath, pathToFileURL } from 'node:url';

/** The two styles of paths, of which `node:path` is the one of this machine. */
export type PathStyle = Pick<path.PlatformPath, 'relative' | 'isAbsolute' | 'sep'>;

/** A file as seen from a folder, with `/` between the names. Where no relative path leads to it (another drive), it is absolute. */
export function pathFrom(folder: string, file: string, style: PathStyle = path): string {
    const relative = style.relative(folder, file);
    return (relative === '' ? '.' : relative).split(style.sep).join('/');
}

/** How a file is shown: as seen from the working folder if it is in it, otherwise in full. */
export function shownPath(workingFolder: string, file: string, style: PathStyle = path): string {
    const relative = pathFrom(workingFolder, file, style);
    const isInside = relative !== '..' && !relative.startsWith('../') && !style.isAbsolute(relative);
    return isInside ? relative : file.split(style.sep).join('/');
}

/** How the document at a URI is shown: a file by its path, a module of the library by its URI. */
export function shownUri(workingFolder: string, uri: string): string {
    return uri.startsWith('file:') ? shownPath(workingFolder, fileURLToPath(uri)) : uri;
}

/** The URI of the file that a user names, relative to the working folder. */
export function uriOf(workingFolder: string, file: string): string {
    return pathToFileURL(path.resolve(workingFolder, file)).href;
}
