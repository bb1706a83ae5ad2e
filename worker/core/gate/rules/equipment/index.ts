import type { Rule } from '../../rule.ts';
import { approvalReferenceMissing } from './approval-reference-missing.ts';
import { armOutsideAirframe } from './arm-outside-airframe.ts';
import { asFoundItemNotListed } from './as-found-item-not-listed.ts';
import { asFoundRequiredMissing } from './as-found-required-missing.ts';
import { asFoundUnresolved } from './as-found-unresolved.ts';
import { classDeciderUnnamed } from './class-decider-unnamed.ts';
import { continuedAirworthinessMissing } from './continued-airworthiness-missing.ts';
import { equipmentSumDiffers } from './equipment-sum-differs.ts';
import { equipmentSumExceedsEmptyMass } from './equipment-sum-exceeds-empty-mass.ts';
import { flightForUntested } from './flight-for-untested.ts';
import { flightTestNotFlown } from './flight-test-not-flown.ts';
import { flightTestOwedUnstated } from './flight-test-owed-unstated.ts';
import { flightUnsatisfactory } from './flight-unsatisfactory.ts';
import { geometryImpossible } from './geometry-impossible.ts';
import { geometryUnusual } from './geometry-unusual.ts';
import { installedItemAlreadyListed } from './installed-item-already-listed.ts';
import { installedSerialIsRemovedSerial } from './installed-serial-is-removed-serial.ts';
import { massEstimated } from './mass-estimated.ts';
import { massZero } from './mass-zero.ts';
import { modificationNotInspected } from './modification-not-inspected.ts';
import { modificationWithoutBasis } from './modification-without-basis.ts';
import { negligibleChange } from './negligible-change.ts';
import { placardOwed } from './placard-owed.ts';
import { relocatedItemNotListed } from './relocated-item-not-listed.ts';
import { relocationWithoutMomentChange } from './relocation-without-moment-change.ts';
import { removedItemNotListed } from './removed-item-not-listed.ts';
import { removedSerialDiffers } from './removed-serial-differs.ts';
import { requiredItemRemoved } from './required-item-removed.ts';
import { supplementOwed } from './supplement-owed.ts';
import { testBeforeModification } from './test-before-modification.ts';
import { testOwedNotDone } from './test-owed-not-done.ts';
import { testUnsigned } from './test-unsigned.ts';
import { updateContradicted } from './update-contradicted.ts';
import { updatedItemNotListed } from './updated-item-not-listed.ts';

/** Modifications and equipment. */
export const EQUIPMENT_RULES: readonly Rule[] = [
  geometryUnusual,
  geometryImpossible,
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
  flightTestNotFlown,
  flightForUntested,
  flightUnsatisfactory,
  equipmentSumDiffers,
  equipmentSumExceedsEmptyMass,
  asFoundUnresolved,
  asFoundItemNotListed,
  asFoundRequiredMissing,
  negligibleChange,
  updatedItemNotListed,
  updateContradicted,
  testUnsigned,
];
