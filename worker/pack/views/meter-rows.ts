import { totalHours } from '../../calc/total-hours.ts';
import type { PackContext } from '../context.ts';

/** Total time of each product at release, with how its meter counts. */
export function meterRows({ visit, say }: PackContext): { of: string; basis: string; hours: string }[] {
  return (visit.meters?.readings ?? []).map((meter) => ({
    of: say.term(`${meter.of[0]?.toUpperCase()}${meter.of.slice(1)}`),
    basis: say.term(meter.basis),
    hours: `${say.plain(totalHours(meter), 1)} h`,
  }));
}
