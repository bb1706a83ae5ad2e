import type { Rule } from '../rule.ts';
import { adviceDeclined } from '../rules/advice-declined.ts';
import { airworthinessFindingDeclined } from '../rules/airworthiness-finding-declined.ts';
import { declinedByNobody } from '../rules/declined-by-nobody.ts';
import { deferralExpired } from '../rules/deferral-expired.ts';
import { deferralMissing } from '../rules/deferral-missing.ts';
import { deferralOwnerNotTold } from '../rules/deferral-owner-not-told.ts';
import { deferralRepeated } from '../rules/deferral-repeated.ts';
import { deferralWithoutLimit } from '../rules/deferral-without-limit.ts';
import { findingNotClosed } from '../rules/finding-not-closed.ts';
import { findingWithoutDisposition } from '../rules/finding-without-disposition.ts';
import { inspectionTaskFailedUnresolved } from '../rules/inspection-task-failed-unresolved.ts';
import { inspectionTaskOpen } from '../rules/inspection-task-open.ts';
import { installedPartUntraced } from '../rules/installed-part-untraced.ts';
import { panelsNotClosed } from '../rules/panels-not-closed.ts';
import { partShelfLife } from '../rules/part-shelf-life.ts';
import { partWithoutReleaseDocument } from '../rules/part-without-release-document.ts';
import { taskUnsigned } from '../rules/task-unsigned.ts';
import { toolsNotAccounted } from '../rules/tools-not-accounted.ts';

/** Inspection, findings and parts. */
export const INSPECTION_RULES: readonly Rule[] = [
  inspectionTaskOpen,
  inspectionTaskFailedUnresolved,
  taskUnsigned,
  toolsNotAccounted,
  panelsNotClosed,
  findingWithoutDisposition,
  airworthinessFindingDeclined,
  findingNotClosed,
  deferralMissing,
  deferralWithoutLimit,
  deferralExpired,
  deferralRepeated,
  deferralOwnerNotTold,
  adviceDeclined,
  declinedByNobody,
  partWithoutReleaseDocument,
  partShelfLife,
  installedPartUntraced,
];
