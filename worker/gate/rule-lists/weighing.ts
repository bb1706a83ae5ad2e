import type { Rule } from '../rule.ts';
import { baselineInFuture } from '../rules/baseline-in-future.ts';
import { baselineMissing } from '../rules/baseline-missing.ts';
import { baselineNotLastPack } from '../rules/baseline-not-last-pack.ts';
import { emptyCgOutsideRange } from '../rules/empty-cg-outside-range.ts';
import { emptyMassAboveCap } from '../rules/empty-mass-above-cap.ts';
import { emptyMassNotPositive } from '../rules/empty-mass-not-positive.ts';
import { fuelStateUnstated } from '../rules/fuel-state-unstated.ts';
import { leftRightUnequal } from '../rules/left-right-unequal.ts';
import { levelExceeded } from '../rules/level-exceeded.ts';
import { levelUnstated } from '../rules/level-unstated.ts';
import { maximumMassExceededEmpty } from '../rules/maximum-mass-exceeded-empty.ts';
import { oilStateUnstated } from '../rules/oil-state-unstated.ts';
import { payloadBelowMinimum } from '../rules/payload-below-minimum.ts';
import { predictionDiffers } from '../rules/prediction-differs.ts';
import { reweighDue } from '../rules/reweigh-due.ts';
import { runsDisagree } from '../rules/runs-disagree.ts';
import { runsTooFew } from '../rules/runs-too-few.ts';
import { scaleCalibrationExpired } from '../rules/scale-calibration-expired.ts';
import { scaleCapacityExceeded } from '../rules/scale-capacity-exceeded.ts';
import { scaleCorrectionsAmbiguous } from '../rules/scale-corrections-ambiguous.ts';
import { tareExceedsGross } from '../rules/tare-exceeds-gross.ts';
import { weighedBeforeLastModification } from '../rules/weighed-before-last-modification.ts';
import { weighedOutdoors } from '../rules/weighed-outdoors.ts';

/** The weighing, and the papers it starts from. */
export const WEIGHING_RULES: readonly Rule[] = [
  weighedBeforeLastModification,
  scaleCalibrationExpired,
  scaleCapacityExceeded,
  scaleCorrectionsAmbiguous,
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
];
