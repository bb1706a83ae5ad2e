import { totalCount } from '../../calc/lives/counting.ts';
import { totalHours } from '../../calc/lives/total-hours.ts';
import { countedName } from '../../record/meter-name.ts';
import type { PackContext } from '../context.ts';
import { countText } from './counts.ts';

/** Returns total time by each meter at release, with its way of counting; then landings and other counts. */
export function meterRows({ visit, fmt }: PackContext): { name: string; hours: string }[] {
  const { readings = [], counters = [], landings } = visit.meters ?? {};
  const row = (name: string, hours: string) => ({ name: `${name[0]?.toUpperCase()}${name.slice(1)}`, hours });
  return [
    ...readings.map((meter) => row(countedName(readings, meter, fmt), `${fmt.plain(totalHours(meter), 1)}\u00a0h`)),
    ...(landings === undefined ? [] : [row(fmt.term('airframe'), countText('landings', landings, fmt))]),
    ...counters.map((counter) =>
      row(`${fmt.term(counter.of)} (${counter.id})`, countText(counter.counts, totalCount(counter), fmt)),
    ),
  ];
}
