import type { Rule } from '../../rule.ts';
import { coefficientALarge } from './coefficient-a-large.ts';
import { compassCardOverLimit } from './compass-card-over-limit.ts';
import { compassMovedByLoad } from './compass-moved-by-load.ts';
import { compassSerialDiffers } from './compass-serial-differs.ts';
import { deviationLarge } from './deviation-large.ts';
import { deviationOverLimit } from './deviation-over-limit.ts';
import { directionIndicatorDrifts } from './direction-indicator-drifts.ts';
import { magneticModelOld } from './magnetic-model-old.ts';
import { swingConditions } from './swing-conditions.ts';
import { swingHeadingsTooFew } from './swing-headings-too-few.ts';
import { swingNotRound } from './swing-not-round.ts';
import { swingReadingStray } from './swing-reading-stray.ts';
import { swingStateTwice } from './swing-state-twice.ts';
import { variationMissing } from './variation-missing.ts';

/** The compass. */
export const COMPASS_RULES: readonly Rule[] = [
  swingNotRound,
  swingReadingStray,
  deviationOverLimit,
  compassCardOverLimit,
  deviationLarge,
  coefficientALarge,
  swingHeadingsTooFew,
  swingConditions,
  compassMovedByLoad,
  variationMissing,
  magneticModelOld,
  directionIndicatorDrifts,
  swingStateTwice,
  compassSerialDiffers,
];
