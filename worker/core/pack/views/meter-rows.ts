import { totalCount } from '../../calc/lives/counting.ts';
import { totalHours } from '../../calc/lives/total-hours.ts';
import { countedName, counterName } from '../../record/meter-name.ts';
import type { PackContext } from '../context.ts';
import { countText } from './counts.ts';

/** Returns a name with a capital at its beginning. */
export const capitalised = (name: string): string => `${name[0]?.toUpperCase()}${name.slice(1)}`;

/** Returns total time by each meter at release, with its way of counting; then landings and other counts. */
export function meterRows({ visit, fmt }: PackContext): { name: string; hours: string }[] {
  const { readings = [], counters = [], landings } = visit.meters ?? {};
  const row = (name: string, hours: string) => ({ name: capitalised(name), hours });
  const airframe = fmt.term('airframe');
  return [
    ...readings.map((meter) => row(countedName(readings, meter, fmt), `${fmt.plain(totalHours(meter), 1)}\u00a0h`)),
    ...(landings === undefined ? [] : [row(airframe, countText('landings', landings, fmt))]),
    ...counters.map((counter) =>
      row(counterName(visit, counter, fmt) || airframe, countText(counter.counts, totalCount(counter), fmt)),
    ),
  ];
}
