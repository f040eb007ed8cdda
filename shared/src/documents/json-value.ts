/** Plain data, as JSON (RFC 8259) can say it. Numbers are finite. */
export type JsonValue = string | number | boolean | null | readonly JsonValue[] | JsonObject;

export interface JsonObject {
    readonly [key: string]: JsonValue;
}
