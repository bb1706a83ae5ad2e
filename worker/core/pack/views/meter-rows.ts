import { totalHours } from '../../calc/lives/total-hours.ts';
import { countedName } from '../../record/meter-name.ts';
import type { PackContext } from '../context.ts';

/** Returns total time by each meter at release, with its way of counting. */
export function meterRows({ visit, fmt }: PackContext): { name: string; hours: string }[] {
  const readings = visit.meters?.readings ?? [];
  return readings.map((meter) => {
    const name = countedName(readings, meter, fmt);
    return {
      name: `${name[0]?.toUpperCase()}${name.slice(1)}`,
      hours: `${fmt.plain(totalHours(meter), 1)} h`,
    };
  });
}
