// How a server without a disk reads files: it asks the client. Knows the requests: both sides take their names from here.

/** What each request is about: one file or folder. */
export interface FileRequest {
    readonly uri: string;
}

/** What lies at an address. */
export interface FileEntry {
    readonly uri: string;
    readonly kind: 'file' | 'directory' | 'other';
}

/** Takes a `FileRequest`, gives the text of the file; fails where there is none. */
export const READ_FILE = 'casewright/readFile';

/** Takes a `FileRequest`, gives a `FileEntry`, or null where there is nothing. */
export const FIND_FILE = 'casewright/findFile';

/** Takes a `FileRequest`, gives a `FileEntry` for everything in the folder; fails where there is none. */
export const LIST_FOLDER = 'casewright/listFolder';
