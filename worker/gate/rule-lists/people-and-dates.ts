import type { Rule } from '../rule.ts';
import { authorisationExpired } from '../rules/authorisation-expired.ts';
import { authorisationOutOfScope } from '../rules/authorisation-out-of-scope.ts';
import { authorisationUnstated } from '../rules/authorisation-unstated.ts';
import { dateInFuture } from '../rules/date-in-future.ts';
import { datesOutOfOrder } from '../rules/dates-out-of-order.ts';
import { duplicateId } from '../rules/duplicate-id.ts';
import { metersJump } from '../rules/meters-jump.ts';
import { metersRunBack } from '../rules/meters-run-back.ts';
import { personNotAsRegistered } from '../rules/person-not-as-registered.ts';
import { personUnknown } from '../rules/person-unknown.ts';
import { personUnused } from '../rules/person-unused.ts';
import { referenceUnknown } from '../rules/reference-unknown.ts';
import { regimeUnknown } from '../rules/regime-unknown.ts';
import { registrationMalformed } from '../rules/registration-malformed.ts';
import { releaserNotRegistered } from '../rules/releaser-not-registered.ts';
import { secondInspectionBeforeTask } from '../rules/second-inspection-before-task.ts';
import { secondPersonMissing } from '../rules/second-person-missing.ts';
import { secondPersonSame } from '../rules/second-person-same.ts';
import { serialDiffersFromBaseline } from '../rules/serial-differs-from-baseline.ts';
import { unitImplausible } from '../rules/unit-implausible.ts';

/** Identity, people, dates and meters. */
export const PEOPLE_AND_DATES_RULES: readonly Rule[] = [
  registrationMalformed,
  regimeUnknown,
  serialDiffersFromBaseline,
  personUnknown,
  personUnused,
  personNotAsRegistered,
  releaserNotRegistered,
  referenceUnknown,
  duplicateId,
  authorisationExpired,
  authorisationOutOfScope,
  authorisationUnstated,
  secondPersonMissing,
  secondPersonSame,
  secondInspectionBeforeTask,
  dateInFuture,
  datesOutOfOrder,
  metersRunBack,
  metersJump,
  unitImplausible,
];
