/**
 * What to be careful of, beside the operations that need it. Common practice, no source, unless one is named; the instructions of a
 * machine, a glue or a finish stand above them.
 */
export const cautions = {
    /** 1 mg/m3 over a shift: NIOSH REL and ACGIH TLV for wood dust; 85 dBA: NIOSH, from memory. */
    dust: 'Dust of wood and of panels harms the lungs, that of oak and beech most: draw it off where it is made, wear a mask for fine dust and something over eyes and ears. What is allowed at work is in local rules (NIOSH names 1 mg/m3 over a shift, and 85 dBA).',
    routing:
        'Rout against the turn of the bit, in several shallow passes, and from high to low grain. With the turn of the bit the router climbs and pulls: only for a last hair, on clamped work and with both hands. Small pieces are routed while they still hang on a larger one; unplug it before a bit is changed.',
    boring: 'Bore and drive into clamped work, with the other hand out of the line of the bit. Try each setting on an offcut of the same stock first.',
    bent: 'What is bent under clamps or held by a string springs: stand beside it, not in front, and wear something over the eyes when it is let go.',
    /** 29 CFR 1910.107 and NFPA 33 rule the spraying of what burns, from memory. */
    finishing:
        'Spraying what burns needs ventilation and no flame or spark near: codes and the data sheet of the maker come first. Rags with a drying oil catch fire by themselves: lay them flat to dry outdoors, or keep them in a metal can with water and a lid.',
    decides:
        'Figures of strength, pressure and bending are for the maker at work, from averages of tested wood: where people can be hurt, local codes and a licensed professional decide.',
} as const;
