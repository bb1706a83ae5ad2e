import type { Rule } from '../rule.ts';
import { acknowledgementThin } from '../rules/acknowledgement-thin.ts';
import { acknowledgementUnmatched } from '../rules/acknowledgement-unmatched.ts';
import { departureBeforeReady } from '../rules/departure-before-ready.ts';
import { releaseMissing } from '../rules/release-missing.ts';
import { statementUnknown } from '../rules/statement-unknown.ts';
import { sunsetBeforeArrival } from '../rules/sunset-before-arrival.ts';
import { textUnprintable } from '../rules/text-unprintable.ts';
import { workEndUnstated } from '../rules/work-end-unstated.ts';
import { workInACircle } from '../rules/work-in-a-circle.ts';
import { workOpen } from '../rules/work-open.ts';

/** What is left of work and day, and the release itself. */
export const RELEASE_RULES: readonly Rule[] = [
  workInACircle,
  departureBeforeReady,
  sunsetBeforeArrival,
  workOpen,
  workEndUnstated,
  releaseMissing,
  statementUnknown,
  acknowledgementUnmatched,
  acknowledgementThin,
  textUnprintable,
];
