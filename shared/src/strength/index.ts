/** How far wood bends and what it presses: numbers from properties of wood, with their sources. Knows no rules and no documents. */
export {
    dryBend,
    dryStrain,
    leastRadiusOfPlywood,
    outerStrain,
    type PlywoodBend,
    thickestFor,
    type Wood,
} from './bending-limits.js';
export { type BentStrip, bentStrip } from './bent-strip.js';
export { type CaulLoad, type CaulSection, caulCrown, caulLoad, clampPressure } from './caul.js';
export { gluePressure, type PressureRange } from './glue-pressure.js';
export { type WoodStrength, woodStrength } from './wood-strength.js';
