import { totalHours } from '../../calc/total-hours.ts';
import { printNumber } from '../../units/rounding.ts';
import type { PackContext } from '../context.ts';

/** Total time of each product at release, with how its meter counts. */
export function meterRows({ visit }: PackContext): { of: string; basis: string; hours: string }[] {
  return (visit.meters?.readings ?? []).map((meter) => ({
    of: `${meter.of[0]?.toUpperCase()}${meter.of.slice(1)}`,
    basis: meter.basis,
    hours: `${printNumber(totalHours(meter), 1)} h`,
  }));
}
