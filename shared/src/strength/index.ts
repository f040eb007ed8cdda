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
export {
    attitudesOf,
    type Carried,
    carriedPieces,
    liftOf,
    liftOfCase,
    longestRoundCorner,
    mostPeople,
    mustBeLaid,
    recommendedWeight,
    roundCorner,
    throughDoorway,
    tiltDiagonal,
    type Way,
    wayOf,
} from './carrying.js';
export { type CaulLoad, type CaulSection, caulCrown, caulLoad, clampPressure } from './caul.js';
export { gluePressure, type PressureRange } from './glue-pressure.js';
export type { End } from './joints/end-forces.js';
export { greatestHold, type HeldEnd, heldEnds, heldVerdict } from './joints/held-ends.js';
export type { Bearing, Carries, Hold, KnownHold, Shear, Withdrawal } from './joints/hold.js';
export { fitOf, type GoodsFit, type PartLoad, type RoomOnPart, roomOn, sizeOfGoods, standardGravity } from './loads.js';
export { curvedFront, densityOf, massOfPart, shareUnderCurve } from './mass.js';
export {
    climateOf,
    type HeldAcross,
    heldAcross,
    isTabulated,
    type MovingPart,
    mostHeldAcross,
    movingParts,
} from './movement.js';
export { type Pane, panesIn } from './panes.js';
export { type Brace, type Bracing, bracingOf, type RackedCase, rackedCases } from './racking.js';
export { type SagLimit, sagLimitOf, visibleSag } from './sag-limit.js';
export type { Section } from './section.js';
export { type ShelfStrip, sectionOf, type UncountedBearer } from './shelf-section.js';
export { knownShelves, leastNosing, type ShelfSag, type ShelfStrength, shelfStrengths } from './shelves.js';
export { areaOf, times, total, volumeOf } from './size-arithmetic.js';
export { creepOf, modulusSourceOf, ruptureFactors, ruptureOf } from './stiffness.js';
export { isSolidWood, measureProperty, roughThickness, sheetSizes, thingName, thingProperty, wordOf } from './thing-values.js';
export {
    anchorPull,
    type CaseStability,
    caseStabilities,
    type Standing,
    stabilityTests,
    tippingPush,
} from './tipping.js';
export { type WoodStrength, woodStrength } from './wood-strength.js';
