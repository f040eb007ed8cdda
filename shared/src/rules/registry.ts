/** Every rule, sorted by group and number. An explicit list: nothing happens on import, and a bundle holds what is named here. */

import { outOfReach } from './access/out-of-reach.js';
import { standsOut } from './access/stands-out.js';
import { doesNotPassDoorway } from './carrying/does-not-pass-doorway.js';
import { doesNotStandUp } from './carrying/does-not-stand-up.js';
import { doesNotTurnCorner } from './carrying/does-not-turn-corner.js';
import { tooHeavyToCarry } from './carrying/too-heavy-to-carry.js';
import { shareNotMeant } from './costs/share-not-meant.js';
import { bandTooStiff } from './curves/band-too-stiff.js';
import { battenBreaks } from './curves/batten-breaks.js';
import { bendChangesAtOnce } from './curves/bend-changes-at-once.js';
import { bevelBeyondSaw } from './curves/bevel-beyond-saw.js';
import { bevelChanges } from './curves/bevel-changes.js';
import { cornerInCurve } from './curves/corner-in-curve.js';
import { curveImpossible } from './curves/curve-impossible.js';
import { curveTooShort } from './curves/curve-too-short.js';
import { depthRunsOut } from './curves/depth-runs-out.js';
import { hollowUnderBit } from './curves/hollow-under-bit.js';
import { parallelCusps } from './curves/parallel-cusps.js';
import { plywoodBentTooTight } from './curves/plywood-bent-too-tight.js';
import { pointOutOfLine } from './curves/point-out-of-line.js';
import { allowSilencesNothing } from './decisions/allow-silences-nothing.js';
import { allowWithoutReason } from './decisions/allow-without-reason.js';
import { errorCannotBeAllowed } from './decisions/error-cannot-be-allowed.js';
import { nothingBuilt } from './decisions/nothing-built.js';
import { requirementAtWorst } from './decisions/requirement-at-worst.js';
import { requirementFails } from './decisions/requirement-fails.js';
import { bandNarrowerThanPanel } from './edges/band-narrower-than-panel.js';
import { bandTooThin } from './edges/band-too-thin.js';
import { endGrainShowing } from './edges/end-grain-showing.js';
import { noSuchEdge } from './edges/no-such-edge.js';
import { rabbetLeavesLittle } from './edges/rabbet-leaves-little.js';
import { rabbetNarrowerThanBack } from './edges/rabbet-narrower-than-back.js';
import { rabbetShallowerThanBack } from './edges/rabbet-shallower-than-back.js';
import { rabbetTooDeep } from './edges/rabbet-too-deep.js';
import { roundLargerThanEdge } from './edges/round-larger-than-edge.js';
import { glassNotSafe } from './glass/glass-not-safe.js';
import { backNotHeld } from './joints/back-not-held.js';
import { cutBreaksOut } from './joints/cut-breaks-out.js';
import { cutsMeet } from './joints/cuts-meet.js';
import { dadoShows } from './joints/dado-shows.js';
import { dadoTooDeep } from './joints/dado-too-deep.js';
import { fastenerComesThrough } from './joints/fastener-comes-through.js';
import { fastenerDoesNotReach } from './joints/fastener-does-not-reach.js';
import { fastenerNearEnd } from './joints/fastener-near-end.js';
import { fastenerShows } from './joints/fastener-shows.js';
import { fastenerUnderRounding } from './joints/fastener-under-rounding.js';
import { fastenersCrowded } from './joints/fasteners-crowded.js';
import { jointThroughStock } from './joints/joint-through-stock.js';
import { nailSplitsBoard } from './joints/nail-splits-board.js';
import { pilotNotKnown } from './joints/pilot-not-known.js';
import { pinRowsUneven } from './joints/pin-rows-uneven.js';
import { screwsInEndGrain } from './joints/screws-in-end-grain.js';
import { stepWithoutPlace } from './joints/step-without-place.js';
import { tooThickForStock } from './joints/too-thick-for-stock.js';
import { touchingWithoutJoint } from './joints/touching-without-joint.js';
import { grainNotToBeHad } from './materials/grain-not-to-be-had.js';
import { largerThanSheet } from './materials/larger-than-sheet.js';
import { materialWithoutThickness } from './materials/material-without-thickness.js';
import { partWithoutMaterial } from './materials/part-without-material.js';
import { unlikeLayers } from './materials/unlike-layers.js';
import { fileNotFound } from './names/file-not-found.js';
import { indexOutOfRange } from './names/index-out-of-range.js';
import { misplacedStatement } from './names/misplaced-statement.js';
import { nameFromTwoFiles } from './names/name-from-two-files.js';
import { nameStatedTwice } from './names/name-stated-twice.js';
import { privateName } from './names/private-name.js';
import { reservedOrUnitName } from './names/reserved-or-unit-name.js';
import { shadowedName } from './names/shadowed-name.js';
import { unknownMember } from './names/unknown-member.js';
import { unknownName } from './names/unknown-name.js';
import { unusedDeclaration } from './names/unused-declaration.js';
import { useCycle } from './names/use-cycle.js';
import { wrongKindOfThing } from './names/wrong-kind-of-thing.js';
import { caseWithoutSize } from './places/case-without-size.js';
import { joinedPartsApart } from './places/joined-parts-apart.js';
import { noSizeLeft } from './places/no-size-left.js';
import { noSuchPlace } from './places/no-such-place.js';
import { onlyAStripLeft } from './places/only-a-strip-left.js';
import { partOutsideCase } from './places/part-outside-case.js';
import { partsOverlap } from './places/parts-overlap.js';
import { placeUnclear } from './places/place-unclear.js';
import { sharesDoNotFit } from './places/shares-do-not-fit.js';
import { shelfOrder } from './places/shelf-order.js';
import { sizeDependsOnItself } from './places/size-depends-on-itself.js';
import { tooManyParts } from './places/too-many-parts.js';
import { notBuiltYet } from './properties/not-built-yet.js';
import { notOneOfTheChoices } from './properties/not-one-of-the-choices.js';
import { propertyMissing } from './properties/property-missing.js';
import { propertyStatedTwice } from './properties/property-stated-twice.js';
import { propertyWithoutValue } from './properties/property-without-value.js';
import { unknownKindOrStep } from './properties/unknown-kind-or-step.js';
import { unknownProperty } from './properties/unknown-property.js';
import { backOverloaded } from './racking/back-overloaded.js';
import { bracedAtOneEnd } from './racking/braced-at-one-end.js';
import { noBracing } from './racking/no-bracing.js';
import type { Rule } from './rule.js';
import { jointGapes } from './solids/joint-gapes.js';
import { partsCollide } from './solids/parts-collide.js';
import { gluedAcrossGrain } from './strength/glued-across-grain.js';
import { goodsDoNotFit } from './strength/goods-do-not-fit.js';
import { goodsWithoutMass } from './strength/goods-without-mass.js';
import { jointOverloaded } from './strength/joint-overloaded.js';
import { shelfMayBreak } from './strength/shelf-may-break.js';
import { shelfSags } from './strength/shelf-sags.js';
import { shelfSagsVisibly } from './strength/shelf-sags-visibly.js';
import { stiffnessUnknown } from './strength/stiffness-unknown.js';
import { tipsEasily } from './strength/tips-easily.js';
import { syntax } from './text/syntax.js';
import { twoStatementsOnALine } from './text/two-statements-on-a-line.js';
import { dimensionsDisagree } from './units/dimensions-disagree.js';
import { divisionByZero } from './units/division-by-zero.js';
import { missingUnit } from './units/missing-unit.js';
import { twoReadings } from './units/two-readings.js';
import { unknownUnit } from './units/unknown-unit.js';
import { wholeNumberNeeded } from './units/whole-number-needed.js';

