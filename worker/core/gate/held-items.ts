import { type OpenDue, timeLeft } from '../calc/open-items/time-left.ts';
import type { RuleInput } from './rule.ts';

/** What earlier packs left open and this record has no entry for, with the time left. */
export function heldItems({ results, at }: RuleInput): OpenDue[] {
  return timeLeft(results.open.held, results.readings, at);
}

/** Whether it is past a limit that binds: a recommendation does not, and a programme has its tolerance. */
export function isPastLimit({
  isOverdue,
  isWithinTolerance,
  kind,
  basis,
}: Pick<OpenDue, 'isOverdue' | 'isWithinTolerance' | 'basis'> & { kind?: OpenDue['kind'] }): boolean {
  if (!isOverdue || kind === 'watch' || basis === 'recommendation' || basis === 'owner') return false;
  return !(isWithinTolerance && basis === 'programme');
}
