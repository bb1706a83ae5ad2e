import type { Rule } from '../rule.ts';
import { applicabilityUndecided } from '../rules/applicability-undecided.ts';
import { bulletinSearchOld } from '../rules/bulletin-search-old.ts';
import { bulletinUnassessed } from '../rules/bulletin-unassessed.ts';
import { complianceUnshown } from '../rules/compliance-unshown.ts';
import { directiveOpen } from '../rules/directive-open.ts';
import { directiveOverdue } from '../rules/directive-overdue.ts';
import { lifeAgainstBulletin } from '../rules/life-against-bulletin.ts';
import { lifeClockMissing } from '../rules/life-clock-missing.ts';
import { lifeDoneAhead } from '../rules/life-done-ahead.ts';
import { lifeExceeded } from '../rules/life-exceeded.ts';
import { lifeShort } from '../rules/life-short.ts';
import { lifeUnknown } from '../rules/life-unknown.ts';
import { meterAmbiguous } from '../rules/meter-ambiguous.ts';
import { notApplicableContradicted } from '../rules/not-applicable-contradicted.ts';
import { toleranceUsed } from '../rules/tolerance-used.ts';

/** Lives, bulletins and directives. */
export const DUE_RULES: readonly Rule[] = [
  lifeExceeded,
  toleranceUsed,
  lifeShort,
  lifeUnknown,
  lifeClockMissing,
  lifeDoneAhead,
  meterAmbiguous,
  lifeAgainstBulletin,
  directiveOpen,
  directiveOverdue,
  bulletinUnassessed,
  applicabilityUndecided,
  notApplicableContradicted,
  complianceUnshown,
  bulletinSearchOld,
];
