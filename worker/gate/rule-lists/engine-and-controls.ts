import type { Rule } from '../rule.ts';
import { controlCheckedByOne } from '../rules/control-checked-by-one.ts';
import { controlDirectionNotProved } from '../rules/control-direction-not-proved.ts';
import { controlWrong } from '../rules/control-wrong.ts';
import { engineChanged } from '../rules/engine-changed.ts';
import { engineLimitExceeded } from '../rules/engine-limit-exceeded.ts';
import { engineReadingNotRepeated } from '../rules/engine-reading-not-repeated.ts';
import { engineRunAfterMissing } from '../rules/engine-run-after-missing.ts';
import { engineRunBeforeLastWork } from '../rules/engine-run-before-last-work.ts';
import { engineRunBeforeMissing } from '../rules/engine-run-before-missing.ts';
import { leaksNotLookedFor } from '../rules/leaks-not-looked-for.ts';
import { runConditionsUnstated } from '../rules/run-conditions-unstated.ts';
import { unrestrainedRun } from '../rules/unrestrained-run.ts';

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
  controlDirectionNotProved,
  controlWrong,
  controlCheckedByOne,
];
