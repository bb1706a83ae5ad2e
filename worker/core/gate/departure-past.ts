import type { Visit } from '../record/visit.ts';
import { instantOf } from '../units/calendar.ts';

/** Whether the planned departure, or the latest one, is before the time of the assessment. */
export function isDeparturePast({ departure }: Pick<Visit, 'departure'>, at: string): boolean {
  return departure !== undefined && instantOf(departure.latestAt ?? departure.plannedAt) < instantOf(at);
}
