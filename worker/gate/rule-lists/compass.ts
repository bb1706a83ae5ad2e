import type { Rule } from '../rule.ts';
import { coefficientALarge } from '../rules/coefficient-a-large.ts';
import { compassCardOverLimit } from '../rules/compass-card-over-limit.ts';
import { compassMovedByLoad } from '../rules/compass-moved-by-load.ts';
import { compassSwingOwed } from '../rules/compass-swing-owed.ts';
import { deviationLarge } from '../rules/deviation-large.ts';
import { deviationOverLimit } from '../rules/deviation-over-limit.ts';
import { directionIndicatorDrifts } from '../rules/direction-indicator-drifts.ts';
import { magneticModelOld } from '../rules/magnetic-model-old.ts';
import { swingConditions } from '../rules/swing-conditions.ts';
import { swingHeadingsTooFew } from '../rules/swing-headings-too-few.ts';
import { swingNotRound } from '../rules/swing-not-round.ts';
import { variationMissing } from '../rules/variation-missing.ts';

/** The compass. */
export const COMPASS_RULES: readonly Rule[] = [
  compassSwingOwed,
  swingNotRound,
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
];
