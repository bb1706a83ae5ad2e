import type { Rule } from '../../rule.ts';
import { adviceDeclined } from './advice-declined.ts';
import { airworthinessFindingDeclined } from './airworthiness-finding-declined.ts';
import { declinedByNobody } from './declined-by-nobody.ts';
import { deferralExpired } from './deferral-expired.ts';
import { deferralMissing } from './deferral-missing.ts';
import { deferralOwnerNotTold } from './deferral-owner-not-told.ts';
import { deferralRepeated } from './deferral-repeated.ts';
import { deferralTooLong } from './deferral-too-long.ts';
import { deferralWithoutLimit } from './deferral-without-limit.ts';
import { findingLimitationUnsaid } from './finding-limitation-unsaid.ts';
import { findingNotClosed } from './finding-not-closed.ts';
import { findingUnsigned } from './finding-unsigned.ts';
import { findingWithoutDisposition } from './finding-without-disposition.ts';
import { inspectionTaskFailedUnresolved } from './inspection-task-failed-unresolved.ts';
import { inspectionTaskOpen } from './inspection-task-open.ts';
import { limitFindingLeft } from './limit-finding-left.ts';
import { lookAgainUnfit } from './look-again-unfit.ts';
import { panelsNotClosed } from './panels-not-closed.ts';
import { partPaperUnfit } from './part-paper-unfit.ts';
import { partShelfLife } from './part-shelf-life.ts';
import { partWithoutReleaseDocument } from './part-without-release-document.ts';
import { taskAgainstFinding } from './task-against-finding.ts';
import { taskUnsigned } from './task-unsigned.ts';
import { taskValueOutsideLimits } from './task-value-outside-limits.ts';
import { tasksNotApplicable } from './tasks-not-applicable.ts';
import { temporaryLeft } from './temporary-left.ts';
import { toolsNotAccounted } from './tools-not-accounted.ts';

/** Inspection, findings and parts. */
export const INSPECTION_RULES: readonly Rule[] = [
  inspectionTaskOpen,
  inspectionTaskFailedUnresolved,
  taskUnsigned,
  toolsNotAccounted,
  temporaryLeft,
  tasksNotApplicable,
  panelsNotClosed,
  findingWithoutDisposition,
  airworthinessFindingDeclined,
  findingNotClosed,
  deferralMissing,
  deferralWithoutLimit,
  deferralExpired,
  deferralRepeated,
  deferralOwnerNotTold,
  lookAgainUnfit,
  adviceDeclined,
  declinedByNobody,
  partWithoutReleaseDocument,
  partShelfLife,
  taskValueOutsideLimits,
  taskAgainstFinding,
  limitFindingLeft,
  findingLimitationUnsaid,
  deferralTooLong,
  findingUnsigned,
  partPaperUnfit,
];
