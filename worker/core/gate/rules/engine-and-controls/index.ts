import type { Rule } from '../../rule.ts';
import { balanceOutOfOrder } from './balance-out-of-order.ts';
import { controlCheckedByOne } from './control-checked-by-one.ts';
import { controlMovementUnstated } from './control-movement-unstated.ts';
import { controlNotOfClass } from './control-not-of-class.ts';
import { controlUnnamed } from './control-unnamed.ts';
import { controlWrong } from './control-wrong.ts';
import { engineChanged } from './engine-changed.ts';
import { engineLimitExceeded } from './engine-limit-exceeded.ts';
import { engineReadingNotRepeated } from './engine-reading-not-repeated.ts';
import { engineRunBeforeMissing } from './engine-run-before-missing.ts';
import { leakLookUnstated } from './leak-look-unstated.ts';
import { limitsCrossed } from './limits-crossed.ts';
import { measurementOutsideLimits } from './measurement-outside-limits.ts';
import { runBeforeOutside } from './run-before-outside.ts';
import { runConditionsUnstated } from './run-conditions-unstated.ts';
import { runHeldByOne } from './run-held-by-one.ts';
import { runLimitsDiffer } from './run-limits-differ.ts';
import { runUnwatched } from './run-unwatched.ts';
import { runValueUnlimited } from './run-value-unlimited.ts';
import { unrestrainedRun } from './unrestrained-run.ts';

/** Engine runs and controls. */
export const ENGINE_AND_CONTROLS_RULES: readonly Rule[] = [
  engineRunBeforeMissing,
  engineLimitExceeded,
  engineChanged,
  engineReadingNotRepeated,
  unrestrainedRun,
  runConditionsUnstated,
  measurementOutsideLimits,
  controlWrong,
  controlCheckedByOne,
  controlUnnamed,
  controlNotOfClass,
  runHeldByOne,
  limitsCrossed,
  runLimitsDiffer,
  runValueUnlimited,
  runBeforeOutside,
  runUnwatched,
  leakLookUnstated,
  balanceOutOfOrder,
  controlMovementUnstated,
];
