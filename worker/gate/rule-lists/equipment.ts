import type { Rule } from '../rule.ts';
import { approvalReferenceMissing } from '../rules/approval-reference-missing.ts';
import { armOutsideAirframe } from '../rules/arm-outside-airframe.ts';
import { asFoundItemNotListed } from '../rules/as-found-item-not-listed.ts';
import { asFoundRequiredMissing } from '../rules/as-found-required-missing.ts';
import { asFoundUnresolved } from '../rules/as-found-unresolved.ts';
import { classDeciderUnnamed } from '../rules/class-decider-unnamed.ts';
import { continuedAirworthinessMissing } from '../rules/continued-airworthiness-missing.ts';
import { equipmentSumDiffers } from '../rules/equipment-sum-differs.ts';
import { equipmentSumExceedsEmptyMass } from '../rules/equipment-sum-exceeds-empty-mass.ts';
import { flightTestOwedUnstated } from '../rules/flight-test-owed-unstated.ts';
import { installedItemAlreadyListed } from '../rules/installed-item-already-listed.ts';
import { installedSerialIsRemovedSerial } from '../rules/installed-serial-is-removed-serial.ts';
import { massEstimated } from '../rules/mass-estimated.ts';
import { massZero } from '../rules/mass-zero.ts';
import { modificationNotInspected } from '../rules/modification-not-inspected.ts';
import { modificationWithoutBasis } from '../rules/modification-without-basis.ts';
import { negligibleChange } from '../rules/negligible-change.ts';
import { placardOwed } from '../rules/placard-owed.ts';
import { relocatedItemNotListed } from '../rules/relocated-item-not-listed.ts';
import { relocationWithoutMomentChange } from '../rules/relocation-without-moment-change.ts';
import { removedItemNotListed } from '../rules/removed-item-not-listed.ts';
import { removedSerialDiffers } from '../rules/removed-serial-differs.ts';
import { requiredItemRemoved } from '../rules/required-item-removed.ts';
import { supplementOwed } from '../rules/supplement-owed.ts';
import { testBeforeModification } from '../rules/test-before-modification.ts';
import { testOwedNotDone } from '../rules/test-owed-not-done.ts';

/** Modifications and equipment. */
export const EQUIPMENT_RULES: readonly Rule[] = [
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
];
