import type { Drawing } from '../drawing/index.js';
import type { JsonObject } from './json-value.js';
import type { Scene } from './scene.js';
import type { Sheet } from './sheet.js';

/**
 * What a document is made of, before any file format: a sheet for people, with drawings that show it or without, data for programs, with a scene that shows it or without, drawings at full size, or
 * drawings that each fit a page, at whatever scale they say.
 */
export type ShopDocument =
    | { readonly is: 'drawings'; readonly drawings: readonly Drawing[]; readonly units: 'in' | 'mm' }
    | { readonly is: 'pages'; readonly drawings: readonly Drawing[]; readonly units: 'in' | 'mm' }
    | {
          readonly is: 'sheet';
          readonly sheet: Sheet;
          readonly pages?: { readonly drawings: readonly Drawing[]; readonly units: 'in' | 'mm' };
      }
    | { readonly is: 'data'; readonly data: JsonObject; readonly scene?: Scene };
