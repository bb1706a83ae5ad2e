import type { Rule } from './rule.ts';
import { acknowledgementThin } from './rules/acknowledgement-thin.ts';
import { acknowledgementUnmatched } from './rules/acknowledgement-unmatched.ts';
import { addressMismatch } from './rules/address-mismatch.ts';
import { addressNotSet } from './rules/address-not-set.ts';
import { addressOutsideStateBlock } from './rules/address-outside-state-block.ts';
import { addressReserved } from './rules/address-reserved.ts';
import { addressUnreadable } from './rules/address-unreadable.ts';
import { adviceDeclined } from './rules/advice-declined.ts';
import { airworthinessFindingDeclined } from './rules/airworthiness-finding-declined.ts';
import { altimeterTestFailed } from './rules/altimeter-test-failed.ts';
import { applicabilityUndecided } from './rules/applicability-undecided.ts';
import { approvalReferenceMissing } from './rules/approval-reference-missing.ts';
import { armOutsideAirframe } from './rules/arm-outside-airframe.ts';
import { asFoundItemNotListed } from './rules/as-found-item-not-listed.ts';
import { asFoundRequiredMissing } from './rules/as-found-required-missing.ts';
import { asFoundUnresolved } from './rules/as-found-unresolved.ts';
import { authorisationExpired } from './rules/authorisation-expired.ts';
import { authorisationOutOfScope } from './rules/authorisation-out-of-scope.ts';
import { authorisationUnstated } from './rules/authorisation-unstated.ts';
import { baselineInFuture } from './rules/baseline-in-future.ts';
import { baselineMissing } from './rules/baseline-missing.ts';
import { baselineNotLastPack } from './rules/baseline-not-last-pack.ts';
import { bulletinSearchOld } from './rules/bulletin-search-old.ts';
import { bulletinUnassessed } from './rules/bulletin-unassessed.ts';
import { classDeciderUnnamed } from './rules/class-decider-unnamed.ts';
import { coefficientALarge } from './rules/coefficient-a-large.ts';
import { compassMovedByLoad } from './rules/compass-moved-by-load.ts';
import { compassSwingOwed } from './rules/compass-swing-owed.ts';
import { complianceUnshown } from './rules/compliance-unshown.ts';
import { continuedAirworthinessMissing } from './rules/continued-airworthiness-missing.ts';
import { controlCheckedByOne } from './rules/control-checked-by-one.ts';
import { controlDirectionNotProved } from './rules/control-direction-not-proved.ts';
import { controlWrong } from './rules/control-wrong.ts';
import { dateInFuture } from './rules/date-in-future.ts';
import { datesOutOfOrder } from './rules/dates-out-of-order.ts';
import { deferralExpired } from './rules/deferral-expired.ts';
import { deferralMissing } from './rules/deferral-missing.ts';
import { deferralOwnerNotTold } from './rules/deferral-owner-not-told.ts';
import { deferralRepeated } from './rules/deferral-repeated.ts';
import { deferralWithoutLimit } from './rules/deferral-without-limit.ts';
import { departureBeforeReady } from './rules/departure-before-ready.ts';
import { deviationLarge } from './rules/deviation-large.ts';
import { deviationOverLimit } from './rules/deviation-over-limit.ts';
import { directionIndicatorDrifts } from './rules/direction-indicator-drifts.ts';
import { directiveOpen } from './rules/directive-open.ts';
import { directiveOverdue } from './rules/directive-overdue.ts';
import { duplicateId } from './rules/duplicate-id.ts';
import { emitterCategoryNotSet } from './rules/emitter-category-not-set.ts';
import { emptyCgOutsideRange } from './rules/empty-cg-outside-range.ts';
import { emptyMassAboveCap } from './rules/empty-mass-above-cap.ts';
import { emptyMassNotPositive } from './rules/empty-mass-not-positive.ts';
import { encoderCorrespondenceFailed } from './rules/encoder-correspondence-failed.ts';
import { engineChanged } from './rules/engine-changed.ts';
import { engineLimitExceeded } from './rules/engine-limit-exceeded.ts';
import { engineRunAfterMissing } from './rules/engine-run-after-missing.ts';
import { engineRunBeforeLastWork } from './rules/engine-run-before-last-work.ts';
import { engineRunBeforeMissing } from './rules/engine-run-before-missing.ts';
import { envelopeExceededByLegalLoading } from './rules/envelope-exceeded-by-legal-loading.ts';
import { envelopeMissing } from './rules/envelope-missing.ts';
import { envelopeNotUsable } from './rules/envelope-not-usable.ts';
import { envelopeWithinUncertainty } from './rules/envelope-within-uncertainty.ts';
import { equipmentSumDiffers } from './rules/equipment-sum-differs.ts';
import { equipmentSumExceedsEmptyMass } from './rules/equipment-sum-exceeds-empty-mass.ts';
import { findingNotClosed } from './rules/finding-not-closed.ts';
import { findingWithoutDisposition } from './rules/finding-without-disposition.ts';
import { flightIdentityDiffers } from './rules/flight-identity-differs.ts';
import { flightTestOwedUnstated } from './rules/flight-test-owed-unstated.ts';
import { fuelStateUnstated } from './rules/fuel-state-unstated.ts';
import { identitiesDisagree } from './rules/identities-disagree.ts';
import { inspectionTaskFailedUnresolved } from './rules/inspection-task-failed-unresolved.ts';
import { inspectionTaskOpen } from './rules/inspection-task-open.ts';
import { installedItemAlreadyListed } from './rules/installed-item-already-listed.ts';
import { installedPartUntraced } from './rules/installed-part-untraced.ts';
import { installedSerialIsRemovedSerial } from './rules/installed-serial-is-removed-serial.ts';
import { interferenceNotChecked } from './rules/interference-not-checked.ts';
import { leaksNotLookedFor } from './rules/leaks-not-looked-for.ts';
import { leastLoadTooHeavy } from './rules/least-load-too-heavy.ts';
import { leftRightUnequal } from './rules/left-right-unequal.ts';
import { levelExceeded } from './rules/level-exceeded.ts';
import { levelUnstated } from './rules/level-unstated.ts';
import { lifeClockMissing } from './rules/life-clock-missing.ts';
import { lifeExceeded } from './rules/life-exceeded.ts';
import { lifeShort } from './rules/life-short.ts';
import { lifeUnknown } from './rules/life-unknown.ts';
import { loadingLimitsCross } from './rules/loading-limits-cross.ts';
import { magneticModelOld } from './rules/magnetic-model-old.ts';
import { massEstimated } from './rules/mass-estimated.ts';
import { massZero } from './rules/mass-zero.ts';
import { maximumMassExceededEmpty } from './rules/maximum-mass-exceeded-empty.ts';
import { metersJump } from './rules/meters-jump.ts';
import { metersRunBack } from './rules/meters-run-back.ts';
import { minimumSoloMassHigh } from './rules/minimum-solo-mass-high.ts';
import { modificationNotInspected } from './rules/modification-not-inspected.ts';
import { modificationWithoutBasis } from './rules/modification-without-basis.ts';
import { negligibleChange } from './rules/negligible-change.ts';
import { notApplicableContradicted } from './rules/not-applicable-contradicted.ts';
import { notReadBack } from './rules/not-read-back.ts';
import { oilStateUnstated } from './rules/oil-state-unstated.ts';
import { panelsNotClosed } from './rules/panels-not-closed.ts';
import { partShelfLife } from './rules/part-shelf-life.ts';
import { partWithoutReleaseDocument } from './rules/part-without-release-document.ts';
import { payloadBelowMinimum } from './rules/payload-below-minimum.ts';
import { personUnknown } from './rules/person-unknown.ts';
import { personUnused } from './rules/person-unused.ts';
import { pilotStationMissing } from './rules/pilot-station-missing.ts';
import { placardOwed } from './rules/placard-owed.ts';
import { positionQualityOverstated } from './rules/position-quality-overstated.ts';
import { predictionDiffers } from './rules/prediction-differs.ts';
import { radioCheckMissing } from './rules/radio-check-missing.ts';
import { radioReadabilityLow } from './rules/radio-readability-low.ts';
import { readBackDiffers } from './rules/read-back-differs.ts';
import { referenceUnknown } from './rules/reference-unknown.ts';
import { regimeUnknown } from './rules/regime-unknown.ts';
import { registrationMalformed } from './rules/registration-malformed.ts';
import { releaseMissing } from './rules/release-missing.ts';
import { relocatedItemNotListed } from './rules/relocated-item-not-listed.ts';
import { relocationWithoutMomentChange } from './rules/relocation-without-moment-change.ts';
import { removedItemNotListed } from './rules/removed-item-not-listed.ts';
import { removedSerialDiffers } from './rules/removed-serial-differs.ts';
import { requiredItemRemoved } from './rules/required-item-removed.ts';
import { reweighDue } from './rules/reweigh-due.ts';
import { runConditionsUnstated } from './rules/run-conditions-unstated.ts';
import { runsDisagree } from './rules/runs-disagree.ts';
import { runsTooFew } from './rules/runs-too-few.ts';
import { scaleCalibrationExpired } from './rules/scale-calibration-expired.ts';
import { scaleCapacityExceeded } from './rules/scale-capacity-exceeded.ts';
import { secondInspectionBeforeTask } from './rules/second-inspection-before-task.ts';
import { secondPersonMissing } from './rules/second-person-missing.ts';
import { secondPersonSame } from './rules/second-person-same.ts';
import { serialDiffersFromBaseline } from './rules/serial-differs-from-baseline.ts';
import { statementUnknown } from './rules/statement-unknown.ts';
import { sunsetBeforeArrival } from './rules/sunset-before-arrival.ts';
import { supplementOwed } from './rules/supplement-owed.ts';
import { swingConditions } from './rules/swing-conditions.ts';
import { swingHeadingsTooFew } from './rules/swing-headings-too-few.ts';
import { tankNotUsable } from './rules/tank-not-usable.ts';
import { tareExceedsGross } from './rules/tare-exceeds-gross.ts';
import { taskUnsigned } from './rules/task-unsigned.ts';
import { testBeforeModification } from './rules/test-before-modification.ts';
import { testOwedNotDone } from './rules/test-owed-not-done.ts';
import { testSetCalibrationExpired } from './rules/test-set-calibration-expired.ts';
import { textUnprintable } from './rules/text-unprintable.ts';
import { toleranceUsed } from './rules/tolerance-used.ts';
import { toolsNotAccounted } from './rules/tools-not-accounted.ts';
import { transponderTestFailed } from './rules/transponder-test-failed.ts';
import { transponderTestMissing } from './rules/transponder-test-missing.ts';
import { unitImplausible } from './rules/unit-implausible.ts';
import { unrestrainedRun } from './rules/unrestrained-run.ts';
import { variationMissing } from './rules/variation-missing.ts';
import { weighedBeforeLastModification } from './rules/weighed-before-last-modification.ts';
import { weighedOutdoors } from './rules/weighed-outdoors.ts';
import { workEndUnstated } from './rules/work-end-unstated.ts';
import { workInACircle } from './rules/work-in-a-circle.ts';
import { workOpen } from './rules/work-open.ts';

