/** Papers, portrait, in millimetres: ISO 216 for A sizes; ASME Y14.1 and the trade for letter, legal and tabloid (from memory). */
export const papers = {
    a4: { width: 210, height: 297 },
    a3: { width: 297, height: 420 },
    a2: { width: 420, height: 594 },
    a1: { width: 594, height: 841 },
    a0: { width: 841, height: 1189 },
    letter: { width: 215.9, height: 279.4 },
    legal: { width: 215.9, height: 355.6 },
    tabloid: { width: 279.4, height: 431.8 },
} as const;

export type PaperName = keyof typeof papers;
