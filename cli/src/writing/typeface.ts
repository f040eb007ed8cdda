/** Noto Sans (SIL Open Font License 1.1): Latin with all its marks, Greek, Cyrillic. It is read only where a document needs it. */
export async function readTypeface(): Promise<Uint8Array> {
    const { default: bytes } = await import('@expo-google-fonts/noto-sans/400Regular/NotoSans_400Regular.ttf');
    return bytes;
}
