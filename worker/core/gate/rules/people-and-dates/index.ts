import type { Rule } from '../../rule.ts';
import { authorisationExpired } from './authorisation-expired.ts';
import { authorisationNumberMissing } from './authorisation-number-missing.ts';
import { authorisationOutOfScope } from './authorisation-out-of-scope.ts';
import { authorisationUnstated } from './authorisation-unstated.ts';
import { criticalityUnstated } from './criticality-unstated.ts';
import { dateInFuture } from './date-in-future.ts';
import { datesOutOfOrder } from './dates-out-of-order.ts';
import { duplicateId } from './duplicate-id.ts';
import { landingsUncounted } from './landings-uncounted.ts';
import { metersJump } from './meters-jump.ts';
import { metersRunBack } from './meters-run-back.ts';
import { personNotAsRegistered } from './person-not-as-registered.ts';
import { personUnknown } from './person-unknown.ts';
import { personUnused } from './person-unused.ts';
import { referenceUnknown } from './reference-unknown.ts';
import { regimeUnknown } from './regime-unknown.ts';
import { registrationMalformed } from './registration-malformed.ts';
import { releaserNotRegistered } from './releaser-not-registered.ts';
import { secondInspectionBeforeTask } from './second-inspection-before-task.ts';
import { secondPersonMissing } from './second-person-missing.ts';
import { secondPersonSame } from './second-person-same.ts';
import { serialDiffersFromBaseline } from './serial-differs-from-baseline.ts';
import { signOffBeforeWork } from './sign-off-before-work.ts';
import { supervisorUnfit } from './supervisor-unfit.ts';
import { unitImplausible } from './unit-implausible.ts';
import { witnessWithoutScope } from './witness-without-scope.ts';

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
  supervisorUnfit,
  criticalityUnstated,
  secondPersonMissing,
  secondPersonSame,
  secondInspectionBeforeTask,
  signOffBeforeWork,
  dateInFuture,
  datesOutOfOrder,
  metersRunBack,
  metersJump,
  unitImplausible,
  authorisationNumberMissing,
  witnessWithoutScope,
  landingsUncounted,
];
