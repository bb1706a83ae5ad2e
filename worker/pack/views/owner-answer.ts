import { DASH } from '../../text/dash.ts';
import type { PackContext } from '../context.ts';

/**
 * Whether the aircraft may be flown, as far as its release says so: what the statement that was signed covers, and no more.
 *
 * @param hasLimitations whether limitations are listed below
 */
export function ownerAnswer({ visit, released, say }: PackContext, hasLimitations: boolean): string {
  const { registration } = visit.aircraft;
  if (!released) return say.words`${registration} is not released. Do not fly on this paper.`;
  const { name, authorisation = DASH } = released.releasedBy;
  if (released.statement.covers === 'weighing') {
    const answer = say.words`${name} (${authorisation}) released the weighing of ${registration}, and nothing else. This pack does not say whether the aircraft is airworthy.`;
    return hasLimitations ? `${answer} ${say.words`The limitations below apply.`}` : answer;
  }
  if (released.statement.id === 'condition-inspection')
    return hasLimitations
      ? say.words`${registration} is released by ${name} (${authorisation}) after its condition inspection, within its limits and the limitations below.`
      : say.words`${registration} is released by ${name} (${authorisation}) after its condition inspection, within its limits.`;
  return hasLimitations
    ? say.words`${registration} is released by ${name} (${authorisation}) for the work described, within its limits and the limitations below.`
    : say.words`${registration} is released by ${name} (${authorisation}) for the work described, within its limits.`;
}
