/** Bytes as text, for ways that carry text only. */
import { encodeToBase64 } from '@cantoo/pdf-lib';

/** The Base64 text (RFC 4648, section 4) of bytes. */
export function base64Of(bytes: Uint8Array): string {
    return encodeToBase64(bytes);
}
