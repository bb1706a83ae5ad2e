import type { LoadedAircraft } from '../../record/visit.ts';
import { loadStationsOf } from './load-space.ts';
import type { LeastPilot } from './loading-result.ts';
import { MIN_TRIED_KG } from './solo.ts';

export type { LeastPilot } from './loading-result.ts';

/**
 * The least solo pilot: what the aircraft states, or else the regime, or more where the envelope asks for it.
 *
 * @param soloKg least pilot inside the envelope, by `minimumSoloKg`; `nobody` where none is; undefined without an envelope
 * @param customKg least pilot where the aircraft states none
 * @returns undefined where there is no seat for a pilot
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
