import type { LoadedAircraft } from '../../record/visit.ts';
import { loadStationsOf } from './load-space.ts';
import type { LeastPilot } from './loading-result.ts';
import { MIN_TRIED_KG } from './solo.ts';

export type { LeastPilot } from './loading-result.ts';

/**
 * Returns the min. mass of a solo pilot: from the aircraft's data, or else the regime, or more if the envelope or
 * the minimum flying mass requires it.
 *
 * @param soloKg min. pilot inside the envelope, by `minimumSoloKg`; `nobody` if nobody may fly alone; undefined without an
 *   envelope
 * @param customKg min. pilot mass if the aircraft states none
 * @param emptyKg empty mass, which the pilot without usable fuel brings to the minimum flying mass
 * @returns undefined without a seat for a pilot
 * @source common practice, no source
 */
export function leastPilot(
  aircraft: LoadedAircraft,
  soloKg: number | 'nobody' | undefined,
  { customKg, emptyKg }: { customKg: number; emptyKg: number },
): LeastPilot | undefined {
  const pilot = loadStationsOf(aircraft).find(({ kind }) => kind === 'pilot');
  if (!pilot) return undefined;
  const station = pilot.id;
  if (soloKg === 'nobody') return { station, kg: undefined, governedBy: 'envelope' };
  const statedKg = pilot.minimumMassKg ?? customKg;
  const byEnvelopeKg = soloKg !== undefined && soloKg > MIN_TRIED_KG ? soloKg : 0;
  const byMassKg = (aircraft.minimumMassKg ?? 0) - emptyKg;
  if (byMassKg > Math.max(statedKg, byEnvelopeKg)) return { station, kg: byMassKg, governedBy: 'minimum-mass' };
  if (byEnvelopeKg > statedKg) return { station, kg: byEnvelopeKg, governedBy: 'envelope' };
  return { station, kg: statedKg, governedBy: pilot.minimumMassKg === undefined ? 'custom' : 'placard' };
}