/** Sorted as the groups of the language are: from reading a text to the decisions of the design. */
export const rules: readonly Rule[] = [
    syntax,
    twoStatementsOnALine,
    unknownName,
    nameStatedTwice,
    fileNotFound,
    useCycle,
    privateName,
    unusedDeclaration,
    wrongKindOfThing,
    reservedOrUnitName,
    unknownMember,
    indexOutOfRange,
    shadowedName,
    nameFromTwoFiles,
    misplacedStatement,
    missingUnit,
    unknownUnit,
    dimensionsDisagree,
    divisionByZero,
    twoReadings,
    wholeNumberNeeded,
    unknownProperty,
    propertyWithoutValue,
    propertyStatedTwice,
    propertyMissing,
    notOneOfTheChoices,
    unknownKindOrStep,
    notBuiltYet,
    placeUnclear,
    noSizeLeft,
    partsOverlap,
    partOutsideCase,
    shelfOrder,
    sharesDoNotFit,
    sizeDependsOnItself,
    joinedPartsApart,
    tooManyParts,
    noSuchPlace,
    caseWithoutSize,
    onlyAStripLeft,
    partWithoutMaterial,
    unlikeLayers,
    largerThanSheet,
    grainNotToBeHad,
    materialWithoutThickness,
    bandNarrowerThanPanel,
    bandTooThin,
    endGrainShowing,
    rabbetTooDeep,
    noSuchEdge,
    rabbetNarrowerThanBack,
    roundLargerThanEdge,
    rabbetLeavesLittle,
    rabbetShallowerThanBack,
    curveTooShort,
    curveImpossible,
    bandTooStiff,
    battenBreaks,
    plywoodBentTooTight,
    hollowUnderBit,
    depthRunsOut,
    parallelCusps,
    cornerInCurve,
    bendChangesAtOnce,
    pointOutOfLine,
    bevelBeyondSaw,
    bevelChanges,
    jointThroughStock,
    touchingWithoutJoint,
    dadoTooDeep,
    fastenerComesThrough,
    fastenerDoesNotReach,
    cutsMeet,
    tooThickForStock,
    cutBreaksOut,
    fastenerNearEnd,
    fastenersCrowded,
    nailSplitsBoard,
    dadoShows,
    backNotHeld,
    fastenerUnderRounding,
    pinRowsUneven,
    fastenerShows,
    pilotNotKnown,
    screwsInEndGrain,
    stepWithoutPlace,
    shelfSags,
    shelfSagsVisibly,
    shelfMayBreak,
    stiffnessUnknown,
    jointOverloaded,
    tipsEasily,
    noBracing,
    bracedAtOneEnd,
    backOverloaded,
    gluedAcrossGrain,
    doesNotPassDoorway,
    doesNotStandUp,
    doesNotTurnCorner,
    tooHeavyToCarry,
    outOfReach,
    standsOut,
    glassNotSafe,
    shareNotMeant,
    goodsDoNotFit,
    goodsWithoutMass,
    requirementFails,
    requirementAtWorst,
    allowWithoutReason,
    allowSilencesNothing,
    nothingBuilt,
    errorCannotBeAllowed,
    partsCollide,
    jointGapes,
];

/** A rule by its code or its name; capitals do not count. */
export function ruleNamed(codeOrName: string): Rule | undefined {
    const wanted = codeOrName.toLowerCase();
    return rules.find(({ code, name }) => code.toLowerCase() === wanted || name === wanted);
}
