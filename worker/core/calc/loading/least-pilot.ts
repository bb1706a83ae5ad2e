import type { LoadedAircraft } from '../../record/visit.ts';
import { loadStationsOf } from './load-space.ts';
import type { LeastPilot } from './loading-result.ts';
import { MIN_TRIED_KG } from './solo.ts';

export type { LeastPilot } from './loading-result.ts';

/**
 * Returns the min. mass of a solo pilot: from the aircraft's data, or else the regime, or more if the envelope requires
 * it.
 *
 * @param soloKg min. pilot inside the envelope, by `minimumSoloKg`; `nobody` if nobody may fly alone; undefined without an
 *   envelope
 * @param customKg min. pilot mass if the aircraft states none
 * @returns undefined without a seat for a pilot
 * @source common practice, no source
 */
export function leastPilot(
  aircraft: LoadedAircraft,
  soloKg: number | 'nobody' | undefined,
  customKg: number,
): LeastPilot | undefined {
  const pilot = loadStationsOf(aircraft).find(({ kind }) => kind === 'pilot');
  if (!pilot) return undefined;
  const station = pilot.id;
  if (soloKg === 'nobody') return { station, kg: undefined, governedBy: 'envelope' };
  const statedKg = pilot.minimumMassKg ?? customKg;
  if (soloKg !== undefined && soloKg > Math.max(statedKg, MIN_TRIED_KG))
    return { station, kg: soloKg, governedBy: 'envelope' };
  return { station, kg: statedKg, governedBy: pilot.minimumMassKg === undefined ? 'custom' : 'placard' };
}
