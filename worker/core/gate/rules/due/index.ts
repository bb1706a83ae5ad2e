import type { Rule } from '../../rule.ts';
import { applicabilityUndecided } from './applicability-undecided.ts';
import { bulletinDueBeforeDone } from './bulletin-due-before-done.ts';
import { bulletinSearchOld } from './bulletin-search-old.ts';
import { bulletinStatusUnfit } from './bulletin-status-unfit.ts';
import { bulletinUnassessed } from './bulletin-unassessed.ts';
import { bulletinUnsigned } from './bulletin-unsigned.ts';
import { certificateExpired } from './certificate-expired.ts';
import { certificateIncomplete } from './certificate-incomplete.ts';
import { complianceUnshown } from './compliance-unshown.ts';
import { directiveOpen } from './directive-open.ts';
import { directiveOverdue } from './directive-overdue.ts';
import { duePointDiffers } from './due-point-differs.ts';
import { flightCertificateExpired } from './flight-certificate-expired.ts';
import { lifeAgainstBulletin } from './life-against-bulletin.ts';
import { lifeClockMissing } from './life-clock-missing.ts';
import { lifeDoneAhead } from './life-done-ahead.ts';
import { lifeExceeded } from './life-exceeded.ts';
import { lifeItemUnknown } from './life-item-unknown.ts';
import { lifeMeterUnfit } from './life-meter-unfit.ts';
import { lifeProductUnknown } from './life-product-unknown.ts';
import { lifeShort } from './life-short.ts';
import { lifeUnknown } from './life-unknown.ts';
import { meterAmbiguous } from './meter-ambiguous.ts';
import { notApplicableContradicted } from './not-applicable-contradicted.ts';
import { productTimeContradicted } from './product-time-contradicted.ts';
import { productTimeUncounted } from './product-time-uncounted.ts';
import { toleranceUsed } from './tolerance-used.ts';

/** Maintenance items, bulletins and directives. */
export const DUE_RULES: readonly Rule[] = [
  lifeExceeded,
  toleranceUsed,
  lifeShort,
  lifeUnknown,
  lifeClockMissing,
  lifeDoneAhead,
  meterAmbiguous,
  lifeItemUnknown,
  lifeProductUnknown,
  productTimeContradicted,
  productTimeUncounted,
  lifeAgainstBulletin,
  directiveOpen,
  directiveOverdue,
  bulletinUnassessed,
  applicabilityUndecided,
  notApplicableContradicted,
  complianceUnshown,
  bulletinSearchOld,
  flightCertificateExpired,
  certificateExpired,
  bulletinDueBeforeDone,
  bulletinUnsigned,
  certificateIncomplete,
  lifeMeterUnfit,
  duePointDiffers,
  bulletinStatusUnfit,
];
