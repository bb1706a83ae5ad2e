import { isOnlyOf } from '../../gate/regimes/regime.ts';
import { DASH } from '../../text/dash.ts';
import * as m from '../../text/generated/messages.ts';
import type { PackContext } from '../context.ts';

/**
 * States whether the aircraft may be flown, as far as its release covers it: the scope of the signed statement, and no
 * more.
 *
 * @param hasLimitations whether limitations are listed below
 */
export function ownerAnswer({ visit, released, fmt }: PackContext, hasLimitations: boolean): string {
  const { registration } = visit.aircraft;
  if (!released) return fmt.text(m.ownerAnswer_notReleasedNotFly, { registration });
  const { name, authorisation = DASH } = released.releasedBy;
  const statements = [released.statement, ...released.further.map(({ statement }) => statement)];
  if (statements.every((statement) => isOnlyOf(statement, 'weighing'))) {
    const answer = fmt.text(m.ownerAnswer_releasedWeighingNothingElse, { name, authorisation, registration });
    return hasLimitations ? `${answer} ${fmt.text(m.ownerAnswer_limitationsBelowApply)}` : answer;
  }
  const inspected = statements.find((statement) => isOnlyOf(statement, 'inspection'));
  if (inspected) {
    const inspection = fmt.text(inspected.title);
    return hasLimitations
      ? fmt.text(m.ownerAnswer_releasedAfterInspection, { registration, name, authorisation, inspection })
      : fmt.text(m.ownerAnswer_releasedAfterInspectionWithin, { registration, name, authorisation, inspection });
  }
  return hasLimitations
    ? fmt.text(m.ownerAnswer_releasedWorkDescribedWithin, { registration, name, authorisation })
    : fmt.text(m.ownerAnswer_releasedWorkDescribedWithinLimits, { registration, name, authorisation });
}
