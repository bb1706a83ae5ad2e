import type { LoadedAircraft } from '../../record/visit.ts';
import type { MassMoment } from '../mass/mass-moment.ts';
import type { Loading } from './boundary.ts';
import { usableFuelOf } from './burn-path.ts';
import { tanksAndWaterOf } from './fuel.ts';
import { loadStationsOf } from './load-space.ts';

/**
 * Returns the loading for given masses on stations; usable fuel or water for a tank.
 *
 * @param load kg by station id; 0 for a station left out
 * @source FAA-H-8083-1B ch. 2, from memory
 */
export function loadingOf(
  aircraft: LoadedAircraft,
  empty: MassMoment,
  load: Readonly<Record<string, number>>,
): Loading {
  let { massKg, momentKgMm } = empty;
  for (const { id, armMm } of loadStationsOf(aircraft)) {
    massKg += load[id] ?? 0;
    momentKgMm += (load[id] ?? 0) * armMm;
  }
  for (const tank of tanksAndWaterOf(aircraft)) {
    const fuel = usableFuelOf(tank, load[tank.id] ?? 0);
    massKg += fuel.massKg;
    momentKgMm += fuel.momentKgMm;
  }
  return { massKg, momentKgMm, load };
}
