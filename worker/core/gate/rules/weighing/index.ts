import type { Rule } from '../../rule.ts';
import { baselineInFuture } from './baseline-in-future.ts';
import { baselineMissing } from './baseline-missing.ts';
import { baselineMomentDiffers } from './baseline-moment-differs.ts';
import { baselineNotLastPack } from './baseline-not-last-pack.ts';
import { emptyCgOutsideRange } from './empty-cg-outside-range.ts';
import { emptyMassAboveCap } from './empty-mass-above-cap.ts';
import { emptyMassNotPositive } from './empty-mass-not-positive.ts';
import { emptyMassUnusual } from './empty-mass-unusual.ts';
import { fuelStateUnstated } from './fuel-state-unstated.ts';
import { hangAngleOutside } from './hang-angle-outside.ts';
import { historyContradicted } from './history-contradicted.ts';
import { historyStepOutside } from './history-step-outside.ts';
import { lateralPredictionDiffers } from './lateral-prediction-differs.ts';
import { leftRightUnequal } from './left-right-unequal.ts';
import { levelExceeded } from './level-exceeded.ts';
import { levelLoose } from './level-loose.ts';
import { levelUnstated } from './level-unstated.ts';
import { maximumMassAboveRegime } from './maximum-mass-above-regime.ts';
import { maximumMassExceededEmpty } from './maximum-mass-exceeded-empty.ts';
import { maximumMassUnconfirmed } from './maximum-mass-unconfirmed.ts';
import { nothingToCompare } from './nothing-to-compare.ts';
import { oilStateUnstated } from './oil-state-unstated.ts';
import { payloadBelowMinimum } from './payload-below-minimum.ts';
import { predictionDiffers } from './prediction-differs.ts';
import { predictionUnbelievable } from './prediction-unbelievable.ts';
import { reweighDue } from './reweigh-due.ts';
import { runsContradict } from './runs-contradict.ts';
import { runsDisagree } from './runs-disagree.ts';
import { runsTooFew } from './runs-too-few.ts';
import { scaleCalibrationExpired } from './scale-calibration-expired.ts';
import { scaleCalibrationOld } from './scale-calibration-old.ts';
import { scaleCapacityExceeded } from './scale-capacity-exceeded.ts';
import { scaleCertificateUnstated } from './scale-certificate-unstated.ts';
import { scaleCoarse } from './scale-coarse.ts';
import { scaleCorrectionsAmbiguous } from './scale-corrections-ambiguous.ts';
import { scaleTermLong } from './scale-term-long.ts';
import { scaleUnused } from './scale-unused.ts';
import { tareExceedsGross } from './tare-exceeds-gross.ts';
import { tareUnstated } from './tare-unstated.ts';
import { thirdPointOpposite } from './third-point-opposite.ts';
import { weighedBeforeLastModification } from './weighed-before-last-modification.ts';
import { weighedOutdoors } from './weighed-outdoors.ts';
import { weighedOutdoorsOnce } from './weighed-outdoors-once.ts';
import { weighingCheckedByWeigher } from './weighing-checked-by-weigher.ts';
import { weighingDayUnknown } from './weighing-day-unknown.ts';
import { weighingUnchecked } from './weighing-unchecked.ts';

/** Weighing and baseline. */
export const WEIGHING_RULES: readonly Rule[] = [
  weighedBeforeLastModification,
  scaleCalibrationExpired,
  scaleCalibrationOld,
  scaleCapacityExceeded,
  scaleCoarse,
  scaleUnused,
  scaleCorrectionsAmbiguous,
  tareExceedsGross,
  tareUnstated,
  runsContradict,
  runsDisagree,
  runsTooFew,
  leftRightUnequal,
  fuelStateUnstated,
  oilStateUnstated,
  levelUnstated,
  levelExceeded,
  thirdPointOpposite,
  levelLoose,
  emptyMassUnusual,
  maximumMassAboveRegime,
  maximumMassUnconfirmed,
  historyContradicted,
  historyStepOutside,
  weighingDayUnknown,
  weighedOutdoors,
  weighedOutdoorsOnce,
  weighingUnchecked,
  weighingCheckedByWeigher,
  predictionUnbelievable,
  predictionDiffers,
  nothingToCompare,
  emptyMassNotPositive,
  emptyCgOutsideRange,
  maximumMassExceededEmpty,
  emptyMassAboveCap,
  payloadBelowMinimum,
  reweighDue,
  baselineMissing,
  baselineInFuture,
  baselineNotLastPack,
  hangAngleOutside,
  lateralPredictionDiffers,
  baselineMomentDiffers,
  scaleCertificateUnstated,
  scaleTermLong,
];
