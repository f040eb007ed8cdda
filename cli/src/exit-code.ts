/** What a run ends with: scripts rely on these numbers. */
export const exitCode = {
    /** Done, and no error was found. */
    sound: 0,
    /** Done, and errors were found (or, for `format --check`, files that are not formatted). */
    errorsFound: 1,
    /** Not done: a file that cannot be read or written, a wrong argument. */
    couldNotRun: 2,
} as const;

export type ExitCode = (typeof exitCode)[keyof typeof exitCode];
