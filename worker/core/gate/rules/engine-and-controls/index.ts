import type { Rule } from '../../rule.ts';
import { controlCheckedByOne } from './control-checked-by-one.ts';
import { controlDirectionNotProved } from './control-direction-not-proved.ts';
import { controlNotOfClass } from './control-not-of-class.ts';
import { controlUnnamed } from './control-unnamed.ts';
import { controlWrong } from './control-wrong.ts';
import { engineChanged } from './engine-changed.ts';
import { engineLimitExceeded } from './engine-limit-exceeded.ts';
import { engineReadingNotRepeated } from './engine-reading-not-repeated.ts';
import { engineRunAfterMissing } from './engine-run-after-missing.ts';
import { engineRunBeforeLastWork } from './engine-run-before-last-work.ts';
import { engineRunBeforeMissing } from './engine-run-before-missing.ts';
import { leaksNotLookedFor } from './leaks-not-looked-for.ts';
import { measurementOutsideLimits } from './measurement-outside-limits.ts';
import { runConditionsUnstated } from './run-conditions-unstated.ts';
import { unrestrainedRun } from './unrestrained-run.ts';

/** Engine runs and controls. */
export const ENGINE_AND_CONTROLS_RULES: readonly Rule[] = [
  engineRunAfterMissing,
  engineRunBeforeMissing,
  engineRunBeforeLastWork,
  engineLimitExceeded,
  engineChanged,
  engineReadingNotRepeated,
  unrestrainedRun,
  leaksNotLookedFor,
  runConditionsUnstated,
  measurementOutsideLimits,
  controlDirectionNotProved,
  controlWrong,
  controlCheckedByOne,
  controlUnnamed,
  controlNotOfClass,
];
