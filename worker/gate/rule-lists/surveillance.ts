import type { Rule } from '../rule.ts';
import { addressMismatch } from '../rules/address-mismatch.ts';
import { addressNotSet } from '../rules/address-not-set.ts';
import { addressOutsideStateBlock } from '../rules/address-outside-state-block.ts';
import { addressReserved } from '../rules/address-reserved.ts';
import { addressUnreadable } from '../rules/address-unreadable.ts';
import { altimeterTestFailed } from '../rules/altimeter-test-failed.ts';
import { altimeterTestIncomplete } from '../rules/altimeter-test-incomplete.ts';
import { emitterCategoryNotSet } from '../rules/emitter-category-not-set.ts';
import { encoderCorrespondenceFailed } from '../rules/encoder-correspondence-failed.ts';
import { flightIdentityDiffers } from '../rules/flight-identity-differs.ts';
import { identitiesDisagree } from '../rules/identities-disagree.ts';
import { interferenceNotChecked } from '../rules/interference-not-checked.ts';
import { notReadBack } from '../rules/not-read-back.ts';
import { positionQualityOverstated } from '../rules/position-quality-overstated.ts';
import { radioCheckMissing } from '../rules/radio-check-missing.ts';
import { radioReadabilityLow } from '../rules/radio-readability-low.ts';
import { readBackDiffers } from '../rules/read-back-differs.ts';
import { staticSystemNotTested } from '../rules/static-system-not-tested.ts';
import { staticSystemTestFailed } from '../rules/static-system-test-failed.ts';
import { testSetCalibrationExpired } from '../rules/test-set-calibration-expired.ts';
import { transponderTestFailed } from '../rules/transponder-test-failed.ts';
import { transponderTestIncomplete } from '../rules/transponder-test-incomplete.ts';
import { transponderTestMissing } from '../rules/transponder-test-missing.ts';

/** Addresses, transponder, altimetry and radio. */
export const SURVEILLANCE_RULES: readonly Rule[] = [
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
  transponderTestIncomplete,
  transponderTestMissing,
  encoderCorrespondenceFailed,
  altimeterTestFailed,
  altimeterTestIncomplete,
  staticSystemTestFailed,
  staticSystemNotTested,
  testSetCalibrationExpired,
  radioCheckMissing,
  radioReadabilityLow,
  interferenceNotChecked,
];
