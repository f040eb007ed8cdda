import { readFile } from 'node:fs/promises';

/** Noto Sans (SIL Open Font License 1.1): Latin with all its marks, Greek, Cyrillic. It is delivered beside the bundled parts of the program. */
export function readTypeface(): Promise<Uint8Array> {
    return readFile(new URL('NotoSans_400Regular.ttf', import.meta.url));
}
