// What a shop calls a part that can be moved or taken out. Knows words only.

/** Words that are written before the kind of a part, where the language has none: its joint says so. */
export const looseWords: ReadonlySet<string> = new Set(['adjustable', 'movable', 'moveable', 'removable', 'removeable', 'loose']);
