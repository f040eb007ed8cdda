/** The reason of the operating system for refusing, in words. */

const reasons: Readonly<Record<string, string>> = {
    EACCES: 'permission is denied',
    EBUSY: 'it is in use',
    EDQUOT: 'the disk quota is used up',
    EEXIST: 'there is already something of that name',
    EISDIR: 'it is a folder',
    ELOOP: 'its links lead round in a circle',
    EMFILE: 'too many files are open',
    ENAMETOOLONG: 'the name is too long',
    ENOENT: 'there is no such file or folder',
    ENOSPC: 'the disk is full',
    ENOTDIR: 'what should be a folder on the way to it is a file',
    EPERM: 'the operating system does not allow it',
    EROFS: 'it is on a disk that can only be read',
};

/** The code of an error of the operating system, such as `ENOENT`; undefined for any other error. */
export function systemCode(error: unknown): string | undefined {
    return error instanceof Error && 'code' in error && typeof error.code === 'string' ? error.code : undefined;
}

/** Why the operating system refused, as the end of a sentence. What is no error of the system is thrown on. */
export function systemReason(error: unknown): string {
    const code = systemCode(error);
    if (code === undefined) throw error;
    return reasons[code] ?? `the operating system says ${code}`;
}
