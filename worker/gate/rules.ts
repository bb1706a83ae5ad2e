import type { Rule } from './rule.ts';
import { acknowledgementThin } from './rules/acknowledgement-thin.ts';
import { acknowledgementUnmatched } from './rules/acknowledgement-unmatched.ts';
import { adviceDeclined } from './rules/advice-declined.ts';
import { airworthinessFindingDeclined } from './rules/airworthiness-finding-declined.ts';
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
import { classDeciderUnnamed } from './rules/class-decider-unnamed.ts';
import { continuedAirworthinessMissing } from './rules/continued-airworthiness-missing.ts';
import { dateInFuture } from './rules/date-in-future.ts';
import { datesOutOfOrder } from './rules/dates-out-of-order.ts';
import { deferralExpired } from './rules/deferral-expired.ts';
import { deferralMissing } from './rules/deferral-missing.ts';
import { deferralOwnerNotTold } from './rules/deferral-owner-not-told.ts';
import { deferralRepeated } from './rules/deferral-repeated.ts';
import { deferralWithoutLimit } from './rules/deferral-without-limit.ts';
import { duplicateId } from './rules/duplicate-id.ts';
import { emptyCgOutsideRange } from './rules/empty-cg-outside-range.ts';
import { emptyMassAboveCap } from './rules/empty-mass-above-cap.ts';
import { emptyMassNotPositive } from './rules/empty-mass-not-positive.ts';
import { envelopeExceededByLegalLoading } from './rules/envelope-exceeded-by-legal-loading.ts';
import { envelopeMissing } from './rules/envelope-missing.ts';
import { envelopeNotUsable } from './rules/envelope-not-usable.ts';
import { envelopeWithinUncertainty } from './rules/envelope-within-uncertainty.ts';
import { equipmentSumDiffers } from './rules/equipment-sum-differs.ts';
import { equipmentSumExceedsEmptyMass } from './rules/equipment-sum-exceeds-empty-mass.ts';
import { findingNotClosed } from './rules/finding-not-closed.ts';
import { findingWithoutDisposition } from './rules/finding-without-disposition.ts';
import { flightTestOwedUnstated } from './rules/flight-test-owed-unstated.ts';
import { fuelStateUnstated } from './rules/fuel-state-unstated.ts';
import { inspectionTaskFailedUnresolved } from './rules/inspection-task-failed-unresolved.ts';
import { inspectionTaskOpen } from './rules/inspection-task-open.ts';
import { installedItemAlreadyListed } from './rules/installed-item-already-listed.ts';
import { installedPartUntraced } from './rules/installed-part-untraced.ts';
import { installedSerialIsRemovedSerial } from './rules/installed-serial-is-removed-serial.ts';
import { leastLoadTooHeavy } from './rules/least-load-too-heavy.ts';
import { leftRightUnequal } from './rules/left-right-unequal.ts';
import { levelExceeded } from './rules/level-exceeded.ts';
import { levelUnstated } from './rules/level-unstated.ts';
import { loadingLimitsCross } from './rules/loading-limits-cross.ts';
import { massEstimated } from './rules/mass-estimated.ts';
import { massZero } from './rules/mass-zero.ts';
import { maximumMassExceededEmpty } from './rules/maximum-mass-exceeded-empty.ts';
import { metersJump } from './rules/meters-jump.ts';
import { metersRunBack } from './rules/meters-run-back.ts';
import { minimumSoloMassHigh } from './rules/minimum-solo-mass-high.ts';
import { modificationNotInspected } from './rules/modification-not-inspected.ts';
import { modificationWithoutBasis } from './rules/modification-without-basis.ts';
import { negligibleChange } from './rules/negligible-change.ts';
import { oilStateUnstated } from './rules/oil-state-unstated.ts';
import { panelsNotClosed } from './rules/panels-not-closed.ts';
import { partShelfLife } from './rules/part-shelf-life.ts';
import { partWithoutReleaseDocument } from './rules/part-without-release-document.ts';
import { payloadBelowMinimum } from './rules/payload-below-minimum.ts';
import { personUnknown } from './rules/person-unknown.ts';
import { personUnused } from './rules/person-unused.ts';
import { pilotStationMissing } from './rules/pilot-station-missing.ts';
import { placardOwed } from './rules/placard-owed.ts';
import { predictionDiffers } from './rules/prediction-differs.ts';
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
import { runsDisagree } from './rules/runs-disagree.ts';
import { runsTooFew } from './rules/runs-too-few.ts';
import { scaleCalibrationExpired } from './rules/scale-calibration-expired.ts';
import { scaleCapacityExceeded } from './rules/scale-capacity-exceeded.ts';
import { secondInspectionBeforeTask } from './rules/second-inspection-before-task.ts';
import { secondPersonMissing } from './rules/second-person-missing.ts';
import { secondPersonSame } from './rules/second-person-same.ts';
import { serialDiffersFromBaseline } from './rules/serial-differs-from-baseline.ts';
import { statementUnknown } from './rules/statement-unknown.ts';
import { supplementOwed } from './rules/supplement-owed.ts';
import { tankNotUsable } from './rules/tank-not-usable.ts';
import { tareExceedsGross } from './rules/tare-exceeds-gross.ts';
import { taskUnsigned } from './rules/task-unsigned.ts';
import { testBeforeModification } from './rules/test-before-modification.ts';
import { testOwedNotDone } from './rules/test-owed-not-done.ts';
import { textUnprintable } from './rules/text-unprintable.ts';
import { toolsNotAccounted } from './rules/tools-not-accounted.ts';
import { unitImplausible } from './rules/unit-implausible.ts';
import { weighedBeforeLastModification } from './rules/weighed-before-last-modification.ts';
import { weighedOutdoors } from './rules/weighed-outdoors.ts';
import { workEndUnstated } from './rules/work-end-unstated.ts';
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
  workOpen,
  workEndUnstated,
  releaseMissing,
  statementUnknown,
  acknowledgementUnmatched,
  acknowledgementThin,
  textUnprintable,
];
