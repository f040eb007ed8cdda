import type { Sheet } from './sheet.js';

/** What a document is made of, before any file format: a sheet for people, or data for programs. */
export type ShopDocument = { readonly is: 'sheet'; readonly sheet: Sheet } | { readonly is: 'data'; readonly data: JsonObject };

/** Plain data, as JSON (RFC 8259) can say it. Numbers are finite. */
export type JsonValue = string | number | boolean | null | readonly JsonValue[] | JsonObject;

export interface JsonObject {
    readonly [key: string]: JsonValue;
}
