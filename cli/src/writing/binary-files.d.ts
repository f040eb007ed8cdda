/** Files that the bundler takes in as their bytes. */
declare module '*.ttf' {
    const bytes: Uint8Array;
    export default bytes;
}
