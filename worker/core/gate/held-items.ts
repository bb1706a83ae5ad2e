import { type OpenDue, timeLeft } from '../calc/open-items/time-left.ts';
import type { RuleInput } from './rule.ts';

/** Open items of earlier packs without an entry in this record, with the time left. */
export function heldItems({ results, at }: RuleInput): OpenDue[] {
  return timeLeft(results.open.held, results.readings, at);
}

/** Whether an item is past a binding limit. Recommendations do not bind; a programme has its tolerance. */
export function isPastLimit({
  isOverdue,
  isWithinTolerance,
  kind,
  basis,
}: Pick<OpenDue, 'isOverdue' | 'isWithinTolerance' | 'basis'> & { kind?: OpenDue['kind'] }): boolean {
  if (!isOverdue || kind === 'watch' || basis === 'recommendation' || basis === 'owner') return false;
  return !(isWithinTolerance && basis === 'programme');
}
