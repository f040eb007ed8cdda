/** A command that cannot do what it was asked to, with the reason in words. The user is told, and the run ends with exit code 2. */
export class CouldNotRun extends Error {
    /**
     * @param message what is wrong; starts in lower case and has no stop
     * @param advice what to do about it, each a line of its own
     */
    constructor(
        message: string,
        readonly advice: readonly string[] = [],
    ) {
        super(message);
    }
}
