import type { Rule } from '../../rule.ts';
import { addressMismatch } from './address-mismatch.ts';
import { addressNotSet } from './address-not-set.ts';
import { addressOutsideStateBlock } from './address-outside-state-block.ts';
import { addressReserved } from './address-reserved.ts';
import { addressUnreadable } from './address-unreadable.ts';
import { altimeterTestFailed } from './altimeter-test-failed.ts';
import { altimeterTestIncomplete } from './altimeter-test-incomplete.ts';
import { emitterCategoryNotSet } from './emitter-category-not-set.ts';
import { emitterCategoryUnfit } from './emitter-category-unfit.ts';
import { encoderCorrespondenceFailed } from './encoder-correspondence-failed.ts';
import { flightIdentityDiffers } from './flight-identity-differs.ts';
import { identitiesDisagree } from './identities-disagree.ts';
import { notReadBack } from './not-read-back.ts';
import { pitotTestFailed } from './pitot-test-failed.ts';
import { positionQualityOverstated } from './position-quality-overstated.ts';
import { radioReadabilityLow } from './radio-readability-low.ts';
import { readBackDiffers } from './read-back-differs.ts';
import { staticSystemNotTested } from './static-system-not-tested.ts';
import { staticSystemTestFailed } from './static-system-test-failed.ts';
import { testSetCalibrationExpired } from './test-set-calibration-expired.ts';
import { testedUnnamed } from './tested-unnamed.ts';
import { transponderClassDiffers } from './transponder-class-differs.ts';
import { transponderTestFailed } from './transponder-test-failed.ts';
import { transponderTestIncomplete } from './transponder-test-incomplete.ts';

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
  encoderCorrespondenceFailed,
  altimeterTestFailed,
  altimeterTestIncomplete,
  pitotTestFailed,
  testedUnnamed,
  staticSystemTestFailed,
  staticSystemNotTested,
  testSetCalibrationExpired,
  radioReadabilityLow,
  emitterCategoryUnfit,
  transponderClassDiffers,
];