/** Every rule of the gate, in the order in which findings are listed. */
export const RULES: readonly Rule[] = [
  registrationMalformed,
  regimeUnknown,
  serialDiffersFromBaseline,
  personUnknown,
  personUnused,
  referenceUnknown,
  duplicateId,
  authorisationExpired,
  authorisationOutOfScope,
  authorisationUnstated,
  secondPersonMissing,
  secondPersonSame,
  secondInspectionBeforeTask,
  dateInFuture,
  datesOutOfOrder,
  metersRunBack,
  metersJump,
  unitImplausible,
  modificationWithoutBasis,
  approvalReferenceMissing,
  classDeciderUnnamed,
  modificationNotInspected,
  removedItemNotListed,
  removedSerialDiffers,
  installedItemAlreadyListed,
  installedSerialIsRemovedSerial,
  relocatedItemNotListed,
  relocationWithoutMomentChange,
  requiredItemRemoved,
  armOutsideAirframe,
  massZero,
  massEstimated,
  testOwedNotDone,
  testBeforeModification,
  placardOwed,
  supplementOwed,
  continuedAirworthinessMissing,
  flightTestOwedUnstated,
  equipmentSumDiffers,
  equipmentSumExceedsEmptyMass,
  asFoundUnresolved,
  asFoundItemNotListed,
  asFoundRequiredMissing,
  negligibleChange,
  weighedBeforeLastModification,
  scaleCalibrationExpired,
  scaleCapacityExceeded,
  tareExceedsGross,
  runsDisagree,
  runsTooFew,
  leftRightUnequal,
  fuelStateUnstated,
  oilStateUnstated,
  levelUnstated,
  levelExceeded,
  weighedOutdoors,
  predictionDiffers,
  emptyMassNotPositive,
  emptyCgOutsideRange,
  maximumMassExceededEmpty,
  emptyMassAboveCap,
  payloadBelowMinimum,
  reweighDue,
  baselineMissing,
  baselineInFuture,
  baselineNotLastPack,
  envelopeNotUsable,
  envelopeMissing,
  envelopeExceededByLegalLoading,
  envelopeWithinUncertainty,
  loadingLimitsCross,
  leastLoadTooHeavy,
  pilotStationMissing,
  tankNotUsable,
  minimumSoloMassHigh,
  inspectionTaskOpen,
  inspectionTaskFailedUnresolved,
  taskUnsigned,
  toolsNotAccounted,
  panelsNotClosed,
  findingWithoutDisposition,
  airworthinessFindingDeclined,
  findingNotClosed,
  deferralMissing,
  deferralWithoutLimit,
  deferralExpired,
  deferralRepeated,
  deferralOwnerNotTold,
  adviceDeclined,
  partWithoutReleaseDocument,
  partShelfLife,
  installedPartUntraced,
  addressUnreadable,
  addressReserved,
  addressMismatch,
  addressNotSet,
  readBackDiffers,
  notReadBack,
  addressOutsideStateBlock,
  flightIdentityDiffers,
  identitiesDisagree,
  emitterCategoryNotSet,
  positionQualityOverstated,
  transponderTestFailed,
  transponderTestMissing,
  encoderCorrespondenceFailed,
  altimeterTestFailed,
  testSetCalibrationExpired,
  radioCheckMissing,
  radioReadabilityLow,
  interferenceNotChecked,
  compassSwingOwed,
  deviationOverLimit,
  deviationLarge,
  coefficientALarge,
  swingHeadingsTooFew,
  swingConditions,
  compassMovedByLoad,
  variationMissing,
  magneticModelOld,
  directionIndicatorDrifts,
  engineRunAfterMissing,
  engineRunBeforeMissing,
  engineRunBeforeLastWork,
  engineLimitExceeded,
  engineChanged,
  unrestrainedRun,
  leaksNotLookedFor,
  runConditionsUnstated,
  controlDirectionNotProved,
  controlWrong,
  controlCheckedByOne,
  lifeExceeded,
  toleranceUsed,
  lifeShort,
  lifeUnknown,
  lifeClockMissing,
  directiveOpen,
  directiveOverdue,
  bulletinUnassessed,
  applicabilityUndecided,
  notApplicableContradicted,
  complianceUnshown,
  bulletinSearchOld,
  workInACircle,
  departureBeforeReady,
  sunsetBeforeArrival,
  workOpen,
  workEndUnstated,
  releaseMissing,
  statementUnknown,
  acknowledgementUnmatched,
  acknowledgementThin,
  textUnprintable,
];
