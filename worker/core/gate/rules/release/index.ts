import type { Rule } from '../../rule.ts';
import { acknowledgementLapsed } from './acknowledgement-lapsed.ts';
import { acknowledgementThin } from './acknowledgement-thin.ts';
import { acknowledgementUnmatched } from './acknowledgement-unmatched.ts';
import { departureBeforeReady } from './departure-before-ready.ts';
import { reissueReasonMissing } from './reissue-reason-missing.ts';
import { releaseLate } from './release-late.ts';
import { releaseMissing } from './release-missing.ts';
import { statementUnfit } from './statement-unfit.ts';
import { statementUnknown } from './statement-unknown.ts';
import { sunsetBeforeArrival } from './sunset-before-arrival.ts';
import { textUnprintable } from './text-unprintable.ts';
import { workEndUnstated } from './work-end-unstated.ts';
import { workInACircle } from './work-in-a-circle.ts';
import { workOpen } from './work-open.ts';

/** Remaining work, departure and release. */
export const RELEASE_RULES: readonly Rule[] = [
  workInACircle,
  departureBeforeReady,
  sunsetBeforeArrival,
  workOpen,
  workEndUnstated,
  releaseMissing,
  reissueReasonMissing,
  statementUnknown,
  statementUnfit,
  acknowledgementUnmatched,
  acknowledgementThin,
  acknowledgementLapsed,
  textUnprintable,
  releaseLate,
];
