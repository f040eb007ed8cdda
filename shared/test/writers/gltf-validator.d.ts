/** The part of the validator of the Khronos Group that the tests use: it brings no types. */
declare module 'gltf-validator' {
    export function validateBytes(bytes: Uint8Array): Promise<{
        readonly issues: { readonly numErrors: number; readonly messages: readonly { readonly code: string; readonly message: string }[] };
        readonly info: { readonly totalTriangleCount: number; readonly materialCount: number };
    }>;
}
